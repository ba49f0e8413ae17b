package handspan.number.units;

/** Monotonic time inside the program is a {@code long} of nanoseconds; these convert at the edges. */
public final class Nanos {
    /** Nanoseconds in a millisecond. */
    public static final long PER_MS = 1_000_000L;

    /** Nanoseconds in a second. */
    public static final long PER_SECOND = 1_000_000_000L;

    private Nanos() {}

    /** Milliseconds as nanoseconds. */
    public static long ofMs(double milliseconds) {
        return Math.round(milliseconds * PER_MS);
    }

    /** Seconds as nanoseconds. */
    public static long ofSeconds(double seconds) {
        return Math.round(seconds * PER_SECOND);
    }

    /** Nanoseconds as seconds. */
    public static double toSeconds(long nanos) {
        return nanos / (double) PER_SECOND;
    }

    /** Nanoseconds as milliseconds. */
    public static double toMs(long nanos) {
        return nanos / (double) PER_MS;
    }
}
