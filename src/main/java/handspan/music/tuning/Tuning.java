package handspan.music.tuning;

/**
 * What pitches a zone plays.
 *
 * @param name tells tunings of a room apart
 * @param reference A4
 * @param scale its notes
 * @param tonic pitch class of the scale's first degree, 0 = C
 * @param lowKey key at the low end of the zone
 * @param highKey key at the high end
 * @param direction which end is high
 * @param snap how pitch is drawn to the scale
 * @param transpose semitones added to all, -48..48
 * @param trimCents cents added to all, -100..100
 * @param warp of the pitch curve, -3..3: 0 even, above 0 finer near, below 0 finer far
 */
public record Tuning(
        String name,
        ReferencePitch reference,
        Scale scale,
        int tonic,
        int lowKey,
        int highKey,
        Direction direction,
        Snap snap,
        int transpose,
        double trimCents,
        double warp) {
    /** An even tuning. */
    public Tuning(
            String name,
            ReferencePitch reference,
            Scale scale,
            int tonic,
            int lowKey,
            int highKey,
            Direction direction,
            Snap snap,
            int transpose,
            double trimCents) {
        this(name, reference, scale, tonic, lowKey, highKey, direction, snap, transpose, trimCents, 0);
    }

    /** Checks ranges. */
    public Tuning {
        if (name.isBlank()) {
            throw new IllegalArgumentException("tuning name '' (at least one character)");
        }
        if (lowKey < 0 || highKey > 127 || highKey <= lowKey) {
            throw new IllegalArgumentException("range from " + lowKey + " to " + highKey
                    + " (key numbers 0..127, the high end above the low): for example A3 to A5");
        }
        if (tonic < 0 || tonic > 11) {
            throw new IllegalArgumentException("tonic " + tonic + " (pitch class 0..11, 0 = C)");
        }
        if (Math.abs(transpose) > 48) {
            throw new IllegalArgumentException("transposition of " + transpose + " semitones (-48..48)");
        }
        if (!(Math.abs(trimCents) <= 100)) {
            throw new IllegalArgumentException("trim of " + trimCents + " cents (-100..100)");
        }
        new PitchCurve(lowKey, highKey, direction, warp);
        // a range without a single note of the scale is refused here, not on stage
        ScaleLadder.of(scale, tonic, lowKey, highKey);
    }

    /** Two octaves from A3 to A5, chromatic and free: the honest default of a zone of about 40 cm. */
    public static Tuning usual() {
        return new Tuning(
                "first",
                ReferencePitch.A440,
                Scales.named("chromatic"),
                9,
                57,
                81,
                Direction.HIGH_FAR,
                Snap.FREE,
                0,
                0);
    }

    /** The same tuning over another range. */
    public Tuning withRange(int low, int high) {
        return new Tuning(name, reference, scale, tonic, low, high, direction, snap, transpose, trimCents, warp);
    }

    /** The same tuning with another scale. */
    public Tuning withScale(Scale other) {
        return new Tuning(name, reference, other, tonic, lowKey, highKey, direction, snap, transpose, trimCents, warp);
    }

    /** The same tuning snapping otherwise. */
    public Tuning withSnap(Snap other) {
        return new Tuning(name, reference, scale, tonic, lowKey, highKey, direction, other, transpose, trimCents, warp);
    }

    /** The curve from place to key number, before transposition and trim. */
    public PitchCurve curve() {
        return new PitchCurve(lowKey, highKey, direction, warp);
    }

    /** The scale's notes in the range, before transposition and trim. */
    public ScaleLadder ladder() {
        return ScaleLadder.of(scale, tonic, lowKey, highKey);
    }

    /** What transposition and trim add, in key numbers. */
    public double shiftKeys() {
        return transpose + trimCents / ReferencePitch.CENTS_PER_KEY;
    }

    /** The same tuning with another warp. */
    public Tuning withWarp(double other) {
        return new Tuning(name, reference, scale, tonic, lowKey, highKey, direction, snap, transpose, trimCents, other);
    }

    /** Cents in a millimetre of hand travel over a zone of that length, where the curve is steepest. */
    public double centsPerMm(double zoneMm) {
        return Math.max(centsPerMm(zoneMm, 0), centsPerMm(zoneMm, 1));
    }

    /** Cents in a millimetre of hand travel at a place of a zone of that length. */
    public double centsPerMm(double zoneMm, double place01) {
        return ReferencePitch.CENTS_PER_KEY * curve().steepness(place01) / zoneMm;
    }
}
