package handspan.outside.osc.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OscTimeTagTest {
    /** RFC 5905 (2010), Figure 4 "Interesting Historic NTP Dates": seconds within the era. */
    @ParameterizedTest
    @CsvSource({
        "1899-12-31T00:00:00Z, 4294880896",
        "1900-01-01T00:00:00Z, 0",
        "1970-01-01T00:00:00Z, 2208988800",
        "1972-01-01T00:00:00Z, 2272060800",
        "1999-12-31T00:00:00Z, 3155587200",
        "2036-02-08T00:00:00Z, 63104",
    })
    void secondsAreThoseOfThePublishedDates(Instant instant, long seconds) {
        long tag = OscTimeTag.of(instant);
        assertEquals(seconds, tag >>> 32);
        assertEquals(0, tag & 0xffff_ffffL);
    }

    /** Fraction of 2^-32 s (RFC 5905, section 6), by hand: 0.001 s * 2^32 = 4294967.296; 1 ns = 4.29; 1 s less 1 ns. */
    @ParameterizedTest
    @CsvSource({
        "1970-01-01T00:00:00.5Z, 83aa7e8080000000",
        "1970-01-01T00:00:00.001Z, 83aa7e8000418937",
        "1970-01-01T00:00:00.000000001Z, 83aa7e8000000004",
        "1970-01-01T00:00:00.999999999Z, 83aa7e80fffffffc",
    })
    void fractionsAreRoundedToTheNearestUnit(Instant instant, String hex) {
        assertEquals(Long.parseUnsignedLong(hex, 16), OscTimeTag.of(instant));
    }

    /** OSC 1.0, "Temporal Semantics": 63 zero bits followed by a one. */
    @Test
    void immediatelyIsAOneBehindSixtyThreeZeros() {
        assertEquals(0x0000_0000_0000_0001L, OscTimeTag.IMMEDIATELY);
    }

    @Test
    void nanosecondsBeyondASecondAreRefused() {
        assertEquals(OscTimeTag.of(Instant.ofEpochSecond(7, 999_999_999)), OscTimeTag.of(7, 999_999_999));
        assertThrows(IllegalArgumentException.class, () -> OscTimeTag.of(7, 1_000_000_000));
        assertThrows(IllegalArgumentException.class, () -> OscTimeTag.of(7, -1));
    }
}
