package handspan.room.calibrate;

import handspan.number.units.Nanos;
import java.util.Arrays;

/** The latest readings of one channel over the duration of a hold, oldest first. Owned by one thread. */
final class HoldWindow {
    private final long spanNanos;
    private long[] times = new long[256];
    private double[] values = new double[256];
    private boolean[] valid = new boolean[256];
    private int size;
    private long startNanos = Long.MIN_VALUE;

    HoldWindow(long spanNanos) {
        this.spanNanos = spanNanos;
    }

    /** A window that keeps all. */
    static HoldWindow endless() {
        return new HoldWindow(Long.MAX_VALUE);
    }

    void add(long timeNanos, double physical, boolean isReading) {
        if (startNanos == Long.MIN_VALUE) {
            startNanos = timeNanos;
        }
        int old = 0;
        while (old < size && times[old] < timeNanos - spanNanos) {
            old++;
        }
        drop(old);
        if (size == times.length) {
            times = Arrays.copyOf(times, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
            valid = Arrays.copyOf(valid, 2 * size);
        }
        times[size] = timeNanos;
        values[size] = physical;
        valid[size] = isReading;
        size++;
    }

    private void drop(int count) {
        if (count > 0) {
            System.arraycopy(times, count, times, 0, size - count);
            System.arraycopy(values, count, values, 0, size - count);
            System.arraycopy(valid, count, valid, 0, size - count);
            size -= count;
        }
    }

    void clear() {
        size = 0;
        startNanos = Long.MIN_VALUE;
    }

    /** Whether a whole hold's time has passed since the last clearing. */
    boolean isFull(long timeNanos) {
        return startNanos != Long.MIN_VALUE && timeNanos - startNanos >= spanNanos;
    }

    int size() {
        return size;
    }

    long firstNanos() {
        return times[0];
    }

    double missing01() {
        return missing01(0);
    }

    /** Share missing in the later half. */
    double lateMissing01() {
        return missing01(size / 2);
    }

    private double missing01(int from) {
        int missing = 0;
        for (int i = from; i < size; i++) {
            missing += valid[i] ? 0 : 1;
        }
        return size == from ? 1 : missing / (double) (size - from);
    }

    /** A copy of the latest part. */
    HoldWindow latest(long partNanos, long nowNanos) {
        HoldWindow part = new HoldWindow(partNanos);
        for (int i = 0; i < size; i++) {
            if (times[i] >= nowNanos - partNanos) {
                part.add(times[i], values[i], valid[i]);
            }
        }
        return part;
    }

    /** Times of the readings, in seconds from the first line on; as many as {@link #readings}. */
    double[] seconds() {
        double[] seconds = new double[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (valid[i]) {
                seconds[count++] = Nanos.toSeconds(times[i] - times[0]);
            }
        }
        return Arrays.copyOf(seconds, count);
    }

    /** Numbers of the lines that the readings came in, counted from the first; as many as {@link #readings}. */
    int[] lines() {
        int[] lines = new int[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (valid[i]) {
                lines[count++] = i;
            }
        }
        return Arrays.copyOf(lines, count);
    }

    double[] readings() {
        double[] readings = new double[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (valid[i]) {
                readings[count++] = values[i];
            }
        }
        return Arrays.copyOf(readings, count);
    }
}
