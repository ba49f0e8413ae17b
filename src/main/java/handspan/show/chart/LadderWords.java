package handspan.show.chart;

import handspan.music.tuning.Direction;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;

/**
 * What is written on a pitch ladder: below its title, and at its notes.
 *
 * @param tuning of it
 * @param across what travel is counted in
 * @param zone counted so
 * @param plain whether nothing is known of how often notes are missed
 */
record LadderWords(Tuning tuning, Across across, Zone zone, boolean plain) {
    List<String> captions() {
        String range = name(tuning.lowKey()) + " to " + name(tuning.highKey());
        return List.of(
                "Tuning '" + tuning.name() + "': " + tuning.scale().name() + ", " + range + ", A4 = "
                        + Marks.figure(tuning.reference().a4Hz()) + " Hz, "
                        + (tuning.direction() == Direction.HIGH_FAR ? "high at the far end" : "high at the near end")
                        + ", snap " + tuning.snapping().words() + shiftWords(),
                travelWords() + narrowestWords()
                        + (plain ? ". Shaded and plain: one note each." : ". Along the foot: missed, in %.")
                        + " Ends \u00b1 two standard uncertainties.");
    }

    /** Of an end as it sounds. */
    private String name(int key) {
        return tuning.spelling().name(key + tuning.transpose());
    }

    private String travelWords() {
        double cents = tuning.centsPerMm(zone.lengthMm());
        return across == Across.MM
                ? Figures.text(cents, 2) + " cents per mm of hand travel"
                : Figures.text(cents, 0) + " cents over the zone";
    }

    private String shiftWords() {
        return (tuning.transpose() == 0 ? "" : ", transposed by " + tuning.transpose() + " semitones")
                + (tuning.trimCents() == 0 ? "" : ", trim " + Figures.text(tuning.trimCents(), 1) + " cents");
    }

    private String narrowestWords() {
        double keys = tuning.ladder().narrowestCell();
        return Double.isInfinite(keys)
                ? ""
                : "; the narrowest note is "
                        + across.words(keys * zone.lengthMm() / tuning.curve().span()) + " wide";
    }

    /** Names of the notes at their places. */
    List<PlacedNames.Name> names() {
        ScaleLadder ladder = tuning.ladder();
        List<PlacedNames.Name> names = new ArrayList<>();
        for (int note = 0; note < ladder.size(); note++) {
            double at = zone.mm(tuning.curve().place01(ladder.key(note)));
            double key = ladder.key(note) + tuning.shiftKeys();
            String name = tuning.noteName(ladder, note);
            String hint = name + ", " + Figures.text(tuning.reference().hz(key), 2) + " Hz, at " + across.words(at);
            names.add(new PlacedNames.Name(at, key, name, hint, Marks.rank(ladder, note, tuning.shiftKeys())));
        }
        return names;
    }
}
