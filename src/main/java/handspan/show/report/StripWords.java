package handspan.show.report;

import handspan.number.units.Figures;
import handspan.room.HandRole;
import java.util.ArrayList;
import java.util.List;

/** What a printed strip says about itself, and what to do with it. */
final class StripWords {
    private StripWords() {}

    static String title(NoteStrip strip) {
        return (strip.hand() == HandRole.PITCH ? "Note strip" : "Level strip") + " for the "
                + strip.hand().word() + " hand";
    }

    /**
     * What it is for.
     *
     * @param named how many of its marks bear their names
     */
    static List<String> facts(NoteStrip strip, int named) {
        List<String> facts = new ArrayList<>();
        facts.add("For " + strip.source() + ", " + strip.about() + ".");
        facts.addAll(strip.facts());
        int unnamed = strip.marks().size() - named;
        if (unnamed > 0) {
            facts.add(unnamed + " of " + strip.marks().size()
                    + " have a line but no name: their places are too close for letters.");
        }
        return facts;
    }

    /** What to do with it, and how to read it. */
    static List<String> steps(NoteStrip strip, StripPage page) {
        boolean several = page.count() > 1;
        List<String> steps = new ArrayList<>();
        steps.add("Measure the bar" + (several ? " on every sheet" : "")
                + " with a ruler. If it is not 100 mm, the strip is wrong too: print again.");
        if (several) {
            steps.add(
                    "Cut each sheet from the second on along its left dashes, lay it on the sheet before, and tape it.");
        }
        steps.add("Cut along the frame. Lay the strip under the hand's path with the edge marked 0 mm at the sensor:"
                + " where the sensor measures from, usually its face.");
        steps.add(
                strip.hand() == HandRole.PITCH
                        ? "Play one note by the strip and listen: if all notes sound shifted, shift the strip."
                        : "Turn the monitors low before you try it.");
        for (int i = 0; i < steps.size(); i++) {
            steps.set(i, i + 1 + ". " + steps.get(i));
        }
        steps.add(
                strip.hand() == HandRole.PITCH
                        ? "Lines from below: notes, thick ones keynotes. Grey: where one note ends and the next begins;"
                                + " the figure between is the note's width in mm."
                        : "Lines from below: levels in dB below full; thick ones the ceiling, the floor and silence.");
        steps.add("Printers that leave up to " + Figures.text(Paper.UNPRINTED_MM, 0)
                + " mm white at each edge print all of it.");
        return steps;
    }
}
