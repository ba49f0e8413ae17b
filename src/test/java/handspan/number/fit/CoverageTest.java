package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Normal and Student distributions, effective degrees of freedom. */
class CoverageTest {
    private static final double EIGHT_FIGURES = 1e-8;

    /**
     * Two decimals as in JCGM 100:2008 (GUM), table G.2 (from memory); the long figures from SciPy 1.17.1, which
     * agrees. 95.45 % is what two standard deviations of a normal distribution hold.
     */
    @ParameterizedTest(name = "{0} degrees of freedom")
    @CsvSource({
        "1, 12.71, 12.70620474, 13.97, 13.96781149",
        "3, 3.18, 3.182446305, 3.31, 3.306829921",
        "5, 2.57, 2.570581836, 2.65, 2.648654254",
        "9, 2.26, 2.262157163, 2.32, 2.319809441",
        "15, 2.13, 2.131449546, 2.18, 2.181165682",
        "30, 2.04, 2.042272456, 2.09, 2.086847054"
    })
    void studentFactorsAreThoseOfTheGuide(int dof, double table95, double long95, double table9545, double long9545) {
        assertEquals(table95, StudentT.coverage(dof, 0.95), 0.005);
        assertEquals(long95, StudentT.coverage(dof, 0.95), EIGHT_FIGURES * long95);
        assertEquals(table9545, StudentT.coverage(dof, 0.9545), 0.005);
        assertEquals(long9545, StudentT.coverage(dof, 0.9545), EIGHT_FIGURES * long9545);
    }

    /** SciPy 1.17.1. Broken degrees of freedom come from the Welch-Satterthwaite formula. */
    @ParameterizedTest(name = "{0} degrees of freedom")
    @CsvSource({
        "2.5, 3.5746548420036817",
        "16.7, 2.1127064206595905",
        "9e5, 1.9599666203954605",
        "1e6, 1.959966356814107",
        "1e9, 1.959963986912325",
        "Infinity, 1.959963984540054"
    })
    void studentFactorsOfAnyFreedomRunIntoTheNormalOnes(double dof, double factor) {
        assertEquals(factor, StudentT.coverage(dof, 0.95), EIGHT_FIGURES * factor);
    }

    /** E. W. Weisstein, CRC Concise Encyclopedia of Mathematics, 1999, confidence interval: share to range. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"0.8, 1.28155", "0.9, 1.64485", "0.95, 1.95996", "0.995, 2.80703"})
    void normalFactorsAreThePublishedOnes(double probability, double factor) {
        assertEquals(factor, Normal.coverage(probability), 0.00001);
    }

    /** The same encyclopedia, range to share within (7 decimals, cut off); M. Abramowitz, I. A. Stegun, table 26.1. */
    @ParameterizedTest(name = "{0} standard deviations")
    @CsvSource({"1, 0.6826895", "2, 0.9544997", "3, 0.9973002", "2.575829304, 0.99", "0.6744897502, 0.5"})
    void whatLiesOutsideOnBothSidesIsThePublishedRest(double z, double within) {
        assertEquals(1 - within, 2 * Normal.upperTail(z), 1.01e-7);
        assertEquals(1, Normal.upperTail(z) + Normal.upperTail(-z), 1e-15);
    }

    /**
     * A pitch with a normal error leaves the cell of +-50 cents: {@code Q((50-b)/s) + Q((50+b)/s)}, with figures of
     * another erfc. Far out they still hold, to 1e-23.
     */
    @ParameterizedTest(name = "sd {0} cents, off by {1}")
    @CsvSource({
        "5, 0, 1.523970605e-23",
        "5, 10, 6.220960574e-16",
        "10, 0, 5.733031438e-07",
        "10, 10, 3.167222842e-05",
        "15, 0, 0.0008581206664",
        "15, 10, 0.003862051809",
        "20, 0, 0.01241933065",
        "20, 10, 0.02410002998",
        "25, 0, 0.0455002639",
        "25, 10, 0.06299682762"
    })
    void theChanceOfAWrongNoteIsTheSumOfTwoTails(double deviation, double bias, double chance) {
        double missed = Normal.upperTail((50 - bias) / deviation) + Normal.upperTail((50 + bias) / deviation);
        assertEquals(chance, missed, EIGHT_FIGURES * chance);
    }

    /**
     * JCGM 100:2008 (GUM), H.1: the end gauge. Contributions in nm with their degrees of freedom; printed 25.6 for the
     * comparator and 16.7 in all (those two from memory). The guide rounds on the way, hence 0.2.
     */
    @Test
    void theEndGaugeOfTheGuideHasItsEffectiveFreedom() {
        double comparator = EffectiveFreedom.of(new double[] {5.8, 3.9, 6.7}, new double[] {24, 5, 8});
        assertEquals(25.6, comparator, 0.2);
        double gauge =
                EffectiveFreedom.of(new double[] {25, 9.7, 2.88679, 16.599}, new double[] {18, comparator, 50, 2});
        assertEquals(16.7, gauge, 0.2);
    }

    /** k equal contributions of equal freedom are worth k times that freedom, by the formula. */
    @Test
    void equalContributionsAddTheirFreedomAndExactOnesHaveNoEnd() {
        assertEquals(12, EffectiveFreedom.of(new double[] {2, 2, 2}, new double[] {4, 4, 4}), 1e-12);
        double infinite = Double.POSITIVE_INFINITY;
        // (3^2 + 4^2)^2 / (3^4 / 5) = 625 / 16.2
        assertEquals(625 / 16.2, EffectiveFreedom.of(new double[] {3, 4}, new double[] {5, infinite}), 1e-12);
        assertEquals(infinite, EffectiveFreedom.of(new double[] {3, 0}, new double[] {infinite, 5}), 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void aFreedomThatIsNoneIsRefused(double dof) {
        assertThrows(IllegalArgumentException.class, () -> StudentT.coverage(dof, 0.95));
        assertThrows(IllegalArgumentException.class, () -> EffectiveFreedom.of(new double[] {1}, new double[] {dof}));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 95, Double.NaN})
    void aShareThatIsNoneIsRefused(double probability) {
        assertThrows(IllegalArgumentException.class, () -> Normal.coverage(probability));
        assertThrows(IllegalArgumentException.class, () -> StudentT.coverage(5, probability));
    }

    @Test
    void contributionsThatAreNoneAreRefused() {
        double[] none = {};
        double[] one = {1};
        assertThrows(IllegalArgumentException.class, () -> EffectiveFreedom.of(none, none));
        assertThrows(IllegalArgumentException.class, () -> EffectiveFreedom.of(one, none));
        assertThrows(IllegalArgumentException.class, () -> EffectiveFreedom.of(new double[] {-1}, one));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(1, -1));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 1));
    }
}
