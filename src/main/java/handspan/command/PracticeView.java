package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.practice.Accuracy;
import handspan.music.practice.NoteTally;
import handspan.music.practice.Tally;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;

/** What a run of practice was worth, in words and as JSON. */
final class PracticeView {
    private PracticeView() {}

    static List<String> lines(Tally tally) {
        List<String> lines = new ArrayList<>();
        lines.add(tally.hits() + " of " + tally.asked() + " notes hit (" + Figures.text(100 * tally.hit01(), 0)
                + " %), " + tally.reached() + " reached");
        tally.accuracy().ifPresent(accuracy -> lines.add(words(accuracy)));
        tally.best()
                .ifPresent(best -> tally.worst()
                        .filter(worst -> !worst.equals(best))
                        .ifPresent(worst -> lines.add("best: " + words(best) + "; worst: " + words(worst))));
        return lines;
    }

    private static String words(Accuracy accuracy) {
        return "off by " + Figures.text(accuracy.rmsCents(), 0) + " cents rms (" + Figures.text(accuracy.rmsMm(), 1)
                + " mm), on average " + mean(accuracy.meanCents()) + "; "
                + Figures.text(accuracy.medianSeconds(), 1) + " s a note (median)";
    }

    private static String mean(double cents) {
        String figure = Figures.text(Math.abs(cents), 0);
        return figure.equals("0") ? "neither high nor low" : figure + " cents too " + (cents > 0 ? "high" : "low");
    }

    private static String words(NoteTally note) {
        return note.name() + " (" + note.hits() + " of " + note.asked()
                + (note.reached() == 0 ? "" : ", " + Figures.text(note.rmsCents(), 0) + " cents rms") + ")";
    }

    static void into(ObjectNode node, Tally tally) {
        node.put("asked", tally.asked());
        node.put("reached", tally.reached());
        node.put("hits", tally.hits());
        node.put("hit01", tally.hit01());
        double none = Double.NaN;
        JsonViews.number(
                node, "meanCents", tally.accuracy().map(Accuracy::meanCents).orElse(none));
        JsonViews.number(
                node, "rmsCents", tally.accuracy().map(Accuracy::rmsCents).orElse(none));
        JsonViews.number(node, "meanMm", tally.accuracy().map(Accuracy::meanMm).orElse(none));
        JsonViews.number(node, "rmsMm", tally.accuracy().map(Accuracy::rmsMm).orElse(none));
        JsonViews.number(
                node,
                "medianSeconds",
                tally.accuracy().map(Accuracy::medianSeconds).orElse(none));
        node.put("best", tally.best().map(NoteTally::name).orElse(""));
        node.put("worst", tally.worst().map(NoteTally::name).orElse(""));
    }

    static void notes(ObjectNode node, Tally tally) {
        ArrayNode notes = node.putArray("notes");
        for (NoteTally note : tally.notes()) {
            notes.addObject()
                    .put("note", note.name())
                    .put("keyNumber", note.key())
                    .put("asked", note.asked())
                    .put("reached", note.reached())
                    .put("hits", note.hits())
                    .put("rmsCents", note.rmsCents());
        }
    }
}
