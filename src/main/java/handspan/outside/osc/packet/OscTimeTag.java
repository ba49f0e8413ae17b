package handspan.outside.osc.packet;

import java.time.Instant;

/**
 * The 64-bit time tags of Open Sound Control 1.0 (M. Wright, 2002, section "Temporal Semantics"): the timestamp format
 * of the Network Time Protocol (RFC 5905, 2010, section 6). Upper 32 bits: seconds since 1900-01-01T00:00:00Z. Lower 32
 * bits: fraction of a second in units of 2^-32 s (233 ps).
 */
public final class OscTimeTag {
    /** The one tag that names no time: 63 zero bits and a one. */
    public static final long IMMEDIATELY = 1;

    /** Seconds from 1900-01-01 to 1970-01-01 (RFC 5905, Figure 4, row "First day UNIX"). */
    private static final long SECONDS_1900_TO_1970 = 2_208_988_800L;

    private static final long NANOS_PER_SECOND = 1_000_000_000L;

    private OscTimeTag() {}

    /** The tag of an instant, see {@link #of(long, int)}. */
    public static long of(Instant instant) {
        return of(instant.getEpochSecond(), instant.getNano());
    }

    /**
     * The tag of a time counted from 1970-01-01T00:00:00Z: {@code (s + 2208988800) * 2^32 + round(n * 2^32 / 10^9)}.
     * Seconds beyond 32 bits fall off, so the count starts afresh at 2036-02-07T06:28:16Z, as RFC 5905 has it.
     *
     * @param epochSecond seconds since 1970
     * @param nanoOfSecond 0..999,999,999 ns
     */
    public static long of(long epochSecond, int nanoOfSecond) {
        if (nanoOfSecond < 0 || nanoOfSecond >= NANOS_PER_SECOND) {
            throw new IllegalArgumentException(
                    "nanoOfSecond " + nanoOfSecond + " ns (0..999999999): carry whole seconds over to epochSecond");
        }
        // can't reach 2^32: the largest is 4294967292
        long fraction = (((long) nanoOfSecond << 32) + NANOS_PER_SECOND / 2) / NANOS_PER_SECOND;
        return (epochSecond + SECONDS_1900_TO_1970) << 32 | fraction;
    }

    /**
     * The instant of a tag, to the ns below. Where the topmost bit is 0 the count has begun afresh (RFC 4330, 2006,
     * section 3): such tags are dates from 2036-02-07 on.
     */
    public static Instant instant(long timeTag) {
        long seconds = timeTag >>> 32;
        long nanos = ((timeTag & 0xffff_ffffL) * NANOS_PER_SECOND) >>> 32;
        long era = timeTag < 0 ? 0 : 1L << 32;
        return Instant.ofEpochSecond(seconds + era - SECONDS_1900_TO_1970, nanos);
    }
}
