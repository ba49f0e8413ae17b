package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.FitQuality;
import handspan.room.Room;
import handspan.room.budget.AirChange;
import handspan.room.budget.NoteBudget;
import handspan.room.budget.PitchBudget;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** What a room can promise, note by note and as JSON: its fit, the budget of each note, what warmer air does. */
final class BudgetView {
    private BudgetView() {}

    /** One line for each hold and fitted parameter, and for each note of the first tuning. */
    static List<String> notes(RoomProfile profile) {
        List<String> lines = new ArrayList<>();
        FitQuality fit = profile.room().pitch().fit();
        if (fit != null) {
            fit.coefficients()
                    .forEach(one -> lines.add("fitted " + one.name() + ": " + significant(one.value()) + " +- "
                            + significant(one.standardUncertainty())));
            fit.residuals()
                    .forEach(point -> lines.add("hold at " + Figures.text(point.x(), 0) + " mm: residual "
                            + Figures.text(point.y(), 1) + " mm"));
        }
        lines.add("note      at mm   promised (95 %)   mostly");
        for (NoteBudget note :
                NoteBudget.of(profile.room().pitch(), profile.tunings().get(0))) {
            PitchBudget.Term largest = note.budget().largest();
            lines.add(pad(note.name(), -7)
                    + pad(Figures.text(note.atMm(), 1), 8)
                    + pad("+- " + Figures.text(note.budget().expandedCents(), 0) + " cents", 18)
                    + "   " + largest.name() + " " + Figures.text(largest.cents(), 1)
                    + (largest.assumed() ? " (assumed)" : ""));
        }
        return lines;
    }

    /** Four significant figures. */
    private static String significant(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toString();
    }

    private static String pad(String text, int width) {
        String blanks = " ".repeat(Math.max(0, Math.abs(width) - text.length()));
        return width < 0 ? text + blanks : blanks + text;
    }

    static void into(ObjectNode node, RoomProfile profile) {
        Room room = profile.room();
        Tuning tuning = profile.tunings().get(0);
        ArrayNode notes = node.putArray("budget");
        NoteBudget.of(room.pitch(), tuning).forEach(note -> notes.add(note(note)));
        AirChange.of(room, tuning, AirChange.USUAL_DEGREES).ifPresent(change -> {
            ObjectNode air = node.putObject("warmer");
            JsonViews.number(air, "degreesC", change.degrees());
            JsonViews.number(air, "nearMm", change.nearMm());
            JsonViews.number(air, "farMm", change.farMm());
            JsonViews.number(air, "nearCents", change.nearCents());
            JsonViews.number(air, "farCents", change.farCents());
        });
    }

    private static ObjectNode note(NoteBudget note) {
        ObjectNode node = Talk.node();
        node.put("note", note.name());
        JsonViews.number(node, "keyNumber", note.keyNumber());
        JsonViews.number(node, "place01", note.place01());
        JsonViews.number(node, "atMm", note.atMm());
        JsonViews.number(node, "standardCents", note.budget().standardCents());
        JsonViews.number(node, "expandedCents", note.budget().expandedCents());
        ArrayNode terms = node.putArray("terms");
        for (PitchBudget.Term term : note.budget().terms()) {
            ObjectNode one = terms.addObject();
            one.put("name", term.name());
            JsonViews.number(one, "cents", term.cents());
            one.put("assumed", term.assumed());
        }
        node.put("largest", note.budget().largest().name());
        return node;
    }

    /** The fit of a hand that was calibrated by ruler. */
    static ObjectNode fit(FitQuality fit) {
        ObjectNode node = Talk.node();
        node.put("method", fit.method());
        node.put("parameters", fit.parameters());
        node.put("holds", fit.residuals().size());
        JsonViews.number(node, "rmsMm", fit.rmsMm());
        JsonViews.number(node, "leftOutMm", fit.leftOutMm());
        JsonViews.number(node, "worstAtMm", fit.worst().x());
        JsonViews.number(node, "worstResidualMm", fit.worst().y());
        ArrayNode coefficients = node.putArray("coefficients");
        fit.coefficients().forEach(coefficient -> {
            ObjectNode one = coefficients.addObject();
            one.put("name", coefficient.name());
            JsonViews.number(one, "value", coefficient.value());
            JsonViews.number(one, "standardUncertainty", coefficient.standardUncertainty());
        });
        ArrayNode residuals = node.putArray("residuals");
        fit.residuals().forEach(point -> {
            ObjectNode one = residuals.addObject();
            JsonViews.number(one, "atMm", point.x());
            JsonViews.number(one, "residualMm", point.y());
        });
        return node;
    }
}
