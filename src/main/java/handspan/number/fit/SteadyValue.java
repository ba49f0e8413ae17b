package handspan.number.fit;

/**
 * What a stretch of readings of something held still is worth.
 *
 * @param value best estimate, in the unit of the readings
 * @param standardUncertainty of that estimate, same unit
 * @param noise scatter of single readings
 * @param effectiveCount independent readings these are worth, 1..{@code noise.kept()}
 */
public record SteadyValue(double value, double standardUncertainty, Noise noise, double effectiveCount) {
    /** The median of normal values scatters this many times as much as their mean: {@code sqrt(pi / 2)}. */
    private static final double MEDIAN_SPREAD = Math.sqrt(Math.PI / 2);

    /**
     * Estimates from readings in the order they came. The median serves where the steps of the sensor are fine against
     * its scatter; else it jumps from step to step, and the mean of what the rejection keeps is better.
     *
     * @param readings at least 2, of something held still
     */
    public static SteadyValue of(double[] readings) {
        return of(readings, 0);
    }

    /**
     * Estimates from readings of a sensor whose step has been seen before.
     *
     * @param readings at least 2, of something held still
     * @param knownStep the step in which the sensor counts; 0 when it is not known
     */
    public static SteadyValue of(double[] readings, double knownStep) {
        Noise noise = Noise.of(readings, knownStep);
        double effective = Autocorrelation.effectiveSize(Noise.keptOf(readings, noise.step()));
        double ofMean = noise.deviation() / Math.sqrt(effective);
        double ofMedian = MEDIAN_SPREAD * ofMean;
        double resolution = noise.step() / Math.sqrt(12);
        boolean coarse = noise.step() > noise.deviation() || resolution > ofMedian / 2;
        return new SteadyValue(
                coarse ? noise.mean() : noise.median(),
                coarse ? Math.hypot(ofMean, hidden(noise)) : ofMedian,
                noise,
                effective);
    }

    /**
     * What the mean of readings in steps q (above 0) can't see, because noise of standard deviation s does not carry
     * them from step to step: at most {@code q / sqrt(12) exp(-2 (pi s / q)^2)}. Source: B. Widrow, I. Kollar,
     * Quantization Noise, Cambridge 2008, moments of a quantized normal value (from memory); s by Sheppard's
     * correction.
     */
    private static double hidden(Noise noise) {
        double q = noise.step();
        double variance = Math.max(0, noise.deviation() * noise.deviation() - q * q / 12);
        return q / Math.sqrt(12) * Math.exp(-2 * Math.PI * Math.PI * variance / (q * q));
    }
}
