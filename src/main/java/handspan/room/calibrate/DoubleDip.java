package handspan.room.calibrate;

import handspan.number.units.Nanos;

/**
 * Sees a hand that, out of stillness, goes towards the sensor and back twice: the sign for "that one again" while both
 * hands are in the air. Pure: time comes with the readings. Owned by one thread.
 *
 * <p>States: at the top (still, or moving on), first dip, between, second dip; back at the top after the second dip is
 * the sign. All within {@value #MOST_SECONDS} s from the last still moment, each dip at least {@value #LEAST_MM} mm and
 * {@value #NOISE_TIMES} times the noise deep. A hand that does not come back, goes beyond where it came from, moves
 * faster than a hand can, or is not seen for {@value #LONGEST_GAP_MS} ms starts from the top again. The limits are this
 * project's own choice but where a source is named.
 */
final class DoubleDip {
    /** Least depth of a dip, mm: three times the move that a new hold needs. */
    static final double LEAST_MM = 60;

    /** Least depth of a dip in standard deviations of a reading. */
    static final double NOISE_TIMES = 20;

    /** The whole sign, s. */
    static final double MOST_SECONDS = 1.5;

    /** Readings missing over hands come in runs of one or two, at most 200 ms; longer is a hand that has gone. */
    static final int LONGEST_GAP_MS = 200;

    /** A hand reaches 1..2 m/s in quick reaches (common practice); what is faster is an echo from something else. */
    private static final double MOST_MM_PER_S = 3000;

    /** Serial lines come in bursts: the time between two may be far too short. */
    private static final double BURST_SECONDS = 0.025;

    private static final long STILL_NANOS = 300 * Nanos.PER_MS;
    private static final double STILL_MM = 15;
    private static final double STILL_NOISE_TIMES = 6;

    /** A ghost lasts for one or two lines. */
    private static final int LEAST_LOW_READINGS = 3;

    /** Back is what has risen by at least this share of the way to where the hand was still. */
    private static final double BACK_SHARE = 0.65;

    private enum Phase {
        TOP,
        FIRST,
        BETWEEN,
        SECOND
    }

    private final StillTop top = new StillTop(STILL_NANOS);
    private Phase phase = Phase.TOP;
    private double low;
    private double high;
    private int lowReadings;
    private double older = Double.NaN;
    private double newer = Double.NaN;
    private double filtered = Double.NaN;
    private long seenNanos;

    /**
     * Takes a reading; the median of three in a row counts, so that a single ghost does not.
     *
     * @param mm distance above the sensor
     * @param isReading whether the line had one
     * @param noiseMm standard deviation of one reading; 0 when not known
     * @return whether this reading completes the sign
     */
    boolean onReading(long timeNanos, double mm, boolean isReading, double noiseMm) {
        if (!isReading) {
            return false;
        }
        boolean gone = Double.isNaN(filtered) || timeNanos - seenNanos > LONGEST_GAP_MS * Nanos.PER_MS;
        double value = gone ? mm : median(older, newer, mm);
        double allowed = MOST_MM_PER_S * Math.max(BURST_SECONDS, Nanos.toSeconds(timeNanos - seenNanos))
                + STILL_NOISE_TIMES * noiseMm;
        boolean wild = !gone && Math.abs(value - filtered) > allowed;
        older = gone ? mm : newer;
        newer = mm;
        filtered = value;
        seenNanos = timeNanos;
        if (gone || wild) {
            reset();
        }
        return step(timeNanos, value, Math.max(LEAST_MM, NOISE_TIMES * noiseMm), noiseMm);
    }

    private boolean step(long timeNanos, double mm, double depth, double noiseMm) {
        if (phase == Phase.TOP) {
            top.add(timeNanos, mm, Math.max(STILL_MM, STILL_NOISE_TIMES * noiseMm));
            lowReadings = top.leftNanos() == timeNanos ? 0 : lowReadings;
        }
        if (!top.isKnown()) {
            return false;
        }
        if (Nanos.toSeconds(timeNanos - top.leftNanos()) > MOST_SECONDS || mm > top.mm() + depth) {
            reset();
            return false;
        }
        return follow(mm, depth);
    }

    private boolean follow(double mm, double depth) {
        double from = phase == Phase.TOP || phase == Phase.FIRST ? top.mm() : high;
        boolean down = phase == Phase.FIRST || phase == Phase.SECOND;
        if (mm < from - depth / 2) {
            lowReadings++;
        }
        if (down) {
            low = Math.min(low, mm);
            if (mm < low + BACK_SHARE * (top.mm() - low)) {
                return false;
            }
            boolean ghost = lowReadings < LEAST_LOW_READINGS;
            boolean complete = phase == Phase.SECOND && !ghost;
            if (complete || ghost) {
                reset();
                return complete;
            }
            phase = Phase.BETWEEN;
            high = mm;
            lowReadings = 0;
            return false;
        }
        high = phase == Phase.BETWEEN ? Math.max(high, mm) : mm;
        if (mm <= from - depth) {
            phase = phase == Phase.TOP ? Phase.FIRST : Phase.SECOND;
            low = mm;
        }
        return false;
    }

    private void reset() {
        phase = Phase.TOP;
        lowReadings = 0;
        top.forget();
    }

    private static double median(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
