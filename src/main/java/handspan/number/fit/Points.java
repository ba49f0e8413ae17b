package handspan.number.fit;

import java.util.Arrays;
import java.util.Optional;

/**
 * Checked points with the standard uncertainty of each y. Where those are not known all count alike: 1, and their size
 * is taken from the scatter about the fit.
 */
final class Points {
    private final double[] x;
    private final double[] y;
    private final double[] u;
    private final boolean uncertaintiesKnown;

    private Points(double[] x, double[] y, double[] u, boolean uncertaintiesKnown) {
        fault(x, y, u).ifPresent(fault -> {
            throw new IllegalArgumentException(fault);
        });
        this.x = x.clone();
        this.y = y.clone();
        this.u = u.clone();
        this.uncertaintiesKnown = uncertaintiesKnown;
    }

    /** Points with known uncertainties. */
    static Points withUncertainties(double[] x, double[] y, double[] u) {
        return new Points(x, y, u, true);
    }

    /** Points that all count alike. */
    static Points alike(double[] x, double[] y) {
        return new Points(x, y, ones(y.length), false);
    }

    /** What is wrong with points, in words; empty when nothing is. */
    static Optional<String> fault(double[] x, double[] y, double[] u) {
        if (x.length != y.length || x.length != u.length) {
            return Optional.of(x.length + " x, " + y.length + " y, " + u.length + " uncertainties (as many of each)");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                return Optional.of("point " + (i + 1) + " is (" + x[i] + ", " + y[i] + ") (finite numbers)");
            }
            if (!(u[i] > 0 && Double.isFinite(u[i]))) {
                return Optional.of("standard uncertainty of point " + (i + 1) + " is " + u[i] + " (above 0)");
            }
        }
        return Optional.empty();
    }

    static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    int count() {
        return x.length;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    double u(int i) {
        return u[i];
    }

    double[] x() {
        return x.clone();
    }

    double[] y() {
        return y.clone();
    }

    int differentX() {
        return (int) Arrays.stream(x).distinct().count();
    }

    /** The weights {@code 1 / u^2}. */
    double[] weights() {
        return Arrays.stream(u).map(each -> 1 / (each * each)).toArray();
    }

    boolean uncertaintiesKnown() {
        return uncertaintiesKnown;
    }
}
