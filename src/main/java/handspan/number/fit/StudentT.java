package handspan.number.fit;

import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t distribution: coverage factors where the uncertainty itself rests on few readings. */
public final class StudentT {
    /** From here on two terms of the expansion are right to sixteen figures, and the library to fewer. */
    private static final double EXPANDED_FROM = 1e6;

    private static final double PRECISION = 1e-13;

    private StudentT() {}

    /**
     * How many standard uncertainties on both sides hold a share: 2.26 for 95 % and 9 degrees of freedom. Source: JCGM
     * 100:2008 (GUM), G.3.4 and table G.2; from a million degrees of freedom {@code z + (z^3 + z) / (4 dof)}, M.
     * Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, 26.7.5.
     *
     * @param degreesOfFreedom above 0, whole or not; infinite for the normal distribution
     * @param probability01 above 0, under 1
     */
    public static double coverage(double degreesOfFreedom, double probability01) {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degrees of freedom " + degreesOfFreedom + " (above 0): take more readings");
        }
        double z = Normal.coverage(probability01);
        return degreesOfFreedom >= EXPANDED_FROM
                ? z + (z * z * z + z) / (4 * degreesOfFreedom)
                : new TDistribution(degreesOfFreedom, PRECISION).inverseCumulativeProbability(0.5 + probability01 / 2);
    }
}
