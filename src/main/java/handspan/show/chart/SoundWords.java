package handspan.show.chart;

import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Snapper;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;

/** Pitch and level of a moment in words, as every live chart says them. */
final class SoundWords {
    private SoundWords() {}

    /** The note of the scale whose cell a pitch lies in, and the cents from it, for example {@code E4 +12 cents}. */
    static String note(Tuning tuning, double key) {
        ScaleLadder ladder = tuning.ladder();
        double unshifted = key - tuning.shiftKeys();
        int note = ladder.nearest(unshifted);
        long cents = Math.round((unshifted - ladder.key(note)) * ReferencePitch.CENTS_PER_KEY);
        return tuning.noteName(ladder, note) + (cents < 0 ? " \u2212" : " +") + Math.abs(cents) + " cents";
    }

    /** A level, for example {@code -18.2 dB}. */
    static String level(double gain01) {
        return gain01 > 0 ? db(Decibels.of(gain01)) : "silent";
    }

    /** A level in dB. */
    static String db(double levelDb) {
        return (levelDb < 0 ? "\u2212" : "") + Figures.text(Math.abs(levelDb), 1) + " dB";
    }

    /** What a hand at a place sounds by a tuning's map, transposition and trim included. */
    static double keyAt(Tuning tuning, double place01) {
        return Snapper.drawn(tuning.snapping(), tuning.ladder(), tuning.curve().key(place01)) + tuning.shiftKeys();
    }
}
