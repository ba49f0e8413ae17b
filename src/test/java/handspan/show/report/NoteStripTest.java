package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.ChannelSpec;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Tuning;
import handspan.number.fit.MonotoneCurve;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Zone;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoteStripTest {
    private static final Tuning MAJOR = Samples.tuning("major", "C", Samples.TWELVE, 60, 72, Direction.HIGH_FAR, 0);
    private static final Response CURVE =
            new Response.Curve(List.of(new MonotoneCurve.Point(5, 100), new MonotoneCurve.Point(1, 400)));

    private static HandSetup measured() {
        return new HandSetup(
                ChannelSpec.parse("2:distance:mm"), new Response.AsMeasured(), new Zone(100, 400, 1, 1), 2, false);
    }

    private static RoomProfile room(HandSetup pitch, HandSetup level) {
        return Samples.room(pitch, level, MAJOR, LevelCurve.USUAL);
    }

    private static List<String> names(NoteStrip strip) {
        return strip.marks().stream().map(NoteStrip.Mark::name).toList();
    }

    @Test
    void notesAreCalledAsTheySound() {
        Tuning up = MAJOR.shifted(2, 0);
        assertEquals(
                List.of("D4", "E4", "F#4", "G4", "A4", "B4", "C#5", "D5"),
                names(NoteStrip.ofPitch(Samples.room(100, 400, up), up)));
        Tuning trimmed = MAJOR.shifted(-2, -30);
        NoteStrip strip = NoteStrip.ofPitch(Samples.room(100, 400, trimmed), trimmed);
        assertEquals(List.of("Bb3", "C4", "D4", "Eb4", "F4", "G4", "A4", "Bb4"), names(strip));
        assertTrue(strip.facts().get(0).contains("transposed by -2 semitones, trimmed by -30.0 cents"));
    }

    @Test
    void withTheHighEndNearTheNotesComeInTheOrderOfTheirDistance() {
        Tuning near = MAJOR.with(new handspan.music.tuning.PitchRange(60, 72, Direction.HIGH_NEAR, 0));
        NoteStrip strip = NoteStrip.ofPitch(Samples.room(100, 400, near), near);
        assertEquals("C5", strip.marks().get(0).name());
        assertEquals(100, strip.marks().get(0).mm(), 1e-9);
        assertEquals("high", strip.nearWords());
        assertTrue(strip.marks().get(0).chief(), "the keynote");
    }

    @Test
    void cellsMeetHalfWayAndFillTheZone() {
        NoteStrip strip = NoteStrip.ofPitch(Samples.room(100, 400, MAJOR), MAJOR);
        assertEquals(100, strip.cells().get(0).fromMm(), 1e-9);
        assertEquals(400, strip.cells().get(7).toMm(), 1e-9);
        for (int i = 1; i < 8; i++) {
            double meeting =
                    (strip.marks().get(i - 1).mm() + strip.marks().get(i).mm()) / 2;
            assertEquals(meeting, strip.cells().get(i - 1).toMm(), 1e-9);
            assertEquals(meeting, strip.cells().get(i).fromMm(), 1e-9);
        }
    }

    @Test
    void placesWithoutMmAreRefusedWithWhatToDo() {
        RoomProfile room = room(Samples.scaled("1:unscaled:none", CURVE), measured());
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> NoteStrip.ofPitch(room, MAJOR));
        assertTrue(String.valueOf(refusal.getMessage()).contains("--ruler"), refusal.getMessage());
        RoomProfile light = room(measured(), Samples.scaled("2:photoresistor:counts10", CURVE));
        IllegalArgumentException dark = assertThrows(IllegalArgumentException.class, () -> NoteStrip.ofLevel(light));
        assertTrue(String.valueOf(dark.getMessage()).contains("photoresistor"), dark.getMessage());
    }

    @Test
    void infraredWithoutARulerIsPrintedAfterTheDataSheetAndSaysSo() {
        HandSetup infrared = Samples.scaled("1:infrared:counts10", new Response.Triangulation(0.1, 270, 20));
        NoteStrip strip = NoteStrip.ofPitch(room(infrared, measured()), MAJOR);
        assertTrue(String.join(" ", strip.facts()).contains("after the data sheet's curve, no ruler was used"));
        HandSetup ruled = new HandSetup(infrared.channel(), infrared.response(), infrared.zone(), 2, false);
        assertTrue(String.join(
                        " ", NoteStrip.ofPitch(room(ruled, measured()), MAJOR).facts())
                .contains("after a ruler"));
    }

    @Test
    void zonesBehindTheSensorOrTooFarOffAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> NoteStrip.ofPitch(Samples.room(-1, 400, MAJOR), MAJOR));
        assertThrows(IllegalArgumentException.class, () -> NoteStrip.ofPitch(Samples.room(100, 5001, MAJOR), MAJOR));
    }
}
