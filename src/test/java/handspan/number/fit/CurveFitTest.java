package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.fit.CurveFit.Fitted;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CurveFitTest {
    /** NIST certifies 11 figures; six are asked of a good program. */
    private static final double SIX_FIGURES = 1e-6;

    private static final double NINE_FIGURES = 1e-9;

    private static final CurveModel EXPONENTIAL = (x, p) -> p[0] * Math.exp(-p[1] * x);

    private static final CurveModel LINE = (x, p) -> p[0] + p[1] * x;

    /** The curves as NIST StRD, nonlinear regression, writes them, with b1 as p[0]. */
    private static final Map<String, CurveModel> CURVES = Map.ofEntries(
            Map.entry("Misra1a", (x, p) -> p[0] * (1 - Math.exp(-p[1] * x))),
            Map.entry("Misra1b", (x, p) -> p[0] * (1 - Math.pow(1 + p[1] * x / 2, -2))),
            Map.entry("Chwirut2", (x, p) -> Math.exp(-p[0] * x) / (p[1] + p[2] * x)),
            Map.entry("DanWood", (x, p) -> p[0] * Math.pow(x, p[1])),
            Map.entry("Gauss1", (x, p) -> p[0] * Math.exp(-p[1] * x) + bell(x, p, 2) + bell(x, p, 5)),
            Map.entry("Lanczos3", (x, p) -> decay(x, p, 0) + decay(x, p, 2) + decay(x, p, 4)),
            Map.entry("Kirby2", (x, p) -> (p[0] + x * (p[1] + x * p[2])) / (1 + x * (p[3] + x * p[4]))),
            Map.entry("MGH09", (x, p) -> p[0] * (x * x + x * p[1]) / (x * x + x * p[2] + p[3])),
            Map.entry("MGH10", (x, p) -> p[0] * Math.exp(p[1] / (x + p[2]))),
            Map.entry("Eckerle4", (x, p) -> p[0] / p[1] * Math.exp(-0.5 * Math.pow((x - p[2]) / p[1], 2))),
            Map.entry("Rat42", (x, p) -> p[0] / (1 + Math.exp(p[1] - p[2] * x))),
            Map.entry(
                    "Thurber",
                    (x, p) -> (p[0] + x * (p[1] + x * (p[2] + x * p[3]))) / (1 + x * (p[4] + x * (p[5] + x * p[6])))));

    private static CurveModel curve(String name) {
        return Objects.requireNonNull(CURVES.get(name), name);
    }

    private static double bell(double x, double[] p, int from) {
        return p[from] * Math.exp(-Math.pow((x - p[from + 1]) / p[from + 2], 2));
    }

    private static double decay(double x, double[] p, int from) {
        return p[from] * Math.exp(-p[from + 1] * x);
    }

    static Stream<Arguments> setsAndStarts() {
        return CURVES.keySet().stream()
                .sorted()
                .flatMap(name -> Stream.of(Arguments.of(name, 1), Arguments.of(name, 2)));
    }

    /** Start 1 is far from the solution on purpose, start 2 nearer. */
    @ParameterizedTest(name = "{0} from start {1}")
    @MethodSource("setsAndStarts")
    void theParametersAndTheirUncertaintiesAreTheCertifiedOnes(String name, int start) {
        NistFit set = NistFit.named("nist-curves.txt", name);
        double[] from = NistFit.array(set.starts().get(start - 1));
        Fitted fit = found(CurveFit.equalWeights(curve(name), from, set.xArray(), set.yArray()));
        assertTrue(fit.converged(), fit.reason());
        for (int k = 0; k < from.length; k++) {
            double certified = set.certified().get(k);
            double deviation = set.deviations().get(k);
            assertEquals(certified, fit.parameter(k).value(), SIX_FIGURES * Math.abs(certified), "b" + (k + 1));
            assertEquals(deviation, fit.parameter(k).standardUncertainty(), SIX_FIGURES * deviation, "b" + (k + 1));
        }
        double residual = set.residualDeviation();
        assertEquals(residual, fit.misfit().scatter().orElseThrow(), NINE_FIGURES * residual);
    }

    /** A line is a curve too: ISO/TS 28037:2010, 6.3, p. 15, by another way. */
    @Test
    void givenUncertaintiesDecideTheUnscaledCovarianceAsOfALine() {
        double[] x = {1, 2, 3, 4, 5, 6};
        double[] y = {3.2, 4.3, 7.6, 8.6, 11.7, 12.8};
        double[] u = {0.5, 0.5, 0.5, 1, 1, 1};
        Fitted fit = found(CurveFit.of(LINE, new double[] {0, 0}, x, y, u));
        assertEquals(0.885, fit.parameter(0).value(), 0.0005);
        assertEquals(0.530, fit.parameter(0).standardUncertainty(), 0.0005);
        assertEquals(2.057, fit.parameter(1).value(), 0.0005);
        assertEquals(0.178, fit.parameter(1).standardUncertainty(), 0.0005);
        assertEquals(-0.082, fit.covariance().of(0, 1), 0.0005);
        assertEquals(4.131, fit.misfit().sumOfSquares(), 0.0005);
        // scaled: times the square root of chi-square per degree of freedom, sqrt(4.1308 / 4)
        double scaled = fit.covarianceFromScatter().orElseThrow().standardUncertainty(1);
        assertEquals(0.177892 * Math.sqrt(4.130802 / 4), scaled, 1e-6);
        LineFit line = LineFit.of(x, y, u);
        assertEquals(line.at(8).value(), fit.at(8).value(), 1e-8);
        assertEquals(line.at(8).standardUncertainty(), fit.at(8).standardUncertainty(), 1e-8);
    }

    @Test
    void derivativesWrittenOutLeadToTheSamePlaceAsDifferences() {
        NistFit set = NistFit.named("nist-curves.txt", "Misra1a");
        CurveModel written = new CurveModel() {
            @Override
            public double value(double x, double[] p) {
                return p[0] * (1 - Math.exp(-p[1] * x));
            }

            @Override
            public void gradient(double x, double[] p, double[] derivatives) {
                derivatives[0] = 1 - Math.exp(-p[1] * x);
                derivatives[1] = p[0] * x * Math.exp(-p[1] * x);
            }
        };
        double[] start = NistFit.array(set.starts().get(1));
        Fitted byHand = found(CurveFit.equalWeights(written, start, set.xArray(), set.yArray()));
        Fitted byDifference = found(CurveFit.equalWeights(curve("Misra1a"), start, set.xArray(), set.yArray()));
        for (int k = 0; k < 2; k++) {
            double value = byHand.parameters().get(k);
            assertEquals(set.certified().get(k), value, NINE_FIGURES * Math.abs(value));
            assertEquals(value, byDifference.parameters().get(k), NINE_FIGURES * Math.abs(value));
        }
    }

    /** Three ruler holds and three parameters: {@code V = a + b / (d + k)}, with a = 0.1 V, b = 300 V mm, k = 20 mm. */
    @Test
    void asManyPointsAsParametersAreGoneThroughWhereTheirUncertaintyIsKnown() {
        CurveModel triangulation = (x, p) -> p[0] + p[1] / (x + p[2]);
        double[] distanceMm = {80, 180, 280};
        double[] volts = {3.1, 1.6, 1.1};
        double[] u = {0.02, 0.01, 0.01};
        Fitted fit = found(CurveFit.of(triangulation, new double[] {0, 200, 5}, distanceMm, volts, u));
        assertTrue(fit.converged(), fit.reason());
        assertEquals(0.1, fit.parameters().get(0), 1e-6);
        assertEquals(300, fit.parameters().get(1), 1e-3);
        assertEquals(20, fit.parameters().get(2), 1e-4);
        assertEquals(0.02, fit.at(80).standardUncertainty(), 1e-6);
        assertTrue(fit.covarianceFromScatter().isEmpty());
        assertReason(
                "3 points for 3 parameters (at least 4 points",
                CurveFit.equalWeights(triangulation, new double[] {0, 200, 5}, distanceMm, volts));
    }

    @Test
    void pointsThatLieOnTheCurveAreFoundWithoutScatter() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = Arrays.stream(x).map(each -> 5 * Math.exp(-0.25 * each)).toArray();
        Fitted fit = found(CurveFit.equalWeights(EXPONENTIAL, new double[] {1, 1}, x, y));
        assertTrue(fit.converged(), fit.reason());
        assertEquals(5, fit.parameters().get(0), 1e-9);
        assertEquals(0.25, fit.parameters().get(1), 1e-9);
    }

    /** The root has no value below p[0]: the first full step from 0.9 lands there. */
    @Test
    void theSearchKeepsAwayFromWhereTheCurveHasNoValue() {
        CurveModel root = (x, p) -> Math.sqrt(x - p[0]);
        double[] x = {1, 2, 3, 5, 9};
        double[] y = Arrays.stream(x)
                .map(each -> Math.sqrt(each - 0.95) + 0.001 * each)
                .toArray();
        Fitted fit = found(CurveFit.equalWeights(root, new double[] {-40}, x, y));
        assertTrue(fit.converged(), fit.reason());
        assertEquals(0.95, fit.parameters().get(0), 0.02);
    }

    /** MGH10 from start 1 takes some 290 evaluations. */
    @Test
    void aSearchCutShortSaysThatItHasNotConverged() {
        NistFit set = NistFit.named("nist-curves.txt", "MGH10");
        double[] start = NistFit.array(set.starts().get(0));
        Points points = Points.alike(set.xArray(), set.yArray());
        Fitted cut = found(CurveSearch.from(curve("MGH10"), start, points, 40));
        assertFalse(cut.converged());
        assertReason("not converged: stopped after 40 evaluations", cut);
        assertEquals(40, cut.evaluations());
    }

    @Test
    void whatThePointsDoNotSettleIsNamed() {
        double[] x = {1, 2, 3, 4};
        double[] y = {2, 4, 5, 9};
        assertReason(
                "do not settle parameter 3",
                CurveFit.equalWeights((at, p) -> p[0] + p[1] * at, new double[] {1, 1, 1}, x, y));
        assertReason(
                "do not settle parameter",
                CurveFit.equalWeights((at, p) -> p[0] + p[1] + at, new double[] {1, 2}, x, y));
    }

    /** The larger the parameter the better, without end. */
    @Test
    void aSearchThatRunsOffDoesNotClaimToHaveConverged() {
        double[] x = {1, 2, 3, 4};
        CurveFit fit = CurveFit.equalWeights((at, p) -> Math.exp(-p[0]), new double[] {1}, x, new double[4]);
        assertReason("not converged", fit);
    }

    @Test
    void badDataAreAnAnswerInWordsNotAnException() {
        double[] start = {1, 1};
        double[] three = {1, 2, 3};
        assertReason(
                "point 2 is (2.0, NaN)", CurveFit.equalWeights(LINE, start, three, new double[] {1, Double.NaN, 2}));
        assertReason("3 x, 2 y", CurveFit.equalWeights(LINE, start, three, start));
        assertReason("point 1 is -1.0 (above 0)", CurveFit.of(LINE, start, three, three, new double[] {-1, 1, 1}));
        assertReason("2 points for 2 parameters", CurveFit.equalWeights(LINE, start, start, start));
        assertReason("1 points for 2 parameters", CurveFit.of(LINE, start, one(), one(), one()));
        assertReason("for 0 parameters", CurveFit.equalWeights((x, p) -> x, new double[0], three, three));
        assertReason("start parameters", CurveFit.equalWeights(LINE, new double[] {1, 1 / 0.0}, three, three));
        assertReason(
                "the curve is NaN at x = 1.0",
                CurveFit.equalWeights((x, p) -> Math.log(x - p[0]) * p[1], new double[] {2, 1}, three, three));
        CurveFit failed = CurveFit.equalWeights(LINE, start, start, start);
        assertTrue(failed.fitted().isEmpty());
    }

    private static double[] one() {
        return new double[] {1};
    }

    private static Fitted found(CurveFit fit) {
        return fit.fitted().orElseThrow(() -> new AssertionError(fit.reason()));
    }

    private static void assertReason(String words, CurveFit fit) {
        assertTrue(fit.reason().contains(words), fit.reason());
    }
}
