package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandSmootherTest {
    private static final double TARGET_MM = 5 / 6.0;

    /** Watching for moves and vibrato may cost a still hand so much of its steadiness. */
    private static final double COST_01 = 0.03;

    /** Closed form of a one-pole over white noise: {@code s sqrt(a / (2 - a))}. */
    @ParameterizedTest(name = "{1} readings a second, noise {0} mm")
    @CsvSource({"2.15, 50", "3, 100", "1.5, 30", "0.8, 18", "8, 50"})
    void aStillHandIsAsSteadyAsByAPlainMean(double noiseMm, double ratePerS) {
        SmoothSettings settings = SmoothSettings.reaching(noiseMm, ratePerS, TARGET_MM);
        HandSmoother smoother = new HandSmoother(settings);
        Random random = new Random(71);
        double squares = 0;
        int count = (int) (600 * ratePerS);
        for (int i = 0; i < count; i++) {
            double out = smoother.next(noiseMm * random.nextGaussian(), 1 / ratePerS);
            squares += out * out;
        }
        double share = settings.share01();
        double plain = noiseMm * Math.sqrt(share / (2 - share));
        assertEquals(1, Math.sqrt(squares / count) / plain, COST_01);
    }

    private static double swingKept01(double hz, double amplitudeMm) {
        SmoothSettings settings = SmoothSettings.reaching(2.15, 50, TARGET_MM);
        HandSmoother smoother = new HandSmoother(settings);
        double sine = 0;
        double cosine = 0;
        for (int i = 0; i < 1000; i++) {
            double angle = 2 * Math.PI * hz * i / 50;
            double out = smoother.next(300 + amplitudeMm * Math.sin(angle), 0.02) - 300;
            if (i >= 500) {
                sine += out * Math.sin(angle);
                cosine += out * Math.cos(angle);
            }
        }
        return 2 * Math.hypot(sine, cosine) / 500 / amplitudeMm;
    }

    /**
     * The rates at which people vibrate (R. Timmers, P. Desain, ICMPC 2000: 5.5 to 8 Hz), 4.2 mm either way; at 8 Hz it
     * is two thirds.
     */
    @ParameterizedTest
    @CsvSource({"5.5", "6", "6.5", "7"})
    void vibratoKeepsFourFifths(double hz) {
        assertTrue(swingKept01(hz, 25 / 6.0) > 0.8, hz + " Hz: " + swingKept01(hz, 25 / 6.0));
    }

    /** What is no more than noise is no vibrato. */
    @Test
    void aTremorIsSmoothedAway() {
        assertTrue(swingKept01(6, 0.5) < 0.5, "kept " + swingKept01(6, 0.5));
    }

    @Test
    void otherSettingsTakeOverFromWhereItIs() {
        HandSmoother smoother = new HandSmoother(SmoothSettings.reaching(2, 50, 1));
        for (int i = 0; i < 100; i++) {
            smoother.next(300, 0.02);
        }
        smoother.use(SmoothSettings.reaching(2, 50, 0.1));
        assertEquals(300, smoother.next(300, 0.02), 1e-9);
        smoother.reset();
        assertEquals(200, smoother.next(200, 0.02), 1e-9);
    }
}
