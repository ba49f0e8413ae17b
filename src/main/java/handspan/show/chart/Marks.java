package handspan.show.chart;

import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Spelling;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;

/** Marks for the axes of pitch and level. */
final class Marks {
    /** C first, then the fifth and third above it, the other white keys, the black ones. */
    private static final int[] RANK = {0, 4, 2, 4, 1, 3, 4, 1, 4, 2, 4, 3};

    /** Round numbers within a decade, and how early each is left out. */
    private static final double[][] ROUND = {
        {1, 0}, {1.5, 3}, {2, 1}, {2.5, 4}, {3, 2}, {4, 2}, {5, 1}, {6, 3}, {7, 3}, {8, 3}, {9, 3}
    };

    private static final double[] GAINS = {
        1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001, 0.0005, 0.0002, 0.0001, 0.00001, 0.000001
    };

    private Marks() {}

    /** Every key of the keyboard from a low key number to a high one. */
    static List<MarkedAxis.Mark> keys(Spelling spelling, double low, double high) {
        List<MarkedAxis.Mark> marks = new ArrayList<>();
        for (int key = (int) Math.ceil(low); key <= high; key++) {
            marks.add(new MarkedAxis.Mark(key, spelling.name(key), RANK[Math.floorMod(key, 12)]));
        }
        return marks;
    }

    /** The notes of a scale, the tonic the last to be left out. */
    static List<MarkedAxis.Mark> notes(Tuning tuning) {
        ScaleLadder ladder = tuning.ladder();
        double shiftKeys = tuning.shiftKeys();
        List<MarkedAxis.Mark> marks = new ArrayList<>();
        for (int note = 0; note < ladder.size(); note++) {
            double key = ladder.key(note) + shiftKeys;
            marks.add(new MarkedAxis.Mark(key, tuning.noteName(ladder, note), rank(ladder, note, shiftKeys)));
        }
        return marks;
    }

    /** How early a note's name is left out: the tonic last, the others as on a keyboard. */
    static int rank(ScaleLadder ladder, int note, double shiftKeys) {
        int key = (int) Math.rint(ladder.key(note) + shiftKeys);
        return ladder.degree(note) == 1 ? 0 : 1 + RANK[Math.floorMod(key, 12)];
    }

    /** A number with one decimal, or with none where that would be a 0. */
    static String figure(double value) {
        return Figures.text(value, Math.abs(value - Math.rint(value)) < 0.05 ? 0 : 1);
    }

    /** Round frequencies, on an axis of key numbers. */
    static List<MarkedAxis.Mark> hz(ReferencePitch reference, double low, double high) {
        List<MarkedAxis.Mark> marks = new ArrayList<>();
        for (double decadeHz = 1; decadeHz <= 10_000; decadeHz *= 10) {
            for (double[] round : ROUND) {
                double hz = decadeHz * round[0];
                double key = reference.key(hz);
                if (key >= low && key <= high) {
                    marks.add(new MarkedAxis.Mark(key, figure(hz), (int) round[1]));
                }
            }
        }
        return marks;
    }

    /** Gains, on an axis of dB. */
    static List<MarkedAxis.Mark> gains() {
        List<MarkedAxis.Mark> marks = new ArrayList<>();
        for (int i = 0; i < GAINS.length; i++) {
            int decimals = (int) Math.max(0, Math.ceil(-Math.log10(GAINS[i]) - 1e-9));
            marks.add(new MarkedAxis.Mark(Decibels.of(GAINS[i]), Figures.text(GAINS[i], decimals), i));
        }
        return marks;
    }
}
