package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every refusal has a near-miss twin that is accepted. */
class FitTest {
    private static final double TOLERANCE_MM = 1e-9;

    private final List<Hold> holds = new ArrayList<>();

    private void hold(StepKind kind, HandRole hand, double physical) {
        holds.add(Hold.of(kind, hand, physical, 0.3, 2, 100));
    }

    private Outcome fit(String pitch, @Nullable String level) {
        Instrument instrument = new Instrument(
                "reed", 1, 115_200, null, ChannelSpec.parse(pitch), level == null ? null : ChannelSpec.parse(level), 5);
        return Fit.fit("hall", "2026-01-01T00:00:00Z", instrument, Air.USUAL, 50, holds);
    }

    private Outcome fit() {
        return fit("1:distance:mm", null);
    }

    private void hold(StepKind kind, double physical, double mm) {
        holds.add(Hold.of(kind, HandRole.PITCH, physical, 0.3, 2, 100).at(mm));
    }

    private void lights(double open, double mid, double covered) {
        hold(StepKind.NEAR, HandRole.PITCH, 100);
        hold(StepKind.FAR, HandRole.PITCH, 500);
        hold(StepKind.OPEN, HandRole.LEVEL, open);
        hold(StepKind.MID, HandRole.LEVEL, mid);
        hold(StepKind.COVERED, HandRole.LEVEL, covered);
    }

    private Outcome fitLight() {
        return fit("1:distance:mm", "2:photoresistor:counts10");
    }

    private static void assertRefused(Outcome outcome, String part) {
        assertTrue(outcome.room().isEmpty());
        assertTrue(
                outcome.reasons().stream().anyMatch(reason -> reason.contains(part)), "reasons " + outcome.reasons());
    }

    @Test
    void twoEndsMakeAZoneWithTheirUncertainties() {
        hold(StepKind.NEAR, HandRole.PITCH, 112);
        hold(StepKind.FAR, HandRole.PITCH, 493);
        Room room = fit().room().orElseThrow();
        assertEquals(112, room.pitch().zone().nearMm(), TOLERANCE_MM);
        assertEquals(493, room.pitch().zone().farMm(), TOLERANCE_MM);
        assertEquals(0.3, room.pitch().zone().farUncertaintyMm(), 1e-6);
        assertEquals(2, room.pitch().noiseMm(), 1e-6);
        assertNull(room.level());
    }

    /** A sensor that reads 112 at 100 mm and 493 at 500 mm by ruler: a line through both, 400/381 mm a mm. */
    @Test
    void aRulerAtBothEndsCorrectsScaleAndOffset() {
        hold(StepKind.NEAR, 112, 100);
        hold(StepKind.FAR, 493, 500);
        Room room = fit("1:distance:mm", null).room().orElseThrow();
        assertEquals(100, room.pitch().zone().nearMm(), TOLERANCE_MM);
        assertEquals(500, room.pitch().zone().farMm(), TOLERANCE_MM);
        assertEquals(300, room.pitch().response().mm(302.5), 1e-6);
        assertEquals(302.5, room.pitch().response().physical(300), 1e-6);
        assertEquals(0.3 * 400 / 381, room.pitch().zone().nearUncertaintyMm(), 1e-6);
    }

    @Test
    void aFarHoldThatIsNotBeyondTheNearOneIsRefused() {
        hold(StepKind.NEAR, HandRole.PITCH, 500);
        hold(StepKind.FAR, HandRole.PITCH, 100);
        assertRefused(fit(), "not beyond the near hold at 500 mm");
    }

    @Test
    void aZoneOf79MmIsRefusedAndOneOf80Taken() {
        hold(StepKind.NEAR, HandRole.PITCH, 100);
        hold(StepKind.FAR, HandRole.PITCH, 179);
        assertRefused(fit(), "only 79 mm apart (at least 80 mm)");
        hold(StepKind.FAR, HandRole.PITCH, 180);
        assertTrue(fit().room().isPresent(), "the later hold of a step counts");
    }

    @Test
    void aNearEndAt49MmIsRefusedAndOneAt50Taken() {
        hold(StepKind.NEAR, HandRole.PITCH, 49);
        hold(StepKind.FAR, HandRole.PITCH, 400);
        assertRefused(fit(), "too near to the sensor");
        hold(StepKind.NEAR, HandRole.PITCH, 50);
        assertTrue(fit().room().isPresent());
    }

    @Test
    void aMissingHoldIsNamed() {
        hold(StepKind.NEAR, HandRole.PITCH, 100);
        assertRefused(fit(), "no far hold");
    }

    @Test
    void anUnscaledSensorThatFallsWithDistanceIsTurnedRound() {
        hold(StepKind.NEAR, HandRole.PITCH, 900);
        hold(StepKind.FAR, HandRole.PITCH, 300);
        HandSetup pitch = fit("1:unscaled", null).room().orElseThrow().pitch();
        assertEquals(0.5, pitch.zone().place01(pitch.response().mm(600)), 1e-9);
        assertEquals(0, pitch.zone().place01(pitch.response().mm(900)), 1e-9);
        assertTrue(pitch.scaledTravel());
    }

    /** Physical values are ln N/(1023-N): 605 counts open, 36 with the hand at 10 cm, 7 covered, from real rooms. */
    @Test
    void lightRunsFromCoveredOverMidToOpen() {
        lights(Math.log(605.0 / 418), Math.log(36.0 / 987), Math.log(7.0 / 1016));
        HandSetup level =
                java.util.Objects.requireNonNull(fitLight().room().orElseThrow().level());
        assertEquals(0, level.zone().place01(level.response().mm(Math.log(7.0 / 1016))), 1e-9);
        assertEquals(0.5, level.zone().place01(level.response().mm(Math.log(36.0 / 987))), 1e-9);
        assertEquals(1, level.zone().place01(level.response().mm(Math.log(605.0 / 418))), 1e-9);
    }

    @Test
    void lightThatFallsWithBrightnessIsTurnedRound() {
        lights(-2, 0, 1.5);
        HandSetup level =
                java.util.Objects.requireNonNull(fitLight().room().orElseThrow().level());
        assertEquals(0.5, level.zone().place01(level.response().mm(0)), 1e-9);
    }

    /** A factor of 2 in resistance is 0.693 in its logarithm. */
    @Test
    void openAndCoveredMustDifferByAFactorOfTwo() {
        lights(0.6, 0.3, 0);
        assertRefused(fitLight(), "factor of 1.8");
        holds.clear();
        lights(0.7, 0.35, 0);
        assertTrue(fitLight().room().isPresent());
    }

    @Test
    void aMidHoldOutsideIsNamedAndOneJustInsideTaken() {
        lights(2, 2.1, 0);
        assertRefused(fitLight(), "the mid hold reads");
        holds.clear();
        lights(2, 1.85, 0);
        assertTrue(fitLight().room().isPresent());
    }

    @Test
    void lightAtTheEndOfItsScaleAsksForAnotherResistor() {
        lights(Math.log(1022.5 / 0.5), 1, 0);
        assertRefused(fitLight(), "change the fixed resistor");
        holds.clear();
        lights(Math.log(1021.0 / 2), 1, 0);
        assertTrue(fitLight().room().isPresent());
    }

    @Test
    void rulerDistancesTheWrongWayRoundAreRefused() {
        hold(StepKind.NEAR, 112, 500);
        hold(StepKind.FAR, 493, 100);
        assertRefused(fit("1:distance:mm", null), "swap them");
    }
}
