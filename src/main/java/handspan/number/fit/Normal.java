package handspan.number.fit;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;

/** The normal distribution with mean 0 and standard deviation 1. */
public final class Normal {
    private Normal() {}

    /**
     * Probability of more than z: {@code erfc(z / sqrt 2) / 2}. Source: M. Abramowitz, I. A. Stegun, Handbook of
     * Mathematical Functions, 1964, 26.2.3 and 7.1.2.
     *
     * @param z any number
     * @return 0..1, with full relative precision far out too
     */
    public static double upperTail(double z) {
        return 0.5 * Erf.erfc(z / Math.sqrt(2));
    }

    /**
     * How many standard deviations on both sides hold a share: 1.96 for 95 %. Source: JCGM 100:2008 (GUM), table G.1.
     *
     * @param probability01 above 0, under 1
     */
    public static double coverage(double probability01) {
        if (!(probability01 > 0 && probability01 < 1)) {
            throw new IllegalArgumentException("coverage " + probability01 + " (above 0, under 1; 0.95 is usual)");
        }
        return new NormalDistribution().inverseCumulativeProbability(0.5 + probability01 / 2);
    }
}
