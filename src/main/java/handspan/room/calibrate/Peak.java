package handspan.room.calibrate;

import handspan.number.fit.Robust;
import java.util.OptionalDouble;

/**
 * The highest reading since it was cleared, each taken as the middle one of five in a row, so that one or two wild
 * readings do not count. Owned by one thread.
 */
final class Peak {
    private static final int ROW = 5;

    private final double[] row = new double[ROW];
    private int seen;
    private double highest = Double.NEGATIVE_INFINITY;

    void onReading(double physical) {
        row[seen % ROW] = physical;
        seen++;
        if (seen >= ROW) {
            highest = Math.max(highest, Robust.median(row));
        }
    }

    /** Empty before there were five. */
    OptionalDouble highest() {
        return seen < ROW ? OptionalDouble.empty() : OptionalDouble.of(highest);
    }

    void clear() {
        seen = 0;
        highest = Double.NEGATIVE_INFINITY;
    }
}
