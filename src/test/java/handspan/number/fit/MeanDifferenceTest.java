package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MeanDifferenceTest {
    private static final double ROUNDING = 1e-9;

    /**
     * By hand: means 2 and 6, variances 1 and 4, r(1) = 0 in both, so that three values are worth three. u^2 = 1/3 +
     * 4/3 = 5/3; degrees of freedom (5/3)^2 / ((1/3)^2/2 + (4/3)^2/2) = 2.7778 / 0.9444 = 2.941.
     */
    @Test
    void differenceAndUncertaintyAreThoseWorkedOutByHand() {
        MeanDifference difference = MeanDifference.welch(new double[] {1, 2, 3}, new double[] {4, 6, 8})
                .orElseThrow();
        assertEquals(-4, difference.value(), ROUNDING);
        assertEquals(Math.sqrt(5 / 3.0), difference.standardUncertainty(), ROUNDING);
        assertEquals(2.941, difference.degreesOfFreedom(), 0.001);
    }

    /**
     * By hand: differences 1, 2, 3: mean 2, u = 1 / sqrt 3, 2 degrees of freedom; t(95 %, 2) = 4.303 (GUM, table G.2).
     */
    @Test
    void pairsCountTheirDifferences() {
        MeanDifference difference = MeanDifference.paired(new double[] {11, 22, 33}, new double[] {10, 20, 30})
                .orElseThrow();
        assertEquals(2, difference.value(), ROUNDING);
        assertEquals(4.303 / Math.sqrt(3), difference.expanded(0.95), 0.001);
        assertFalse(difference.isBeyondChance(0.95));
    }

    @Test
    void equalPairsAreNoDifference() {
        MeanDifference difference = MeanDifference.paired(new double[] {1, 5, 2}, new double[] {1, 5, 2})
                .orElseThrow();
        assertFalse(difference.isBeyondChance(0.95));
    }

    @Test
    void twoValuesTellNothing() {
        double[] two = {1, 2};
        double[] three = {1, 2, 3};
        assertTrue(MeanDifference.welch(two, three).isEmpty());
        assertTrue(MeanDifference.paired(two, two).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> MeanDifference.paired(two, three));
    }

    /** What the interval promises: nothing found in 95 of 100; 2,000 trials have a standard deviation of 0.5 %. */
    @Test
    void seriesOfOneMeanDifferBeyondChanceAsSeldomAsStated() {
        Random random = new Random(11);
        int found = 0;
        for (int trial = 0; trial < 2000; trial++) {
            double[] first = random.doubles(12).map(it -> random.nextGaussian()).toArray();
            double[] second =
                    random.doubles(8).map(it -> 3 * random.nextGaussian()).toArray();
            found += MeanDifference.welch(first, second).orElseThrow().isBeyondChance(0.95) ? 1 : 0;
        }
        assertTrue(found <= 0.065 * 2000, found + " of 2000");
        assertTrue(found >= 0.02 * 2000, found + " of 2000");
    }
}
