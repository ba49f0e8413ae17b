package handspan.number.fit;

import java.util.List;

/**
 * A smooth curve through points that never turns back between them, with its inverse. Beyond the outer points it goes
 * on straight. Two points make a line.
 *
 * <p>Piecewise cubic Hermite interpolation with slopes limited so that each piece is monotone. Source: F. N. Fritsch
 * and R. E. Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980) 238-246; slopes by the
 * weighted harmonic mean of F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304.
 */
public final class MonotoneCurve {
    /**
     * A point of the curve.
     *
     * @param x finite
     * @param y finite
     */
    public record Point(double x, double y) {}

    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCurve(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.slope = slopes(x, y);
    }

    /**
     * The curve through points.
     *
     * @param points 2 or more; x must be strictly rising, or strictly falling, all along
     */
    public static MonotoneCurve through(List<Point> points) {
        int n = points.size();
        if (n < 2) {
            throw new IllegalArgumentException(n + " points (at least 2)");
        }
        boolean falling = points.get(1).x() < points.get(0).x();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            Point point = points.get(falling ? n - 1 - i : i);
            x[i] = point.x();
            y[i] = point.y();
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i]) || (i > 0 && x[i] <= x[i - 1])) {
                throw new IllegalArgumentException(
                        "point " + (i + 1) + " (" + x[i] + ", " + y[i] + "): x must run one way, without repeats");
            }
        }
        return new MonotoneCurve(x, y);
    }

    /** The curve's value. */
    public double at(double position) {
        int n = x.length;
        if (position <= x[0]) {
            return y[0] + slope[0] * (position - x[0]);
        }
        if (position >= x[n - 1]) {
            return y[n - 1] + slope[n - 1] * (position - x[n - 1]);
        }
        int i = 0;
        while (position > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (position - x[i]) / h;
        double s = 1 - t;
        return y[i] * (1 + 2 * t) * s * s
                + y[i + 1] * t * t * (3 - 2 * t)
                + h * slope[i] * t * s * s
                - h * slope[i + 1] * t * t * s;
    }

    /** Whether y rises or falls strictly all along, so that the inverse exists. */
    public boolean isInvertible() {
        boolean rising = y[1] > y[0];
        for (int i = 1; i < y.length; i++) {
            if (y[i] == y[i - 1] || y[i] > y[i - 1] != rising) {
                return false;
            }
        }
        return true;
    }

    /**
     * Where the curve has a value.
     *
     * @return the position, to 1e-10 of the span of x
     */
    public double inverse(double value) {
        if (!isInvertible()) {
            throw new IllegalStateException("a curve that turns back has no inverse");
        }
        int n = x.length;
        boolean rising = y[n - 1] > y[0];
        if (rising ? value <= y[0] : value >= y[0]) {
            return beyond(0, value);
        }
        if (rising ? value >= y[n - 1] : value <= y[n - 1]) {
            return beyond(n - 1, value);
        }
        double low = x[0];
        double high = x[n - 1];
        double tolerance = 1e-10 * (high - low);
        while (high - low > tolerance) {
            double middle = 0.5 * (low + high);
            if (at(middle) < value == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private double beyond(int end, double value) {
        return slope[end] == 0 ? x[end] : x[end] + (value - y[end]) / slope[end];
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] step = new double[n - 1];
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            step[i] = x[i + 1] - x[i];
            secant[i] = (y[i + 1] - y[i]) / step[i];
        }
        double[] slope = new double[n];
        if (n == 2) {
            slope[0] = secant[0];
            slope[1] = secant[0];
            return slope;
        }
        for (int i = 1; i < n - 1; i++) {
            if (secant[i - 1] * secant[i] > 0) {
                double left = 2 * step[i] + step[i - 1];
                double right = step[i] + 2 * step[i - 1];
                slope[i] = (left + right) / (left / secant[i - 1] + right / secant[i]);
            }
        }
        slope[0] = endSlope(step[0], step[1], secant[0], secant[1]);
        slope[n - 1] = endSlope(step[n - 2], step[n - 3], secant[n - 2], secant[n - 3]);
        return slope;
    }

    /** Three-point estimate at an end, held to the sign and to three times the secant of the outer piece. */
    private static double endSlope(double outer, double inner, double outerSecant, double innerSecant) {
        double slope = ((2 * outer + inner) * outerSecant - outer * innerSecant) / (outer + inner);
        if (slope * outerSecant <= 0) {
            return 0;
        }
        return outerSecant * innerSecant <= 0 && Math.abs(slope) > 3 * Math.abs(outerSecant) ? 3 * outerSecant : slope;
    }
}
