package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * Tells new measurements from repeats. A board that prints faster than its sensor measures prints each value again: two
 * such lines do not agree, three without the hand may be one dropout, and the hand's speed is none of theirs. The
 * sensor's interval is learned from how long values last; a line that says the same sooner is a repeat. Pure: time
 * comes with the calls. Owned by one thread.
 */
final class Beat {
    /** Interval of the slowest sensors, 16 a second: a value that lasts longer is a hand that lies still. */
    private static final double SLOWEST_NANOS = Nanos.PER_SECOND / 16.0;

    /** Lines come early and late; so much of an interval is a new measurement. */
    private static final double ENOUGH_01 = 0.9;

    /** From so many lines a value on, lines are taken for repeats; noise alone makes equal neighbours of some. */
    private static final double REPEATS = 1.5;

    /** Share by which one value's time is believed. */
    private static final double LEARNED_01 = 0.2;

    private final double lineNanos;
    private double intervalNanos;
    private double last = Double.NaN;
    private boolean seen;
    private long lastNanos;
    private long changedNanos;
    private double sinceNanos;

    /**
     * A beat not yet heard.
     *
     * @param ratePerS lines a second
     */
    Beat(double ratePerS) {
        this.lineNanos = Nanos.PER_SECOND / ratePerS;
        this.intervalNanos = lineNanos;
    }

    /**
     * A line came.
     *
     * @param value of the channel as printed; not finite where it says nothing
     * @return whether the sensor has measured since the last one for which this was so
     */
    boolean isNew(double value, long timeNanos) {
        double since = timeNanos - lastNanos;
        boolean same = Double.compare(value, last) == 0;
        if (seen && same && repeats() && since < ENOUGH_01 * intervalNanos) {
            return false;
        }
        if (seen && !same && Double.isFinite(value) && Double.isFinite(last)) {
            double lasted = Math.min((double) (timeNanos - changedNanos), SLOWEST_NANOS);
            intervalNanos += LEARNED_01 * (lasted - intervalNanos);
        }
        if (!same) {
            changedNanos = timeNanos;
        }
        sinceNanos = seen ? since : lineNanos;
        seen = true;
        last = value;
        lastNanos = timeNanos;
        return true;
    }

    private boolean repeats() {
        return intervalNanos > REPEATS * lineNanos;
    }

    /**
     * From the measurement before to the latest, not under the interval of lines nor over what was learned: values that
     * last because a hand lies still must not slow it down when it starts.
     */
    long intervalNanos() {
        return Math.round(Math.max(lineNanos, Math.min(sinceNanos, intervalNanos)));
    }
}
