package handspan.number.fit;

import org.hipparchus.stat.StatUtils;

/** How far neighbouring values of a series repeat one another, and how many independent values the series is worth. */
public final class Autocorrelation {
    private Autocorrelation() {}

    /**
     * Autocorrelation about the mean: {@code r(k) = sum (x(i)-m)(x(i+k)-m) / sum (x(i)-m)^2}. Source: NIST/SEMATECH
     * e-Handbook of Statistical Methods, section 1.3.5.12.
     *
     * @param values evenly spaced in time
     * @param lag 0 or more, in values
     * @return -1..1; 0 for a constant series
     */
    public static double at(double[] values, int lag) {
        double[] centred = centred(values);
        double below = product(centred, 0);
        return below == 0 ? 0 : product(centred, lag) / below;
    }

    /**
     * Number of independent values with the same uncertainty of the mean: {@code n / (1 + 2 sum r(k))}, summed to the
     * first lag at which r falls to zero, at most n. Source: JCGM 100:2008 (GUM), 4.2.7 asks that correlated repeats be
     * treated so; the formula is common practice in time-series work (for example G. E. P. Box, G. M. Jenkins, Time
     * Series Analysis, from memory).
     *
     * @return 1..n
     */
    public static double effectiveSize(double[] values) {
        int n = values.length;
        double[] centred = centred(values);
        double below = product(centred, 0);
        double sum = 0;
        for (int lag = 1; lag < n && below > 0; lag++) {
            double r = product(centred, lag) / below;
            if (r <= 0) {
                break;
            }
            sum += r;
        }
        return Math.max(1, Math.min(n, n / (1 + 2 * sum)));
    }

    private static double[] centred(double[] values) {
        double mean = StatUtils.mean(values);
        double[] centred = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            centred[i] = values[i] - mean;
        }
        return centred;
    }

    private static double product(double[] centred, int lag) {
        double sum = 0;
        for (int i = lag; i < centred.length; i++) {
            sum += centred[i] * centred[i - lag];
        }
        return sum;
    }
}
