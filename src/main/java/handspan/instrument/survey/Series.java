package handspan.instrument.survey;

import handspan.number.units.Nanos;
import java.util.Arrays;
import java.util.function.DoublePredicate;

/**
 * One slot's numbers in the order they came, with their times and a mark for those that were no reading. Grows up to a
 * limit. Owned by one thread.
 */
final class Series {
    /** Most values kept: 5 hours at 100 a second. */
    static final int MOST = 2_000_000;

    private long[] timesNanos;
    private double[] values;
    private boolean[] present;
    private boolean[] valid;
    private int size;

    Series() {
        this(new long[1024], new double[1024], new boolean[1024], new boolean[1024], 0);
    }

    private Series(long[] timesNanos, double[] values, boolean[] present, boolean[] valid, int size) {
        this.timesNanos = timesNanos;
        this.values = values;
        this.present = present;
        this.valid = valid;
        this.size = size;
    }

    /** A line with a number in this slot. */
    void add(long timeNanos, double value, boolean isReading) {
        add(timeNanos, value, true, isReading);
    }

    /** A line without one. */
    void addMissing(long timeNanos) {
        add(timeNanos, 0, false, false);
    }

    private void add(long timeNanos, double value, boolean isPresent, boolean isReading) {
        if (size == MOST) {
            return;
        }
        if (size == values.length) {
            int larger = Math.min(MOST, 2 * size);
            timesNanos = Arrays.copyOf(timesNanos, larger);
            values = Arrays.copyOf(values, larger);
            present = Arrays.copyOf(present, larger);
            valid = Arrays.copyOf(valid, larger);
        }
        timesNanos[size] = timeNanos;
        values[size] = value;
        present[size] = isPresent;
        valid[size] = isReading;
        size++;
    }

    int size() {
        return size;
    }

    double value(int index) {
        return values[index];
    }

    boolean isValid(int index) {
        return valid[index];
    }

    /** Whether the line held a number at all. */
    boolean isPresent(int index) {
        return present[index];
    }

    /** Seconds since the first line. */
    double timeS(int index) {
        return Nanos.toSeconds(timesNanos[index] - timesNanos[0]);
    }

    /** From one index up to another, less than a line more. */
    double seconds(int from, int to) {
        return to - from < 2 ? 0 : timeS(to - 1) - timeS(from);
    }

    /** The readings from one index up to another, without what was no reading. */
    double[] readings(int from, int to) {
        double[] readings = new double[to - from];
        int count = 0;
        for (int i = from; i < to; i++) {
            if (valid[i]) {
                readings[count++] = values[i];
            }
        }
        return Arrays.copyOf(readings, count);
    }

    /** All readings. */
    double[] readings() {
        return readings(0, size);
    }

    /** The same lines, of which some more are no reading. */
    Series without(DoublePredicate noReading) {
        boolean[] fewer = valid.clone();
        for (int i = 0; i < size; i++) {
            fewer[i] &= !noReading.test(values[i]);
        }
        return new Series(timesNanos, values, present, fewer, size);
    }
}
