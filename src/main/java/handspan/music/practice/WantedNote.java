package handspan.music.practice;

import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;

/**
 * A note that is asked for.
 *
 * @param number of the asking, from 1
 * @param note of the tuning's ladder, 0 = the lowest
 * @param key its key number as it sounds
 * @param name what it is called as it sounds
 * @param hz its frequency
 * @param place01 where in the zone it lies
 */
public record WantedNote(int number, int note, double key, String name, double hz, double place01) {
    /**
     * A note of a tuning.
     *
     * @param number of the asking, from 1
     * @param note of its ladder
     */
    public static WantedNote of(Tuning tuning, int number, int note) {
        ScaleLadder ladder = tuning.ladder();
        double key = ladder.key(note);
        double sounding = key + tuning.shiftKeys();
        double place01 = Math.max(0, Math.min(1, tuning.curve().place01(key)));
        return new WantedNote(
                number,
                note,
                sounding,
                tuning.noteName(ladder, note),
                tuning.reference().hz(sounding),
                place01);
    }

    /**
     * How far a hand is from it, cents; positive where it would sound higher. As it sounds: beyond an end of the zone
     * pitch stays at that end. Snapping is left out.
     *
     * @param handPlace01 of the hand, in the zone
     */
    public double offCents(Tuning tuning, double handPlace01) {
        return 100 * (tuning.curve().key(handPlace01) + tuning.shiftKeys() - key);
    }

    /** Whether the hand is in this note's cell, which ends half-way to each neighbour. */
    public boolean holds(Tuning tuning, double handPlace01) {
        ScaleLadder ladder = tuning.ladder();
        double handKey = tuning.curve().key(handPlace01);
        return handKey >= ladder.lowerBoundary(note) && handKey <= ladder.upperBoundary(note);
    }
}
