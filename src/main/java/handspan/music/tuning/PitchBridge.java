package handspan.music.tuning;

import handspan.number.units.Nanos;

/**
 * Joins one pitch to another without a step: an offset that runs out along half a cosine. It takes its least time, or
 * longer where pitch would run faster than {@value #MOST_CENTS_PER_MS} cents/ms: an octave takes 0.47 s. Owned by one
 * thread.
 */
public final class PitchBridge {
    /** Steepest change, cents/ms: 20 cents between messages at 200 a second (this project's own choice). */
    public static final double MOST_CENTS_PER_MS = 4;

    private final double leastMs;
    private double fromKeys;
    private long startNanos;
    private double lengthMs;

    /**
     * A bridge.
     *
     * @param leastMs least time it takes, above 0
     */
    public PitchBridge(double leastMs) {
        this.leastMs = leastMs;
    }

    /** The pitch leaps by so much the other way at a time: what is left of the last leap is added. */
    public void add(double keys, long timeNanos) {
        fromKeys = at(timeNanos) + keys;
        startNanos = timeNanos;
        // half a cosine is pi/2 times as steep in its middle as a straight line
        double steepMs = Math.abs(fromKeys) * ReferencePitch.CENTS_PER_KEY * Math.PI / 2 / MOST_CENTS_PER_MS;
        lengthMs = Math.max(leastMs, steepMs);
    }

    /** What is left of it at a time, key numbers. */
    public double at(long timeNanos) {
        double share = fromKeys == 0 ? 1 : Nanos.toMs(timeNanos - startNanos) / lengthMs;
        if (share >= 1) {
            return 0;
        }
        return fromKeys * (share <= 0 ? 1 : (1 + Math.cos(Math.PI * share)) / 2);
    }

    /** Nothing is left. */
    public void reset() {
        fromKeys = 0;
    }
}
