package handspan.number.fit;

import org.hipparchus.stat.StatUtils;

/**
 * How much readings of something held still scatter.
 *
 * @param deviation standard deviation of one reading after rejection of outliers, never under {@code step / sqrt(12)}
 * @param white fast part: rms of successive differences over sqrt(2); what drift and a wandering hand leave alone. The
 *     readings must be distinct updates of the sensor: see {@link SensorUpdates}
 * @param step the step in which the sensor counts; 0 when all readings were equal
 * @param median of the readings kept
 * @param mean of the readings kept
 * @param kept how many were kept
 * @param rejected how many were rejected as outliers (Hampel identifier at 3 scales, common practice)
 */
public record Noise(double deviation, double white, double step, double median, double mean, int kept, int rejected) {
    private static final double LIMIT = 3;

    /** 95 % of normal values lie below this many standard deviations (any table of the normal distribution). */
    private static final double ONE_IN_TWENTY = 1.645;

    /** More than this share away from a median that most readings hit exactly are steps of the sensor, not outliers. */
    private static final double MOST_OUTLIERS01 = 0.05;

    /**
     * Measures readings in the order they came.
     *
     * @param readings at least 2
     */
    public static Noise of(double[] readings) {
        return of(readings, 0);
    }

    /**
     * Measures readings of a sensor whose step has been seen before: a wild reading among equal ones can't pose as a
     * step then.
     *
     * @param readings at least 2
     * @param knownStep the step in which the sensor counts; 0 when it is not known
     */
    public static Noise of(double[] readings, double knownStep) {
        double step = step(readings, knownStep);
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

    /**
     * Slow part of the scatter, which the fast part is deaf to: hand wander or drift, {@code sqrt(deviation^2 -
     * white^2)}; 0 where it can't be told from chance. Of n independent normal readings the share {@code white^2 /
     * deviation^2} scatters by {@code sqrt((n-2) / (n^2-1))} about 1 (J. von Neumann, Ann. Math. Statist. 12 (1941)
     * 367-395, half his ratio; from memory); chance ends at 1.645 of these, one side in twenty.
     */
    public double slow() {
        double fast = Math.max(white, step / Math.sqrt(12));
        double slowSquared = deviation * deviation - fast * fast;
        double chance = kept < 3 ? 1 : ONE_IN_TWENTY * Math.sqrt((kept - 2.0) / ((double) kept * kept - 1));
        return slowSquared > chance * deviation * deviation ? Math.sqrt(slowSquared) : 0;
    }

    /** The step that these readings show, or the known one where it is finer or they show none. */
    static double step(double[] readings, double knownStep) {
        double seen = Robust.smallestStep(readings);
        if (knownStep <= 0) {
            return seen;
        }
        return seen > 0 ? Math.min(seen, knownStep) : knownStep;
    }

    /** The readings that the rejection keeps, in their order. */
    static double[] keptOf(double[] readings, double step) {
        if (readings.length < 2) {
            throw new IllegalArgumentException(readings.length + " readings (at least 2): hold still for longer");
        }
        double deviation = Robust.medianAbsoluteDeviation(readings, Robust.median(readings));
        double[] close = Robust.withoutOutliers(readings, LIMIT, step / Math.sqrt(12));
        if (deviation == 0 && readings.length - close.length <= MOST_OUTLIERS01 * readings.length) {
            return close;
        }
        // each distance from the median hides up to half a step: the neighbouring steps are no outliers
        return Robust.withoutOutliers(readings, LIMIT, Robust.MAD_TO_SD * (deviation + step / 2));
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
