package handspan.number.fit;

import org.hipparchus.stat.StatUtils;

/**
 * Location and scale that a few wild values can't move.
 *
 * <p>Sources: F. R. Hampel, The influence curve and its role in robust estimation, JASA 69 (1974) 383-393; L. Davies
 * and U. Gather, The identification of multiple outliers, JASA 88 (1993) 782-792.
 */
public final class Robust {
    /** Makes the median absolute deviation of normal data their standard deviation: {@code 1 / Phi^-1(3/4)}. */
    public static final double MAD_TO_SD = 1.482602218505602;

    private Robust() {}

    /**
     * The middle value; of an even count the mean of the middle two.
     *
     * @param values at least one
     */
    public static double median(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("median of 0 values (at least 1)");
        }
        return StatUtils.percentile(values, 50);
    }

    /**
     * Median absolute deviation from a centre, unscaled.
     *
     * @param values at least one
     * @param centre usually the median, in the unit of the values
     */
    public static double medianAbsoluteDeviation(double[] values, double centre) {
        double[] distances = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            distances[i] = Math.abs(values[i] - centre);
        }
        return median(distances);
    }

    /**
     * The Hampel identifier: values within {@code limit} scales of the median stay. The scale is the median absolute
     * deviation times {@link #MAD_TO_SD}, never under {@code scaleFloor}.
     *
     * @param values at least one
     * @param limit in scales, for example 3
     * @param scaleFloor in the unit of the values; for values in steps, {@code step / sqrt(12)}
     * @return those that stay, in their order
     */
    public static double[] withoutOutliers(double[] values, double limit, double scaleFloor) {
        double centre = median(values);
        double scale = Math.max(MAD_TO_SD * medianAbsoluteDeviation(values, centre), scaleFloor);
        double[] kept = new double[values.length];
        int count = 0;
        for (double value : values) {
            if (Math.abs(value - centre) <= limit * scale) {
                kept[count++] = value;
            }
        }
        return java.util.Arrays.copyOf(kept, count);
    }

    /**
     * The smallest difference between two different values: the step in which a sensor counts.
     *
     * @return 0 when all values are equal
     */
    public static double smallestStep(double[] values) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        double step = Double.POSITIVE_INFINITY;
        double tiny = sorted.length == 0 ? 0 : 1e-9 * Math.max(1e-6, Math.abs(sorted[sorted.length - 1]));
        for (int i = 1; i < sorted.length; i++) {
            double gap = sorted[i] - sorted[i - 1];
            if (gap > tiny && gap < step) {
                step = gap;
            }
        }
        return Double.isInfinite(step) ? 0 : step;
    }
}
