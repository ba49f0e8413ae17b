package handspan.show.report;

import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.Zone;
import handspan.room.budget.NoteBudget;
import handspan.room.budget.NoteChance;
import java.util.ArrayList;
import java.util.List;

/**
 * What a report tells of one note of a tuning.
 *
 * @param name as it sounds, with its octave
 * @param keyNumber as it sounds, transposition and trim included
 * @param hz frequency
 * @param atMm its place, from the sensor
 * @param widthMm hand travel within the zone that belongs to it
 * @param open whether one of its sides goes on beyond the zone, where the end's pitch stays
 * @param miss01 chance that a reach for it sounds another note
 * @param standardCents standard uncertainty of the pitch at its place
 * @param expandedCents half of the interval that holds the truth with 95 %
 */
public record NoteFigures(
        String name,
        double keyNumber,
        double hz,
        double atMm,
        double widthMm,
        boolean open,
        double miss01,
        double standardCents,
        double expandedCents) {
    /** All notes of a tuning in a room, from low to high. */
    static List<NoteFigures> of(RoomProfile profile, Tuning tuning) {
        ScaleLadder ladder = tuning.ladder();
        Zone zone = profile.room().pitch().zone();
        List<NoteBudget> budgets = NoteBudget.of(profile.room().pitch(), tuning);
        List<NoteChance> chances =
                NoteChance.of(profile.room(), tuning, profile.room().aim());
        List<NoteFigures> notes = new ArrayList<>();
        for (int note = 0; note < ladder.size(); note++) {
            NoteBudget budget = budgets.get(note);
            double key = ladder.key(note) + tuning.shiftKeys();
            notes.add(new NoteFigures(
                    budget.name(),
                    key,
                    tuning.reference().hz(key),
                    budget.atMm(),
                    widthMm(zone, tuning.curve(), ladder, note),
                    note == 0 || note == ladder.size() - 1,
                    chances.get(note).miss01(),
                    budget.budget().standardCents(),
                    budget.budget().expandedCents()));
        }
        return notes;
    }

    private static double widthMm(Zone zone, PitchCurve curve, ScaleLadder ladder, int note) {
        double low = Math.max(curve.lowKey(), ladder.lowerBoundary(note));
        double high = Math.min(curve.highKey(), ladder.upperBoundary(note));
        return Math.abs(zone.mm(curve.place01(high)) - zone.mm(curve.place01(low)));
    }

    /** Its row in a table. */
    List<String> row() {
        return List.of(
                name,
                Figures.text(hz, 2),
                Figures.text(atMm, 1),
                Figures.text(widthMm, 1) + (open ? " +" : ""),
                NoteChance.percent(miss01),
                Figures.text(standardCents, 1),
                "\u00b1 " + Figures.text(expandedCents, 1));
    }
}
