package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.hand.smooth.SmoothSettings;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.survey.ChannelReport;
import handspan.room.budget.FeelBudget;
import java.util.Optional;

/** How a tuning or a sensor feels, for words and JSON. */
final class FeelView {
    /** Lags of the trade curve run so far, in longest lags. */
    private static final double TRADE_TIMES = 4;

    private FeelView() {}

    /** How a surveyed sensor would feel; empty where it measures no length, or was not held still. */
    static Optional<FeelBudget> of(ChannelReport report) {
        double noiseMm = report.noiseMm();
        if (!(noiseMm >= 0) || report.heldCount() == 0 || !(report.ratePerS() > 0)) {
            return Optional.empty();
        }
        double measuringMs = Sensor.of(report.spec(), Air.USUAL, Instrument.USUAL_REFERENCE_VOLTS)
                .measuringMs();
        return Optional.of(FeelBudget.ofSensor(noiseMm, report.ratePerS(), measuringMs));
    }

    static ObjectNode node(FeelBudget feel) {
        SmoothSettings settings = feel.settings();
        ObjectNode node = Talk.node();
        JsonViews.number(node, "jitterCents", feel.jitterCents());
        JsonViews.number(node, "targetCents", feel.targetCents());
        JsonViews.number(node, "stillLagMs", settings.stillLagMs());
        JsonViews.number(node, "lagForTargetMs", settings.lagForTargetMs());
        JsonViews.number(node, "movingLagMs", feel.trial().movingLagMs());
        JsonViews.number(node, "movingErrorCents", feel.movingErrorCents());
        JsonViews.number(node, "overshoot01", feel.trial().overshoot01());
        JsonViews.number(node, "smallStepMs", feel.trial().stepMs());
        ArrayNode offers = node.putArray("steadierWith");
        feel.offers().forEach(offers::add);
        ArrayNode trades = node.putArray("trades");
        for (SmoothSettings.Trade trade : settings.trades(TRADE_TIMES * settings.longestLagMs())) {
            ObjectNode one = trades.addObject();
            JsonViews.number(one, "lagMs", trade.lagMs());
            JsonViews.number(one, "jitterCents", trade.jitterMm() * feel.centsPerMm());
        }
        return node;
    }
}
