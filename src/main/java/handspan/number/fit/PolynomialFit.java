package handspan.number.fit;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.CombinatoricsUtils;

/**
 * The polynomial with the least sum of weighted squares, and what it is worth. Fitted in {@code t = (x - middle) /
 * halfSpan}, so that t runs from -1 to 1 and high powers stay apart. Not to be trusted beyond the outer points, and not
 * monotone: {@link MonotoneCurve}.
 *
 * @param middle of the outer x
 * @param halfSpan half the distance between the outer x
 * @param inT coefficients of the powers of t, from power 0
 * @param covarianceInT of those
 * @param misfit what the polynomial leaves over
 */
public record PolynomialFit(double middle, double halfSpan, List<Double> inT, Covariance covarianceInT, Misfit misfit) {
    /** The highest degree offered; beyond it a polynomial through readings swings between them. */
    public static final int HIGHEST_DEGREE = 5;

    /** Checks that sizes agree. */
    public PolynomialFit {
        inT = List.copyOf(inT);
        if (inT.size() != covarianceInT.size() || !(halfSpan > 0)) {
            throw new IllegalArgumentException(inT.size() + " coefficients, covariance of " + covarianceInT.size()
                    + ", half span " + halfSpan + " (equal sizes, span above 0)");
        }
    }

    /**
     * Fits points whose y are known with given standard uncertainties, which alone decide those of the polynomial.
     *
     * @param x exactly known, more different ones than the degree
     * @param y as many
     * @param u standard uncertainty of each y, above 0
     * @param degree 1..5
     */
    public static PolynomialFit of(double[] x, double[] y, double[] u, int degree) {
        return through(Points.withUncertainties(x, y, u), degree);
    }

    /**
     * Fits points that all count alike. The uncertainty of y is taken from the scatter about the polynomial.
     *
     * @param x exactly known, more different ones than the degree, at least two points more than the degree
     * @param y as many
     * @param degree 1..5
     */
    public static PolynomialFit equalWeights(double[] x, double[] y, int degree) {
        return through(Points.alike(x, y), degree);
    }

    private static PolynomialFit through(Points points, int degree) {
        check(points, degree);
        double low = Arrays.stream(points.x()).min().orElseThrow();
        double high = Arrays.stream(points.x()).max().orElseThrow();
        double middle = low + (high - low) / 2;
        double halfSpan = (high - low) / 2;
        double[][] equations = new double[points.count()][];
        double[] right = new double[points.count()];
        for (int i = 0; i < points.count(); i++) {
            double u = points.u(i);
            double[] row = powers((points.x(i) - middle) / halfSpan, degree);
            equations[i] = Arrays.stream(row).map(power -> power / u).toArray();
            right[i] = points.y(i) / u;
        }
        LinearSystem system = new LinearSystem(equations);
        if (!system.isSettled()) {
            throw new IllegalArgumentException("the x lie too close together for degree " + degree
                    + " (different x spread over the span): take a lower degree or spread the points");
        }
        double[] inT = system.solve(MatrixUtils.createRealVector(right)).toArray();
        Misfit misfit = Misfit.of(points, x -> value(inT, (x - middle) / halfSpan), degree + 1);
        List<Double> coefficients = Arrays.stream(inT).boxed().toList();
        return new PolynomialFit(
                middle, halfSpan, coefficients, system.covariance().scaled(misfit.scale()), misfit);
    }

    private static void check(Points points, int degree) {
        if (degree < 1 || degree > HIGHEST_DEGREE) {
            throw new IllegalArgumentException("degree " + degree + " (1.." + HIGHEST_DEGREE + ")");
        }
        int least = degree + (points.uncertaintiesKnown() ? 1 : 2);
        if (points.count() < least || points.differentX() <= degree) {
            throw new IllegalArgumentException(points.count() + " points, " + points.differentX()
                    + " different x, for degree " + degree + " (at least " + least + " points, " + (degree + 1)
                    + " different x): measure more points or take a lower degree");
        }
    }

    /** The highest power. */
    public int degree() {
        return inT.size() - 1;
    }

    /** Coefficients of the powers of x, from power 0. */
    public List<Double> coefficients() {
        double[] scaled = inT.stream().mapToDouble(Double::doubleValue).toArray();
        return Arrays.stream(toPowersOfX().operate(scaled)).boxed().toList();
    }

    /** Covariance of the coefficients of the powers of x. */
    public Covariance covariance() {
        return covarianceInT.mapped(toPowersOfX());
    }

    /** The polynomial at x, with the uncertainty of the polynomial alone (not that of a new reading there). */
    public Estimate at(double x) {
        double t = (x - middle) / halfSpan;
        double[] scaled = inT.stream().mapToDouble(Double::doubleValue).toArray();
        return new Estimate(value(scaled, t), covarianceInT.standardUncertaintyOf(powers(t, degree())));
    }

    /** By the binomial theorem: {@code t^j = sum over k of (j over k) x^k (-middle)^(j-k) / halfSpan^j}. */
    private RealMatrix toPowersOfX() {
        int size = inT.size();
        RealMatrix map = MatrixUtils.createRealMatrix(size, size);
        for (int k = 0; k < size; k++) {
            for (int j = k; j < size; j++) {
                map.setEntry(
                        k,
                        j,
                        CombinatoricsUtils.binomialCoefficientDouble(j, k)
                                * Math.pow(-middle, (double) j - k)
                                / Math.pow(halfSpan, j));
            }
        }
        return map;
    }

    private static double[] powers(double t, int degree) {
        double[] powers = new double[degree + 1];
        powers[0] = 1;
        for (int j = 1; j <= degree; j++) {
            powers[j] = powers[j - 1] * t;
        }
        return powers;
    }

    private static double value(double[] coefficients, double t) {
        double value = 0;
        for (int j = coefficients.length - 1; j >= 0; j--) {
            value = value * t + coefficients[j];
        }
        return value;
    }
}
