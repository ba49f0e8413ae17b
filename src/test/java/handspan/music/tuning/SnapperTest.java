package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SnapperTest {
    private static final ScaleLadder CHROMATIC =
            ScaleLadder.of(Scales.named("chromatic"), EqualDivision.TWELVE, Tonic.of(9), 57, 81);

    private static final double JITTER_CENTS = 10;

    private static final double EXACT = 1e-12;

    private static Snapper snapper(Snap snap, double hysteresisCents) {
        return Snapper.of(Snapping.of(snap), CHROMATIC, new SnapLimits(0, hysteresisCents));
    }

    private static double after(Snapper snapper, double key) {
        snapper.onReading(key, 0);
        return snapper.sounding(key, 0);
    }

    @Test
    void aNoteIsHeldThroughTheBandAndLeftBeyondIt() {
        Snapper snapper = snapper(Snap.STEPS, 20);
        assertEquals(69, after(snapper, 69.1), EXACT);
        assertEquals(69, after(snapper, 69.6), EXACT);
        assertEquals(69, after(snapper, 69.6999), EXACT);
        assertEquals(70, after(snapper, 69.7001), EXACT);
        assertEquals(70, after(snapper, 69.4), EXACT);
        assertEquals(70, after(snapper, 69.3001), EXACT);
        assertEquals(69, after(snapper, 69.2999), EXACT);
    }

    @Test
    void aLongWayGoesStraightToTheNoteThere() {
        Snapper snapper = snapper(Snap.STEPS, 20);
        assertEquals(60, after(snapper, 60.2), EXACT);
        assertEquals(77, after(snapper, 76.6), EXACT);
        assertEquals(57, after(snapper, 40), EXACT);
        assertEquals(81, after(snapper, 99), EXACT);
    }

    @Test
    void freePitchSoundsAsItIs() {
        Snapper snapper = snapper(Snap.FREE, 20);
        assertEquals(69.37, after(snapper, 69.37), EXACT);
    }

    @Test
    void betweenReadingsTheChosenNoteSoundsOn() {
        Snapper snapper = snapper(Snap.STEPS, 0);
        assertEquals(64.3, snapper.sounding(64.3, 0), EXACT, "no note yet");
        snapper.onReading(64.3, 0);
        assertEquals(64, snapper.sounding(65.9, 0), EXACT);
        snapper.reset();
        assertEquals(65.9, snapper.sounding(65.9, 0), EXACT);
        assertEquals(66, after(snapper, 65.9), EXACT);
    }

    @Test
    void afterAResetTheNearestNoteIsChosenAfresh() {
        Snapper snapper = snapper(Snap.STEPS, 30);
        assertEquals(69, after(snapper, 69.1), EXACT);
        assertEquals(69, after(snapper, 69.7), EXACT);
        snapper.reset();
        assertEquals(70, after(snapper, 69.7), EXACT);
    }

    /**
     * Rice's formula itself, nu = (1 / 2 pi) (sv / sx) exp(-h^2 / (2 sx^2)), with sv / sx = sqrt(2 a) times the rate:
     * S. O. Rice, Bell Syst. Tech. J. 23-24 (1944-45), section 3.3.
     */
    @ParameterizedTest
    @CsvSource({"10, 0.25, 50", "4.2, 0.1, 100", "21, 0.48, 18"})
    void theHysteresisLetsOneCrossingAMinuteThrough(double jitterCents, double share, double ratePerS) {
        double h = SnapLimits.hysteresisCents(jitterCents, share, ratePerS);
        double velocity = Math.sqrt(2 * share) * jitterCents * ratePerS;
        double perSecond = velocity / jitterCents / (2 * Math.PI) * Math.exp(-h * h / (2 * jitterCents * jitterCents));
        assertEquals(1, 60 * perSecond, 1e-9);
    }

    @Test
    void whatHardlyEverCrossesNeedsNoHysteresis() {
        assertEquals(0, SnapLimits.hysteresisCents(JITTER_CENTS, 1e-6, 10), 0);
        assertEquals(0, SnapLimits.hysteresisCents(0, 0.25, 50), 0);
    }

    /** A hundred minutes of a hand resting exactly on a boundary; the shares are those of 60 ms of lag and of less. */
    @ParameterizedTest(name = "{0} readings a second, share {1}")
    @CsvSource({"18, 0.48", "50, 0.25", "50, 0.6", "100, 0.14"})
    void aHandOnABoundarySwitchesLessThanOnceAMinute(double ratePerS, double share) {
        double h = SnapLimits.hysteresisCents(JITTER_CENTS, share, ratePerS);
        double perMinute = switchesPerMinute(h, ratePerS, share);
        assertTrue(perMinute <= 1, perMinute + " a minute");
        assertTrue(perMinute > 0.1, "more hysteresis than it takes: " + perMinute + " a minute");
        double withHalf = switchesPerMinute(h / 2, ratePerS, share);
        assertTrue(withHalf > 5, "half of it gives " + withHalf + " a minute");
    }

    private static double switchesPerMinute(double hysteresisCents, double ratePerS, double share) {
        Random random = new Random(51);
        Snapper snapper = snapper(Snap.STEPS, hysteresisCents);
        int minutes = 100;
        // a one-pole passes white noise of 1 as sqrt(a / (2 - a))
        double inCents = JITTER_CENTS / Math.sqrt(share / (2 - share));
        double cents = 0;
        double note = 69;
        int switches = 0;
        for (int i = 0; i < minutes * 60 * ratePerS; i++) {
            cents += share * (inCents * random.nextGaussian() - cents);
            double next = after(snapper, 69.5 + cents / 100);
            switches += next == note ? 0 : 1;
            note = next;
        }
        return switches / (double) minutes;
    }

    @Test
    void snapsAreFoundByTheirWords() {
        assertEquals(Snap.FREE, Snap.parse("free"));
        assertEquals(Snap.STEPS, Snap.parse("steps"));
        assertEquals("steps", Snap.STEPS.word());
        assertThrows(IllegalArgumentException.class, () -> Snap.parse("Steps"));
    }
}
