package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Infrared hands, held against the points that data sheets mark: E4-A00201EN (part GP2Y0A21YK0F), Fig. 2, output over
 * inverse distance, 10-80 cm, 2.327 V at 100 mm, 1.641 at 150, 1.080 at 250, 0.733 at 400; and OP13008EN (part
 * GP2Y0A41SK0F), 4-30 cm, read by eye, 1.766 V at 70 mm, 1.267 at 100, 0.816 at 160, 0.527 at 250. Both can be read to
 * 0.02 V. Every refusal has its accepted twin.
 */
class InfraredFitTest {
    /** What 0.02 V mean at 250 mm by the law's slope, 270 V mm / (250 + 22 mm)^2. */
    private static final double READING_MM = 0.02 / (270.0 / (272 * 272));

    private static Hold end(StepKind kind, double volts) {
        return Hold.of(kind, HandRole.PITCH, volts, 0.001, 0.004, 80);
    }

    private static Hold ruler(double mm, double volts) {
        return end(StepKind.RULER, volts).at(mm);
    }

    private static Outcome fit(String channel, Hold... holds) {
        Instrument instrument = new Instrument("reed", 1, 115_200, null, ChannelSpec.parse(channel), null, 5);
        return Fit.fit("hall", "2026-01-01T00:00:00Z", instrument, Air.USUAL, 40, List.of(holds));
    }

    private static HandSetup pitch(String channel, Hold... holds) {
        Outcome outcome = fit(channel, holds);
        assertTrue(outcome.room().isPresent(), "" + outcome.reasons());
        return outcome.room().get().pitch();
    }

    private static void assertRefused(Outcome outcome, String... parts) {
        assertTrue(outcome.room().isEmpty(), "accepted");
        for (String part : parts) {
            assertTrue(outcome.reasons().get(0).contains(part), "" + outcome.reasons());
        }
    }

    @Test
    void twoEndsByRulerForetellTheDataSheetsPointsBetween() {
        HandSetup pitch = pitch(
                "1:infrared:counts10",
                end(StepKind.NEAR, 2.327).at(100),
                end(StepKind.FAR, 0.733).at(400));
        assertEquals(100, pitch.response().mm(2.327), 1e-6);
        assertEquals(400, pitch.response().mm(0.733), 1e-6);
        assertEquals(250, pitch.response().mm(1.080), READING_MM);
        assertEquals(150, pitch.response().mm(1.641), READING_MM);
    }

    @Test
    void theShorterPartHasItsOwnShape() {
        HandSetup pitch = pitch(
                "1:infrared:counts10:4-30cm",
                end(StepKind.NEAR, 1.766).at(70),
                end(StepKind.FAR, 0.527).at(250));
        assertEquals(100, pitch.response().mm(1.267), 2);
        assertEquals(160, pitch.response().mm(0.816), 4);
    }

    /** Without a ruler distances are the data sheet's, good to what the figure can be read to. */
    @Test
    void twoEndsWithoutARulerTakeTheDataSheetsDistances() {
        HandSetup pitch = pitch("1:infrared:counts10", end(StepKind.NEAR, 2.327), end(StepKind.FAR, 0.733));
        assertTrue(pitch.scaledTravel(), "these mm are not the hand's own");
        assertEquals(100, pitch.zone().nearMm(), 0.03 * 100);
        assertEquals(400, pitch.zone().farMm(), 0.03 * 400);
    }

    /** b and k cancel: a part with another b and k and the same a has the same places between its ends. */
    @Test
    void betweenTwoEndsOnlyAShapesThePlaces() {
        Response.Triangulation one = new Response.Triangulation(0.091, 270, 22);
        Response.Triangulation other = new Response.Triangulation(0.091, 190, 60);
        HandSetup pitch = pitch(
                "1:infrared:counts10", end(StepKind.NEAR, one.physical(120)), end(StepKind.FAR, one.physical(380)));
        HandSetup same = pitch(
                "1:infrared:counts10", end(StepKind.NEAR, other.physical(120)), end(StepKind.FAR, other.physical(380)));
        for (double mm : new double[] {150, 200, 250, 300, 350}) {
            double place = (mm - 120) / 260;
            assertEquals(place, pitch.zone().place(pitch.response().mm(one.physical(mm))), 1e-9);
            assertEquals(place, same.zone().place(same.response().mm(other.physical(mm))), 1e-9);
        }
    }

    @Test
    void rulerHoldsFitTheLaw() {
        HandSetup pitch =
                pitch("1:infrared:V", ruler(100, 2.327), ruler(150, 1.641), ruler(250, 1.080), ruler(400, 0.733));
        FitQuality fit = Objects.requireNonNull(pitch.fit());
        assertEquals("triangulation law", fit.method());
        for (double[] point : new double[][] {{100, 2.327}, {150, 1.641}, {250, 1.080}, {400, 0.733}}) {
            assertEquals(point[0], pitch.response().mm(point[1]), READING_MM);
        }
        // drawn vertices of the same sheet's other figure, not used for the fit
        assertEquals(201.1, pitch.response().mm(1.306), READING_MM);
        assertEquals(301.9, pitch.response().mm(0.925), 2 * READING_MM);
    }

    @Test
    void aRulerHoldNearerThanTheFoldIsRefusedNamingTheDistance() {
        assertRefused(
                fit("1:infrared:counts10", ruler(50, 3.1), ruler(150, 1.641), ruler(400, 0.733)),
                "the hold at 50 mm is nearer than the sensor's fold-over at about 60 mm",
                "begin the zone at 80 mm");
        assertTrue(fit("1:infrared:counts10", ruler(80, 2.742), ruler(150, 1.641), ruler(400, 0.733))
                .room()
                .isPresent());
        assertRefused(
                fit(
                        "1:infrared:counts10",
                        end(StepKind.NEAR, 3.1).at(55),
                        end(StepKind.FAR, 0.733).at(400)),
                "fold-over at about 60 mm");
        assertTrue(fit(
                        "1:infrared:counts10:4-30cm",
                        end(StepKind.NEAR, 2.1).at(55),
                        end(StepKind.FAR, 0.527).at(250))
                .room()
                .isPresent());
    }

    /** 2.458 V at 39 mm, 3.13 V at the peak, 0.733 V at 400 mm: the near hold alone could also be at 92 mm. */
    @Test
    void anOutputThatRosOnTheWayOutwardBetraysTheFold() {
        Hold near = end(StepKind.NEAR, 2.458);
        assertRefused(
                fit("1:infrared:counts10", near, end(StepKind.FAR, 0.733).after(3.12)),
                "the output rose to 3.12 V",
                "fold-over at about 60 mm");
        assertTrue(fit("1:infrared:counts10", near, end(StepKind.FAR, 0.733).after(2.50))
                .room()
                .isPresent());
    }

    @Test
    void aFarHoldThatReadsMoreIsRefused() {
        assertRefused(
                fit("1:infrared:counts10", end(StepKind.NEAR, 1.1), end(StepKind.FAR, 1.2)),
                "the far hold reads 1.20 V, not less than the near hold's 1.10 V");
        assertTrue(fit("1:infrared:counts10", end(StepKind.NEAR, 1.2), end(StepKind.FAR, 0.6))
                .room()
                .isPresent());
    }

    /** 312 of 1023 counts and 1249 of 4095 are the same voltage to a count. */
    @ParameterizedTest
    @CsvSource({"counts10, 312, 1.5249", "counts12, 1249, 1.5250", "V, 1.525, 1.525"})
    void countsAreVoltsOfTheReference(String unit, double raw, double volts) {
        ChannelSpec spec = ChannelSpec.parse("1:infrared:" + unit);
        assertEquals(
                volts, handspan.instrument.sensor.Sensor.of(spec, Air.USUAL, 5).physical(raw), 1e-4);
    }

    /** Notes held by ear need no ruler: their distances are nominal. */
    @Test
    void notesByEarGoThroughTheDataSheetsCurve() {
        List<Hold> holds = new ArrayList<>();
        int[] keys = {57, 64, 69, 76, 81};
        double[] mm = {100, 187.5, 250, 337.5, 400};
        Response.Triangulation law = new Response.Triangulation(0.0597, 283.04, 25.60);
        for (int i = 0; i < keys.length; i++) {
            holds.add(end(StepKind.NOTE, law.physical(mm[i])).on(keys[i]));
        }
        Outcome outcome = fit("1:infrared:counts10", holds.toArray(new Hold[0]));
        assertTrue(outcome.room().isPresent(), "" + outcome.reasons());
        assertEquals(0, outcome.byEar().orElseThrow().residualCents(), 0.01);
    }
}
