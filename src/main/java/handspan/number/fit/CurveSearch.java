package handspan.number.fit;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** One search for the parameters of a curve: keeps the best that was tried, and judges it apart from the library. */
final class CurveSearch {
    static final int MOST_EVALUATIONS = 5000;

    /**
     * How much may be left to gain, against the scatter: 0.001. Source: D. M. Bates, D. G. Watts, A relative offset
     * orthogonality convergence criterion for nonlinear least squares, Technometrics 23 (1981) 179-183.
     */
    private static final double OFFSET = 0.001;

    /** Scatter against the size of y below which points lie on the curve as well as numbers can say. */
    private static final double ROUNDING = 1e-10;

    /** Stands for "no value here": its square is still finite, and no sum of squares of readings comes near it. */
    private static final double NOWHERE = 1e140;

    private final CurveModel model;
    private final Points points;
    private final LevenbergMarquardtOptimizer optimizer = new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-14)
            .withParameterRelativeTolerance(1e-12)
            .withOrthoTolerance(1e-14);

    private int evaluations;
    private double[] best;
    private double leastSquares = Double.POSITIVE_INFINITY;

    private CurveSearch(CurveModel model, double[] start, Points points) {
        this.model = model;
        this.points = points;
        this.best = start.clone();
    }

    static CurveFit from(CurveModel model, double[] start, Points points, int mostEvaluations) {
        int least = start.length + (points.uncertaintiesKnown() ? 0 : 1);
        if (start.length == 0 || points.count() < least) {
            return new CurveFit.Failed(points.count() + " points for " + start.length + " parameters (at least "
                    + Math.max(1, least) + " points, 1 parameter): measure more points");
        }
        if (!Arrays.stream(start).allMatch(Double::isFinite)) {
            return new CurveFit.Failed("start parameters " + Arrays.toString(start) + " (finite numbers)");
        }
        for (int i = 0; i < points.count(); i++) {
            double value = model.value(points.x(i), start.clone());
            if (!Double.isFinite(value)) {
                return new CurveFit.Failed("the curve is " + value + " at x = " + points.x(i)
                        + " with the start parameters (a finite number): start elsewhere");
            }
        }
        CurveSearch search = new CurveSearch(model, start, points);
        return search.judged(search.run(mostEvaluations));
    }

    /** Searches; the words say how that ended. */
    private String run(int mostEvaluations) {
        try {
            optimizer.optimize(new LeastSquaresBuilder()
                    .start(best)
                    .model(this::tried)
                    .target(new double[points.count()])
                    .maxEvaluations(mostEvaluations)
                    .maxIterations(mostEvaluations)
                    .build());
            return "no step gains any more";
        } catch (MathIllegalStateException end) {
            // also thrown where the tolerances above are finer than rounding allows: the judgement tells
            return end.getSpecifier() == LocalizedCoreFormats.MAX_COUNT_EXCEEDED
                    ? "stopped after " + mostEvaluations + " evaluations"
                    : "no step gains within rounding";
        }
    }

    /** Weighted distances from the points and their derivatives. */
    private Pair<RealVector, RealMatrix> tried(RealVector vector) {
        double[] parameters = vector.toArray();
        double[] distances = distances(parameters);
        double sum = Arrays.stream(distances).map(each -> each * each).sum();
        evaluations++;
        if (sum < leastSquares) {
            leastSquares = sum;
            best = parameters;
        }
        return new Pair<>(new ArrayRealVector(distances, false), MatrixUtils.createRealMatrix(slopes(parameters)));
    }

    private double[] distances(double[] parameters) {
        double[] distances = new double[points.count()];
        for (int i = 0; i < distances.length; i++) {
            double value = model.value(points.x(i), parameters);
            double distance = (value - points.y(i)) / points.u(i);
            distances[i] = Math.abs(distance) < NOWHERE ? distance : NOWHERE;
        }
        return distances;
    }

    private double[][] slopes(double[] parameters) {
        double[][] slopes = new double[points.count()][parameters.length];
        for (int i = 0; i < slopes.length; i++) {
            model.gradient(points.x(i), parameters, slopes[i]);
            for (int k = 0; k < parameters.length; k++) {
                double slope = slopes[i][k] / points.u(i);
                slopes[i][k] = Double.isFinite(slope) ? slope : 0;
            }
        }
        return slopes;
    }

    private CurveFit judged(String end) {
        double[][] slopes = slopes(best);
        int empty = LinearSystem.emptyColumn(slopes);
        if (empty >= 0) {
            return unsettled(empty);
        }
        LinearSystem system = new LinearSystem(slopes);
        if (!system.isSettled()) {
            return unsettled(system.leastSettled());
        }
        double[] found = best;
        Misfit misfit = Misfit.of(points, x -> model.value(x, found), found.length);
        double left = system.reachable(MatrixUtils.createRealVector(distances(found))) / Math.sqrt(found.length);
        boolean converged = left <= OFFSET * Math.max(misfit.scatter().orElse(0), smallestScatter());
        List<Double> parameters = Arrays.stream(found).boxed().toList();
        return new CurveFit.Fitted(
                model,
                parameters,
                system.covariance(),
                misfit,
                evaluations,
                converged,
                converged ? "converged: " + end : "not converged: " + end + "; start elsewhere");
    }

    /** The scatter that is certainly meaningless: that of the known uncertainties, else that of rounding. */
    private double smallestScatter() {
        double square = Arrays.stream(points.y()).map(y -> y * y).average().orElse(0);
        return points.uncertaintiesKnown() ? 1 : ROUNDING * Math.sqrt(square);
    }

    private CurveFit unsettled(int parameter) {
        return new CurveFit.Failed("the points do not settle parameter " + (parameter + 1) + " (at "
                + Arrays.toString(best) + "): start elsewhere, spread the points or take a simpler curve");
    }
}
