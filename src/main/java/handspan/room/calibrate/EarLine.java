package handspan.room.calibrate;

import handspan.music.tuning.PitchCurve;
import handspan.number.fit.CurveFit;
import handspan.number.fit.CurveModel;
import handspan.number.fit.Estimate;
import handspan.number.fit.PolynomialFit;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Key number over distance, fitted to notes that were held by ear: a straight line, or the pitch curve's own warp.
 *
 * @param at key number at a distance in mm, with its standard uncertainty
 * @param warpPerMm warp for a mm of zone; 0 for the line
 * @param parameters how many were fitted
 * @param widened by what factor the uncertainty is widened because the holds scatter more than they should
 */
record EarLine(DoubleFunction<Estimate> at, double warpPerMm, int parameters, double widened) {
    private static final double STRAIGHT = 1e-6;
    private static final double FIRST_WARP = 0.1;
    private static final int MOST_STEPS = 50;
    private static final double LONGEST_STEP_MM = 50;

    /** A straight line through notes. */
    static EarLine straight(double[] mm, double[] keys, double[] uKeys) {
        PolynomialFit fit = PolynomialFit.of(mm, keys, uKeys, 1);
        return new EarLine(fit::at, 0, 2, Math.max(1, fit.misfit().scatter().orElse(1)));
    }

    /**
     * A warped curve through notes.
     *
     * @return empty where the search finds none, or one that bends more than a tuning may
     */
    static Optional<EarLine> warped(double[] mm, double[] keys, double[] uKeys) {
        double from = mm[0];
        double length = mm[mm.length - 1] - mm[0];
        CurveModel model = (at, p) -> p[0] + p[1] * warped((at - from) / length, p[2]);
        double[] start = {keys[0], keys[keys.length - 1] - keys[0], FIRST_WARP};
        return CurveFit.of(model, start, mm, keys, uKeys)
                .fitted()
                .filter(CurveFit.Fitted::converged)
                .filter(fit -> Math.abs(fit.parameters().get(2)) <= PitchCurve.MOST_WARP)
                .map(fit -> new EarLine(
                        fit::at,
                        fit.parameters().get(2) / length,
                        start.length,
                        Math.max(1, fit.misfit().scatter().orElse(1))));
    }

    private static double warped(double place, double warp) {
        return Math.abs(warp) < STRAIGHT ? place : Math.expm1(warp * place) / Math.expm1(warp);
    }

    String method() {
        return parameters == 2 ? "straight line by ear" : "warped curve by ear";
    }

    /** Key number at a distance. */
    double key(double mm) {
        return at.apply(mm).value();
    }

    /** Keys for a mm, without sign. */
    double keysPerMm(double mm) {
        return Math.abs(key(mm + 1) - key(mm - 1)) / 2;
    }

    /** Standard uncertainty of the key number at a distance. */
    double uncertaintyKeys(double mm) {
        return widened * at.apply(mm).standardUncertainty();
    }

    /** Where the curve has a key, by the secant method from a place nearby: the curve is smooth and steep. */
    double mmOf(double key, double nearMm) {
        double mm = nearMm;
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = (key - key(mm)) / (key(mm + 0.5) - key(mm - 0.5));
            mm += Math.max(-LONGEST_STEP_MM, Math.min(LONGEST_STEP_MM, step));
            if (Math.abs(step) < 1e-9) {
                break;
            }
        }
        return mm;
    }
}
