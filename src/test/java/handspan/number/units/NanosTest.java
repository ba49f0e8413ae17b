package handspan.number.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class NanosTest {
    private static final long YEAR_S = 365L * 24 * 3600;

    private static final double NONE = 0;

    /** SI prefixes. */
    @Test
    void secondsAndMillisecondsBecomeNanosecondsAndComeBack() {
        assertEquals(1_500_000L, Nanos.ofMs(1.5));
        assertEquals(17_985_612L, Nanos.ofSeconds(0.0179856115));
        assertEquals(0.018, Nanos.toSeconds(18_000_000L), NONE);
        assertEquals(18.5, Nanos.toMs(18_500_000L), NONE);
        assertEquals(-250_000L, Nanos.ofMs(-0.25));
    }

    /**
     * A year of nanoseconds is 3.2e16: more than the 9.0e15 that a double counts one by one, but the unit must hold.
     */
    @Test
    void longTimesKeepTheirUnit() {
        assertEquals((double) YEAR_S, Nanos.toSeconds(YEAR_S * Nanos.PER_SECOND), NONE);
        assertEquals(YEAR_S * 1000.0, Nanos.toMs(YEAR_S * Nanos.PER_SECOND), NONE);
    }
}
