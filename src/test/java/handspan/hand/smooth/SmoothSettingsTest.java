package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmoothSettingsTest {
    /** Of the stated wobble: now and then noise is taken for a move. */
    private static final double STATED_WITHIN = 0.05;

    private static final double TOLERANCE_MS = 1e-6;

    /** Ten minutes and more of a still hand, white noise; 0.83 mm is 5 cents at two octaves in 40 cm. */
    @ParameterizedTest(name = "noise {0} mm at {1}/s, {2} mm wanted")
    @CsvSource({
        "0.3,  50,   0.83",
        "0.8,  18,   0.83",
        "0.8,  100,  0.5",
        "1.0,  30,   0.5",
        "2.15, 18,   0.83",
        "2.15, 55.6, 0.83",
        "2.15, 55.6, 2",
        "4,    30,   0.83",
        "4,    100,  2",
        "8,    18,   0.83",
        "8,    50,   0.83"
    })
    void aStillHandWobblesAsStated(double noiseMm, double ratePerS, double targetMm) {
        SmoothSettings settings = SmoothSettings.reaching(noiseMm, ratePerS, targetMm);
        assertEquals(settings.jitterMm(), wobbleMm(settings, noiseMm, ratePerS), STATED_WITHIN * settings.jitterMm());
    }

    private static double wobbleMm(SmoothSettings settings, double noiseMm, double ratePerS) {
        HandSmoother filter = new HandSmoother(settings);
        Random random = new Random(45);
        int count = 60_000;
        double sum = 0;
        double squares = 0;
        for (int i = -500; i < count; i++) {
            double off = filter.next(300 + noiseMm * random.nextGaussian(), 1 / ratePerS) - 300;
            sum += i < 0 ? 0 : off;
            squares += i < 0 ? 0 : off * off;
        }
        return Math.sqrt(squares / count - sum / count * (sum / count));
    }

    /** A drift of 3 mm/s under the noise: the mean way behind, over the speed. */
    @ParameterizedTest(name = "noise {0} mm at {1}/s")
    @CsvSource({"2.15, 55.6", "4, 30", "4, 100", "2.15, 18"})
    void aHandThatHardlyMovesIsFollowedWithinTheStatedLag(double noiseMm, double ratePerS) {
        SmoothSettings settings = SmoothSettings.reaching(noiseMm, ratePerS, 0.83);
        HandSmoother filter = new HandSmoother(settings);
        Random random = new Random(47);
        int count = 400_000;
        double behindMm = 0;
        for (int i = 0; i < count; i++) {
            double trueMm = 3 * i / ratePerS;
            behindMm += (trueMm - filter.next(trueMm + noiseMm * random.nextGaussian(), 1 / ratePerS)) / count;
        }
        double lagMs = 1000 * behindMm / 3;
        assertTrue(lagMs <= settings.stillLagMs() && lagMs > settings.stillLagMs() / 2, lagMs + " ms");
    }

    @Test
    void theWantedWobbleIsMetWhereTheLagAllowsIt() {
        SmoothSettings settings = SmoothSettings.reaching(2.15, 100, 0.83);
        assertEquals(0.83, settings.jitterMm(), 1e-9);
        assertTrue(settings.stillLagMs() < SmoothSettings.LONGEST_LAG_MS);
    }

    /** The longest lag is the project's own limit: 60 ms, at every rate. */
    @ParameterizedTest(name = "{0} readings a second")
    @CsvSource({"18", "30", "55.6", "100", "400"})
    void wildNoiseCostsSixtyMillisecondsAndNoMore(double ratePerS) {
        SmoothSettings settings = SmoothSettings.reaching(40, ratePerS, 0.5);
        assertEquals(60, settings.stillLagMs(), TOLERANCE_MS);
        assertTrue(settings.jitterMm() > 0.5 && settings.jitterMm() < 40);
    }

    @Test
    void lessNoiseNeverCostsMoreLagAndMoreNoiseNeverGivesASteadierHand() {
        SmoothSettings before = SmoothSettings.reaching(0, 50, 0.83);
        for (double noiseMm = 0.1; noiseMm < 20; noiseMm += 0.1) {
            SmoothSettings settings = SmoothSettings.reaching(noiseMm, 50, 0.83);
            assertTrue(settings.stillLagMs() >= before.stillLagMs() - TOLERANCE_MS, noiseMm + " mm");
            assertTrue(settings.jitterMm() >= before.jitterMm() - 1e-9, noiseMm + " mm");
            before = settings;
        }
    }

    /** A share of 0.9 leaves (1 - 0.9) / 0.9 = 1/9 of a reading of lag. */
    @Test
    void aQuietSensorIsHardlySmoothed() {
        SmoothSettings settings = SmoothSettings.reaching(0, 50, 0.83);
        assertEquals(0, settings.jitterMm(), 0);
        assertEquals(20.0 / 9, settings.stillLagMs(), TOLERANCE_MS);
    }

    /**
     * Noise of 2.15 mm, 50 readings a second, 0.5 mm wanted: ratio 0.2326, share 2 r^2 / (1 + r^2) = 0.1026, lag (1 -
     * 0.1026) / 0.1026 = 8.745 readings of 20 ms (worked out by hand).
     */
    @Test
    void whatTheTargetWouldCostIsSaid() {
        SmoothSettings settings = SmoothSettings.reaching(2.15, 50, 0.5);
        assertFalse(settings.reachesTarget());
        assertEquals(174.9, settings.lagForTargetMs(), 0.1);
        assertTrue(SmoothSettings.reaching(2.15, 50, 1).reachesTarget());
    }

    /** Echo sensors: 1.25 mm of noise at 200 mm, 3.5 at 400 (measured on a real one, at a flat target). */
    @Test
    void aHandIsQuickerWhereTheSensorIsQuiet() {
        SensorNoise noise = new SensorNoise(List.of(new SensorNoise.Point(200, 1.25), new SensorNoise.Point(400, 3.5)));
        SmoothSettings settings = SmoothSettings.reaching(noise, 18, 0.83, Quickness.USUAL);
        assertTrue(settings.share01(1.25) > settings.share01(3.5));
        assertEquals(0.83, settings.jitterMm(200), 1e-9);
        assertTrue(settings.jitterMm(400) > 0.83);
        assertEquals(settings.jitterMm(400), settings.jitterMm(), 1e-12);
    }

    @Test
    void aStepOfQuicknessDoublesTheWobbleAndHalvesTheLongestLag() {
        SensorNoise noise = SensorNoise.even(2.15);
        SmoothSettings quicker = SmoothSettings.reaching(noise, 50, 0.83, new Quickness(1));
        assertEquals(1.66, quicker.targetMm(), 1e-12);
        assertEquals(30, quicker.longestLagMs(), 1e-12);
        SmoothSettings steadier = SmoothSettings.reaching(noise, 50, 0.83, new Quickness(-1));
        assertEquals(0.415, steadier.targetMm(), 1e-12);
        assertEquals(120, steadier.stillLagMs(), TOLERANCE_MS);
    }

    /** Of white noise a one-pole of share 1 / (1 + lag) passes sqrt(1 / (1 + 2 lag)), lag in readings. */
    @Test
    void theTradeFallsWithTheRootOfTheLag() {
        List<SmoothSettings.Trade> trades = SmoothSettings.reaching(2, 50, 0.5).trades(240);
        assertEquals(2, trades.get(0).jitterMm(), 1e-12);
        assertEquals(240, trades.get(trades.size() - 1).lagMs(), 1e-9);
        assertEquals(2 / Math.sqrt(25), trades.get(trades.size() - 1).jitterMm(), 1e-9);
    }
}
