package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * When to say "silence" again. Datagrams get lost, so after each end of sound the receiver is told five times over 100
 * ms, then once a second. Pure. Owned by one thread.
 */
final class HandOff {
    /** How often it is said quickly. */
    static final int REPEATS = 5;

    private static final long REPEAT_NANOS = 25 * Nanos.PER_MS;
    private static final long IDLE_NANOS = Nanos.PER_SECOND;

    private int said;
    private long nextNanos;

    /** Sound has just ended, or the state has changed in silence: say it now. */
    void start(long timeNanos) {
        said = 0;
        nextNanos = timeNanos;
    }

    boolean isDue(long timeNanos) {
        return timeNanos >= nextNanos;
    }

    /** It has been said. */
    void said(long timeNanos) {
        said++;
        nextNanos = timeNanos + (said < REPEATS ? REPEAT_NANOS : IDLE_NANOS);
    }

    /** Whether all the quick repeats are out. */
    boolean isOver() {
        return said >= REPEATS;
    }

    long nextNanos() {
        return nextNanos;
    }
}
