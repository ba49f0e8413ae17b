package handspan.number.fit;

/** A curve with parameters to be found by {@link CurveFit}. */
@FunctionalInterface
public interface CurveModel {
    /**
     * The curve at x.
     *
     * @param parameters not to be changed
     * @return not finite where the curve has no value; the search then keeps away
     */
    double value(double x, double[] parameters);

    /**
     * Derivative of the value by each parameter. By itself central differences, good to about ten figures for
     * parameters of a size above 1e-4; smaller ones deserve a unit of their own or derivatives written out. Step after
     * J. E. Dennis, R. B. Schnabel, Numerical Methods for Unconstrained Optimization, 1983, 5.4: cube root of the
     * machine's precision, times the size of the parameter (from memory).
     *
     * @param parameters not to be changed
     * @param derivatives to be filled, as long as the parameters
     */
    default void gradient(double x, double[] parameters, double[] derivatives) {
        double[] moved = parameters.clone();
        for (int k = 0; k < moved.length; k++) {
            double step = Math.cbrt(Math.ulp(1.0)) * Math.max(Math.abs(parameters[k]), 1e-4);
            double above = parameters[k] + step;
            double below = parameters[k] - step;
            moved[k] = above;
            double high = value(x, moved);
            moved[k] = below;
            double low = value(x, moved);
            moved[k] = parameters[k];
            derivatives[k] = (high - low) / (above - below);
        }
    }
}
