package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Light comes from {@link LightCellSeen}; span and lags are those of a real part, the hand's reach a smooth one. */
class LightGuardTest {
    private static final double SPAN = LightCellSeen.SPAN_LN;
    private static final int PHASES = 8;

    private LightGuard guard = new LightGuard(SPAN, true);
    private long mutedNanos = -1;
    private long freedNanos = -1;
    private int mutes;
    private boolean held;

    private void show(DoubleUnaryOperator light, double from, double to, double rate, double phase01, boolean hand) {
        LightCellSeen.show(light, from, to, rate, phase01, (over, time) -> {
            boolean before = guard.mutes();
            guard.onLight(over, time, hand);
            held |= guard.holds();
            if (guard.mutes() && !before) {
                mutes++;
                mutedNanos = time;
            } else if (before && !guard.mutes()) {
                freedNanos = time;
            }
        });
    }

    private void anew(boolean loudOpen) {
        guard = new LightGuard(SPAN, loudOpen);
        mutes = 0;
        held = false;
    }

    private static DoubleUnaryOperator hand(double fromMm, double toMm, double seconds) {
        return t -> LightCellSeen.light01(LightCellSeen.reachMm(fromMm, toMm, seconds, t));
    }

    private static DoubleUnaryOperator step(double before, double after) {
        return t -> t < 0 ? before : after;
    }

    private double secondsAfterChange() {
        return Nanos.toSeconds(mutedNanos) - 100;
    }

    @ParameterizedTest
    @ValueSource(doubles = {18, 30, 50, 100, 1000})
    void aHandThatClosesWithin150MsIsPlayed(double rate) {
        for (int phase = 0; phase < PHASES; phase++) {
            anew(true);
            show(hand(600, 8, 0.15), -1, 1, rate, phase / (double) PHASES, true);
            assertEquals(0, mutes, guard.reason());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {18, 30, 50, 100, 1000})
    void aHandThatOpensWithin150MsIsPlayed(double rate) {
        for (int phase = 0; phase < PHASES; phase++) {
            anew(true);
            show(hand(8, 250, 0.15), -1, 1, rate, phase / (double) PHASES, true);
            assertEquals(0, mutes, guard.reason());
        }
    }

    /** 0.002 of the light is left: signs and windows. */
    @ParameterizedTest
    @CsvSource({"18, true", "50, true", "50, false", "1000, true"})
    void lightsThatFailMute(double rate, boolean pitchHand) {
        show(step(1, 0.002), -1, 3, rate, 0.3, pitchHand);
        assertEquals(1, mutes);
        assertTrue(secondsAfterChange() < 0.8, secondsAfterChange() + " s");
        assertTrue(guard.reason().contains("darker"), guard.reason());
    }

    /** Over a hand anywhere the light of a blackout that ends, or of a spotlight into it, is too quick for a hand. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 10", "0.5, 1", "0.5, 10", "0.1, 10"})
    void lightsThatComeBackIntoTheDarkMuteForASecond(double shade, double factor) {
        show(step(0.002 * shade, factor * shade), -3, 0, 50, 0.6, true);
        assertTrue(guard.mutes());
        show(step(0.002 * shade, factor * shade), -0.2, 0.9, 50, 0.6, true);
        assertTrue(guard.mutes());
        assertTrue(guard.reason().contains("jumped") || guard.reason().contains("brighter"), guard.reason());
        show(t -> shade, 1, 1.9, 50, 0.6, true);
        assertTrue(factor * shade <= 1 || guard.mutes(), "0.9 s of usual light");
        show(t -> shade, 1.9, 2.2, 50, 0.6, true);
        assertFalse(guard.mutes(), guard.reason());
        assertEquals("", guard.reason());
    }

    @ParameterizedTest
    @ValueSource(doubles = {18, 50, 1000})
    void aSpotlightOnTheOpenSensorMutesAtOnceAndForAsLongAsItStays(double rate) {
        show(step(1, 10), -1, 60, rate, 0.5, true);
        assertEquals(1, mutes);
        assertTrue(guard.mutes());
        assertTrue(secondsAfterChange() < Math.max(0.03, 2 / rate), secondsAfterChange() + " s");
        assertTrue(guard.reason().startsWith("light is brighter than open"), guard.reason());
    }

    /** Thirty times and more over a hand that covers: 0.9 of the span at once. */
    @ParameterizedTest
    @ValueSource(doubles = {40, 500})
    void aSpotlightOnACoveredSensorMutes(double factor) {
        show(step(0.02, 0.02 * factor), -1, 0.1, 50, 0.2, true);
        assertTrue(guard.mutes());
    }

    /** What no rule could tell from a hand is played while it stays in range, and muted when the hand lifts. */
    @Test
    void tenfoldLightOverACoveringHandIsFoundOutWhenTheHandLifts() {
        show(step(0.04, 0.4), -1, 1, 50, 0.2, true);
        assertFalse(guard.mutes());
        show(t -> 10 * LightCellSeen.light01(LightCellSeen.reachMm(12, 250, 0.8, t)), 1, 3, 50, 0.2, true);
        assertTrue(guard.mutes());
    }

    /** A hand at 20 mm under ten times the light reads like an open sensor in usual light. */
    @Test
    void aHandThatCoversTheSensorUnderASpotlightStaysMuted() {
        show(step(1, 10), -1, 1, 50, 0.2, true);
        show(t -> 10 * LightCellSeen.light01(LightCellSeen.reachMm(250, 20, 0.8, t - 1)), 1, 10, 50, 0.2, true);
        assertTrue(guard.mutes());
        show(t -> (t < 10 ? 10 : 1) * LightCellSeen.light01(20), 9.5, 10.9, 50, 0.2, true);
        assertTrue(guard.mutes(), "usual for 0.9 s");
        show(t -> LightCellSeen.light01(20), 10.9, 11.5, 50, 0.2, true);
        assertFalse(guard.mutes(), guard.reason());
    }

    @Test
    void lightThatIsUsualForLessThanASecondStaysMuted() {
        show(step(1, 10), -1, 1, 50, 0, true);
        for (int i = 0; i < 5; i++) {
            double from = 1 + 2 * i;
            show(t -> 1, from, from + 0.9, 50, 0, true);
            show(t -> 10, from + 0.9, from + 2, 50, 0, true);
        }
        assertTrue(guard.mutes());
        assertEquals(1, mutes);
        show(t -> 1, 20, 21.2, 50, 0, true);
        assertFalse(guard.mutes());
        assertEquals(21.0, Nanos.toSeconds(freedNanos) - 100, 0.15);
    }

    /** A factor of 3 in light within a minute, as from a window, against the same within two seconds. */
    @Test
    void aRoomThatBrightensByItselfIsNoJump() {
        show(t -> Math.exp(Math.log(3) * Math.max(0, Math.min(1, t / 60))), -1, 90, 50, 0, true);
        assertEquals(0, mutes);
        anew(true);
        show(t -> Math.exp(Math.log(3) * Math.max(0, Math.min(1, t / 2))), -1, 90, 50, 0, true);
        assertEquals(1, mutes);
    }

    /** Flicker of a quarter, as a wobble of 2 Hz. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void flickerIsNoJump(boolean pitchHand) {
        show(t -> 1 + 0.25 * Math.sin(4 * Math.PI * t), -1, 60, 50, 0, pitchHand);
        assertEquals(0, mutes, guard.reason());
    }

    /** A fingertip on the sensor leaves a tenth of what a covering hand does. */
    @Test
    void aFingerOnTheSensorIsNoBlackout() {
        show(step(0.04, 0.002), -1, 0.4, 50, 0, true);
        assertEquals(0, mutes);
        show(t -> 0.002, 0.4, 3, 50, 0, true);
        assertTrue(guard.mutes(), "silent anyway, and it may be a blackout");
        show(t -> 0.002 * Math.pow(20, Math.max(0, Math.min(1, (t - 3) / 0.2))), 3, 3.3, 50, 0, true);
        assertFalse(guard.mutes(), "it lifts as a hand does");
    }

    @Test
    void withoutAPitchHandASmallerStepMutesAndAnUnhurriedLevelHandDoesNot() {
        show(step(0.1, 0.6), -1, 0.2, 50, 0.1, true);
        assertEquals(0, mutes);
        anew(true);
        show(step(0.1, 0.6), -1, 0.2, 50, 0.1, false);
        assertEquals(1, mutes);
        assertTrue(guard.reason().contains("no hand playing"), guard.reason());
        anew(true);
        show(hand(8, 250, 0.6), -1, 2, 50, 0.1, false);
        show(hand(600, 8, 0.3), 0, 2, 50, 0.1, false);
        assertEquals(0, mutes);
    }

    /** Where covered is loud, nothing rises while lights fail, and what is darker than a hand mutes at once. */
    @ParameterizedTest
    @ValueSource(doubles = {50, 100})
    void whereCoveredIsLoudABlackoutHoldsTheLevelAndMutes(double rate) {
        for (int phase = 0; phase < PHASES; phase++) {
            anew(false);
            LightCellSeen.show(step(1, 0.002), -1, 0.5, rate, phase / (double) PHASES, (over, time) -> {
                guard.onLight(over, time, true);
                boolean nearLoud = over < -0.6 * SPAN;
                assertTrue(!nearLoud || guard.holds() || guard.mutes(), "may rise at " + over);
            });
            assertTrue(guard.mutes());
        }
    }

    @Test
    void whereCoveredIsLoudAHandThatClosesIsHeldOnlyWhileItMoves() {
        anew(false);
        show(hand(600, 8, 0.15), -1, 0.35, 50, 0.1, true);
        assertFalse(guard.holds());
        assertEquals(0, mutes);
        anew(false);
        show(hand(600, 8, 0.1), -1, 0.35, 1000, 0.1, true);
        assertTrue(held, "while it moves faster than in 150 ms");
        assertFalse(guard.holds());
        assertEquals(0, mutes);
    }

    @Test
    void takingTheOpenLevelAgainFreesAtOnce() {
        show(step(1, 10), -1, 1, 50, 0, true);
        assertTrue(guard.mutes());
        guard.reset();
        assertFalse(guard.mutes());
        show(t -> 1, 1, 1.1, 50, 0, true);
        assertFalse(guard.mutes());
    }

    @Test
    void afterALossTheNextReadingIsNoJump() {
        show(t -> 0.04, -1, 0, 50, 0, true);
        guard.onLost();
        show(t -> 1, 0.02, 1, 50, 0, true);
        assertEquals(0, mutes);
    }

    /** Light ten times as bright as open mutes whichever end is loud; a choice of ends does not open the sound. */
    @Test
    void choosingTheOtherEndAsTheLoudOneIsNoJumpAndEndsNoMute() {
        show(t -> 0.04, -1, 0, 50, 0, true);
        guard.loudOpen(false);
        show(t -> 0.04, 0.02, 1, 50, 0, true);
        assertEquals(0, mutes, guard.reason());
        guard.loudOpen(true);
        show(t -> 0.04, 1.02, 2, 50, 0, true);
        assertEquals(0, mutes, guard.reason());
        show(t -> 10, 2.02, 3, 50, 0, true);
        assertTrue(guard.mutes());
        guard.loudOpen(false);
        assertTrue(guard.mutes());
    }
}
