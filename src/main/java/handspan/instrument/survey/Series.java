package handspan.instrument.survey;

import java.util.Arrays;

/** One slot's numbers in the order they came, with a mark for those that were no reading. Grows up to a limit. */
final class Series {
    /** Most values kept: 5 hours at 100 a second. */
    static final int MOST = 2_000_000;

    private double[] values = new double[1024];
    private boolean[] valid = new boolean[1024];
    private int size;

    void add(double value, boolean isReading) {
        if (size == MOST) {
            return;
        }
        if (size == values.length) {
            values = Arrays.copyOf(values, Math.min(MOST, 2 * size));
            valid = Arrays.copyOf(valid, Math.min(MOST, 2 * size));
        }
        values[size] = value;
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
}
