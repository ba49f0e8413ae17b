package handspan.instrument.line;

import handspan.number.units.Nanos;

/**
 * How much of what comes is no text: at a wrong baud rate most of it. Counts bytes in spans of half a second. Owned by
 * one thread.
 */
public final class TextMeter {
    /** From this share on it is not the odd byte that a cable lost. */
    public static final double GARBLED01 = 0.3;

    private static final long SPAN_NANOS = Nanos.PER_SECOND / 2;
    private static final int FEWEST = 20;

    private long spanNanos;
    private int bytes;
    private int odd;
    private int lastBytes;
    private int lastOdd;
    private long sinceLineEnd;

    /** Takes bytes as they came. */
    public void accept(byte[] chunk, int count, long timeNanos) {
        roll(timeNanos);
        for (int i = 0; i < count; i++) {
            byte b = chunk[i];
            boolean end = b == '\n' || b == '\r';
            sinceLineEnd = end ? 0 : sinceLineEnd + 1;
            // letters beyond ASCII are units in text, and most of what garbling makes
            odd += !end && (Ascii.isControl(b) || b < 0) ? 1 : 0;
        }
        bytes += count;
    }

    private void roll(long timeNanos) {
        long passed = timeNanos - spanNanos;
        if (passed >= SPAN_NANOS) {
            boolean next = passed < 2 * SPAN_NANOS;
            lastBytes = next ? bytes : 0;
            lastOdd = next ? odd : 0;
            bytes = 0;
            odd = 0;
            spanNanos = timeNanos;
        }
    }

    /** Share of the bytes of the last half to whole second that are no text; 0 while too few came to tell. */
    public double garbled01(long nowNanos) {
        roll(nowNanos);
        int all = bytes + lastBytes;
        return all < FEWEST ? 0 : (odd + lastOdd) / (double) all;
    }

    /** Bytes since the last line end: many of them come from a board that writes bytes instead of lines. */
    public long sinceLineEnd() {
        return sinceLineEnd;
    }
}
