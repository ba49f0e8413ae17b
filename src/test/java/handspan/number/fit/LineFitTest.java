package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LineFitTest {
    private static final double[] ONE_TO_SIX = {1, 2, 3, 4, 5, 6};

    /** Half a unit of the last of three decimals, as printed. */
    private static final double PRINTED = 0.0005;

    /** NIST certifies 15 figures; nine are asked of a good program. */
    private static final double NINE_FIGURES = 1e-9;

    /** JCGM 100:2008 (GUM), H.3, table H.6: readings of a thermometer and corrections, in degrees Celsius. */
    private static final double[] THERMOMETER_C = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };

    private static final double[] CORRECTION_C = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    /** JCGM 100:2008 (GUM), H.3.3 and H.3.4; reference temperature 20 degrees. */
    @Test
    void theThermometerOfTheGuideGetsThePrintedCorrections() {
        double[] above20C = Arrays.stream(THERMOMETER_C).map(t -> t - 20).toArray();
        LineFit fit = LineFit.equalWeights(above20C, CORRECTION_C);
        assertEquals(-0.1712, fit.intercept().value(), 0.00005);
        assertEquals(0.0029, fit.intercept().standardUncertainty(), 0.00005);
        assertEquals(0.00218, fit.slope().value(), 0.000005);
        assertEquals(0.00067, fit.slope().standardUncertainty(), 0.000005);
        assertEquals(-0.930, fit.correlation(), PRINTED);
        assertEquals(0.0035, fit.misfit().scatter().orElseThrow(), 0.00005);
        assertEquals(9, fit.misfit().freedom());
        assertEquals(-0.1494, fit.at(10).value(), 0.00005);
        assertEquals(0.0041, fit.at(10).standardUncertainty(), 0.00005);
        // the same example to more figures, as another uncertainty library prints it
        assertEquals(-0.17120379013135004, fit.intercept().value(), 1e-14);
        assertEquals(0.0021826977398872894, fit.slope().value(), 1e-15);
        assertEquals(0.000110096583109, fit.misfit().sumOfSquares(), 1e-15);
    }

    /** ISO/TS 28037:2010, 6.3, example on p. 13: equal uncertainties; then y measured as 10.5 with 0.5. */
    @Test
    void theExampleWithEqualUncertaintiesGetsThePublishedLineAndInverse() {
        double[] half = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
        LineFit fit = LineFit.of(ONE_TO_SIX, new double[] {3.3, 5.6, 7.1, 9.3, 10.7, 12.1}, half);
        assertLine(fit, 1.867, 0.465, 1.757, 0.120, -0.050, 1.665);
        Estimate inverse = fit.inverse(new Estimate(10.5, 0.5));
        assertEquals(4.913, inverse.value(), PRINTED);
        assertEquals(0.322, inverse.standardUncertainty(), PRINTED);
    }

    /** ISO/TS 28037:2010, 6.3, example on p. 15: unequal uncertainties; then y measured as 10.5 with 1. */
    @Test
    void theExampleWithUnequalUncertaintiesGetsThePublishedLineAndInverse() {
        double[] unequal = {0.5, 0.5, 0.5, 1, 1, 1};
        LineFit fit = LineFit.of(ONE_TO_SIX, new double[] {3.2, 4.3, 7.6, 8.6, 11.7, 12.8}, unequal);
        assertLine(fit, 0.885, 0.530, 2.057, 0.178, -0.082, 4.131);
        // 4.67425641025641 and 0.533180902231294 in another uncertainty library
        Estimate inverse = fit.inverse(new Estimate(10.5, 1));
        assertEquals(4.67425641025641, inverse.value(), 1e-12);
        assertEquals(0.533180902231294, inverse.standardUncertainty(), 1e-12);
    }

    /** ISO/TS 28037:2010, annex E, pp. 58-59: uncertainties unknown. */
    @Test
    void theExampleWithUnknownUncertaintiesTakesThemFromTheScatter() {
        LineFit fit = LineFit.equalWeights(ONE_TO_SIX, new double[] {3.014, 5.225, 7.004, 9.061, 11.201, 12.762});
        assertLine(fit, 1.172, 0.159, 1.964, 0.041, -0.006, 0.1165);
    }

    private static void assertLine(
            LineFit fit, double a, double ua, double b, double ub, double covariance, double chiSquare) {
        assertEquals(a, fit.intercept().value(), PRINTED);
        assertEquals(ua, fit.intercept().standardUncertainty(), PRINTED);
        assertEquals(b, fit.slope().value(), PRINTED);
        assertEquals(ub, fit.slope().standardUncertainty(), PRINTED);
        assertEquals(covariance, fit.covariance(), PRINTED);
        assertEquals(chiSquare, fit.misfit().sumOfSquares(), PRINTED);
    }

    /** NIST StRD, set Norris. */
    @Test
    void norrisHasItsCertifiedLine() {
        NistFit norris = NistFit.named("nist-polynomials.txt", "Norris");
        LineFit fit = LineFit.equalWeights(norris.xArray(), norris.yArray());
        assertFigures(norris.certified().get(0), fit.intercept().value());
        assertFigures(norris.certified().get(1), fit.slope().value());
        assertFigures(norris.deviations().get(0), fit.intercept().standardUncertainty());
        assertFigures(norris.deviations().get(1), fit.slope().standardUncertainty());
        assertFigures(norris.residualDeviation(), fit.misfit().scatter().orElseThrow());
    }

    private static void assertFigures(double expected, double actual) {
        assertEquals(expected, actual, NINE_FIGURES * Math.abs(expected));
    }

    @Test
    void givenUncertaintiesDecideWhateverTheScatterAndAlikePointsAskTheScatter() {
        double[] wild = {3, 9, 2, 14, 4, 20};
        double[] calm = {3, 5, 7, 9, 11, 13.01};
        double[] u = {1, 1, 1, 1, 1, 1};
        double fromWeights = 1 / Math.sqrt(17.5); // sum of squares of 1..6 about 3.5
        assertEquals(fromWeights, LineFit.of(ONE_TO_SIX, wild, u).slope().standardUncertainty(), 1e-12);
        assertEquals(fromWeights, LineFit.of(ONE_TO_SIX, calm, u).slope().standardUncertainty(), 1e-12);
        assertTrue(LineFit.equalWeights(ONE_TO_SIX, wild).slope().standardUncertainty() > 1);
        assertTrue(LineFit.equalWeights(ONE_TO_SIX, calm).slope().standardUncertainty() < 0.01);
    }

    /** What a 95 % interval means; 4000 draws scatter by sqrt(0.95 0.05 / 4000) = 0.0034. */
    @Test
    void theIntervalFromTheScatterHoldsTheTruthAsOftenAsItSays() {
        Random random = new Random(21);
        double[] x = {80, 120, 200, 300};
        int held = 0;
        for (int draw = 0; draw < 4000; draw++) {
            double[] y = Arrays.stream(x)
                    .map(each -> 5 + 0.1 * each + random.nextGaussian())
                    .toArray();
            LineFit fit = LineFit.equalWeights(x, y);
            Estimate at = fit.at(250);
            double factor = StudentT.coverage(fit.misfit().freedom(), 0.95);
            held += Math.abs(at.value() - 30) <= factor * at.standardUncertainty() ? 1 : 0;
        }
        assertEquals(0.95, held / 4000.0, 4 * 0.0034);
    }

    @Test
    void twoPointsWithUncertaintiesMakeALineWithoutScatter() {
        LineFit fit = LineFit.of(new double[] {1, 3}, new double[] {10, 20}, new double[] {3, 4});
        assertEquals(5, fit.slope().value(), 1e-12);
        assertEquals(2.5, fit.slope().standardUncertainty(), 1e-12); // sqrt(3^2 + 4^2) / 2
        assertTrue(fit.misfit().scatter().isEmpty());
    }

    @Test
    void pointsThatMakeNoLineAreRefusedInWords() {
        assertRefused("2 points, 2 different x, for a line (at least 3 points", 1, 2);
        assertRefused("3 points, 1 different x", 7, 7, 7);
        assertRefused("point 2 is (NaN, 1.0)", 1, Double.NaN, 3);
        double[] two = {1, 2};
        double[] zero = {1, 0};
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(two, two, zero));
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(two, two, new double[] {1}));
        LineFit level = LineFit.of(two, new double[] {5, 5}, two);
        assertThrows(IllegalStateException.class, () -> level.inverse(new Estimate(5, 0)));
    }

    private static void assertRefused(String words, double... x) {
        double[] y = new double[x.length];
        Arrays.fill(y, 1);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> LineFit.equalWeights(x, y));
        assertTrue(refused.toString().contains(words), refused.toString());
    }
}
