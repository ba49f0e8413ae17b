package handspan.music.tuning;

import java.util.ArrayList;
import java.util.List;

/**
 * The notes of a scale over a range, and which of them a pitch belongs to. Notes meet half-way; the outermost cells
 * reach to the ends of the range and beyond.
 */
public final class ScaleLadder {
    private static final double TOLERANCE = 1e-9;

    /** Half a semitone, in key numbers; a hair less, so that a note half-way between two keys belongs to neither. */
    private static final double QUARTER_TONE = 0.5 - TOLERANCE;

    private final double[] keys;
    private final int[] degrees;
    private final int[] octaves;

    private ScaleLadder(double[] keys, int[] degrees, int[] octaves) {
        this.keys = keys;
        this.degrees = degrees;
        this.octaves = octaves;
    }

    /**
     * The notes of a range, those at its ends included.
     *
     * @throws IllegalArgumentException when no note of the scale lies in the range
     */
    public static ScaleLadder of(Scale scale, Temperament temperament, Tonic tonic, PitchRange range) {
        return of(
                scale,
                temperament,
                tonic,
                tuned(scale, temperament, tonic, range.lowKey()),
                tuned(scale, temperament, tonic, range.highKey()));
    }

    static ScaleLadder of(Scale scale, Temperament temperament, Tonic tonic, double low, double high) {
        List<double[]> notes = notes(scale, temperament, tonic).stream()
                .filter(note -> note[0] >= low - TOLERANCE && note[0] <= high + TOLERANCE)
                .toList();
        if (notes.isEmpty()) {
            throw new IllegalArgumentException(
                    "no note of " + scale.name() + " lies from key " + low + " to " + high + ": widen the range");
        }
        return new ScaleLadder(
                notes.stream().mapToDouble(n -> n[0]).toArray(),
                notes.stream().mapToInt(n -> (int) n[1]).toArray(),
                notes.stream().mapToInt(n -> (int) n[2]).toArray());
    }

    /**
     * Where the end of a range lies that is given as a key: at the note of the scale that is meant, if one is nearer
     * than a quarter tone, else where twelve-tone equal temperament has the key.
     */
    static double tuned(Scale scale, Temperament temperament, Tonic tonic, int key) {
        double nearest = key;
        double away = QUARTER_TONE;
        for (double[] note : notes(scale, temperament, tonic)) {
            if (Math.abs(note[0] - key) < away) {
                away = Math.abs(note[0] - key);
                nearest = note[0];
            }
        }
        return nearest;
    }

    /** Key, degree and octave of each note, from below the lowest key to above the highest. */
    private static List<double[]> notes(Scale scale, Temperament temperament, Tonic tonic) {
        List<Double> steps = scale.stepsCents(temperament);
        List<double[]> notes = new ArrayList<>();
        for (int octave = -2; octave <= 10; octave++) {
            double base = tonic.pitchClass() + 12.0 * (octave + 1);
            for (int degree = 0; degree < steps.size(); degree++) {
                notes.add(new double[] {base + steps.get(degree) / ReferencePitch.CENTS_PER_KEY, degree + 1, octave});
            }
        }
        return notes;
    }

    /** How many notes. */
    public int size() {
        return keys.length;
    }

    /** Key number of a note, 0 = the lowest. */
    public double key(int note) {
        return keys[note];
    }

    /** Whether both have the same notes, whatever they are called. */
    public boolean hasNotesOf(ScaleLadder other) {
        boolean same = keys.length == other.keys.length;
        for (int note = 0; same && note < keys.length; note++) {
            same = Math.abs(keys[note] - other.keys[note]) < TOLERANCE;
        }
        return same;
    }

    /** Degree of a note in its scale, 1 = tonic. */
    public int degree(int note) {
        return degrees[note];
    }

    /** Octave of the tonic below a note; C4 = octave 4. */
    public int octave(int note) {
        return octaves[note];
    }

    /**
     * What a note is called, with its octave. Where the scale does not follow the twelve usual notes, and so has no
     * letters of its own, cents off the nearest of them are added: {@code E4-50}.
     *
     * @param spelling of the key
     * @param shiftKeys what transposition and trim add
     */
    public String name(int note, Spelling spelling, double shiftKeys, boolean withCents) {
        double key = keys[note] + shiftKeys;
        return spelling.name(Spelling.nearest(key)) + (withCents ? Spelling.centsOff(key) : "");
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
