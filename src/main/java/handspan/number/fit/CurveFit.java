package handspan.number.fit;

import java.util.List;
import java.util.Optional;

/**
 * Fits the parameters of any curve with the least sum of weighted squares (Levenberg-Marquardt). Bad data is a value:
 * {@link Failed} with the reason in words, never an exception.
 *
 * <p>Source: K. Levenberg, Quart. Appl. Math. 2 (1944) 164-168; D. W. Marquardt, SIAM J. Appl. Math. 11 (1963) 431-441;
 * in the form of J. J. More, Lecture Notes in Mathematics 630 (1978) 105-116, as the numerics library has it.
 */
public sealed interface CurveFit {
    /**
     * Fits points whose y are known with given standard uncertainties.
     *
     * @param model the curve
     * @param start a guess at the parameters, of the right size and sign if possible
     * @param x exactly known
     * @param y as many, at least as many as parameters
     * @param u standard uncertainty of each y, above 0
     */
    static CurveFit of(CurveModel model, double[] start, double[] x, double[] y, double[] u) {
        Optional<String> fault = Points.fault(x, y, u);
        return fault.isPresent()
                ? new Failed(fault.get())
                : CurveSearch.from(model, start, Points.withUncertainties(x, y, u), CurveSearch.MOST_EVALUATIONS);
    }

    /**
     * Fits points that all count alike. The uncertainty of y is taken from the scatter about the curve.
     *
     * @param model the curve
     * @param start a guess at the parameters, of the right size and sign if possible
     * @param x exactly known
     * @param y as many, more than parameters
     */
    static CurveFit equalWeights(CurveModel model, double[] start, double[] x, double[] y) {
        Optional<String> fault = Points.fault(x, y, Points.ones(y.length));
        return fault.isPresent()
                ? new Failed(fault.get())
                : CurveSearch.from(model, start, Points.alike(x, y), CurveSearch.MOST_EVALUATIONS);
    }

    /** What was found, or nothing. */
    Optional<Fitted> fitted();

    /** Why the search ended where it did, in words. */
    String reason();

    /**
     * Parameters were found.
     *
     * @param model the curve
     * @param parameters the best found
     * @param covarianceFromWeights {@code (J^T W J)^-1}: right as it stands where standard uncertainties of y were
     *     given
     * @param misfit what the curve leaves over
     * @param evaluations how often the curve was tried
     * @param converged whether what is left to gain is under a thousandth of the parameters' own uncertainty
     * @param reason why the search ended
     */
    record Fitted(
            CurveModel model,
            List<Double> parameters,
            Covariance covarianceFromWeights,
            Misfit misfit,
            int evaluations,
            boolean converged,
            String reason)
            implements CurveFit {
        /** Takes parameters that nobody changes. */
        public Fitted {
            parameters = List.copyOf(parameters);
            if (parameters.size() != covarianceFromWeights.size()) {
                throw new IllegalArgumentException(parameters.size() + " parameters, covariance of "
                        + covarianceFromWeights.size() + " (equal sizes)");
            }
        }

        @Override
        public Optional<Fitted> fitted() {
            return Optional.of(this);
        }

        /**
         * The covariance that applies: from the weights where standard uncertainties of y were given, from the scatter
         * where all points count alike.
         */
        public Covariance covariance() {
            return covarianceFromWeights.scaled(misfit.scale());
        }

        /**
         * The covariance scaled by the scatter, {@code s^2 (J^T W J)^-1}: for points that count alike, and for those
         * who give uncertainties but trust only their ratios.
         *
         * @return empty without a degree of freedom
         */
        public Optional<Covariance> covarianceFromScatter() {
            return misfit.scatter().isEmpty()
                    ? Optional.empty()
                    : Optional.of(covarianceFromWeights.scaled(misfit.scatter().getAsDouble()));
        }

        /**
         * A parameter with the standard uncertainty that applies.
         *
         * @param k from 0
         */
        public Estimate parameter(int k) {
            return new Estimate(parameters.get(k), covariance().standardUncertainty(k));
        }

        /** The curve at x, with the uncertainty of the curve alone (not that of a new reading there). */
        public Estimate at(double x) {
            double[] values =
                    parameters.stream().mapToDouble(Double::doubleValue).toArray();
            double[] derivatives = new double[values.length];
            model.gradient(x, values, derivatives);
            return new Estimate(model.value(x, values), covariance().standardUncertaintyOf(derivatives));
        }
    }

    /**
     * Nothing that could be used was found.
     *
     * @param reason in words, with what to do
     */
    record Failed(String reason) implements CurveFit {
        @Override
        public Optional<Fitted> fitted() {
            return Optional.empty();
        }
    }
}
