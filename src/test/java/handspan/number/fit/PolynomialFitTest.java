package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PolynomialFitTest {
    /** NIST certifies 15 figures; nine are asked of a good program. */
    private static final double NINE_FIGURES = 1e-9;

    /** Voltages of an invented triangulation sensor over distance in mm. */
    private static final double[] DISTANCE_MM = {80, 110, 150, 200, 260, 330};

    private static final double[] VOLTS = {2.41, 1.86, 1.43, 1.12, 0.91, 0.74};

    private static final double[] VOLTS_UNCERTAINTY = {0.02, 0.02, 0.015, 0.015, 0.01, 0.01};

    /** NIST StRD; Wampler1 is exact, all its coefficients are 1 and its standard deviations 0. */
    @ParameterizedTest(name = "{0}, degree {1}")
    @CsvSource({"Norris, 1", "Pontius, 2", "Wampler1, 5"})
    void theCoefficientsAndTheirUncertaintiesAreTheCertifiedOnes(String name, int degree) {
        NistFit set = NistFit.named("nist-polynomials.txt", name);
        PolynomialFit fit = PolynomialFit.equalWeights(set.xArray(), set.yArray(), degree);
        for (int k = 0; k <= degree; k++) {
            double certified = set.certified().get(k);
            double deviation = set.deviations().get(k);
            assertEquals(certified, fit.coefficients().get(k), NINE_FIGURES * Math.abs(certified), "power " + k);
            assertEquals(
                    deviation,
                    fit.covariance().standardUncertainty(k),
                    NINE_FIGURES * (deviation == 0 ? 1 : deviation),
                    "power " + k);
        }
        double residual = set.residualDeviation();
        assertEquals(residual, fit.misfit().scatter().orElseThrow(), NINE_FIGURES * (residual == 0 ? 1 : residual));
    }

    /** Expected values: the normal equations solved in exact fractions, apart from this code. */
    @Test
    void unequalUncertaintiesWeighAsTheNormalEquationsSay() {
        PolynomialFit fit = PolynomialFit.of(DISTANCE_MM, VOLTS, VOLTS_UNCERTAINTY, 2);
        assertFigures(3.4820399741465042, fit.coefficients().get(0));
        assertFigures(-0.01710645156738618, fit.coefficients().get(1));
        assertFigures(2.688788184336174e-05, fit.coefficients().get(2));
        assertFigures(0.03981823893125477, fit.covariance().standardUncertainty(0));
        assertFigures(0.0003991273133393757, fit.covariance().standardUncertainty(1));
        assertFigures(9.050350190721236e-07, fit.covariance().standardUncertainty(2));
        assertFigures(-1.531412923685873e-05, fit.covariance().of(0, 1));
        assertFigures(-3.5632814479634245e-10, fit.covariance().of(2, 1));
        assertFigures(127.3973216089352, fit.misfit().sumOfSquares());
        assertFigures(1.274046063741912, fit.at(180).value());
        assertFigures(0.008309869342981986, fit.at(180).standardUncertainty());
    }

    private static void assertFigures(double expected, double actual) {
        assertEquals(expected, actual, NINE_FIGURES * Math.abs(expected));
    }

    @Test
    void degreeOneIsTheLine() {
        PolynomialFit polynomial = PolynomialFit.equalWeights(DISTANCE_MM, VOLTS, 1);
        LineFit line = LineFit.equalWeights(DISTANCE_MM, VOLTS);
        assertFigures(line.at(500).value(), polynomial.at(500).value());
        assertFigures(line.at(500).standardUncertainty(), polynomial.at(500).standardUncertainty());
        assertFigures(line.correlation(), polynomial.covariance().correlation(0, 1));
        assertEquals(1, polynomial.degree());
    }

    /** As many points as coefficients: the polynomial goes through them and is as uncertain there as they are. */
    @Test
    void withoutFreedomThePolynomialIsAsUncertainAtThePointsAsTheyAre() {
        PolynomialFit fit = PolynomialFit.of(DISTANCE_MM, VOLTS, VOLTS_UNCERTAINTY, 5);
        for (int i = 0; i < DISTANCE_MM.length; i++) {
            assertFigures(VOLTS[i], fit.at(DISTANCE_MM[i]).value());
            assertFigures(VOLTS_UNCERTAINTY[i], fit.at(DISTANCE_MM[i]).standardUncertainty());
        }
    }

    @Test
    void whatCanNotBeFittedIsRefusedInWords() {
        assertRefused("degree 6 (1..5)", 6, 1, 2, 3, 4, 5, 6, 7, 8);
        assertRefused("degree 0 (1..5)", 0, 1, 2, 3);
        assertRefused("3 points, 3 different x, for degree 2 (at least 4 points", 2, 1, 2, 3);
        assertRefused("4 points, 2 different x, for degree 2", 2, 1, 1, 2, 2);
        assertRefused("lie too close together", 3, 1, 1.0000000000001, 2, 2.0000000000001, 1);
    }

    private static void assertRefused(String words, int degree, double... x) {
        double[] y = new double[x.length];
        Arrays.setAll(y, i -> i);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> PolynomialFit.equalWeights(x, y, degree));
        assertTrue(refused.toString().contains(words), refused.toString());
    }
}
