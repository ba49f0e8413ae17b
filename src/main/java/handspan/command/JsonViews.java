package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.Rejection;
import handspan.instrument.survey.ChannelGuess;
import handspan.instrument.survey.ChannelReport;
import handspan.live.path.Arrivals;
import handspan.live.path.LightTaken;
import handspan.live.path.TargetStatus;
import handspan.room.budget.LatencyBudget;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The JSON shapes that several verbs share. Keys are camelCase with the unit in the name. */
final class JsonViews {
    private JsonViews() {}

    /** Puts a number in; one that is none becomes null. */
    static void number(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }

    static ObjectNode shape(LineShape shape) {
        ObjectNode node = Talk.node();
        node.put("words", shape.words());
        node.put("separator", Character.toString(shape.separator()));
        node.put("decimalComma", shape.decimalComma());
        ArrayNode slots = node.putArray("slots");
        for (int i = 0; i < shape.slots().size(); i++) {
            ObjectNode slot = slots.addObject();
            slot.put("name", shape.nameOf(i));
            slot.put("label", shape.slots().get(i).label());
            slot.put("unit", shape.slots().get(i).unit());
        }
        return node;
    }

    static ObjectNode rejections(Map<Rejection, Long> rejections) {
        ObjectNode node = Talk.node();
        rejections.forEach((reason, count) -> node.put(key(reason), count));
        return node;
    }

    /** {@code TOO_LONG} becomes {@code tooLong}. */
    private static String key(Rejection reason) {
        StringBuilder key = new StringBuilder();
        for (String part : reason.name().toLowerCase(Locale.ROOT).split("_", -1)) {
            key.append(key.isEmpty() ? part : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return key.toString();
    }

    static String words(Map<Rejection, Long> rejections) {
        if (rejections.isEmpty()) {
            return "none";
        }
        StringBuilder words = new StringBuilder();
        rejections.forEach((reason, count) -> words.append(words.isEmpty() ? "" : ", ")
                .append(count)
                .append(' ')
                .append(reason.words()));
        return words.toString();
    }

    static ArrayNode guesses(List<ChannelGuess> guesses) {
        ArrayNode array = Talk.node().arrayNode();
        for (ChannelGuess guess : guesses) {
            ObjectNode node = array.addObject();
            node.put("name", guess.spec().channel());
            node.put("kind", guess.spec().kind().word());
            node.put("unit", guess.spec().unit().word());
            node.put("sure", guess.sure());
            node.put("nature", guess.nature().name().toLowerCase(java.util.Locale.ROOT));
            node.put("evidence", guess.evidence());
        }
        return array;
    }

    static ArrayNode reports(List<ChannelReport> reports) {
        ArrayNode array = Talk.node().arrayNode();
        for (ChannelReport report : reports) {
            ObjectNode node = array.addObject();
            node.put("name", report.name());
            node.put("kind", report.spec().kind().word());
            node.put("unit", report.spec().unit().word());
            number(node, "centre", report.centre());
            number(node, "noise", report.noise());
            number(node, "noiseMm", report.noiseMm());
            number(node, "step", report.step());
            number(node, "ratePerS", report.ratePerS());
            number(node, "dropouts01", report.dropouts01());
            number(node, "repeats01", report.repeats01());
            node.put("outliers", report.outliers());
            node.put("heldCount", report.heldCount());
            node.put("count", report.count());
            node.put("verdict", report.verdict().word());
            node.put("reason", report.reason());
            node.put("remedy", report.remedy());
        }
        return array;
    }

    static ObjectNode latency(LatencyBudget budget) {
        ObjectNode node = Talk.node();
        number(node, "sensorMs", budget.sensorMs());
        number(node, "waitMs", budget.waitMs());
        number(node, "queueMs", budget.queueMs());
        number(node, "wireMs", budget.wireMs());
        number(node, "wireBusy01", budget.wireBusy01());
        number(node, "timerMs", budget.timerMs());
        number(node, "filterMs", budget.filterMs());
        number(node, "stillMs", budget.stillMs());
        number(node, "glideMs", budget.glideMs());
        number(node, "totalMs", budget.totalMs());
        ArrayNode advice = node.putArray("advice");
        budget.advice().forEach(advice::add);
        return node;
    }

    static ObjectNode arrivals(Arrivals arrivals) {
        ObjectNode node = Talk.node();
        number(node, "linesPerBurst", arrivals.linesPerBurst());
        number(node, "burstMs", arrivals.burstMs());
        number(node, "timerMs", arrivals.timerMs());
        node.put("datedBack", arrivals.datedBack());
        node.put("boardTime", arrivals.boardTime());
        node.put("words", arrivals.words());
        return node;
    }

    static ObjectNode lightTaken(LightTaken light) {
        ObjectNode node = Talk.node();
        node.put("event", "lightTaken");
        node.put("taken", light.taken());
        number(node, "beforeRaw", light.beforeRaw());
        number(node, "afterRaw", light.afterRaw());
        node.put("words", light.words());
        return node;
    }

    static ArrayNode targets(List<TargetStatus> targets) {
        ArrayNode array = Talk.node().arrayNode();
        for (TargetStatus target : targets) {
            ObjectNode node = array.addObject();
            node.put("target", target.target());
            node.put("sent", target.sent());
            node.put("refused", target.refused());
            node.put("dropped", target.dropped());
            node.put("trouble", target.trouble());
        }
        return array;
    }
}
