package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpikeGateTest {
    private static final double NOISE_MM = 2;

    private static final long TICK_NANOS = Nanos.ofMs(20);

    private final SpikeGate gate = new SpikeGate();

    private long timeNanos;

    private boolean passes(double mm) {
        timeNanos += TICK_NANOS;
        return gate.passes(mm, timeNanos, Double.NaN, NOISE_MM);
    }

    @ParameterizedTest(name = "{0} mm away")
    @ValueSource(doubles = {150, -150, 700})
    void oneWildReadingIsHeldBack(double awayMm) {
        assertTrue(passes(250));
        assertFalse(passes(250 + awayMm));
        assertTrue(passes(251));
        assertTrue(passes(249));
        assertEquals(1, gate.heldBack());
    }

    /** 62 cm, then 49.3 on the way, then 11.9: what an echo ranger prints as a hand comes in. */
    @Test
    void aHalfWayGhostNeverPasses() {
        assertTrue(passes(620));
        assertFalse(passes(493));
        assertFalse(passes(119));
        assertTrue(passes(119.5));
        assertEquals(2, gate.heldBack());
    }

    @Test
    void aJumpPassesAtTheSecondReadingThatSaysSo() {
        assertTrue(passes(200));
        assertFalse(passes(400));
        assertTrue(passes(401));
        assertTrue(gate.hasJumped());
        assertTrue(passes(402));
        assertFalse(gate.hasJumped());
        assertFalse(passes(200));
    }

    @Test
    void twoWildReadingsApartFromEachOtherDoNotConfirmOneAnother() {
        assertTrue(passes(200));
        assertFalse(passes(500));
        assertFalse(passes(350));
        assertTrue(passes(201));
        assertFalse(passes(500), "the wild reading before the good one is forgotten");
    }

    /** A fast reach peaks at about 2 m/s (common practice); readings carry three standard deviations of noise. */
    @ParameterizedTest(name = "{0} readings a second")
    @ValueSource(doubles = {50, 18, 100})
    void aFastHandAlwaysPasses(double ratePerS) {
        Random random = new Random(43);
        for (int reach = 0; reach < 200; reach++) {
            SpikeGate fresh = new SpikeGate();
            double phase = random.nextDouble();
            for (int i = 0; i < 3 * ratePerS; i++) {
                double timeS = i / ratePerS;
                // 200 mm either way at 2 m/s when passing the middle
                double mm = 300 + 200 * Math.sin(10 * timeS + phase) + noise(random);
                assertTrue(fresh.passes(mm, Nanos.ofSeconds(timeS), Double.NaN, NOISE_MM), "held back " + mm + " mm");
            }
        }
    }

    private static double noise(Random random) {
        return NOISE_MM * Math.max(-3, Math.min(3, random.nextGaussian()));
    }

    /** Six standard deviations, and 2500 mm/s: 12 + 50 mm in a reading of 20 ms. */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"61.9, true", "-61.9, true", "62.1, false", "-62.1, false"})
    void theReachIsSixDeviationsAndTheWayOfTheFastestHand(double awayMm, boolean passes) {
        passes(300);
        assertEquals(passes, passes(300 + awayMm));
    }

    /** Six standard deviations, and half of 80 m/s^2 times 20 ms squared: 12 + 16 mm from where it is expected. */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"27.9, true", "-27.9, true", "28.1, false", "-28.1, false"})
    void whereTheHandIsExpectedItsReachIsWhatItCanAccelerate(double awayMm, boolean passes) {
        assertTrue(gate.passes(300, Nanos.ofMs(20), 300, NOISE_MM));
        assertEquals(passes, gate.passes(310 + awayMm, Nanos.ofMs(40), 310, NOISE_MM));
    }

    @Test
    void afterAPauseTheHandMayBeAnywhere() {
        passes(100);
        timeNanos += Nanos.ofMs(400);
        assertTrue(passes(900));
    }

    @Test
    void afterAResetTheNextReadingPasses() {
        passes(100);
        assertFalse(passes(400));
        gate.reset();
        assertTrue(passes(800));
        assertEquals(1, gate.heldBack());
    }

    @Test
    void noNumberAndNoTimeMakesItThrow() {
        Random random = new Random(44);
        double[] odd = {0, -0.0, Double.MAX_VALUE, -Double.MAX_VALUE, Double.MIN_VALUE, 1e308, -8190, 65_535};
        long passed = 0;
        for (int i = 0; i < 10_000; i++) {
            double mm = random.nextBoolean() ? odd[random.nextInt(odd.length)] : 1000 * random.nextGaussian();
            passed += gate.passes(mm, random.nextLong(), random.nextBoolean() ? mm / 2 : Double.NaN, NOISE_MM) ? 1 : 0;
        }
        assertEquals(10_000, passed + gate.heldBack());
    }
}
