package handspan.live.path;

/**
 * Runs in a straight line from each position to the next, over one reading interval: steps between readings vanish, and
 * all comes exactly one interval later. Pure: time comes with the calls. Owned by one thread.
 */
public final class Glide {
    private final boolean on;
    private long intervalNanos;
    private double fromMm;
    private double toMm;
    private long startNanos;
    private boolean started;

    /**
     * A glide.
     *
     * @param on whether it glides at all; off, it is where it was last told to be
     */
    public Glide(boolean on) {
        this.on = on;
    }

    /**
     * A new position.
     *
     * @param overNanos until the next one is to be expected
     */
    public void to(double mm, long timeNanos, long overNanos) {
        fromMm = started ? at(timeNanos) : mm;
        toMm = mm;
        startNanos = timeNanos;
        intervalNanos = on ? overNanos : 0;
        started = true;
    }

    /** Stays where it is at a time. */
    void stop(long timeNanos) {
        toMm = at(timeNanos);
        fromMm = toMm;
    }

    /** Forgets where it was: the next position is taken at once. */
    public void reset() {
        started = false;
    }

    /** Where it is at a time; 0 before the first position. */
    public double at(long timeNanos) {
        if (intervalNanos <= 0 || timeNanos - startNanos >= intervalNanos) {
            return toMm;
        }
        double share = Math.max(0, (timeNanos - startNanos) / (double) intervalNanos);
        return fromMm + share * (toMm - fromMm);
    }

    /** Whether there is a position. */
    public boolean hasPosition() {
        return started;
    }
}
