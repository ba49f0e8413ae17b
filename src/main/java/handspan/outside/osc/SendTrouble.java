package handspan.outside.osc;

import handspan.number.units.Nanos;

/**
 * The latest trouble of a target in words, and when it is over: after {@link #QUIET_SENDS} successes in a row that span
 * {@link #QUIET_NANOS}. Time is an argument; one thread only.
 */
final class SendTrouble {
    /**
     * One success says nothing: with nobody listening every second send of a connected socket succeeds, because each
     * refusal answers the send before it.
     */
    static final int QUIET_SENDS = 100;

    /** Systems limit how often they say that nobody listens, Linux to about once a second (manual page icmp(7)). */
    static final long QUIET_NANOS = 3 * Nanos.PER_SECOND;

    private String words = "";
    private int successes;
    private long failureNanos;

    /** The latest trouble; empty when there is none. */
    String words() {
        return words;
    }

    void onFailure(long timeNanos, String what) {
        words = what;
        failureNanos = timeNanos;
        successes = 0;
    }

    void onSuccess(long timeNanos) {
        if (words.isEmpty()) {
            return;
        }
        successes++;
        if (successes >= QUIET_SENDS && timeNanos - failureNanos >= QUIET_NANOS) {
            words = "";
        }
    }

    /** What happened on another channel says nothing about the next. */
    void forget() {
        words = "";
    }
}
