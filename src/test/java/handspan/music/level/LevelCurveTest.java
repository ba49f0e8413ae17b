package handspan.music.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LevelCurveTest {
    private static final double RELATIVE_TOLERANCE = 1e-11;

    private static final LevelCurve CURVE = new LevelCurve(-60, -6, 0.1, true, 1);

    /** Ratios of -60 and -6 dB: ISO 80000-3:2006, 20 lg of the amplitude ratio, worked out apart from this code. */
    @Test
    void floorKneeAndCeilingHaveTheirGains() {
        assertEquals(0, CURVE.gain01(0), 0);
        assertEquals(0.001, CURVE.gain01(0.1), RELATIVE_TOLERANCE * 0.001);
        assertEquals(0.501187233627, CURVE.gain01(1), RELATIVE_TOLERANCE);
        assertEquals(0.501187233627, CURVE.ceilingGain01(), RELATIVE_TOLERANCE);
    }

    /** 54 dB over nine tenths of the zone are 6 dB a tenth. */
    @ParameterizedTest
    @CsvSource({"0.2, -54", "0.55, -33", "0.9, -12", "0.9999999, -6.000006"})
    void aboveTheKneeLevelIsLinearInDecibels(double place, double levelDb) {
        assertEquals(levelDb, 20 * Math.log10(CURVE.gain01(place)), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0.05, 0.0005", "0.02, 0.0002", "0.0999, 0.000999"})
    void belowTheKneeGainIsLinearToSilence(double place, double gain) {
        assertEquals(gain, CURVE.gain01(place), RELATIVE_TOLERANCE * gain);
    }

    @Test
    void gainRisesAllTheWayWithoutAStep() {
        double before = CURVE.gain01(0);
        for (int i = 1; i <= 10_000; i++) {
            double gain = CURVE.gain01(i / 10_000.0);
            assertTrue(gain > before, "at " + i);
            assertTrue(gain - before < 0.0005, "a step at " + i);
            before = gain;
        }
    }

    @Test
    void theLoudEndMayBeTheNearOne() {
        LevelCurve near = new LevelCurve(-60, -6, 0.1, false, 1);
        for (double place = 0; place <= 1; place += 0.125) {
            assertEquals(CURVE.gain01(1 - place), near.gain01(place), 1e-15);
        }
    }

    @Test
    void theQuietEndIsSilentEvenWithoutAKnee() {
        LevelCurve curve = new LevelCurve(-60, -6, 0, true, 1);
        assertEquals(0, curve.gain01(0), 0);
        assertEquals(0.001, curve.gain01(1e-12), 1e-12);
    }

    @Test
    void beyondTheZoneLevelStaysAtItsEnds() {
        assertEquals(0, CURVE.gain01(-0.3), 0);
        assertEquals(CURVE.ceilingGain01(), CURVE.gain01(1.7), 0);
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                Double.MAX_VALUE,
                -Double.MAX_VALUE,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                Double.MIN_VALUE,
                1.0000000000000002,
                0.9999999999999999
            })
    void noPlacePassesTheCeiling(double place) {
        for (boolean far : new boolean[] {true, false}) {
            LevelCurve curve = new LevelCurve(-60, -6, 0.03, far, 1);
            assertTrue(curve.gain01(place) >= 0 && curve.gain01(place) <= curve.ceilingGain01());
        }
    }

    @Test
    void noCurvePassesItsCeilingNotEvenByRounding() {
        Random random = new Random(61);
        for (int i = 0; i < 200_000; i++) {
            double floorDb = -120 + 100 * random.nextDouble();
            double ceilingDb = floorDb * random.nextDouble();
            double knee = random.nextInt(10) == 0 ? 0 : 0.5 * random.nextDouble();
            LevelCurve curve = new LevelCurve(floorDb, ceilingDb, knee, true, 1);
            assertTrue(curve.gain01(1) <= curve.ceilingGain01(), curve::toString);
            assertTrue(curve.gain01(1 - 1e-12 * random.nextDouble()) <= curve.ceilingGain01(), curve::toString);
        }
    }

    /** Near-miss twins of every limit. */
    @Test
    void limitsAreTakenAndWhatLiesBeyondIsRefused() {
        assertEquals(1, new LevelCurve(-20, 0, 0.5, true, 0.01).gain01(1), 0);
        assertEquals(1e-6, new LevelCurve(-120, -119, 0, true, 1000).gain01(1e-12), 1e-15);
        refused(-120.1, -6, 0.1, 1);
        refused(-19.9, -6, 0.1, 1);
        refused(-60, 0.1, 0.1, 1);
        refused(-60, -60, 0.1, 1);
        refused(-60, -6, 0.51, 1);
        refused(-60, -6, -0.01, 1);
        refused(-60, -6, 0.1, 0);
        refused(-60, -6, 0.1, 1000.1);
        refused(Double.NaN, -6, 0.1, 1);
        refused(-60, Double.NaN, 0.1, 1);
        refused(-60, -6, Double.NaN, 1);
        refused(-60, -6, 0.1, Double.NaN);
    }

    private static void refused(double floorDb, double ceilingDb, double knee, double rise) {
        assertThrows(IllegalArgumentException.class, () -> new LevelCurve(floorDb, ceilingDb, knee, true, rise));
    }
}
