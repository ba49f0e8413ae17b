package handspan.number.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.stat.StatUtils;

/**
 * How much means of a series differ from the means that follow them, for longer and longer means: white noise falls
 * with averaging, drift grows. Overlapping estimate.
 *
 * <p>Source: W. J. Riley, D. A. Howe, Handbook of Frequency Stability Analysis, NIST Special Publication 1065 (2008),
 * 5.2.4; the readings take the place of its fractional frequencies.
 */
public final class AllanDeviation {
    /** A floor is looked for among means of which the series holds at least so many that do not overlap. */
    private static final int MEANS_AT_LEAST = 9;

    /**
     * One averaging time.
     *
     * @param readings in a mean
     * @param tauS the time these take
     * @param deviation Allan deviation, in the unit of the readings
     * @param count how many differences it rests on; they overlap, so it is worth fewer
     */
    public record Point(int readings, double tauS, double deviation, int count) {}

    private final double intervalS;

    /** Sums of the readings before each, less their mean. */
    private final double[] sums;

    private AllanDeviation(double[] sums, double intervalS) {
        this.sums = sums;
        this.intervalS = intervalS;
    }

    /**
     * Prepares a series.
     *
     * @param values evenly spaced in time, at least 3, of something that should not change
     * @param intervalS from one to the next, above 0
     */
    public static AllanDeviation of(double[] values, double intervalS) {
        if (values.length < 3 || !(intervalS > 0 && Double.isFinite(intervalS))) {
            throw new IllegalArgumentException(
                    values.length + " readings every " + intervalS + " s (at least 3, above 0 s): record for longer");
        }
        double mean = StatUtils.mean(values);
        double[] sums = new double[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException("reading " + (i + 1) + " is " + values[i] + " (a finite number)");
            }
            sums[i + 1] = sums[i] + (values[i] - mean);
        }
        return new AllanDeviation(sums, intervalS);
    }

    /** Averaging times of 1, 2, 4, 8 ... readings, as long as the series holds two such means. */
    public List<Point> octaves() {
        List<Point> octaves = new ArrayList<>();
        for (int readings = 1; readings <= longest(); readings *= 2) {
            octaves.add(at(readings));
        }
        return octaves;
    }

    /**
     * The deviation of means of m readings: {@code sqrt(1 / (2 m^2 (n-2m+1)) sum (sum of m - sum of the m before)^2)}.
     *
     * @param readings m in a mean, 1 to half of all
     */
    public Point at(int readings) {
        if (readings < 1 || readings > longest()) {
            throw new IllegalArgumentException("means of " + readings + " readings (1.." + longest()
                    + ", half of the series): record for longer or take shorter means");
        }
        int count = sums.length - 2 * readings;
        double squares = 0;
        for (int i = 0; i < count; i++) {
            double step = sums[i + 2 * readings] - 2 * sums[i + readings] + sums[i];
            squares += step * step;
        }
        double deviation = Math.sqrt(squares / (2.0 * count)) / readings;
        return new Point(readings, readings * intervalS, deviation, count);
    }

    /**
     * White part: the deviation of single readings, whose successive differences drift leaves alone. Means of m
     * readings would scatter by this over sqrt(m) if nothing else were there.
     */
    public double white() {
        return at(1).deviation();
    }

    /**
     * What means over a time scatter beyond white noise, from one to the next: {@code sqrt(A^2(m) - white^2 / m)}, 0
     * where white noise explains all. For a steady drift of D a second it is {@code D tau / sqrt(2)} (NIST SP 1065,
     * 5.2.4 and table of noise types, from memory). A chance figure where the series holds only a few such means.
     *
     * @param seconds length of a mean, at least one interval, at most half of the series
     */
    public double driftOver(double seconds) {
        Point point = at((int) Math.rint(seconds / intervalS));
        double white = white();
        return Math.sqrt(Math.max(0, point.deviation() * point.deviation() - white * white / point.readings()));
    }

    /**
     * The octave at which means differ least: averaging longer gains nothing (flicker floor) or loses (drift). Only
     * octaves of which the series holds 9 means count, the first excepted.
     */
    public Point floor() {
        return octaves().stream()
                .filter(point -> point.readings() == 1 || (sums.length - 1) / point.readings() >= MEANS_AT_LEAST)
                .min(Comparator.comparingDouble(Point::deviation))
                .orElseThrow();
    }

    private int longest() {
        return (sums.length - 1) / 2;
    }
}
