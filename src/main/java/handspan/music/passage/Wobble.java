package handspan.music.passage;

/**
 * How a pitch wobbles about its mean. Two of them can be put together, each about its own mean.
 *
 * @param count pitches, each as long as the others
 * @param sumSquares of the distances from their mean, cents squared
 */
public record Wobble(long count, double sumSquares) {
    /** Of nothing. */
    public static final Wobble NONE = new Wobble(0, 0);

    /** Of pitches, cents. */
    public static Wobble of(double[] cents) {
        double sum = 0;
        for (double each : cents) {
            sum += each;
        }
        double mean = sum / cents.length;
        double squares = 0;
        for (double each : cents) {
            squares += (each - mean) * (each - mean);
        }
        return new Wobble(cents.length, squares);
    }

    /** Both together. */
    public Wobble and(Wobble other) {
        return new Wobble(count + other.count, sumSquares + other.sumSquares);
    }

    /** Root of the mean square, cents; NaN of nothing. */
    public double rmsCents() {
        return Math.sqrt(sumSquares / count);
    }
}
