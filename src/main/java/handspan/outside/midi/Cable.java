package handspan.outside.midi;

/**
 * How much a MIDI cable carries: 31,250 bits a second and ten bits a byte (MIDI 1.0 Detailed Specification, hardware),
 * 320 microseconds a byte. At most half of it is used, so that what else goes through it is not held up: after so many
 * bytes comes a pause of as long. Bend and level are 6 bytes and so at most 260 a second. Ways without a cable carry
 * more, but what is behind them is not known. Pure: time comes with the calls.
 */
final class Cable {
    /** Ten bits. */
    static final long BYTE_NANOS = 320_000;

    private static final int SHARES = 2;

    private long freeNanos = Long.MIN_VALUE;

    /** Whether something new may begin. */
    boolean isFree(long timeNanos) {
        return timeNanos >= freeNanos;
    }

    /** From when on something new may begin. */
    long freeNanos() {
        return freeNanos;
    }

    /** So many bytes are given to it. */
    void carry(int bytes, long timeNanos) {
        freeNanos = Math.max(freeNanos, timeNanos) + SHARES * BYTE_NANOS * bytes;
    }
}
