package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import org.junit.jupiter.api.Test;

class SimulatedHandTest {
    private static final double MM = 1e-6;
    private static final long SEED = 11;

    private static long s(double seconds) {
        return Nanos.ofSeconds(seconds);
    }

    private static SimulatedHand stillAt(double mm) {
        SimulatedHand hand = new SimulatedHand(HandSettings.STILL, SEED);
        hand.goTo(mm, 0, 0.5);
        return hand;
    }

    @Test
    void aMoveFromRestHasThePeakSpeedOfMinimumJerk() {
        // T. Flash, N. Hogan, J. Neurosci. 5 (1985): peak speed 1.875 D/T, half-way in time and in space
        SimulatedHand hand = stillAt(100);
        hand.goTo(500, s(2), 0.8);
        double peak = 0;
        double peakAt = 0;
        for (double t = 2; t < 2.8; t += 0.001) {
            double speed = (hand.intendedMm(s(t + 0.001)) - hand.intendedMm(s(t))) / 0.001;
            peakAt = speed > peak ? t + 0.0005 : peakAt;
            peak = Math.max(peak, speed);
        }
        assertEquals(1.875 * 400 / 0.8, peak, 0.01);
        assertEquals(2.4, peakAt, 0.001);
        assertEquals(300, hand.intendedMm(s(2.4)), MM);
        assertEquals(500, hand.intendedMm(s(9)), MM);
    }

    @Test
    void aMoveThatInterruptsAnotherKeepsPlaceAndSpeed() {
        SimulatedHand hand = stillAt(100);
        hand.goTo(500, s(2), 0.8);
        hand.goTo(150, s(2.4), 0.8);
        double mostJump = 0;
        double lastSpeed = 0;
        for (double t = 1.9; t < 3.4; t += 0.001) {
            double speed = (hand.intendedMm(s(t + 0.001)) - hand.intendedMm(s(t))) / 0.001;
            mostJump = Math.max(mostJump, Math.abs(speed - lastSpeed));
            lastSpeed = speed;
        }
        // braking from 937 mm/s within 0.8 s: nowhere more than 20 mm/s in a millisecond
        assertTrue(mostJump < 20, "speed jumps by " + mostJump + " mm/s");
        assertEquals(150, hand.intendedMm(s(3.2)), MM);
    }

    @Test
    void earlierTimesKeepTheirAnswerAfterLaterGoals() {
        SimulatedHand hand = new SimulatedHand(HandSettings.USUAL, SEED);
        hand.goTo(100, 0, 0.7);
        hand.goTo(400, s(3), 0.7);
        double before = hand.trueMm(s(1.9));
        hand.goTo(200, s(2), 0.7);
        hand.leave(s(5), 0.4);
        assertEquals(before, hand.trueMm(s(1.9)));
        assertEquals(200, hand.intendedMm(s(4)), MM, "the goal planned for 3 s was replaced at 2 s");
    }

    @Test
    void aHandIsAbsentUntilItsFirstGoalAndAfterLeaving() {
        SimulatedHand hand = new SimulatedHand(HandSettings.USUAL, SEED);
        assertFalse(hand.presentAt(s(-5)));
        long arrived = hand.goTo(200, s(1), 0.7);
        long gone = hand.leave(s(4), 0.4);
        assertEquals(s(1.7), arrived);
        assertEquals(s(4.4), gone);
        assertFalse(hand.presentAt(s(0.999)));
        assertTrue(hand.presentAt(s(1)));
        assertTrue(hand.presentAt(gone - 1));
        assertFalse(hand.presentAt(gone));
        assertEquals(SimulatedHand.AWAY_MM, hand.trueMm(s(9)));
        assertTrue(hand.intendedMm(s(4.2)) > 500, "half-way out it is lifted well above its place");
    }

    @Test
    void swayHasItsAmplitudeAndFrequencyAndEndsAtItsCentre() {
        SimulatedHand hand = stillAt(200);
        hand.sway(300, 40, 0.8, s(2), 20);
        double[] mm = new double[1800];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = hand.intendedMm(s(3 + i * 0.01));
        }
        assertEquals(40, Series.amplitude(mm, 100, 0.8), 0.5);
        assertEquals(300, hand.intendedMm(s(30)), MM);
    }

    @Test
    void tremorHasItsSizeAndItsBand() {
        // band 6..12 Hz: M. Lakie et al., J. Physiol. 593 (2015) 4411; 0.01 g at 7 Hz = 0.051 mm, Arch. Neurol. 39
        // (1982) 358
        double[] mm = unsteadiness(new HandSettings(0.05, 0), 100, 60_000);
        assertEquals(0.05, Series.rms(mm), 0.001);
        double hz = Series.meanHz(mm, 100);
        assertTrue(hz > 6 && hz < 12, hz + " Hz");
    }

    @Test
    void wanderHasItsSizeAndIsSlow() {
        double[] mm = unsteadiness(new HandSettings(0, 1.0), 10, 60_000);
        assertEquals(1.0, Series.rms(mm), 0.02);
        double hz = Series.meanHz(mm, 10);
        assertTrue(hz > 0.05 && hz < 0.5, hz + " Hz");
    }

    @Test
    void impossibleGoalsAreRefusedWithTheValue() {
        SimulatedHand hand = stillAt(100);
        String message = String.valueOf(assertThrows(IllegalArgumentException.class, () -> hand.goTo(Double.NaN, 0, 1))
                .getMessage());
        assertTrue(message.contains("NaN mm"), message);
        assertThrows(IllegalArgumentException.class, () -> hand.goTo(200, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> hand.sway(30, 40, 1, 0, 1));
    }

    private static double[] unsteadiness(HandSettings settings, double samplesPerS, int count) {
        SimulatedHand hand = new SimulatedHand(settings, SEED);
        hand.goTo(300, 0, 0.5);
        double[] mm = new double[count];
        for (int i = 0; i < count; i++) {
            long t = s(1 + i / samplesPerS);
            mm[i] = hand.trueMm(t) - hand.intendedMm(t);
        }
        return mm;
    }
}
