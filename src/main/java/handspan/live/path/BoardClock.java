package handspan.live.path;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.number.fit.LineBelow;
import handspan.number.units.Nanos;

/**
 * When each line was printed, told from a number that the board writes into it: its own seconds, milliseconds or
 * microseconds. They are found by running as the arrivals do, and go on over the wrap of 16 or 32 bits; arrivals can be
 * late but never early, so that the line below them joins the two clocks. Pure: times come with the calls. Allocates
 * nothing after it is made. Owned by one thread.
 */
final class BoardClock {
    /** Nanoseconds in each unit a board may count in. */
    private static final double[] UNITS = {1e3, 1e6, 1e9};

    private static final double WRAP16 = 65_536;
    private static final double WRAP32 = 4_294_967_296.0;

    /**
     * As far as this, and this share, its time may run apart from the arrivals while it is being found, from line to
     * line and in all: a latency timer and a little. Noise that falls is no counter that wraps: with 16 bits of
     * microseconds a fall would be most of 66 ms and a rise next to nothing, and not both are near the time that
     * passed.
     */
    private static final double APART_NANOS = 20.0 * Nanos.PER_MS;

    private static final double APART01 = 0.02;

    private static final double FOUND_NANOS = 1.0 * Nanos.PER_SECOND;
    private static final int FOUND_READINGS = 16;

    /** A clock that stands still for more of the readings than this is too coarse to date them. */
    private static final double MOST_STILL01 = 0.25;

    /** Before this, the two clocks are taken to run alike; after it, their ratio is known better than that. */
    private static final double RATIO_NANOS = 2.0 * Nanos.PER_SECOND;

    /** Lines that are later than this on average do not run with that clock. */
    private static final double MOST_LATE_NANOS = 200.0 * Nanos.PER_MS;

    private static final double SAME_LINE_NANOS = 100.0 * Nanos.PER_MS;

    private final LineBelow below = new LineBelow(128);
    private final double[] last = new double[LineShape.MOST_SLOTS];
    private final long[] lastArrival = new long[LineShape.MOST_SLOTS];
    private final long[] since = new long[LineShape.MOST_SLOTS];
    private final double[] ran = new double[LineShape.MOST_SLOTS];
    private final int[] readings = new int[LineShape.MOST_SLOTS];
    private final int[] still = new int[LineShape.MOST_SLOTS];
    private int slot = -1;
    private double unit;
    private boolean wraps16;
    private long zeroNanos;
    private double boardNanos;
    private double leastOffset;
    private long printedNanos;

    /** The link is there again: the board may have started anew. */
    void restart() {
        java.util.Arrays.fill(readings, 0);
        slot = -1;
        wraps16 = false;
        below.clear();
    }

    /**
     * Takes a reading.
     *
     * @return whether the board's own time tells when it was printed: {@link #printedNanos}
     */
    boolean onReading(Reading reading) {
        if (slot >= 0) {
            return goOn(reading);
        }
        for (int i = 0; i < reading.size(); i++) {
            if (reading.has(i) && isTime(i, reading.value(i), reading.timeNanos())) {
                begin(i, reading.timeNanos());
                return true;
            }
        }
        return false;
    }

    private boolean isTime(int i, double value, long arrival) {
        double step = readings[i] == 0 ? 0 : step(last[i], value);
        ran[i] = readings[i] == 0 ? 0 : ran[i] + step;
        since[i] = readings[i] == 0 ? arrival : since[i];
        still[i] = readings[i] == 0 ? 0 : still[i] + (step == 0 ? 1 : 0);
        double sinceLast = readings[i] == 0 ? 0 : (double) (arrival - lastArrival[i]);
        last[i] = value;
        lastArrival[i] = arrival;
        readings[i]++;
        double passed = (double) (arrival - since[i]);
        unit = nearestUnit(ran[i], passed);
        double apart = Math.abs(ran[i] * unit - passed);
        double stepApart = Math.abs(step * unit - sinceLast);
        if (Math.max(apart, stepApart) > APART_NANOS + APART01 * passed) {
            readings[i] = 0;
            return false;
        }
        return passed >= FOUND_NANOS && readings[i] >= FOUND_READINGS && still[i] <= MOST_STILL01 * readings[i];
    }

    private static double nearestUnit(double ran, double passed) {
        double nearest = UNITS[0];
        for (double each : UNITS) {
            nearest = Math.abs(ran * each - passed) < Math.abs(ran * nearest - passed) ? each : nearest;
        }
        return nearest;
    }

    /** How far a counter has gone: a fall is its wrap. */
    private static double step(double from, double to) {
        if (to >= from) {
            return to - from;
        }
        return to - from + (Math.max(Math.abs(from), Math.abs(to)) < WRAP16 ? WRAP16 : WRAP32);
    }

    private void begin(int found, long arrival) {
        slot = found;
        zeroNanos = arrival;
        boardNanos = 0;
        leastOffset = 0;
        below.clear();
        date(arrival);
    }

    private boolean goOn(Reading reading) {
        long arrival = reading.timeNanos();
        if (!reading.has(slot)) {
            // numbers of one measurement on lines of their own
            return arrival - printedNanos <= SAME_LINE_NANOS;
        }
        double passed = (double) (arrival - lastArrival[slot]);
        double gone = gone(reading.value(slot), passed);
        last[slot] = reading.value(slot);
        lastArrival[slot] = arrival;
        boardNanos += gone;
        boolean ratioHolds = below.span() < RATIO_NANOS
                || (Math.abs(below.slope() - 1) <= APART01 && below.meanAbove() <= MOST_LATE_NANOS);
        if (Math.abs(gone - passed) > ArrivalClock.FURTHEST_NANOS + APART01 * passed || !ratioHolds) {
            restart();
            return false;
        }
        date(arrival);
        return true;
    }

    private double gone(double value, double passed) {
        wraps16 |= value < last[slot] && Math.max(Math.abs(value), Math.abs(last[slot])) < WRAP16;
        double gone = step(last[slot], value) * unit;
        double wrap = WRAP16 * unit;
        return wraps16 ? gone + wrap * Math.max(0, Math.rint((passed - gone) / wrap)) : gone;
    }

    private void date(long arrival) {
        double sinceNanos = (double) (arrival - zeroNanos);
        below.add(boardNanos, sinceNanos);
        leastOffset = Math.min(leastOffset, sinceNanos - boardNanos);
        double printed = below.span() < RATIO_NANOS ? boardNanos + leastOffset : below.at(boardNanos);
        printedNanos = zeroNanos + Math.round(printed);
    }

    /** When the latest reading was printed. */
    long printedNanos() {
        return printedNanos;
    }

    /** The number of the line that is the board's time; -1 where none is. */
    int slot() {
        return slot;
    }

    /** What it counts in, in words. */
    String unitWord() {
        return unit == UNITS[0] ? "microseconds" : unit == UNITS[1] ? "milliseconds" : "seconds";
    }

    /** How late lines come after the least, on average. */
    double meanLateNanos() {
        return below.meanAbove();
    }
}
