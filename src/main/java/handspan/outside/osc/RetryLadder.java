package handspan.outside.osc;

import handspan.number.units.Nanos;

/**
 * How long to wait before connecting again: ever longer, up to three seconds, and from the beginning after a connection
 * that has held. Pure; one thread.
 */
final class RetryLadder {
    /** A connection that lasts so long is one: what accepts and hangs up at once is not asked ever faster. */
    static final long HELD_NANOS = 5 * Nanos.PER_SECOND;

    private static final long FIRST_NANOS = 500 * Nanos.PER_MS;
    private static final long LONGEST_NANOS = 3 * Nanos.PER_SECOND;

    private long nextNanos = FIRST_NANOS;

    /**
     * A try is over.
     *
     * @param heldNanos how long it was connected; 0 if it never was
     * @return how long to wait: 0.5, 1, 2, 3, 3 ... s
     */
    long after(long heldNanos) {
        if (heldNanos >= HELD_NANOS) {
            nextNanos = FIRST_NANOS;
        }
        long now = nextNanos;
        nextNanos = Math.min(2 * nextNanos, LONGEST_NANOS);
        return now;
    }
}
