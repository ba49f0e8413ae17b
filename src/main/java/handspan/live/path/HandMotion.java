package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * How a hand has moved just now, from unsmoothed readings: they know of a move 20 to 60 ms before it sounds. Pure: time
 * comes with the calls. Owned by one thread.
 */
final class HandMotion {
    /** Readings over which speed is taken, at least; two intervals at 50 a second. */
    private static final long SPAN_NANOS = 35 * Nanos.PER_MS;

    /** From this speed on a hand is fast, mm/s: 350 cross a usual zone in a second (this project's own choice). */
    private static final double FAST_MM_PER_S = 350;

    /** Nor is a hand fast while its speed may be noise: so many standard deviations of it. */
    private static final double NOISE_TIMES = 4;

    /** A speed taken over longer than this is old news: a hand can lose half a metre a second in 30 ms. */
    private static final long NEWS_NANOS = 45 * Nanos.PER_MS;

    private static final int MOST = 64;

    private final double noiseMm;
    private final double[] mm = new double[MOST];
    private final long[] nanos = new long[MOST];
    private int first;
    private int count;

    /**
     * A motion not yet seen.
     *
     * @param noiseMm standard deviation of one reading, mm
     */
    HandMotion(double noiseMm) {
        this.noiseMm = noiseMm;
    }

    /** The hand was seen. */
    void add(double positionMm, long timeNanos) {
        while (count > 1 && (count == MOST || timeNanos - nanos[(first + 1) % MOST] >= SPAN_NANOS)) {
            first = (first + 1) % MOST;
            count--;
        }
        int at = (first + count) % MOST;
        mm[at] = positionMm;
        nanos[at] = timeNanos;
        count++;
    }

    /** Forgets all. */
    void reset() {
        count = 0;
    }

    /** Speed away from the sensor, mm/s; 0 from one reading alone. */
    double speedMmPerS() {
        return count < 2 ? 0 : (lastMm() - mm[first]) / spanS();
    }

    /** Whether the hand goes fast, and not by noise alone. */
    boolean isFast() {
        return count > 1
                && Math.abs(speedMmPerS()) > Math.max(FAST_MM_PER_S, NOISE_TIMES * Math.sqrt(2) * noiseMm / spanS());
    }

    /** Whether the speed is that of now: not with slow sensors, nor after a lost reading. */
    boolean isNews() {
        return spanNanos() <= NEWS_NANOS;
    }

    private double lastMm() {
        return mm[(first + count - 1) % MOST];
    }

    private long spanNanos() {
        return nanos[(first + count - 1) % MOST] - nanos[first];
    }

    private double spanS() {
        return Math.max(1e-4, Nanos.toSeconds(spanNanos()));
    }
}
