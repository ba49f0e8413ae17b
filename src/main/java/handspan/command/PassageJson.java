package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.passage.CentsOff;
import handspan.music.passage.ComparedFigure;
import handspan.music.passage.Comparison;
import handspan.music.passage.PassageFigures;
import handspan.music.passage.PlayedNote;

/** A played passage, and two compared, as JSON. */
final class PassageJson {
    private PassageJson() {}

    static void into(ObjectNode node, PassageFigures figures) {
        node.set("onNotes", off(figures.sound()));
        node.set("hand", off(figures.hand()));
        node.set("allSounding", off(figures.all()));
        JsonViews.number(node, "wobbleCents", figures.wobble().rmsCents());
        ObjectNode vibrato = node.putObject("vibrato");
        vibrato.put("searchedNotes", figures.vibrato().searched());
        vibrato.put("foundNotes", figures.vibrato().found().size());
        JsonViews.number(vibrato, "rateHz", figures.vibrato().rateHz());
        JsonViews.number(vibrato, "widthCents", figures.vibrato().widthCents());
        ObjectNode time = node.putObject("time");
        JsonViews.number(time, "passageS", figures.time().passageS());
        JsonViews.number(time, "onNotesS", figures.time().onNotesS());
        JsonViews.number(time, "glidingS", figures.time().glidingS());
        JsonViews.number(time, "awayS", figures.time().awayS());
        JsonViews.number(time, "silentS", figures.time().silentS());
        time.put("rests", figures.time().rests());
        time.put("losses", figures.time().losses());
        JsonViews.number(node, "notesPerMin", figures.notesPerMin());
        ObjectNode level = node.putObject("level");
        JsonViews.number(level, "lowDb", figures.level().lowDb());
        JsonViews.number(level, "highDb", figures.level().highDb());
        JsonViews.number(level, "rangeDb", figures.level().rangeDb());
        JsonViews.number(level, "atCeiling01", figures.level().atCeilingShare01());
        ArrayNode notes = node.putArray("notes");
        figures.notes().forEach(note -> notes.add(note(note)));
    }

    private static ObjectNode note(PlayedNote note) {
        ObjectNode node = Talk.node();
        node.put("noteName", note.name());
        JsonViews.number(node, "pitchHz", note.hz());
        JsonViews.number(node, "seconds", note.seconds());
        node.put("visits", note.visits());
        JsonViews.number(node, "meanCents", note.sound().meanCents());
        JsonViews.number(node, "rmsCents", note.sound().rmsCents());
        JsonViews.number(node, "handMeanCents", note.hand().meanCents());
        JsonViews.number(node, "handRmsCents", note.hand().rmsCents());
        JsonViews.number(node, "wobbleCents", note.wobble().rmsCents());
        return node;
    }

    private static ObjectNode off(CentsOff off) {
        ObjectNode node = Talk.node();
        JsonViews.number(node, "meanCents", off.meanCents());
        JsonViews.number(node, "rmsCents", off.rmsCents());
        JsonViews.number(node, "within10Cents01", off.within10Share01());
        JsonViews.number(node, "within25Cents01", off.within25Share01());
        JsonViews.number(node, "within50Cents01", off.within50Share01());
        return node;
    }

    static ObjectNode compared(Comparison comparison) {
        ObjectNode node = Talk.node();
        node.put("paired", comparison.paired());
        node.put("beyondChance", comparison.isAnyTold());
        ArrayNode figures = node.putArray("figures");
        for (ComparedFigure figure : comparison.figures()) {
            ObjectNode each = figures.addObject();
            each.put("name", key(figure.what()));
            JsonViews.number(each, "aCents", figure.first());
            JsonViews.number(each, "bCents", figure.second());
            JsonViews.number(
                    each,
                    "differenceCents",
                    figure.difference().map(it -> it.value()).orElse(Double.NaN));
            JsonViews.number(
                    each,
                    "uncertaintyCents",
                    figure.difference()
                            .map(it -> it.expanded(figure.probability01()))
                            .orElse(Double.NaN));
            each.put("beyondChance", figure.isTold());
        }
        return node;
    }

    private static String key(ComparedFigure.What what) {
        return switch (what) {
            case MEAN_OFF -> "meanCents";
            case OFF -> "rmsCents";
            case HAND_OFF -> "handRmsCents";
            case WOBBLE -> "wobbleCents";
        };
    }
}
