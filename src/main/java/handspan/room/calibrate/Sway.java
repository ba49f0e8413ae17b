package handspan.room.calibrate;

import handspan.number.fit.Robust;
import handspan.number.fit.TheilSen;
import java.util.Arrays;

/**
 * How a hand moved during a stretch of readings.
 *
 * @param driftPerS slope of the straight line through the readings that wild ones can't carry off (Theil-Sen), physical
 *     unit a second
 * @param drift what that makes over the whole stretch, 0 or more
 * @param swing from the lowest to the highest median of the three thirds: sees a hand that turns back too
 */
record Sway(double driftPerS, double drift, double swing) {
    /** Pairs grow with the square: more readings are put together in blocks, each with its median. */
    private static final int MOST_BLOCKS = 48;

    /**
     * Measures a stretch.
     *
     * @param seconds times of the readings, rising
     * @param readings as many, at least 3
     */
    static Sway of(double[] seconds, double[] readings) {
        int third = Math.max(1, readings.length / 3);
        double first = median(readings, 0, third);
        double mid = median(readings, third, readings.length - third);
        double last = median(readings, readings.length - third, readings.length);
        double swing = Math.max(first, Math.max(mid, last)) - Math.min(first, Math.min(mid, last));
        double span = seconds[seconds.length - 1] - seconds[0];
        if (!(span > 0)) {
            return new Sway(0, 0, swing);
        }
        int blocks = Math.min(MOST_BLOCKS, readings.length);
        double[] x = new double[blocks];
        double[] y = new double[blocks];
        for (int i = 0; i < blocks; i++) {
            int from = i * readings.length / blocks;
            int to = (i + 1) * readings.length / blocks;
            x[i] = median(seconds, from, to);
            y[i] = median(readings, from, to);
        }
        boolean oneTime = Arrays.stream(x).distinct().count() < 2;
        double slope = oneTime ? 0 : TheilSen.of(x, y).slope();
        return new Sway(slope, Math.abs(slope) * span, swing);
    }

    private static double median(double[] values, int from, int to) {
        return Robust.median(Arrays.copyOfRange(values, from, to));
    }
}
