package handspan.number.fit;

import org.hipparchus.stat.StatUtils;

/**
 * How much readings of something held still scatter.
 *
 * @param deviation standard deviation of one reading after rejection of outliers, never under {@code step / sqrt(12)}
 * @param white fast part: rms of successive differences over sqrt(2); what drift and a wandering hand leave alone
 * @param step the step in which the sensor counts; 0 when all readings were equal
 * @param median of the readings kept
 * @param mean of the readings kept
 * @param kept how many were kept
 * @param rejected how many were rejected as outliers (Hampel identifier at 3 scales, common practice)
 */
public record Noise(double deviation, double white, double step, double median, double mean, int kept, int rejected) {
    private static final double LIMIT = 3;

    /**
     * Measures readings in the order they came.
     *
     * @param readings at least 2
     */
    public static Noise of(double[] readings) {
        double step = Robust.smallestStep(readings);
        double[] kept = keptOf(readings, step);
        double floor = step / Math.sqrt(12);
        double deviation = kept.length < 2 ? 0 : Math.sqrt(StatUtils.variance(kept));
        return new Noise(
                Math.max(deviation, floor),
                white(kept),
                step,
                Robust.median(kept),
                StatUtils.mean(kept),
                kept.length,
                readings.length - kept.length);
    }

    /** The readings that the rejection keeps, in their order. */
    static double[] keptOf(double[] readings, double step) {
        if (readings.length < 2) {
            throw new IllegalArgumentException(readings.length + " readings (at least 2): hold still for longer");
        }
        return Robust.withoutOutliers(readings, LIMIT, step / Math.sqrt(12));
    }

    private static double white(double[] values) {
        double sum = 0;
        for (int i = 1; i < values.length; i++) {
            double difference = values[i] - values[i - 1];
            sum += difference * difference;
        }
        return values.length < 2 ? 0 : Math.sqrt(sum / (values.length - 1) / 2);
    }
}
