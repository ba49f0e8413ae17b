package handspan.music.send;

/**
 * How the messages of a frame travel.
 *
 * @param bundled all of a frame in one bundle; else each in a packet of its own
 * @param latencyMs how long after the frame the receiver should act, ms, 0..10,000; negative for "at once"
 */
public record Packing(boolean bundled, double latencyMs) {
    /** The most that can be asked for, ms. */
    public static final double MOST_MS = 10_000;

    private static final double AT_ONCE = -1;

    /** One bundle, to be acted on at once. */
    public static final Packing USUAL = new Packing(true, AT_ONCE);

    /** Checks that time tags have a bundle to travel in. */
    public Packing {
        if (!(latencyMs <= MOST_MS)) {
            throw new IllegalArgumentException("latency " + latencyMs + " ms (0..10000)");
        }
        if (latencyMs < 0) {
            latencyMs = AT_ONCE;
        } else if (!bundled) {
            throw new IllegalArgumentException(
                    "latency " + latencyMs + " ms with separate messages: only bundles carry a time; send bundles");
        }
    }

    /** The same in bundles, or as separate messages that are acted on at once. */
    public Packing bundled(boolean on) {
        return new Packing(on, on ? latencyMs : AT_ONCE);
    }

    /** The same, acted on so long after each frame. */
    public Packing after(double ms) {
        if (!(ms >= 0)) {
            throw new IllegalArgumentException("latency " + ms + " ms (0..10000)");
        }
        return new Packing(bundled, ms);
    }

    /** The same, acted on at once. */
    public Packing atOnce() {
        return new Packing(bundled, AT_ONCE);
    }

    /** Whether bundles name a time. */
    public boolean isTimed() {
        return latencyMs >= 0;
    }
}
