package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.level.LevelCurve;
import handspan.number.fit.MonotoneCurve;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoomCheckTest {
    private final List<Hold> holds = new ArrayList<>();

    private static Room room() {
        ChannelSpec pitch = ChannelSpec.parse("1:distance:mm");
        ChannelSpec level = ChannelSpec.parse("2:photoresistor:counts10");
        return new Room(
                "hall",
                "2026-01-01",
                new Instrument("reed", 1, 115_200, null, pitch, level, 5),
                Air.USUAL,
                50,
                new HandSetup(pitch, new Response.AsMeasured(), new Zone(100, 500, 0.3, 0.3), 2, false),
                new HandSetup(
                        level,
                        new Response.Curve(List.of(
                                new MonotoneCurve.Point(-2, 0),
                                new MonotoneCurve.Point(0, 100),
                                new MonotoneCurve.Point(2, 200))),
                        new Zone(0, 200, 1, 1),
                        1,
                        true),
                List.of());
    }

    private RoomCheck check(double nearMm, double farMm, double open, double noise, boolean byMark) {
        holds.clear();
        holds.add(Hold.of(StepKind.NEAR, HandRole.PITCH, nearMm, 0.3, noise, 75));
        holds.add(Hold.of(StepKind.FAR, HandRole.PITCH, farMm, 0.3, noise, 75));
        holds.add(Hold.of(StepKind.OPEN, HandRole.LEVEL, open, 0.01, 0.01, 75));
        return RoomCheck.of(room(), LevelCurve.USUAL, 6, holds, byMark);
    }

    /** By feel 12 mm may be the hand, which is said; by mark they are not; 3 mm need no word. */
    @Test
    void placesFoundByFeelAreJudgedMildlyAndThatIsSaid() {
        RoomCheck byFeel = check(112, 500, 2, 2, false);
        assertEquals(RoomCheck.Verdict.FITS, byFeel.verdict());
        assertTrue(byFeel.reasons().stream().anyMatch(reason -> reason.contains("found by feel: up to 15 mm")));
        RoomCheck byMark = check(112, 500, 2, 2, true);
        assertEquals(RoomCheck.Verdict.CALIBRATE_AGAIN, byMark.verdict());
        assertTrue(check(103, 500, 2, 2, false).reasons().stream().noneMatch(reason -> reason.contains("by feel")));
    }

    @Test
    void whatHasNotChangedFits() {
        RoomCheck check = check(103, 498, 2, 2, true);
        assertEquals(RoomCheck.Verdict.FITS, check.verdict());
        assertEquals(18, check.pitchCents(), 1e-6, "3 mm at 6 cents a mm");
        assertEquals("", check.remedy());
    }

    /** Unaided hands are given 15 mm, marks 5. */
    @Test
    void endsThatHaveMovedAskForACalibration() {
        assertEquals(RoomCheck.Verdict.FITS, check(114, 500, 2, 2, false).verdict());
        assertEquals(
                RoomCheck.Verdict.CALIBRATE_AGAIN, check(116, 500, 2, 2, false).verdict());
        assertEquals(RoomCheck.Verdict.FITS, check(104.9, 500, 2, 2, true).verdict());
        RoomCheck moved = check(100, 505.1, 2, 2, true);
        assertEquals(RoomCheck.Verdict.CALIBRATE_AGAIN, moved.verdict());
        assertTrue(moved.remedy().contains("--from hall"));
    }

    /** 54 dB over 97 % of the zone: 3 dB are 5.4 % of the zone, 0.11 of the 2 in log light of its upper half. */
    @Test
    void anotherLightAloneIsToldApart() {
        assertEquals(RoomCheck.Verdict.FITS, check(100, 500, 1.9, 2, true).verdict());
        RoomCheck dimmer = check(100, 500, 1.5, 2, true);
        assertEquals(RoomCheck.Verdict.LIGHT_ONLY, dimmer.verdict());
        assertEquals(54 / 0.97 * 0.125, dimmer.levelDb(), 1e-6);
        assertTrue(dimmer.remedy().contains("--light-only"));
    }

    @Test
    void anotherInstrumentIsRecognised() {
        assertEquals(
                RoomCheck.Verdict.CALIBRATE_AGAIN, check(179, 500, 2, 2, false).verdict());
        assertEquals(
                RoomCheck.Verdict.INSTRUMENT_CHANGED,
                check(181, 500, 2, 2, false).verdict());
        assertEquals(RoomCheck.Verdict.FITS, check(100, 500, 2, 7.9, false).verdict());
        assertEquals(
                RoomCheck.Verdict.INSTRUMENT_CHANGED,
                check(100, 500, 2, 8.1, false).verdict());
    }
}
