package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.survey.Beating;
import handspan.instrument.survey.ChannelReport;
import handspan.instrument.survey.Clutter;
import handspan.instrument.survey.Coarseness;
import handspan.instrument.survey.Drift;
import handspan.instrument.survey.Findings;
import handspan.instrument.survey.Wobble;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.SurveyWords;
import java.util.List;
import java.util.Optional;

/**
 * All that a survey found, as JSON: each channel's usual figures and those of what may be wrong with it. What was not
 * found is null, so that the keys are always the same.
 */
final class SurveyJson {
    private SurveyJson() {}

    static ArrayNode channels(List<ChannelReport> reports) {
        ArrayNode array = JsonViews.reports(reports);
        for (int i = 0; i < reports.size(); i++) {
            ObjectNode node = (ObjectNode) array.get(i);
            add(node, reports.get(i).findings());
            Optional<FeelBudget> feel = SurveyWords.feel(reports.get(i));
            JsonViews.number(
                    node, "feelJitterCents", feel.map(FeelBudget::jitterCents).orElse(Double.NaN));
            JsonViews.number(
                    node,
                    "feelStillLagMs",
                    feel.map(it -> it.settings().stillLagMs()).orElse(Double.NaN));
            JsonViews.number(
                    node,
                    "feelMovingLagMs",
                    feel.map(it -> it.trial().movingLagMs()).orElse(Double.NaN));
        }
        return array;
    }

    private static void add(ObjectNode node, Findings found) {
        JsonViews.number(node, "rateJitterMs", found.pace().jitterMs());
        JsonViews.number(node, "whiteNoise", found.noise().white());
        JsonViews.number(node, "repeats", found.repeats().linesPerValue());
        node.put("dropoutRuns", found.dropouts().runs());
        node.put("longestDropoutLines", found.dropouts().longest());
        JsonViews.number(node, "usualDropoutLines", found.dropouts().usual());
        JsonViews.number(node, "longestDropoutMs", found.dropouts().longestMs());
        ArrayNode sentinels = node.putArray("sentinels");
        found.sentinels().values().forEach(sentinels::add);
        JsonViews.number(node, "noReading01", found.sentinels().share01());
        JsonViews.number(node, "driftPerMin", found.drift().map(Drift::perMin).orElse(Double.NaN));
        JsonViews.number(
                node, "driftLowPerMin", found.drift().map(Drift::lowPerMin).orElse(Double.NaN));
        JsonViews.number(
                node, "driftHighPerMin", found.drift().map(Drift::highPerMin).orElse(Double.NaN));
        JsonViews.number(
                node, "slowNoiseAt3S", found.drift().map(Drift::slowAt3S).orElse(Double.NaN));
        JsonViews.number(
                node, "wobbleHz", found.wobble().map(Wobble::frequencyHz).orElse(Double.NaN));
        JsonViews.number(
                node, "wobbleAmplitude", found.wobble().map(Wobble::amplitude).orElse(Double.NaN));
        ArrayNode flickers = node.putArray("flickerHz");
        found.wobble().ifPresent(wobble -> wobble.flickers().forEach(flicker -> flickers.add(flicker.sourceHz())));
        JsonViews.number(node, "beatingLow", found.beating().map(Beating::low).orElse(Double.NaN));
        JsonViews.number(node, "beatingHigh", found.beating().map(Beating::high).orElse(Double.NaN));
        JsonViews.number(
                node,
                "clutterAt",
                found.clutter()
                        .map(clutter -> clutter.fixed().orElse(Double.NaN))
                        .orElse(Double.NaN));
        node.put("passes", found.clutter().map(Clutter::passes).orElse(0));
        JsonViews.number(
                node, "roundingCents", found.coarseness().map(Coarseness::cents).orElse(Double.NaN));
    }
}
