package handspan.hand.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each measure on traces whose figure is known in closed form. */
class FeelTest {
    private static final double TOLERANCE_MS = 0.1;

    /**
     * A sine's standard deviation is its amplitude over the root of 2; a trend counts, as a ramp's length over root 12.
     */
    @Test
    void jitterIsTheStandardDeviationTrendAndAll() {
        assertEquals(3 / Math.sqrt(2), Feel.jitter(Gesture.sway(11, 200, 3, 2, 0)), 1e-3);
        assertEquals(10 / Math.sqrt(12), Feel.jitter(Gesture.slide(11, 200, 1)), 0.01);
    }

    @ParameterizedTest(name = "{0} ms")
    @ValueSource(doubles = {0, 3, 17.3, 60.5, 121})
    void lagIsFoundToATenthOfAMillisecond(double lagMs) {
        Random random = new Random(1);
        Trace hand = Gesture.moves(20, 100, 500, random);
        Trace sway = Gesture.sway(12, 300, 40, 1.5, 0.1);
        Trace later = Gesture.sway(12, 300, 40, 1.5, 0.1 - 1.5 * lagMs / 1000);
        assertEquals(lagMs, Feel.lagMs(sway, later, 160), TOLERANCE_MS);
        double shift = lagMs / Trace.STEP_MS;
        Trace laterHand = Trace.of(20, time -> {
            double at = Math.max(0, time * Trace.PER_S - shift);
            int i = (int) at;
            return hand.mm(i) + (at - i) * (hand.mm(Math.min(hand.size() - 1, i + 1)) - hand.mm(i));
        });
        assertEquals(lagMs, Feel.lagMs(hand, laterHand, 160), TOLERANCE_MS);
    }

    /** A sway of amplitude A and angular frequency w, late by t: rms error {@code A sqrt(2) sin(w t / 2)}. */
    @Test
    void theErrorOfAMovingHandCountsItsLag() {
        Trace hand = Gesture.sway(11, 300, 40, 1, 0);
        Trace late = Gesture.sway(11, 300, 40, 1, -0.025);
        assertEquals(40 * Math.sqrt(2) * Math.sin(Math.PI * 0.025), Feel.rmsError(hand, late), 1e-3);
    }

    @ParameterizedTest(name = "{0} to {1}, as far as {2}")
    @CsvSource({"100, 300, 306, 0.03", "300, 100, 98, 0.01", "100, 300, 290, -0.05"})
    void overshootIsAShareOfTheMove(double from, double to, double farthest, double share) {
        Trace out = Trace.of(3, time -> time < 1 ? from : time < 1.2 ? farthest : (from + farthest) / 2);
        assertEquals(share, Feel.overshoot01(out, from, to), 1e-9);
    }

    @Test
    void gainIsTheShareOfASinesAmplitudeWhateverLiesUnderIt() {
        Trace out = Trace.of(11, time -> 300 + 3 * Math.sin(2 * Math.PI * (6 * time + 0.3)) + Math.sin(11 * time));
        assertEquals(0.75, Feel.gain01(out, 6, 4), 0.01);
    }

    /** A sway of 3 Hz about the boundary crosses it 360 times a minute; play beyond its amplitude stops that. */
    @Test
    void flutterCountsChangesBeyondThePlay() {
        Trace sway = Gesture.sway(21, 300, 2, 3, 0.1);
        assertEquals(360, Feel.flutterPerMinute(sway, 300, 0), 1e-9);
        assertEquals(360, Feel.flutterPerMinute(sway, 300, 1.9), 3);
        assertEquals(0, Feel.flutterPerMinute(sway, 300, 2.1), 0);
    }

    @Test
    void aSpikeThroughIsCountedOnceHoweverLong() {
        Trace hand = Gesture.still(5, 300);
        Trace out = Trace.of(5, time -> (time > 2 && time < 2.1) || (time > 3 && time < 3.02) ? 340 : 301);
        assertEquals(2, Feel.spikesThrough(hand, out, 20));
        assertEquals(0, Feel.spikesThrough(hand, out, 41));
    }

    /** {@code 1 - exp(-t / tau)} comes to four fifths after {@code tau ln 5}. */
    @Test
    void arrivalIsWhenAStepHasComeSoFarForGood() {
        double tauS = 0.06;
        Trace out = Trace.of(4, time -> time < 2 ? 100 : 102 - 2 * Math.exp(-(time - 2) / tauS));
        assertEquals(1000 * tauS * Math.log(5), Feel.arrivalMs(out, 100, 102, 0.8, 2), Trace.STEP_MS);
        assertEquals(Double.POSITIVE_INFINITY, Feel.arrivalMs(Gesture.still(4, 100), 100, 102, 0.8, 2), 0);
    }

    /** The published polynomial's own marks: half-way at half the time, 1.875 times the mean speed there. */
    @Test
    void aMinimumJerkMoveStartsAndEndsGentlyAndIsFastestHalfWay() {
        assertEquals(0.5, Gesture.minimumJerk(0.5), 1e-12);
        assertEquals(1.875, (Gesture.minimumJerk(0.5005) - Gesture.minimumJerk(0.4995)) / 0.001, 1e-4);
        assertEquals(0, Gesture.minimumJerk(-1), 0);
        assertEquals(1, Gesture.minimumJerk(2), 0);
    }

    @Test
    void movesStayWithinTheirEndsAndBelowTheirSpeed() {
        Trace moves = Gesture.moves(60, 100, 500, new Random(2));
        double fastest = 0;
        double farthest = 0;
        for (int i = 1; i < moves.size(); i++) {
            assertTrue(moves.mm(i) >= 100 && moves.mm(i) <= 500, moves.mm(i) + " mm");
            fastest = Math.max(fastest, Math.abs(moves.mm(i) - moves.mm(i - 1)) * Trace.PER_S);
            farthest = Math.max(farthest, Math.abs(moves.mm(i) - moves.mm(0)));
        }
        assertTrue(fastest > 300 && fastest <= 1501, fastest + " mm/s");
        assertTrue(farthest > 100, farthest + " mm");
    }

    /** Mean over 20 ms and held for 20 ms: 9 ms (ten samples, 2 ms apart) and again 9; noise as it was asked for. */
    @Test
    void anEyeIsLateByHalfItsMeasuringAndHalfAReading() {
        Eye eye = new Eye(handspan.hand.smooth.SensorNoise.even(2), 50, 20);
        Trace hand = Gesture.sway(20, 300, 50, 0.8, 0);
        Trace seen = eye.follow(hand, (mm, intervalS) -> mm, new Random(3));
        assertEquals(18, eye.ownLagMs(), 1e-9);
        assertEquals(eye.ownLagMs(), Feel.lagMs(hand, seen, 160), 0.5);
        Trace still = eye.follow(Gesture.still(121, 300), (mm, intervalS) -> mm, new Random(4));
        assertEquals(2, Feel.jitter(still), 0.05);
    }
}
