package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Nanos;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each refusal with a near miss that must be let through. Two seconds at 50 lines a second, 1 mm steps. */
class HoldJudgeTest {
    private static final int LINES = 101;
    private static final double PER_S = 50;

    private final Sensor ranger = Sensor.of(ChannelSpec.parse("1:distance:mm"), Air.USUAL, 5);
    private final Sensor light = Sensor.of(ChannelSpec.parse("1:photoresistor:counts10"), Air.USUAL, 5);
    private final HoldJudge judge = new HoldJudge(HoldRules.USUAL, ranger);
    private final Random random = new Random(41);

    /** A hand that is where {@code mmAtS} says, seen through noise; every {@code each}-th reading is missing. */
    private HoldWindow window(DoubleUnaryOperator mmAtS, double noiseMm, int missingOf100) {
        HoldWindow window = HoldWindow.endless();
        for (int i = 0; i < LINES; i++) {
            double seconds = i / PER_S;
            boolean there = i * 37 % 100 >= missingOf100;
            double mm = mmAtS.applyAsDouble(seconds) + noiseMm * random.nextGaussian();
            window.add(Nanos.ofSeconds(seconds), there ? Math.rint(mm) : 0, there);
        }
        return window;
    }

    private HoldJudge.Verdict judged(HoldWindow window) {
        return judge.judge(window, Optional.empty(), 1, 1);
    }

    private static void assertNotYet(HoldJudge.Why why, String words, HoldJudge.Verdict verdict) {
        assertEquals(why, verdict.why(), verdict.reason());
        assertTrue(verdict.held().isEmpty());
        assertTrue(verdict.reason().matches(words), verdict.reason());
    }

    private static void assertHeld(HoldJudge.Verdict verdict) {
        assertEquals(HoldJudge.Why.NONE, verdict.why(), verdict.reason());
        assertTrue(verdict.held().isPresent());
    }

    @Test
    void nobodyThereIsSaidWithItsShare() {
        assertNotYet(
                HoldJudge.Why.NO_HAND,
                "no hand seen: 95 % of readings without one \\(at most 25 %\\)",
                judged(window(s -> 200, 2, 95)));
    }

    @Test
    void tooManyMissingReadingsAreRefusedAndAFewLessAreNot() {
        assertNotYet(
                HoldJudge.Why.MISSING,
                "29 % of readings missing \\(at most 25 %\\): roll the sleeve up, palm flat",
                judged(window(s -> 200, 2, 28)));
        assertHeld(judged(window(s -> 200, 2, 24)));
    }

    @Test
    void tooFewReadingsAreRefusedAndOneMoreIsNot() {
        for (int count = 7; count <= 8; count++) {
            HoldWindow window = HoldWindow.endless();
            for (int i = 0; i < count; i++) {
                window.add(i * Nanos.PER_SECOND / 4, 200 + i % 2, true);
            }
            if (count == 7) {
                assertNotYet(HoldJudge.Why.TOO_FEW, "only 7 readings in 2 s \\(at least 8\\): give.*", judged(window));
            } else {
                assertHeld(judged(window));
            }
        }
    }

    /** 17 mm a second make 34 mm in 2 s. */
    @Test
    void aHandThatDriftsIsToldHowFar() {
        assertNotYet(
                HoldJudge.Why.MOVING,
                "hand still moving: 3[345] mm in 2 s \\(at most 4 mm\\)",
                judged(window(s -> 200 + 17 * s, 1, 0)));
    }

    /** Without noise 4 mm in all are let through; 2.4 mm a second are 4.8 mm. */
    @ParameterizedTest
    @CsvSource({"2.4, false", "-2.4, false", "1.7, true", "-1.7, true"})
    void justMoreThanFourMillimetresOfDriftAreRefused(double mmPerS, boolean isHeld) {
        assertEquals(
                isHeld, judged(window(s -> 200 + mmPerS * s, 0.3, 0)).held().isPresent());
    }

    /** Wild readings at one end of the window are no drift: the slope is the median of all pairs. */
    @Test
    void aBurstOfWildReadingsIsNoDrift() {
        HoldWindow window = HoldWindow.endless();
        for (int i = 0; i < LINES; i++) {
            double mm = i > 85 && i % 2 == 0 ? 420 : 200 + random.nextInt(3) - 1;
            window.add(Nanos.ofSeconds(i / PER_S), mm, true);
        }
        assertHeld(judged(window));
    }

    @Test
    void aHandThatGoesAndComesBackIsSwingingNotHeld() {
        DoubleUnaryOperator bump = s -> 200 - 20 * Math.pow(Math.sin(Math.PI * s / 2), 2);
        assertNotYet(
                HoldJudge.Why.SWINGING,
                "hand not still: to and fro by 1\\d mm in 2 s \\(at most 4 mm\\)",
                judged(window(bump, 1, 0)));
        assertHeld(judged(window(s -> 200 - 3 * Math.pow(Math.sin(Math.PI * s / 2), 2), 1, 0)));
    }

    @Test
    void aHandThatHasJustArrivedIsAskedToStay() {
        assertNotYet(
                HoldJudge.Why.ARRIVING,
                "hand just arrived: keep it still",
                judged(window(s -> s < 0.8 ? 400 - 250 * s : 200, 1, 0)));
    }

    /** With 6 mm of noise the medians of thirds alone scatter by more than 4 mm now and then: that is no motion. */
    @Test
    void aStillHandUnderANoisySensorIsHeld() {
        int held = 0;
        for (int draw = 0; draw < 200; draw++) {
            held += judged(window(s -> 200, 6, 0)).held().isPresent() ? 1 : 0;
        }
        assertTrue(held >= 198, held + " of 200");
    }

    /** 20 times 2 mm of noise are 40 mm, a few per cent off because the noise itself is measured. */
    @ParameterizedTest
    @CsvSource({"0.5, 19, false", "0.5, 22, true", "2, 34, false", "2, 48, true"})
    void aMoveNeedsTwentyMillimetresAndTwentyTimesTheNoise(double noiseMm, double moveMm, boolean isHeld) {
        SteadyValue last =
                judged(window(s -> 200, noiseMm, 0)).held().orElseThrow().value();
        HoldJudge.Verdict verdict = judge.judge(window(s -> 200 + moveMm, noiseMm, 0), Optional.of(last), 1, 1);
        assertEquals(isHeld, verdict.held().isPresent(), verdict.reason());
        if (!isHeld) {
            assertTrue(
                    verdict.reason().matches("no move seen: \\d+ mm from the last hold \\(more than \\d+ mm\\)"),
                    verdict.reason());
        }
    }

    @Test
    void theFirstHoldNeedsNoMove() {
        assertHeld(judged(window(s -> 200, 2, 0)));
    }

    /** ln R of a divider rises by 0.05 over the hold, or by 0.1. */
    @Test
    void overALightCellTheLimitIsOneOfLogLight() {
        HoldJudge overLight = new HoldJudge(HoldRules.USUAL, light);
        for (double rise : new double[] {0.05, 0.1}) {
            HoldWindow window = HoldWindow.endless();
            for (int i = 0; i < LINES; i++) {
                window.add(Nanos.ofSeconds(i / PER_S), 1 + rise * i / LINES + 0.001 * random.nextGaussian(), true);
            }
            HoldJudge.Verdict verdict = overLight.judge(window, Optional.empty(), 0, 1);
            assertEquals(rise < 0.06, verdict.held().isPresent(), verdict.reason());
        }
    }

    /** A sensor of 20 measurements a second behind a board of 50 lines: noise of 2.15 mm, not that over sqrt(2.5). */
    @Test
    void aHoldOfARepeatedSensorHasTheNoiseOfItsMeasurements() {
        HoldWindow window = HoldWindow.endless();
        double value = 200;
        for (int i = 0; i < 501; i++) {
            if (i * 2 / 5 != (i - 1) * 2 / 5) {
                value = Math.rint(200 + 2.15 * random.nextGaussian());
            }
            window.add(Nanos.ofSeconds(i / PER_S), value, true);
        }
        HoldJudge.Held held = judged(window).held().orElseThrow();
        assertEquals(2.5, held.steadiness().linesPerUpdate(), 0.02);
        assertEquals(200, held.value().noise().kept(), 4);
        assertEquals(2.17, held.value().noise().white(), 0.3);
    }

    /** A drift of 1.5 mm/s is told as such; its rms over 2 s is 3 / sqrt(12) = 0.87 mm. */
    @Test
    void driftAndSlowPartAreToldApartFromTheNoise() {
        HoldJudge.Held held = judged(window(s -> 200 + 1.5 * s, 0.4, 0)).held().orElseThrow();
        assertEquals(1.5, held.steadiness().driftPerS(), 0.2);
        assertEquals(0.87, held.steadiness().slow(), 0.15);
        assertEquals(Math.sqrt(0.16 + 1 / 12.0), held.value().noise().white(), 0.12);
        assertTrue(held.steadiness().effectiveCount() < 20, "" + held.steadiness());
    }
}
