package handspan.music.passage;

/**
 * How far pitches lay off their notes, each as long as the others. Two of them can be put together.
 *
 * @param count pitches
 * @param sumCents of all errors, sharp ones positive
 * @param sumSquares of all errors, cents squared
 * @param within10 how many lay within 10 cents
 * @param within25 within 25 cents
 * @param within50 within 50 cents
 */
public record CentsOff(long count, double sumCents, double sumSquares, long within10, long within25, long within50) {
    /** Of nothing. */
    static final CentsOff NONE = new CentsOff(0, 0, 0, 0, 0, 0);

    private static final double NEAR_CENTS = 10;
    private static final double MIDDLE_CENTS = 25;
    private static final double FAR_CENTS = 50;

    /** Of one note. */
    static CentsOff of(double[] cents, double noteCents) {
        CentsOff off = NONE;
        for (double each : cents) {
            off = off.and(each - noteCents);
        }
        return off;
    }

    /** With one pitch more. */
    CentsOff and(double errorCents) {
        double away = Math.abs(errorCents);
        return new CentsOff(
                count + 1,
                sumCents + errorCents,
                sumSquares + errorCents * errorCents,
                within10 + (away <= NEAR_CENTS ? 1 : 0),
                within25 + (away <= MIDDLE_CENTS ? 1 : 0),
                within50 + (away <= FAR_CENTS ? 1 : 0));
    }

    /** Both together. */
    CentsOff and(CentsOff other) {
        return new CentsOff(
                count + other.count,
                sumCents + other.sumCents,
                sumSquares + other.sumSquares,
                within10 + other.within10,
                within25 + other.within25,
                within50 + other.within50);
    }

    /** Signed mean, sharp positive; NaN of nothing. */
    public double meanCents() {
        return sumCents / count;
    }

    /** Root of the mean square; NaN of nothing. */
    public double rmsCents() {
        return Math.sqrt(sumSquares / count);
    }

    /** Share within 10 cents; NaN of nothing. */
    public double within10Share01() {
        return (double) within10 / count;
    }

    /** Share within 25 cents; NaN of nothing. */
    public double within25Share01() {
        return (double) within25 / count;
    }

    /** Share within 50 cents; NaN of nothing. */
    public double within50Share01() {
        return (double) within50 / count;
    }
}
