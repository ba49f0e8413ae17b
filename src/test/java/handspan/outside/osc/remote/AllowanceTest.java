package handspan.outside.osc.remote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Counts by hand, for a bucket that holds 5 and gets 10 a second. */
class AllowanceTest {
    private static final long MS = 1_000_000;

    private final Allowance allowance = new Allowance(10, 5);

    private int taken(long fromNanos, long everyNanos, int tries) {
        int taken = 0;
        for (int i = 0; i < tries; i++) {
            taken += allowance.take(fromNanos + i * everyNanos) ? 1 : 0;
        }
        return taken;
    }

    @Test
    void soManyAtOnceThenSoManyASecond() {
        assertEquals(5, taken(7, 0, 100));
        assertFalse(allowance.take(7 + 99 * MS));
        assertTrue(allowance.take(7 + 101 * MS));
        assertFalse(allowance.take(7 + 150 * MS));
    }

    @Test
    void aFloodGetsThroughAtTheRateAlone() {
        // 5 at once, and 10 a second for 3 s; the last one may just not be due
        assertEquals(34, taken(0, MS, 3_000), 1);
    }

    @Test
    void whatIsSavedUpHasAnEnd() {
        taken(0, 0, 5);
        assertEquals(5, taken(3_600_000 * MS, 0, 100));
    }

    @Test
    void aClockThatStandsOrGoesBackGivesNothing() {
        taken(1_000 * MS, 0, 5);
        assertEquals(0, taken(1_000 * MS, -MS, 500));
        assertTrue(allowance.take(700 * MS));
    }

    @Test
    void senselessAllowancesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Allowance(0, 5));
        assertThrows(IllegalArgumentException.class, () -> new Allowance(Double.NaN, 5));
        assertThrows(IllegalArgumentException.class, () -> new Allowance(1, 0.5));
    }
}
