package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchCurve;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ByEarTest {
    private static Hold note(int key, double mm) {
        return Hold.of(StepKind.NOTE, HandRole.PITCH, mm, 0.2, 2, 100).on(key);
    }

    private static Outcome fit(List<Hold> holds) {
        Instrument instrument = new Instrument("reed", 1, 115_200, null, ChannelSpec.parse("1:distance:mm"), null, 5);
        return Fit.fit("hall", "2026-01-01T00:00:00Z", instrument, Air.USUAL, 50, holds);
    }

    /** A3 at 100, A4 at 300, A5 at 500 mm: a straight line of 6 cents a mm. */
    @Test
    void notesOnALineMakeAnEvenZone() {
        Outcome outcome = fit(List.of(note(57, 100), note(69, 300), note(81, 500)));
        Outcome.ByEar heard = outcome.byEar().orElseThrow();
        assertEquals(57, heard.lowKey());
        assertEquals(81, heard.highKey());
        assertFalse(heard.highNear());
        assertEquals(0, heard.warp());
        assertEquals(0, heard.residualCents(), 1e-6);
        assertEquals(100, outcome.room().orElseThrow().pitch().zone().nearMm(), 1e-6);
        assertEquals(500, outcome.room().orElseThrow().pitch().zone().farMm(), 1e-6);
    }

    @Test
    void fallingNotesAreHighNear() {
        assertTrue(fit(List.of(note(81, 100), note(69, 300), note(57, 500)))
                .byEar()
                .orElseThrow()
                .highNear());
    }

    @Test
    void notesOnAWarpedCurveAreFoundWithTheirWarp() {
        PitchCurve meant = new PitchCurve(57, 81, Direction.HIGH_FAR, 1.2);
        List<Hold> holds = new ArrayList<>();
        for (int key : new int[] {57, 62, 67, 72, 77, 81}) {
            holds.add(note(key, 100 + 400 * meant.place01(key)));
        }
        Outcome.ByEar heard = fit(holds).byEar().orElseThrow();
        assertEquals(1.2, heard.warp(), 0.01);
        assertEquals(0, heard.residualCents(), 0.5);
    }

    /** Held 3 mm off each way about a line: the fit lies between, and says so in cents (6 cents a mm). */
    @Test
    void unsteadyEarsAreToldInCents() {
        Outcome.ByEar heard = fit(List.of(note(57, 103), note(63, 197), note(69, 303), note(75, 397), note(81, 503)))
                .byEar()
                .orElseThrow();
        assertEquals(0, heard.warp());
        assertTrue(heard.residualCents() > 10 && heard.residualCents() < 30, "" + heard.residualCents());
        assertTrue(heard.uncertaintyCents() > 2 && heard.uncertaintyCents() < 15, "" + heard.uncertaintyCents());
    }

    @Test
    void twoNotesHeldTheWrongWayRoundAreNamed() {
        Outcome outcome = fit(List.of(note(57, 100), note(64, 310), note(69, 290), note(81, 500)));
        assertTrue(outcome.room().isEmpty());
        assertTrue(outcome.reasons().get(0).contains("E4 was held at 310 mm and A4 at 290 mm"), "" + outcome.reasons());
        assertTrue(fit(List.of(note(57, 100), note(64, 289), note(69, 290), note(81, 500)))
                .room()
                .isPresent());
    }
}
