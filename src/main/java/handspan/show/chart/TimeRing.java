package handspan.show.chart;

import java.util.Arrays;

/** Values of the last seconds, the oldest let go first; as many as are there, up to a bound. */
final class TimeRing {
    private static final int AT_FIRST = 256;

    private final long spanNanos;
    private final int most;
    private long[] timesNanos = new long[AT_FIRST];
    private double[] values = new double[AT_FIRST];
    private byte[] kinds = new byte[AT_FIRST];
    private int start;
    private int size;

    /**
     * An empty ring.
     *
     * @param spanNanos how long a value is kept
     * @param most how many are kept, 256 or more
     */
    TimeRing(long spanNanos, int most) {
        this.spanNanos = spanNanos;
        this.most = most;
    }

    /**
     * Adds a value.
     *
     * @param timeNanos not before that of the value ahead; an earlier time starts anew, as a scrub backwards does
     * @param kind what it is, 0..127, for whoever reads it
     */
    void add(long timeNanos, double value, int kind) {
        if (size > 0 && timeNanos < timesNanos[index(size - 1)]) {
            clear();
        }
        if (size == timesNanos.length && !grow()) {
            start = index(1);
            size--;
        }
        int at = index(size);
        timesNanos[at] = timeNanos;
        values[at] = value;
        kinds[at] = (byte) kind;
        size++;
        letGo(timeNanos);
    }

    boolean isEmpty() {
        return size == 0;
    }

    void clear() {
        start = 0;
        size = 0;
    }

    private void letGo(long nowNanos) {
        while (size > 0 && nowNanos - timesNanos[start] > spanNanos) {
            start = index(1);
            size--;
        }
    }

    private int index(int number) {
        return (start + number) % timesNanos.length;
    }

    private boolean grow() {
        int length = timesNanos.length;
        if (length >= most) {
            return false;
        }
        int longer = Math.min(most, 2 * length);
        long[] moreTimes = new long[longer];
        double[] moreValues = new double[longer];
        byte[] moreKinds = new byte[longer];
        int tail = length - start;
        System.arraycopy(timesNanos, start, moreTimes, 0, tail);
        System.arraycopy(timesNanos, 0, moreTimes, tail, start);
        System.arraycopy(values, start, moreValues, 0, tail);
        System.arraycopy(values, 0, moreValues, tail, start);
        System.arraycopy(kinds, start, moreKinds, 0, tail);
        System.arraycopy(kinds, 0, moreKinds, tail, start);
        timesNanos = moreTimes;
        values = moreValues;
        kinds = moreKinds;
        start = 0;
        return true;
    }

    /** What there is at a moment, no older than the span. */
    TimeRun run(long nowNanos) {
        double[] sinceS = new double[size];
        double[] what = new double[size];
        byte[] kind = new byte[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            int at = index(i);
            if (nowNanos - timesNanos[at] <= spanNanos) {
                sinceS[count] = (timesNanos[at] - nowNanos) / 1e9;
                what[count] = values[at];
                kind[count] = kinds[at];
                count++;
            }
        }
        return new TimeRun(Arrays.copyOf(sinceS, count), Arrays.copyOf(what, count), Arrays.copyOf(kind, count));
    }
}
