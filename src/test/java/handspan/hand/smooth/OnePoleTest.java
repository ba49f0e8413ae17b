package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OnePoleTest {
    private static final double EXACT = 1e-12;

    private static final double TOLERANCE_MM = 1e-9;

    /** {@code a = 1 / (1 + tau / T)}, {@code tau = 1 / (2 pi fc)}: worked out apart from this code. */
    @ParameterizedTest(name = "{0} Hz at {1} readings a second")
    @CsvSource({"1, 6.283185307179586, 0.5", "1, 120, 0.049754726", "5, 50, 0.385869545", "8, 18, 0.736323551"})
    void theShareIsThatOfItsFormula(double cutoffHz, double ratePerS, double share) {
        assertEquals(share, OnePole.share01(cutoffHz, 1 / ratePerS), 1e-9);
    }

    /** After n readings of a step the way left is (1 - a)^n: the geometric series. */
    @Test
    void aStepIsFollowedGeometrically() {
        OnePole pole = new OnePole();
        double share = OnePole.share01(4, 0.02);
        pole.next(100, 4, 0.02);
        for (int n = 1; n <= 60; n++) {
            assertEquals(300 - 200 * Math.pow(1 - share, n), pole.next(300, 4, 0.02), TOLERANCE_MM);
        }
    }

    /** With small steps the same filter in time: 1 - exp(-t / tau), whatever the rhythm of the readings. */
    @Test
    void unevenReadingsFollowTheSameCurveInTime() {
        OnePole pole = new OnePole();
        Random random = new Random(41);
        double tauS = 1 / (2 * Math.PI * 2);
        double timeS = 0;
        pole.next(0, 2, 1);
        while (timeS < 0.3) {
            double intervalS = 0.0001 + 0.0008 * random.nextDouble();
            timeS += intervalS;
            assertEquals(1 - Math.exp(-timeS / tauS), pole.next(1, 2, intervalS), 0.005);
        }
    }

    @Test
    void theFirstReadingAfterAResetIsTakenAsItIs() {
        OnePole pole = new OnePole();
        assertFalse(pole.hasValue());
        pole.next(100, 1, 0.02);
        assertEquals(100, pole.value(), EXACT);
        pole.next(200, 1, 0.02);
        assertTrue(pole.hasValue());
        pole.reset();
        assertFalse(pole.hasValue());
        assertEquals(420, pole.next(420, 1, 0.02), EXACT);
    }
}
