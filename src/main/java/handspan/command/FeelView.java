package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.hand.smooth.SmoothSettings;
import handspan.room.budget.FeelBudget;

/** How a tuning or a sensor feels, for words and JSON. */
final class FeelView {
    /** Lags of the trade curve run so far, in longest lags. */
    private static final double TRADE_TIMES = 4;

    private FeelView() {}

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
