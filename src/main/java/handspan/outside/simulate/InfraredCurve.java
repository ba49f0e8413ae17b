package handspan.outside.simulate;

/**
 * Output of a 10-80 cm infrared triangulation part against distance: the curve drawn in its data sheet, with the peak
 * at 60 mm and the branch under it on which the output falls again.
 *
 * <p>Points: data sheet E4-A00201EN (part GP2Y0A21YK0F), Fig. 2, output over distance, read from the drawing to 0.02 V
 * and 1 mm. Between them each branch is a monotone cubic with the slopes of M. Steffen, A simple method for monotonic
 * interpolation in one dimension, Astron. Astrophys. 239 (1990) 443-450, and with slope 0 at the peak; the far branch
 * is drawn over 1/d, on which it is nearly straight, and is carried on straight beyond 80 cm.
 */
final class InfraredCurve {
    private static final double PEAK_MM = 59.6;

    private static final double[] NEAR_MM = {1.4, 15, 25.7, 31.5, 39.2, 45.1, 48, 48.9, PEAK_MM};
    private static final double[] NEAR_VOLTS = {0.019, 0.82, 1.546, 1.942, 2.458, 2.816, 3.043, 3.09, 3.13};

    private static final double[] FAR_MM = {
        800.5, 701.1, 601.3, 501.5, 401.7, 301.9, 251.5, 201.1, 152.1, 100.8, 79.9, 69.3, PEAK_MM
    };
    private static final double[] FAR_VOLTS = {
        0.398, 0.439, 0.507, 0.61, 0.735, 0.925, 1.079, 1.306, 1.644, 2.304, 2.742, 2.978, 3.13
    };

    private static final Branch NEAR = new Branch(NEAR_MM, NEAR_VOLTS);
    private static final Branch FAR = new Branch(reciprocals(FAR_MM), FAR_VOLTS);

    private InfraredCurve() {}

    /**
     * Output over white paper at 5 V.
     *
     * @param mm distance, above 0
     * @return volts, 0 or more
     */
    static double volts(double mm) {
        return Math.max(0, mm < PEAK_MM ? NEAR.at(mm) : FAR.at(1 / mm));
    }

    /** What the far branch comes to at infinity: an empty view. */
    static double emptyVolts() {
        return FAR.at(0);
    }

    /** By how many volts the output changes with a mm, 0 or more, over 10 mm to either side. */
    static double voltsPerMm(double mm) {
        return Math.abs(volts(mm + 10) - volts(mm - 10)) / 20;
    }

    private static double[] reciprocals(double[] mm) {
        double[] perMm = new double[mm.length];
        for (int i = 0; i < mm.length; i++) {
            perMm[i] = 1 / mm[i];
        }
        return perMm;
    }

    /** A rising piece that ends level at the peak. */
    private static final class Branch {
        private final double[] x;
        private final double[] y;
        private final double[] slope;

        Branch(double[] x, double[] y) {
            this.x = x;
            this.y = y;
            slope = new double[x.length];
            slope[0] = secant(0);
            for (int i = 1; i < x.length - 1; i++) {
                double before = x[i] - x[i - 1];
                double after = x[i + 1] - x[i];
                double mean = (secant(i - 1) * after + secant(i) * before) / (before + after);
                slope[i] = 2 * Math.min(Math.min(secant(i - 1), secant(i)), mean / 2);
            }
        }

        /** Value at or before the peak. */
        double at(double position) {
            if (position <= x[0]) {
                return y[0] + slope[0] * (position - x[0]);
            }
            int i = 0;
            while (i < x.length - 2 && position > x[i + 1]) {
                i++;
            }
            double h = x[i + 1] - x[i];
            double t = position - x[i];
            double cubic = (slope[i] + slope[i + 1] - 2 * secant(i)) / (h * h);
            double square = (3 * secant(i) - 2 * slope[i] - slope[i + 1]) / h;
            return y[i] + t * (slope[i] + t * (square + t * cubic));
        }

        private double secant(int i) {
            return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
    }
}
