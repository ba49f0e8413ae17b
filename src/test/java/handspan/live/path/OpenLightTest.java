package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OpenLightTest {
    private static final double OPEN = 1.76;
    private static final double COVERED = -0.41;
    private static final double NOISE = 0.006;

    private final Random random = new Random(7);
    private OpenLight open = new OpenLight(OPEN, COVERED);
    private double second;

    private void hold(double ln, double seconds, boolean pitchHand) {
        drift(ln, ln, seconds, pitchHand);
    }

    private void drift(double fromLn, double toLn, double seconds, boolean pitchHand) {
        double start = second;
        while (second < start + seconds) {
            second += 0.02;
            double ln = fromLn + (toLn - fromLn) * (second - start) / seconds + NOISE * random.nextGaussian();
            open.onLight(ln, Nanos.ofSeconds(second), pitchHand);
        }
    }

    /** A first-order lag: 1 - exp(-1) of a step after its time constant. */
    @Test
    void itFollowsWithATimeConstantOfTwoMinutes() {
        hold(OPEN + 0.1, 5 + OpenLight.FOLLOW_SECONDS, false);
        assertEquals(0.1 * (1 - Math.exp(-1)), open.shiftLn(), 0.003);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, -0.3})
    void itFollowsADriftOverMinutes(double ln) {
        drift(OPEN, OPEN + ln, 1200, false);
        // a ramp is followed with a lag of one time constant
        assertEquals(ln - ln / 1200 * OpenLight.FOLLOW_SECONDS, open.shiftLn(), 0.01);
        assertEquals(ln, open.followedLn(), 0.05);
    }

    @Test
    void itNeverFollowsWhileAHandPlays() {
        drift(OPEN, OPEN + 0.3, 600, true);
        hold(OPEN + 0.3, 4, false);
        assertEquals(0, open.shiftLn(), 0);
    }

    /** A hand at 50 mm leaves 42 % of the light: 0.56 in ln of resistance. */
    @Test
    void aHandThatRestsOverTheSensorForMinutesDoesNotDragIt() {
        hold(OPEN, 60, false);
        hold(OPEN - 0.56, 600, false);
        assertEquals(0, open.shiftLn(), 0.002);
        open = new OpenLight(OPEN, COVERED);
        hold(OPEN - 0.56, 10, true);
        hold(OPEN - 0.56, 600, false);
        assertEquals(0, open.shiftLn(), 0.002);
    }

    /** At 200 mm it leaves 92 %: within what a room does by itself, but a room does not do it within a second. */
    @Test
    void aHandThatComesHighAboveTheSensorDoesNotDragIt() {
        hold(OPEN, 60, false);
        drift(OPEN, OPEN - 0.055, 1, false);
        hold(OPEN - 0.055, 600, false);
        assertEquals(0, open.shiftLn(), 0.003);
        hold(OPEN, 60, false);
        assertEquals(0, open.shiftLn(), 0.003);
    }

    /** A hand that rested high above when the playing ended can't be told from a darker room: the band limits it. */
    @Test
    void whatCanNotBeToldFromADarkerRoomIsLimited() {
        hold(OPEN - 0.1, 10, true);
        hold(OPEN - 0.1, 1200, false);
        assertEquals(-0.1, open.shiftLn(), 0.01);
        open = new OpenLight(OPEN, COVERED);
        hold(OPEN - 0.14, 10, true);
        hold(OPEN - 0.14, 1200, false);
        assertEquals(0, open.shiftLn(), 0.002);
    }

    @Test
    void itGoesNoFurtherThanARoomDoes() {
        drift(OPEN, OPEN + 2, 7200, false);
        assertEquals(OpenLight.MOST_LN, open.shiftLn(), 1e-9);
    }

    @Test
    void whereCountsFallWithLightItWorksTheSame() {
        open = new OpenLight(COVERED, OPEN);
        assertEquals(0.2, open.overOpenLn(COVERED - 0.2), 1e-12);
        drift(COVERED, COVERED - 0.3, 1200, false);
        assertEquals(-0.27, open.shiftLn(), 0.01);
        assertTrue(open.followedLn() > 0, "brighter");
        double before = open.shiftLn();
        hold(COVERED + 0.26, 300, false);
        assertEquals(before, open.shiftLn(), 0.003, "a hand");
    }

    @ParameterizedTest
    @CsvSource({"1.5", "-2.5"})
    void aTakenLevelCountsFromNowOn(double ln) {
        open.take(OPEN + ln);
        assertEquals(ln, open.shiftLn(), 1e-12);
        assertEquals(0, open.overOpenLn(OPEN + ln), 1e-12);
        assertEquals(0, open.followedLn(), 0);
        hold(OPEN + ln, 60, false);
        assertEquals(ln, open.shiftLn(), 0.002);
    }
}
