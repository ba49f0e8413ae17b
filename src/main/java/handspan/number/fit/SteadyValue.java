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
     * Estimates from readings in the order they came. The median serves unless the step is larger than the noise, where
     * it jumps between two steps: then the mean of what the rejection keeps.
     *
     * @param readings at least 2, of something held still
     */
    public static SteadyValue of(double[] readings) {
        Noise noise = Noise.of(readings);
        double effective = Autocorrelation.effectiveSize(Noise.keptOf(readings, noise.step()));
        // at the floor step/sqrt(12) or near it the steps, not the noise, decide
        boolean coarse = noise.step() > noise.deviation();
        double spread = coarse ? 1 : MEDIAN_SPREAD;
        return new SteadyValue(
                coarse ? noise.mean() : noise.median(),
                spread * noise.deviation() / Math.sqrt(effective),
                noise,
                effective);
    }
}
