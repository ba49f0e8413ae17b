package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PitchBridgeTest {
    private static final double EXACT = 1e-12;

    /** Half a cosine, by hand: all at the start, half in the middle, nothing at the end. */
    @Test
    void itRunsOutAlongHalfACosine() {
        PitchBridge bridge = new PitchBridge(60);
        bridge.add(0.4, 1000);
        assertEquals(0.4, bridge.at(1000), EXACT);
        assertEquals(0.4 * (1 + Math.sqrt(0.5)) / 2, bridge.at(1000 + 15 * Nanos.PER_MS), EXACT);
        assertEquals(0.2, bridge.at(1000 + 30 * Nanos.PER_MS), EXACT);
        assertEquals(0, bridge.at(1000 + 60 * Nanos.PER_MS), EXACT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, -1, 12, -48})
    void pitchNeverRunsFasterThanFourCentsAMillisecond(double keys) {
        PitchBridge bridge = new PitchBridge(60);
        bridge.add(keys, 0);
        double before = bridge.at(0);
        for (long now = 0; now < 3 * Nanos.PER_SECOND; now += Nanos.PER_MS / 4) {
            assertTrue(Math.abs(bridge.at(now) - before) * 100 <= 4 / 4.0 + 1e-9);
            before = bridge.at(now);
        }
        assertEquals(0, before, EXACT);
    }

    @Test
    void aSecondLeapTakesOverWhatIsLeft() {
        PitchBridge bridge = new PitchBridge(60);
        bridge.add(0.4, 0);
        bridge.add(-0.1, 30 * Nanos.PER_MS);
        assertEquals(0.1, bridge.at(30 * Nanos.PER_MS), EXACT);
        bridge.reset();
        assertEquals(0, bridge.at(31 * Nanos.PER_MS), EXACT);
    }
}
