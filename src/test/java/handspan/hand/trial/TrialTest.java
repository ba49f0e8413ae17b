package handspan.hand.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.SensorNoise;
import handspan.hand.smooth.SmoothSettings;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is promised of a hand, at the very settings of its steadiness: rate, noise, measuring time of real parts. */
class TrialTest {
    /** Two octaves over 400 mm. */
    private static final double CENTS_PER_MM = 6;

    private static final double TARGET_MM = 5 / CENTS_PER_MM;

    private static SmoothSettings settings(double noiseMm, double ratePerS) {
        return SmoothSettings.reaching(noiseMm, ratePerS, TARGET_MM);
    }

    /**
     * Laser ranger 50 and 30 a second (2.15 mm measured over an hour), echo sensor (cycle not under 50 ms by its data
     * sheet; 1.25 to 3.5 mm measured), infrared part (38 ms by its data sheet; 0.8 to 5 mm measured). The limits are
     * the project's own: 20 % of a step after 150 ms or the reachable lag, a twentieth of overshoot.
     */
    @ParameterizedTest(name = "noise {0} mm, {1} a second, measuring {2} ms")
    @CsvSource({
        "2.15, 50, 20",
        "2.15, 30, 33",
        "1.25, 18, 4",
        "3.5, 18, 4",
        "0.8, 26, 38",
        "5, 26, 38",
        "1, 50, 20",
        "6, 50, 20"
    })
    void aHandIsSteadyAsStatedAndFollowedClosely(double noiseMm, double ratePerS, double measuringMs) {
        SmoothSettings settings = settings(noiseMm, ratePerS);
        Trial trial = Trial.of(settings, measuringMs, 100, 500, 10 / CENTS_PER_MM);
        assertEquals(settings.jitterMm(), trial.jitterMm(), 0.1 * settings.jitterMm());
        assertTrue(trial.movingLagMs() < 12, "lag " + trial.movingLagMs() + " ms");
        assertTrue(trial.overshoot01() < 0.05, "overshoot " + trial.overshoot01());
        assertTrue(trial.stepMs() < 150, "small step " + trial.stepMs() + " ms");
    }

    /** 20 cents a second, at the settings of the still hand: within 8 cents rms, the project's own limit. */
    @ParameterizedTest(name = "noise {0} mm, {1} a second")
    @CsvSource({"2.15, 50", "2.15, 30", "1.7, 18"})
    void aSlowSlideIsFollowed(double noiseMm, double ratePerS) {
        Eye eye = new Eye(SensorNoise.even(noiseMm), ratePerS, 4);
        Trace slide = Gesture.slide(20, 250, 20 / CENTS_PER_MM);
        Trace out = eye.follow(slide, new HandSmoother(settings(noiseMm, ratePerS))::next, new Random(5));
        double cents = CENTS_PER_MM * Feel.rmsError(slide, out);
        assertTrue(cents < 8, cents + " cents rms");
    }

    /** A sway of a playing hand, from slow to fast. */
    @ParameterizedTest(name = "{0} Hz")
    @CsvSource({"0.5", "1", "2", "3"})
    void aSwayingHandIsFollowedWithinThreeMilliseconds(double hz) {
        Eye eye = new Eye(SensorNoise.even(2.15), 50, 20);
        Trace sway = Gesture.sway(20, 300, 60 / (1 + hz), hz, 0.2);
        Trace out = eye.follow(sway, new HandSmoother(settings(2.15, 50))::next, new Random(6));
        double lagMs = Feel.lagMs(sway, out, Math.min(160, 450 / hz)) - eye.ownLagMs();
        assertTrue(Math.abs(lagMs) < 8, lagMs + " ms");
    }

    @Test
    void theSameSettingsGiveTheSameFigures() {
        assertEquals(Trial.of(settings(2, 50), 20, 100, 500, 1.7), Trial.of(settings(2, 50), 20, 100, 500, 1.7));
    }

    /** Whatever its quickness, a hand that is twice as steady is not quicker. */
    @Test
    void steadierCostsLagForSmallSteps() {
        SmoothSettings steady = new SmoothSettings(SensorNoise.even(2.15), 50, TARGET_MM, 240);
        SmoothSettings quick = new SmoothSettings(SensorNoise.even(2.15), 50, TARGET_MM, 15);
        Trial slow = Trial.of(steady, 20, 100, 500, 1.7);
        Trial fast = Trial.of(quick, 20, 100, 500, 1.7);
        assertTrue(slow.stepMs() > 2 * fast.stepMs(), slow.stepMs() + " and " + fast.stepMs() + " ms");
        assertTrue(slow.jitterMm() < fast.jitterMm());
    }
}
