package handspan.show.chart;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** A run of values with their times, oldest first: what a chart of the last seconds draws. Immutable. */
public final class TimeRun {
    /** Times closer than this are the same, s. */
    private static final double SAME_S = 1e-6;

    private final double[] timesS;
    private final double[] values;
    private final byte[] kinds;

    /** Takes the arrays over. */
    TimeRun(double[] timesS, double[] values, byte[] kinds) {
        this.timesS = timesS;
        this.values = values;
        this.kinds = kinds;
    }

    /** How many. */
    public int size() {
        return timesS.length;
    }

    /** When, s; 0 = now, the past below it. */
    public double timeS(int index) {
        return timesS[index];
    }

    /** The value; NaN where there is none. */
    public double value(int index) {
        return values[index];
    }

    /** What it is; each chart has kinds of its own. */
    public int kind(int index) {
        return kinds[index];
    }

    /** How many are of a kind. */
    public int count(int kind) {
        int count = 0;
        for (byte one : kinds) {
            count += one == kind ? 1 : 0;
        }
        return count;
    }

    /**
     * Those of a kind within a stretch of time, as one number makes another.
     *
     * @param fromS of {@link #timeS}
     * @param toS likewise
     */
    TimeRun within(int kind, double fromS, double toS, DoubleUnaryOperator made) {
        double[] times = new double[size()];
        double[] others = new double[size()];
        int count = 0;
        for (int i = 0; i < size(); i++) {
            if (kinds[i] == kind && timesS[i] >= fromS - SAME_S && timesS[i] <= toS + SAME_S) {
                times[count] = timesS[i] - fromS;
                others[count++] = made.applyAsDouble(values[i]);
            }
        }
        byte[] same = new byte[count];
        Arrays.fill(same, (byte) kind);
        return new TimeRun(Arrays.copyOf(times, count), Arrays.copyOf(others, count), same);
    }
}
