package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.practice.Accuracy;
import handspan.music.practice.NoteTally;
import handspan.music.practice.Tally;

/** What a run of practice was worth, as JSON. */
final class PracticeView {
    private PracticeView() {}

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
