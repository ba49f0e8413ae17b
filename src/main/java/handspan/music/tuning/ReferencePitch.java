package handspan.music.tuning;

import handspan.number.units.Cents;

/**
 * Twelve-tone equal temperament on a reference pitch: {@code f = A4 2^((n - 69) / 12)}, n the key number with 69 = A4
 * and 60 = C4.
 *
 * <p>Sources: ISO 16:1975 for A = 440 Hz; key numbers as in MIDI 1.0.
 *
 * @param a4Hz 415..466
 */
public record ReferencePitch(double a4Hz) {
    /** A4 = 440 Hz. */
    public static final ReferencePitch A440 = new ReferencePitch(440);

    /** Key number of A4. */
    public static final int A4_KEY = 69;

    /** Cents from one key to the next. */
    public static final double CENTS_PER_KEY = 100;

    /** Checks the range. */
    public ReferencePitch {
        if (!(a4Hz >= 415 && a4Hz <= 466)) {
            throw new IllegalArgumentException("A4 of " + a4Hz + " Hz (415..466): choose a pitch within it");
        }
    }

    /** Frequency of a key, whole or between keys. */
    public double hz(double key) {
        return a4Hz * Cents.ratio((key - A4_KEY) * CENTS_PER_KEY);
    }

    /** Key number of a frequency, between keys where it falls so. */
    public double key(double hz) {
        return A4_KEY + Cents.between(a4Hz, hz) / CENTS_PER_KEY;
    }
}
