package handspan.music.send;

/**
 * A straight line from the values of this program to those a receiver wants: {@code to = toLow + (from - fromLow) /
 * (fromHigh - fromLow) * (toHigh - toLow)}. {@code toLow} above {@code toHigh} turns it round.
 *
 * @param fromLow sent as {@code toLow}
 * @param fromHigh sent as {@code toHigh}, not equal to {@code fromLow}
 * @param toLow see {@code fromLow}
 * @param toHigh see {@code fromHigh}
 * @param clip whether nothing beyond {@code toLow} and {@code toHigh} is sent
 */
public record Scaling(double fromLow, double fromHigh, double toLow, double toHigh, boolean clip) {
    /** As it is. */
    public static final Scaling NONE = new Scaling(0, 1, 0, 1, false);

    private static final double MOST = 1e9;

    /** Checks ranges. */
    public Scaling {
        for (double bound : new double[] {fromLow, fromHigh, toLow, toHigh}) {
            if (!(Math.abs(bound) <= MOST)) {
                throw new IllegalArgumentException("scaling bound " + bound + " (-1e9..1e9)");
            }
        }
        if (fromLow == fromHigh) {
            throw new IllegalArgumentException("scaling from " + fromLow + " to " + fromHigh
                    + " (two different values): say which range of values is stretched");
        }
    }

    /** The value as it is sent. */
    public double of(double value) {
        if (equals(NONE)) {
            return value;
        }
        double scaled = toLow + (value - fromLow) / (fromHigh - fromLow) * (toHigh - toLow);
        return clip ? Math.max(Math.min(toLow, toHigh), Math.min(Math.max(toLow, toHigh), scaled)) : scaled;
    }
}
