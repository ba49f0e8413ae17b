package handspan.music.tuning;

import java.util.ArrayList;
import java.util.List;

/**
 * The notes of a scale over a range, and which of them a pitch belongs to. Notes meet half-way; the outermost cells
 * reach to the ends of the range and beyond.
 */
public final class ScaleLadder {
    private final double[] keys;
    private final int[] degrees;
    private final int[] octaves;

    private ScaleLadder(double[] keys, int[] degrees, int[] octaves) {
        this.keys = keys;
        this.degrees = degrees;
        this.octaves = octaves;
    }

    /**
     * The notes from a low key to a high one, both included.
     *
     * @param scale steps in cents
     * @param tonic pitch class of the first degree, 0 = C
     * @param lowKey low end
     * @param highKey high end
     * @throws IllegalArgumentException when no note of the scale lies in the range
     */
    public static ScaleLadder of(Scale scale, int tonic, double lowKey, double highKey) {
        List<double[]> notes = new ArrayList<>();
        double tolerance = 1e-9;
        for (int octave = -2; octave <= 10; octave++) {
            double base = tonic + 12.0 * (octave + 1);
            for (int degree = 0; degree < scale.stepsCents().size(); degree++) {
                double key = base + scale.stepsCents().get(degree) / ReferencePitch.CENTS_PER_KEY;
                if (key >= lowKey - tolerance && key <= highKey + tolerance) {
                    notes.add(new double[] {key, degree + 1, octave});
                }
            }
        }
        if (notes.isEmpty()) {
            throw new IllegalArgumentException(
                    "no note of " + scale.name() + " lies from key " + lowKey + " to " + highKey + ": widen the range");
        }
        return new ScaleLadder(
                notes.stream().mapToDouble(n -> n[0]).toArray(),
                notes.stream().mapToInt(n -> (int) n[1]).toArray(),
                notes.stream().mapToInt(n -> (int) n[2]).toArray());
    }

    /** How many notes. */
    public int size() {
        return keys.length;
    }

    /** Key number of a note, 0 = the lowest. */
    public double key(int note) {
        return keys[note];
    }

    /** Degree of a note in its scale, 1 = tonic. */
    public int degree(int note) {
        return degrees[note];
    }

    /** Octave of the tonic below a note; C4 = octave 4. */
    public int octave(int note) {
        return octaves[note];
    }

    /** Key number half-way between a note and the next higher one. */
    public double upperBoundary(int note) {
        return note == keys.length - 1 ? Double.POSITIVE_INFINITY : 0.5 * (keys[note] + keys[note + 1]);
    }

    /** Key number half-way between a note and the next lower one. */
    public double lowerBoundary(int note) {
        return note == 0 ? Double.NEGATIVE_INFINITY : upperBoundary(note - 1);
    }

    /** The note whose cell a pitch lies in. */
    public int nearest(double key) {
        int note = 0;
        while (key > upperBoundary(note)) {
            note++;
        }
        return note;
    }

    /**
     * Twice the shortest way from a note to a boundary of its cell, which is the narrowest gap between two notes, in
     * key numbers; infinite for a single note. Cells of uneven scales are lopsided: their whole width would promise
     * more.
     */
    public double narrowestCell() {
        double narrowest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < keys.length; i++) {
            narrowest = Math.min(narrowest, keys[i] - keys[i - 1]);
        }
        return narrowest;
    }
}
