package handspan.music.tuning;

import handspan.hand.smooth.Quickness;

/**
 * What pitches a zone plays.
 *
 * @param name tells tunings of a room apart
 * @param reference A4
 * @param temperament where the notes between two octaves of the tonic lie
 * @param scale its notes
 * @param tonic the scale's first degree
 * @param range which notes stand at the ends, and how those between are spread
 * @param snapping how pitch is drawn to the scale
 * @param transpose semitones added to all, -48..48
 * @param trimCents cents added to all, -100..100
 * @param quickness whether the pitch hand is smoothed more or less than the room suggests
 */
public record Tuning(
        String name,
        ReferencePitch reference,
        Temperament temperament,
        Scale scale,
        Tonic tonic,
        PitchRange range,
        Snapping snapping,
        int transpose,
        double trimCents,
        Quickness quickness) {
    /** Farthest transposition either way, semitones. */
    public static final int MOST_TRANSPOSE = 48;

    /** Farthest trim either way, cents. */
    public static final double MOST_TRIM_CENTS = 100;

    /** Checks ranges. */
    public Tuning {
        if (name.isBlank()) {
            throw new IllegalArgumentException("tuning name '' (at least one character)");
        }
        if (transpose < -MOST_TRANSPOSE || transpose > MOST_TRANSPOSE) {
            throw new IllegalArgumentException("transposition of " + transpose + " semitones (-48..48)");
        }
        if (!(Math.abs(trimCents) <= MOST_TRIM_CENTS)) {
            throw new IllegalArgumentException("trim of " + trimCents + " cents (-100..100)");
        }
        // a range without a single note of the scale is refused here, not on stage
        ScaleLadder.of(scale, temperament, tonic, range);
    }

    /** A tuning smoothed as the room suggests. */
    public Tuning(
            String name,
            ReferencePitch reference,
            Temperament temperament,
            Scale scale,
            Tonic tonic,
            PitchRange range,
            Snapping snapping,
            int transpose,
            double trimCents) {
        this(name, reference, temperament, scale, tonic, range, snapping, transpose, trimCents, Quickness.USUAL);
    }

    /**
     * An even tuning in twelve-tone equal temperament.
     *
     * @param tonic pitch class of the scale's first degree, 0 = C
     */
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
        this(
                name,
                reference,
                EqualDivision.TWELVE,
                scale,
                Tonic.of(tonic),
                new PitchRange(lowKey, highKey, direction, 0),
                Snapping.of(snap),
                transpose,
                trimCents);
    }

    /** Two octaves from A3 to A5, chromatic and free. */
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

    /** Key at the low end, as it is named. */
    public int lowKey() {
        return range.lowKey();
    }

    /** Key at the high end, as it is named. */
    public int highKey() {
        return range.highKey();
    }

    /** Which end is high. */
    public Direction direction() {
        return range.direction();
    }

    /** How pitch is drawn to the scale. */
    public Snap snap() {
        return snapping.snap();
    }

    /** What the low end is called, before transposition. */
    public String lowName() {
        return Spelling.of(tonic, scale).name(range.lowKey());
    }

    /** What the high end is called, before transposition. */
    public String highName() {
        return Spelling.of(tonic, scale).name(range.highKey());
    }

    /** The same tuning by another name. */
    public Tuning named(String other) {
        return new Tuning(
                other, reference, temperament, scale, tonic, range, snapping, transpose, trimCents, quickness);
    }

    /** The same tuning over another range. */
    public Tuning with(PitchRange other) {
        return new Tuning(name, reference, temperament, scale, tonic, other, snapping, transpose, trimCents, quickness);
    }

    /** The same tuning over another range, spread as before. */
    public Tuning withRange(int low, int high) {
        return with(new PitchRange(low, high, range.direction(), range.warp()));
    }

    /** The same tuning with another warp. */
    public Tuning withWarp(double other) {
        return with(new PitchRange(range.lowKey(), range.highKey(), range.direction(), other));
    }

    /** The same tuning with another scale. */
    public Tuning withScale(Scale other) {
        return new Tuning(name, reference, temperament, other, tonic, range, snapping, transpose, trimCents, quickness);
    }

    /** The same tuning snapping otherwise. */
    public Tuning with(Snapping other) {
        return new Tuning(name, reference, temperament, scale, tonic, range, other, transpose, trimCents, quickness);
    }

    /** The same tuning snapping otherwise, at the usual strength. */
    public Tuning withSnap(Snap other) {
        return with(Snapping.of(other));
    }

    /** The same tuning transposed and trimmed otherwise. */
    public Tuning shifted(int semitones, double cents) {
        return new Tuning(name, reference, temperament, scale, tonic, range, snapping, semitones, cents, quickness);
    }

    /** The same tuning, smoothed more or less. */
    public Tuning with(Quickness other) {
        return new Tuning(name, reference, temperament, scale, tonic, range, snapping, transpose, trimCents, other);
    }

    /** The curve from place to key number, before transposition and trim. */
    public PitchCurve curve() {
        return new PitchCurve(
                ScaleLadder.tuned(scale, temperament, tonic, range.lowKey()),
                ScaleLadder.tuned(scale, temperament, tonic, range.highKey()),
                range.direction(),
                range.warp());
    }

    /** The scale's notes in the range, before transposition and trim. */
    public ScaleLadder ladder() {
        return ScaleLadder.of(scale, temperament, tonic, range);
    }

    /** What transposition and trim add, in key numbers. */
    public double shiftKeys() {
        return transpose + trimCents / ReferencePitch.CENTS_PER_KEY;
    }

    /** What the notes that sound are called: in the key of the scale, transposed. */
    public Spelling spelling() {
        return transpose % 12 == 0
                ? Spelling.of(tonic, scale)
                : Spelling.of(Math.floorMod(tonic.pitchClass() + transpose, 12), scale);
    }

    /**
     * What a note of {@link #ladder} is called as it sounds, with its octave. Where the notes are not the twelve usual
     * ones, cents off the nearest of them are added: {@code E4-50}.
     */
    public String noteName(ScaleLadder ladder, int note) {
        boolean usual = scale.isOfTheTwelve()
                && !(scale.isEveryNote() && temperament.allCents().size() != 12);
        return ladder.name(note, spelling(), usual ? transpose : shiftKeys(), !usual);
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
