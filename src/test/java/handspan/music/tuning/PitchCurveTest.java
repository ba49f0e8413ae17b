package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Cents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PitchCurveTest {
    private static final double EXACT = 1e-12;

    private static final double TOLERANCE_CENTS = 1e-9;

    /** f(u) = fLow (fHigh / fLow)^u: at 220 and 880 Hz the middle is 440 Hz. */
    @Test
    void frequencyIsExponentialInPlace() {
        PitchCurve curve = new PitchCurve(57, 81, Direction.HIGH_FAR);
        ReferencePitch a440 = ReferencePitch.A440;
        for (double place = 0; place <= 1; place += 0.01) {
            assertEquals(220 * Math.pow(4, place), a440.hz(curve.key(place)), 1e-9, "at " + place);
        }
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void equalTravelGivesEqualIntervals(Direction direction) {
        PitchCurve curve = new PitchCurve(48, 84, direction);
        double interval = direction == Direction.HIGH_FAR ? 36 : -36;
        for (int i = 0; i < 100; i++) {
            double from = ReferencePitch.A440.hz(curve.key(i / 100.0));
            double to = ReferencePitch.A440.hz(curve.key((i + 1) / 100.0));
            assertEquals(interval, Cents.between(from, to), TOLERANCE_CENTS);
        }
    }

    @Test
    void theDirectionSaysWhichEndIsHigh() {
        assertEquals(57, new PitchCurve(57, 81, Direction.HIGH_FAR).key(0), EXACT);
        assertEquals(81, new PitchCurve(57, 81, Direction.HIGH_FAR).key(1), EXACT);
        assertEquals(81, new PitchCurve(57, 81, Direction.HIGH_NEAR).key(0), EXACT);
        assertEquals(57, new PitchCurve(57, 81, Direction.HIGH_NEAR).key(1), EXACT);
        assertEquals(24, new PitchCurve(57, 81, Direction.HIGH_NEAR).span(), EXACT);
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void placeIsTheInverseOfPitch(Direction direction) {
        PitchCurve curve = new PitchCurve(50.5, 73, direction);
        for (double place = -0.2; place <= 1.2; place += 0.05) {
            assertEquals(place, curve.place01(curve.key(place)), EXACT);
        }
    }

    @Test
    void theHighEndMustLieAboveTheLow() {
        assertThrows(IllegalArgumentException.class, () -> new PitchCurve(60, 60, Direction.HIGH_FAR));
        assertThrows(IllegalArgumentException.class, () -> new PitchCurve(60, 59, Direction.HIGH_FAR));
        assertThrows(IllegalArgumentException.class, () -> new PitchCurve(60, Double.NaN, Direction.HIGH_FAR));
    }

    @Test
    void directionsAreFoundByTheirWords() {
        assertEquals("high-near", Direction.HIGH_NEAR.word());
        for (Direction direction : Direction.values()) {
            assertEquals(direction, Direction.parse(direction.word()));
        }
        assertThrows(IllegalArgumentException.class, () -> Direction.parse("HIGH_FAR"));
        assertThrows(IllegalArgumentException.class, () -> Direction.parse("far"));
    }

    /** w(0.5) = (e^(k/2) - 1)/(e^k - 1) = 1/(e^(k/2) + 1): 0.377540669 for k = 1 (closed form, by hand). */
    @Test
    void aWarpBendsTheCurveAndKeepsItsEnds() {
        PitchCurve finerNear = new PitchCurve(57, 81, Direction.HIGH_FAR, 1);
        assertEquals(57, finerNear.key(0), EXACT);
        assertEquals(81, finerNear.key(1), EXACT);
        assertEquals(57 + 24 * 0.377540669, finerNear.key(0.5), 1e-7);
        PitchCurve finerFar = new PitchCurve(57, 81, Direction.HIGH_FAR, -1);
        assertEquals(57 + 24 * (1 - 0.377540669), finerFar.key(0.5), 1e-7);
        assertTrue(finerNear.steepness(0) < 24 && finerNear.steepness(1) > 24);
        assertTrue(finerFar.steepness(0) > 24 && finerFar.steepness(1) < 24);
    }

    @Test
    void everyAllowedWarpIsMonotoneAndHasItsInverse() {
        for (Direction way : Direction.values()) {
            for (double warp = -3; warp <= 3; warp += 0.25) {
                PitchCurve curve = new PitchCurve(57, 81, way, warp);
                for (int i = 0; i <= 100; i++) {
                    double place = i / 100.0;
                    assertEquals(place, curve.place01(curve.key(place)), 1e-9);
                    double step = curve.key(place + 0.001) - curve.key(place);
                    assertTrue(way == Direction.HIGH_FAR ? step > 0 : step < 0);
                    assertEquals(Math.abs(step) / 0.001, curve.steepness(place + 0.0005), 1e-3);
                }
            }
        }
        assertThrows(IllegalArgumentException.class, () -> new PitchCurve(57, 81, Direction.HIGH_FAR, 3.01));
        assertThrows(IllegalArgumentException.class, () -> new PitchCurve(57, 81, Direction.HIGH_FAR, Double.NaN));
    }
}
