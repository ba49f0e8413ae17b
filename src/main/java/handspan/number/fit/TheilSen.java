package handspan.number.fit;

import java.util.Arrays;
import java.util.Optional;

/**
 * A straight line that up to 29 % of wild points can't carry off: the median of the slopes of all pairs.
 *
 * <p>Source: H. Theil, Proc. Kon. Ned. Akad. v. Wetensch. A 53 (1950) 386-392; P. K. Sen, Estimates of the regression
 * coefficient based on Kendall's tau, JASA 63 (1968) 1379-1389.
 *
 * @param slope median slope of all pairs of different x
 * @param intercept median of {@code y - slope x} (half the points lie above the line; not the median of y less slope
 *     times the median of x, which others use)
 * @param slopeInterval that holds the true slope with at least the coverage asked for; empty where so few points (under
 *     5 for 95 %) cannot vouch for one
 */
public record TheilSen(double slope, double intercept, Optional<Interval> slopeInterval) {
    /** Pairs grow with the square of the points: 3000 make 4.5 million. */
    public static final int MOST_POINTS = 3000;

    /** The coverage of {@link #of(double[], double[])}. */
    public static final double USUAL_COVERAGE01 = 0.95;

    /**
     * From one value to another, both included.
     *
     * @param low not above high
     * @param high not below low
     */
    public record Interval(double low, double high) {
        /** Checks the order. */
        public Interval {
            if (!(low <= high)) {
                throw new IllegalArgumentException("from " + low + " to " + high + " (rising)");
            }
        }
    }

    /**
     * The line with the interval that holds the true slope in 95 % of cases or more.
     *
     * @param x at least two different
     * @param y as many
     */
    public static TheilSen of(double[] x, double[] y) {
        return of(x, y, USUAL_COVERAGE01);
    }

    /**
     * The line with an interval of the coverage asked for.
     *
     * @param x at least two different
     * @param y as many
     * @param coverage01 above 0, under 1
     */
    public static TheilSen of(double[] x, double[] y, double coverage01) {
        Points points = Points.alike(x, y);
        if (points.differentX() < 2 || points.count() > MOST_POINTS) {
            throw new IllegalArgumentException(points.count() + " points, " + points.differentX()
                    + " different x (at least 2 different, at most " + MOST_POINTS + " points)");
        }
        double[] slopes = sortedSlopes(x, y);
        double slope = Robust.median(slopes);
        double[] heights = new double[x.length];
        Arrays.setAll(heights, i -> y[i] - slope * x[i]);
        int rank = lowRank(x, slopes.length, coverage01);
        Optional<Interval> interval =
                rank < 1 ? Optional.empty() : Optional.of(new Interval(slopes[rank - 1], slopes[slopes.length - rank]));
        return new TheilSen(slope, Robust.median(heights), interval);
    }

    /** The line at x. */
    public double at(double x) {
        return intercept + slope * x;
    }

    private static double[] sortedSlopes(double[] x, double[] y) {
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        double[] sorted = Arrays.copyOf(slopes, count);
        Arrays.sort(sorted);
        return sorted;
    }

    /**
     * Which of N ordered slopes, from 1, begins the interval. The number of slopes below the true one is distributed as
     * {@code (N - S) / 2} with Kendall's S: mean {@code N / 2}, variance a quarter of {@code (n(n-1)(2n+5) - sum
     * t(t-1)(2t+5)) / 18} with t equal x in a tie. Normal approximation with half a count for continuity. Source: M. G.
     * Kendall, Rank Correlation Methods, 4th ed. 1970, chapter 4 and 3.4 on ties (from memory); Sen, as above, section
     * 5.
     */
    private static int lowRank(double[] x, int slopes, double coverage01) {
        double[] sorted = x.clone();
        Arrays.sort(sorted);
        double variance = kendall(x.length);
        int tied = 1;
        for (int i = 1; i <= sorted.length; i++) {
            if (i < sorted.length && sorted[i] == sorted[i - 1]) {
                tied++;
            } else {
                variance -= kendall(tied);
                tied = 1;
            }
        }
        return (int) Math.floor(0.5 * (slopes - Normal.coverage(coverage01) * Math.sqrt(variance)) + 0.5);
    }

    private static double kendall(int n) {
        return n * (n - 1.0) * (2.0 * n + 5) / 18;
    }
}
