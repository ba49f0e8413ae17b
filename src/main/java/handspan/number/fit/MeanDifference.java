package handspan.number.fit;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.stat.StatUtils;

/**
 * How far the means of two series lie apart, and how well that is known.
 *
 * @param value mean of the first less that of the second
 * @param standardUncertainty in the unit of the values, 0 or more
 * @param degreesOfFreedom that the uncertainty rests on, above 0
 */
public record MeanDifference(double value, double standardUncertainty, double degreesOfFreedom) {
    private static final int FEWEST = 3;

    /**
     * Of two series that have nothing to do with each other: {@code u^2 = s1^2/n1 + s2^2/n2}, each with as many values
     * as it is worth after its autocorrelation, degrees of freedom by the Welch-Satterthwaite formula. Source: B. L.
     * Welch, The generalization of "Student's" problem when several different population variances are involved,
     * Biometrika 34 (1947) 28-35; NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.3 (unequal variances).
     *
     * @param first in the order of time
     * @param second in the order of time
     * @return empty where either has fewer than three values, or is worth fewer than two
     */
    public static Optional<MeanDifference> welch(double[] first, double[] second) {
        if (Math.min(first.length, second.length) < FEWEST) {
            return Optional.empty();
        }
        double firstSize = Autocorrelation.effectiveSize(first);
        double secondSize = Autocorrelation.effectiveSize(second);
        if (Math.min(firstSize, secondSize) < 2) {
            return Optional.empty();
        }
        double[] u = {
            Math.sqrt(StatUtils.variance(first) / firstSize), Math.sqrt(StatUtils.variance(second) / secondSize)
        };
        double[] dof = {firstSize - 1, secondSize - 1};
        return Optional.of(new MeanDifference(
                StatUtils.mean(first) - StatUtils.mean(second), Math.hypot(u[0], u[1]), EffectiveFreedom.of(u, dof)));
    }

    /**
     * Of two series whose values belong together one by one: the mean of their differences and its uncertainty.
     *
     * @return empty where there are fewer than three pairs, or they are worth fewer than two
     */
    public static Optional<MeanDifference> paired(double[] first, double[] second) {
        if (first.length != second.length) {
            throw new IllegalArgumentException(first.length + " and " + second.length + " values (as many of each)");
        }
        double[] differences = new double[first.length];
        Arrays.setAll(differences, i -> first[i] - second[i]);
        if (differences.length < FEWEST) {
            return Optional.empty();
        }
        double size = Autocorrelation.effectiveSize(differences);
        return size < 2
                ? Optional.empty()
                : Optional.of(new MeanDifference(
                        StatUtils.mean(differences), Math.sqrt(StatUtils.variance(differences) / size), size - 1));
    }

    /** Half the width of the interval that holds the true difference with a probability, above 0 and under 1. */
    public double expanded(double probability01) {
        return standardUncertainty == 0 ? 0 : StudentT.coverage(degreesOfFreedom, probability01) * standardUncertainty;
    }

    /** Whether it is larger than its own uncertainty at that probability. */
    public boolean isBeyondChance(double probability01) {
        return Math.abs(value) > expanded(probability01);
    }
}
