package handspan.number.fit;

/**
 * A value and how well it is known.
 *
 * @param value finite
 * @param standardUncertainty in the unit of the value, 0 or more (JCGM 100:2008 (GUM), 2.3.1)
 */
public record Estimate(double value, double standardUncertainty) {
    /** Checks that both are finite. */
    public Estimate {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0 && Double.isFinite(standardUncertainty))) {
            throw new IllegalArgumentException(
                    value + " with standard uncertainty " + standardUncertainty + " (finite, not under 0)");
        }
    }
}
