package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BeatTest {
    private static final long LINE = 10 * Nanos.PER_MS;

    private final Beat beat = new Beat(100);
    private final Random random = new Random(5);
    private long now;

    private boolean isNew(double value) {
        now += LINE;
        return beat.isNew(value, now);
    }

    /** A sensor of 20 a second behind 100 lines: each value five times. */
    private void learn() {
        for (int i = 0; i < 40; i++) {
            double value = 300 + random.nextGaussian();
            for (int j = 0; j < 5; j++) {
                isNew(value);
            }
        }
    }

    @Test
    void aValuePrintedFiveTimesIsNewOnce() {
        learn();
        assertEquals(20, 1e9 / beat.intervalNanos(), 0.5);
        assertTrue(isNew(310));
        for (int i = 0; i < 4; i++) {
            assertFalse(isNew(310));
        }
        assertTrue(isNew(310), "the same again after a whole interval was measured");
    }

    @Test
    void nothingFiveTimesIsOneDropout() {
        learn();
        int measured = 0;
        for (int i = 0; i < 10; i++) {
            measured += isNew(Double.NaN) ? 1 : 0;
        }
        assertEquals(2, measured);
        assertEquals(20, 1e9 / beat.intervalNanos(), 0.5, "nothing is not learned from");
    }

    @Test
    void withoutRepeatsEachLineIsNew() {
        for (int i = 0; i < 100; i++) {
            assertTrue(isNew(300 + random.nextGaussian()));
        }
        assertTrue(isNew(300));
        assertTrue(isNew(300), "and two equal ones are two");
    }

    /**
     * A still hand over a coarse sensor can print one value for minutes: its interval is not taken for longer than a
     * 16th.
     */
    @Test
    void aValueThatLastsIsAHandThatLiesStill() {
        for (int i = 0; i < 1000; i++) {
            isNew(300);
        }
        for (int i = 0; i < 20; i++) {
            now += Nanos.PER_SECOND;
            isNew(300 + i);
        }
        assertTrue(1e9 / beat.intervalNanos() >= 16);
        isNew(500);
        isNew(501);
        assertEquals(LINE, beat.intervalNanos(), "it starts at the pace of lines");
    }
}
