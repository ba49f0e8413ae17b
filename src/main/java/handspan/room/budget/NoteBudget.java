package handspan.room.budget;

import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.room.HandSetup;
import java.util.ArrayList;
import java.util.List;

/**
 * What can be promised of one note of a tuning.
 *
 * @param name of the note as it sounds, with its octave
 * @param keyNumber of the note, before transposition and trim; need not be whole
 * @param place01 where it lies in the zone
 * @param atMm the same as a distance
 * @param budget at that place
 */
public record NoteBudget(String name, double keyNumber, double place01, double atMm, PitchBudget budget) {
    /** All notes of a tuning's scale, from low to high. */
    public static List<NoteBudget> of(HandSetup hand, Tuning tuning) {
        PitchCurve curve = tuning.curve();
        ScaleLadder ladder = tuning.ladder();
        List<NoteBudget> notes = new ArrayList<>();
        for (int i = 0; i < ladder.size(); i++) {
            double place = curve.place01(ladder.key(i));
            double centsPerMm = tuning.centsPerMm(hand.zone().lengthMm(), place);
            notes.add(new NoteBudget(
                    tuning.noteName(ladder, i),
                    ladder.key(i),
                    place,
                    hand.zone().mm(place),
                    PitchBudget.at(hand, place, centsPerMm)));
        }
        return notes;
    }

    /** The note of some that can be promised least. */
    public static NoteBudget worst(List<NoteBudget> notes) {
        return notes.stream()
                .reduce((a, b) -> b.budget.expandedCents() > a.budget.expandedCents() ? b : a)
                .orElseThrow();
    }
}
