package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class RobustTest {
    private static final double TOLERANCE = 1e-9;

    private static final double NONE = 0;

    /** A worked example of the MAD method with median 149.5 and MAD 5.5. */
    private static final double[] WORKED = {145, 157, 183, 151, 143, 147, 153, 163, 130, 148};

    /** Seven values after Analytical Methods Committee, Technical Brief 6 (RSC 2001): median 5.2, MAD 0.7. */
    private static final double[] SEVEN = {4.5, 4.9, 5.6, 4.2, 6.2, 5.2, 9.9};

    @Test
    void medianAndDeviationAreThoseOfTheWorkedExamples() {
        assertEquals(149.5, Robust.median(WORKED), TOLERANCE);
        assertEquals(5.5, Robust.medianAbsoluteDeviation(WORKED, 149.5), TOLERANCE);
        assertEquals(5.2, Robust.median(SEVEN), TOLERANCE);
        assertEquals(0.7, Robust.medianAbsoluteDeviation(SEVEN, 5.2), TOLERANCE);
    }

    /** 8.154312202 and 1.037821553 are those deviations times 1.4826022, multiplied apart from this code. */
    @Test
    void scaledDeviationsAreThoseOfTheWorkedExamples() {
        assertEquals(8.154312202, Robust.MAD_TO_SD * Robust.medianAbsoluteDeviation(WORKED, 149.5), TOLERANCE);
        assertEquals(1.037821553, Robust.MAD_TO_SD * Robust.medianAbsoluteDeviation(SEVEN, 5.2), TOLERANCE);
    }

    /** {@code Phi(x) = (1 + erf(x / sqrt 2)) / 2}: at 1 / factor the normal distribution must reach three quarters. */
    @Test
    void theFactorMakesTheDeviationOfNormalDataTheirStandardDeviation() {
        double threeQuarters = 0.5 * (1 + Erf.erf(1 / Robust.MAD_TO_SD / Math.sqrt(2)));
        assertEquals(0.75, threeQuarters, 1e-12);
    }

    /** The Hampel identifier at three scales: F. R. Hampel 1974; its outliers are 183 and 9.9. */
    @Test
    void theOutliersOfTheWorkedExamplesAreRejectedAndNothingElse() {
        assertArrayEquals(
                new double[] {145, 157, 151, 143, 147, 153, 163, 130, 148}, Robust.withoutOutliers(WORKED, 3, 0), NONE);
        assertArrayEquals(new double[] {4.5, 4.9, 5.6, 4.2, 6.2, 5.2}, Robust.withoutOutliers(SEVEN, 3, 0), NONE);
    }

    /** 149.5 - 130 = 19.5 is 2.4 scales of 8.154; 183 is 4.1 scales away. */
    @Test
    void theLimitIsCountedInScales() {
        assertEquals(8, Robust.withoutOutliers(WORKED, 2.3, 0).length);
        assertEquals(9, Robust.withoutOutliers(WORKED, 2.5, 0).length);
        assertEquals(10, Robust.withoutOutliers(WORKED, 4.2, 0).length);
    }

    @Test
    void theScaleNeverFallsUnderItsFloor() {
        double[] mostlyEqual = {200, 200, 200, 200, 203, 212};
        assertArrayEquals(new double[] {200, 200, 200, 200}, Robust.withoutOutliers(mostlyEqual, 3, 0), NONE);
        assertArrayEquals(new double[] {200, 200, 200, 200, 203}, Robust.withoutOutliers(mostlyEqual, 3, 2), NONE);
    }

    @Test
    void theStepIsTheSmallestDifferenceBetweenTwoDifferentValues() {
        assertEquals(3, Robust.smallestStep(new double[] {203, 197, 200, 212, 197}), NONE);
        assertEquals(0.25, Robust.smallestStep(new double[] {-1, 0.5, 0.25, 4}), NONE);
        assertEquals(0, Robust.smallestStep(new double[] {7, 7, 7}), NONE);
        assertEquals(0, Robust.smallestStep(new double[] {}), NONE);
    }

    /** 0.1 + 0.2 and 0.3 are the same reading of a sensor, though not the same double. */
    @Test
    void roundingIsNoStep() {
        assertEquals(0.1, Robust.smallestStep(new double[] {0.1 + 0.2, 0.3, 0.4}), TOLERANCE);
    }

    @Test
    void noValuesHaveNoMedian() {
        assertThrows(IllegalArgumentException.class, () -> Robust.median(new double[] {}));
    }
}
