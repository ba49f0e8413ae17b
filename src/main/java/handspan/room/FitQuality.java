package handspan.room;

import handspan.number.fit.MonotoneCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How well a response fits the ruler holds, or a pitch curve the notes, that it was made from.
 *
 * @param method in words, for example {@code parabola} or {@code monotone curve}
 * @param parameters how many were fitted
 * @param residuals one for each hold: x = mm by ruler, y = fitted minus ruler, mm
 * @param rmsMm root mean square of the residuals over what the fit left free, mm
 * @param leftOutMm rms error, mm, at which each inner hold is foretold by the others
 * @param widened factor by which the uncertainty is widened, because the holds scatter more than their own
 *     uncertainties explain; 1 = it is not
 * @param uncertainty standard uncertainty of the fit along the zone: x = mm, y = mm; at least 2 points, rising in x
 * @param coefficients what was fitted; empty for a curve through the holds
 */
public record FitQuality(
        String method,
        int parameters,
        List<MonotoneCurve.Point> residuals,
        double rmsMm,
        double leftOutMm,
        double widened,
        List<MonotoneCurve.Point> uncertainty,
        List<Coefficient> coefficients) {
    /**
     * One fitted parameter.
     *
     * @param name with its unit, for example {@code c1 mm/mm} or {@code k mm}
     * @param value of it
     * @param standardUncertainty of it, same unit
     */
    public record Coefficient(String name, double value, double standardUncertainty) {
        /** Checks that it is a number. */
        public Coefficient {
            if (!Double.isFinite(value) || !Double.isFinite(standardUncertainty) || !(standardUncertainty >= 0)) {
                throw new IllegalArgumentException("coefficient " + name + " of " + value + " +- " + standardUncertainty
                        + " (numbers, the uncertainty 0 or more)");
            }
        }
    }

    private static final int POINTS = 9;

    /** Copies the lists and checks them. */
    public FitQuality {
        residuals = List.copyOf(residuals);
        uncertainty = List.copyOf(uncertainty);
        coefficients = List.copyOf(coefficients);
        if (uncertainty.size() < 2) {
            throw new IllegalArgumentException(uncertainty.size() + " points of the fit's uncertainty (at least 2)");
        }
        for (MonotoneCurve.Point point : uncertainty) {
            if (!(point.y() >= 0) || !Double.isFinite(point.x() + point.y())) {
                throw new IllegalArgumentException(
                        "fit uncertainty of " + point.y() + " mm at " + point.x() + " mm (0 or more)");
            }
        }
        if (!(widened >= 1) || !Double.isFinite(widened)) {
            throw new IllegalArgumentException("fit uncertainty widened by " + widened + " (1 or more)");
        }
        if (!(rmsMm >= 0) || !(leftOutMm >= 0)) {
            throw new IllegalArgumentException("fit residuals of " + rmsMm + " and " + leftOutMm + " mm (0 or more)");
        }
    }

    /** A fit without coefficients that mean something by themselves. */
    public FitQuality(
            String method,
            int parameters,
            List<MonotoneCurve.Point> residuals,
            double rmsMm,
            double leftOutMm,
            double widened,
            List<MonotoneCurve.Point> uncertainty) {
        this(method, parameters, residuals, rmsMm, leftOutMm, widened, uncertainty, List.of());
    }

    /** Points along a zone at which an uncertainty is kept. */
    public static List<MonotoneCurve.Point> along(double fromMm, double toMm, DoubleUnaryOperator uncertaintyMm) {
        List<MonotoneCurve.Point> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double mm = fromMm + (toMm - fromMm) * i / (POINTS - 1);
            points.add(new MonotoneCurve.Point(mm, uncertaintyMm.applyAsDouble(mm)));
        }
        return points;
    }

    /** Whether a zone is the one that the holds spanned, and not one whose ends were held anew since. */
    public boolean spans(Zone zone) {
        return uncertainty.get(0).x() == zone.nearMm()
                && uncertainty.get(uncertainty.size() - 1).x() == zone.farMm();
    }

    /** Degrees of freedom of the uncertainty: what the holds left over where their scatter sets it, else infinite. */
    public double freedom() {
        return widened > 1 ? Math.max(1, residuals.size() - parameters) : Double.POSITIVE_INFINITY;
    }

    /** The hold that the fit meets worst. */
    public MonotoneCurve.Point worst() {
        return residuals.stream()
                .reduce((a, b) -> Math.abs(b.y()) > Math.abs(a.y()) ? b : a)
                .orElseThrow();
    }

    /** Standard uncertainty of the fit at a distance, mm: in a straight line between the points, level beyond them. */
    public double uncertaintyMm(double mm) {
        MonotoneCurve.Point first = uncertainty.get(0);
        if (mm <= first.x()) {
            return first.y();
        }
        for (int i = 1; i < uncertainty.size(); i++) {
            MonotoneCurve.Point left = uncertainty.get(i - 1);
            MonotoneCurve.Point right = uncertainty.get(i);
            if (mm <= right.x()) {
                return left.y() + (right.y() - left.y()) * (mm - left.x()) / (right.x() - left.x());
            }
        }
        return uncertainty.get(uncertainty.size() - 1).y();
    }
}
