package handspan.live.path;

import handspan.number.units.Nanos;

/** The light of a moment ago, from which to tell how fast it rises towards loud. Owned by one thread. */
final class LightTrail {
    /** How far back is looked, if more than one reading is there. */
    static final long WINDOW_NANOS = 45 * Nanos.PER_MS;

    private static final int MOST = 64;

    private final double[] trailLn = new double[MOST];
    private final long[] trailNanos = new long[MOST];
    private int count;

    /**
     * Remembers.
     *
     * @param loudLn ln of resistance, towards loud positive
     * @param timeNanos not before the last call's
     */
    void add(double loudLn, long timeNanos) {
        int slot = count % MOST;
        trailLn[slot] = loudLn;
        trailNanos[slot] = timeNanos;
        count++;
    }

    void clear() {
        count = 0;
    }

    /** Seconds since the last light; 0 when there was none. */
    double secondsSince(long timeNanos) {
        return count == 0 ? 0 : Nanos.toSeconds(timeNanos - trailNanos[(count - 1) % MOST]);
    }

    /**
     * The fastest rise within the window to a light of now, ln for each window's length.
     *
     * @param loudLn of now, ln of resistance
     * @param timeNanos now
     * @param floorLn what lies below counts as this
     * @param topLn what lies above counts as this
     */
    double fastestLn(double loudLn, long timeNanos, double floorLn, double topLn) {
        double toLn = within(loudLn, floorLn, topLn);
        double fastest = 0;
        for (int back = 1; back <= Math.min(count, MOST); back++) {
            int slot = (count - back) % MOST;
            long sinceNanos = timeNanos - trailNanos[slot];
            if (back > 1 && sinceNanos > WINDOW_NANOS) {
                return fastest;
            }
            double windows = Math.max(1, sinceNanos / (double) WINDOW_NANOS);
            fastest = Math.max(fastest, (toLn - within(trailLn[slot], floorLn, topLn)) / windows);
        }
        return fastest;
    }

    private static double within(double loudLn, double floorLn, double topLn) {
        return Math.max(floorLn, Math.min(topLn, loudLn));
    }

    /** The largest rise within the window to a light of now, ln. */
    double riseLn(double loudLn, long timeNanos) {
        double lowest = loudLn;
        for (int back = 1; back <= Math.min(count, MOST); back++) {
            int slot = (count - back) % MOST;
            if (back == 1 || timeNanos - trailNanos[slot] <= WINDOW_NANOS) {
                lowest = Math.min(lowest, trailLn[slot]);
            }
        }
        return loudLn - lowest;
    }
}
