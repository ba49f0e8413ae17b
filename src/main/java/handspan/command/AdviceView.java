package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.number.units.Figures;
import handspan.room.budget.Advice;
import handspan.room.budget.NoteChance;
import handspan.room.budget.Playable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The adviser's words and JSON. */
final class AdviceView {
    private AdviceView() {}

    static List<String> lines(Advice advice) {
        List<String> lines = new ArrayList<>();
        lines.add(advice.words());
        lines.add("");
        lines.add("widest range of each scale with no note missed by more than " + Figures.percent(advice.mostMiss01())
                + " of reaches");
        lines.add(String.format(
                Locale.ROOT, "%-22s %-13s %7s %6s  %s", "scale", "range", "octaves", "notes", "worst note"));
        advice.scales().forEach(each -> lines.add(line(each)));
        Playable chosen = advice.chosen();
        lines.add("");
        lines.add("tuning '" + chosen.tuning().name() + "', "
                + chosen.tuning().scale().name());
        lines.add(String.format(Locale.ROOT, "%-8s %8s %9s  %s", "note", "at mm", "cell mm", "missed"));
        chosen.chances().forEach(chance -> lines.add(line(chosen, chance)));
        lines.add("");
        lines.addAll(advice.helpWords());
        return lines;
    }

    private static String line(Advice.ForScale advice) {
        String scale = String.format(Locale.ROOT, "%-22s ", advice.scale().name());
        return advice.widest()
                .map(widest -> scale
                        + String.format(
                                Locale.ROOT,
                                "%-13s %7s %6d  %s, %s",
                                widest.lowName() + ".." + widest.highName(),
                                Figures.text(widest.octaves(), 1),
                                widest.chances().size(),
                                widest.worstName(),
                                NoteChance.percent(widest.worst().miss01())))
                .orElse(scale + "no range");
    }

    private static String line(Playable chosen, NoteChance chance) {
        double cellMm = chance.farMm() - chance.nearMm();
        return String.format(
                Locale.ROOT,
                "%-8s %8s %9s  %s",
                chosen.noteName(chance.note()),
                Figures.text(chance.atMm(), 1),
                Double.isFinite(cellMm) ? Figures.text(cellMm, 1) : "open",
                NoteChance.percent(chance.miss01()));
    }

    static void into(ObjectNode node, Advice advice) {
        JsonViews.number(node, "aimMm", advice.aim().mm());
        node.put("aimMeasured", advice.aim().isMeasured());
        JsonViews.number(node, "mostMiss01", advice.mostMiss01());
        node.put("words", advice.words());
        ArrayNode scales = node.putArray("scales");
        advice.scales().forEach(each -> scale(scales.addObject(), each));
        ObjectNode tuning = node.putObject("tuning");
        tuning.put("name", advice.chosen().tuning().name());
        ArrayNode notes = tuning.putArray("notes");
        advice.chosen().chances().forEach(chance -> note(notes.addObject(), advice.chosen(), chance));
        ArrayNode help = node.putArray("help");
        for (Advice.Help each : advice.help()) {
            ObjectNode one = help.addObject();
            one.put("what", each.what());
            one.put("worstNote", each.worstNote());
            JsonViews.number(one, "worstMiss01", each.miss01());
        }
    }

    private static void scale(ObjectNode node, Advice.ForScale advice) {
        node.put("scale", advice.scale().name());
        if (advice.widest().isEmpty()) {
            node.put("octaves", 0.0);
            node.put("semitones", 0.0);
            node.putNull("low");
            node.putNull("high");
            node.put("notes", 0);
            node.putNull("worstNote");
            node.putNull("worstMiss01");
            return;
        }
        Playable widest = advice.widest().get();
        JsonViews.number(node, "octaves", widest.octaves());
        JsonViews.number(node, "semitones", widest.semitones());
        node.put("low", widest.lowName());
        node.put("high", widest.highName());
        node.put("notes", widest.chances().size());
        node.put("worstNote", widest.worstName());
        JsonViews.number(node, "worstMiss01", widest.worst().miss01());
    }

    private static void note(ObjectNode node, Playable chosen, NoteChance chance) {
        node.put("noteName", chosen.noteName(chance.note()));
        JsonViews.number(node, "atMm", chance.atMm());
        JsonViews.number(node, "nearMm", chance.nearMm());
        JsonViews.number(node, "farMm", chance.farMm());
        JsonViews.number(node, "spreadMm", chance.spreadMm());
        JsonViews.number(node, "miss01", chance.miss01());
    }
}
