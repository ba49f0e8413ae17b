package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SparingGateTest {
    private static final long FRAME_NANOS = 5 * Nanos.PER_MS;

    private static boolean offer(SparingGate gate, double value, long frame) {
        return gate.passes(value, 0, frame * FRAME_NANOS, false);
    }

    @Test
    void withoutALimitEverythingPasses() {
        SparingGate gate = new SparingGate(Sparing.NONE);
        for (int i = 0; i < 10; i++) {
            assertTrue(offer(gate, 1, i));
        }
    }

    @Test
    void onChangeOnlyAnotherValuePasses() {
        SparingGate gate = new SparingGate(new Sparing(true, 0, 0));
        assertTrue(offer(gate, 1, 0));
        assertFalse(offer(gate, 1, 1));
        assertTrue(offer(gate, Math.nextUp(1.0), 2));
        assertTrue(gate.passes(Math.nextUp(1.0), 3, 3 * FRAME_NANOS, false), "the second number counts too");
        assertTrue(gate.passes(Math.nextUp(1.0), 3, 4 * FRAME_NANOS, true), "what has to go out goes out");
    }

    @Test
    void aDeadBandIsMeasuredFromWhatWasSent() {
        SparingGate gate = new SparingGate(new Sparing(false, 0, 1));
        assertTrue(offer(gate, 10, 0));
        assertFalse(offer(gate, 10.7, 1));
        assertFalse(offer(gate, 11, 2), "up to the band is no change");
        assertTrue(offer(gate, 11.25, 3), "small steps add up");
        assertFalse(offer(gate, 10.5, 4));
    }

    /** Frames come 200 a second, which no limit here divides evenly. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 7, 30, 60, 99, 144, 200})
    void aLimitIsReachedOnAverageAndNeverPassedByMoreThanOne(double mostPerS) {
        SparingGate gate = new SparingGate(new Sparing(false, mostPerS, 0));
        int seconds = 100;
        int passed = 0;
        for (int frame = 0; frame < 200 * seconds; frame++) {
            passed += offer(gate, frame, frame) ? 1 : 0;
        }
        assertEquals(mostPerS * seconds, passed, 1);
    }

    @Test
    void aPauseSavesNothingUp() {
        SparingGate gate = new SparingGate(new Sparing(false, 20, 0));
        assertTrue(offer(gate, 1, 0));
        assertTrue(offer(gate, 2, 1000));
        assertFalse(offer(gate, 3, 1001));
        assertFalse(offer(gate, 4, 1004));
        assertTrue(offer(gate, 5, 1010));
    }

    @Test
    void withAnyChangesTheLastValueArrivesWithinTheInterval() {
        Random random = new Random(7);
        for (int run = 0; run < 200; run++) {
            SparingGate gate = new SparingGate(new Sparing(random.nextBoolean(), 25, 0));
            double sent = Double.NaN;
            int frame = 0;
            for (; frame < 100; frame++) {
                double value = random.nextInt(3);
                sent = offer(gate, value, frame) ? value : sent;
            }
            for (int rest = 0; rest < 8; rest++) {
                sent = offer(gate, 9, frame + rest) ? 9 : sent;
            }
            assertEquals(9, sent, 0, "8 frames of 5 ms are the 40 ms of 25 a second");
        }
    }

    @Test
    void limitsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Sparing(false, 0.5, 0));
        assertThrows(IllegalArgumentException.class, () -> new Sparing(false, 1001, 0));
        assertThrows(IllegalArgumentException.class, () -> new Sparing(false, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new Sparing(false, 0, -1));
        assertThrows(IllegalArgumentException.class, () -> new Sparing(false, 0, Double.NaN));
    }
}
