package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.music.passage.PassageFigures;
import handspan.music.passage.PlayedNote;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A simulated hand plays known notes with known errors into a take; the take is played through a room and measured. The
 * hand's places are true ones between its own near and far end, so that what the room makes of the ends and of the
 * sensor's bend adds the same to every passage.
 */
class PlayedTakeTest {
    /** Two octaves are 393 mm here, 6.1 cents/mm; the hand wanders by a millimetre, the room's own error is apart. */
    private static final double SAME_ERROR_CENTS = 5;

    /** A room by two ends states some 10 cents of standard uncertainty; twice that. */
    private static final double ROOM_CENTS = 20;

    private static final int[] KEYS = {60, 64, 67, 72, 69, 65, 62, 60};
    private static final double HOLD_S = 0.55;
    private static final SourceOptions FAST = new SourceOptions(115200, OptionalDouble.empty(), 1, false);

    @TempDir
    Path folder;

    private RoomProfile room;
    private Tuning tuning;

    @BeforeEach
    void aRoomIsThere() throws Exception {
        room = new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
        tuning = Tuning.usual();
    }

    private PlayedTake played(String name, double offCents, Tuning in) throws Exception {
        return played(name, offCents, HOLD_S, in);
    }

    private PlayedTake played(String name, double offCents, double lastS, Tuning in) throws Exception {
        Path file = folder.resolve(name);
        try (Recording recording = Recording.into(file, "now", "Moth", Source.parse("sim:hall"), 115200);
                Rig rig = Rigs.open(
                        Source.parse("sim:hall"), FAST, room.room().instrument().shape(), List.of(), recording)) {
            Simulation simulation = rig.simulation().orElseThrow();
            rig.submit(new Command.Play(room, tuning, PathSettings.USUAL));
            PitchCurve curve = tuning.curve();
            long start = rig.snapshot().timeNanos();
            List<Double> places = Arrays.stream(KEYS)
                    .mapToObj(key -> curve.place01(key + offCents / 100))
                    .toList();
            long over = simulation.play(places, HOLD_S, lastS, start);
            simulation.leave(over);
            rig.follow(snapshot -> snapshot.timeNanos() < over + 2 * Nanos.PER_SECOND);
        }
        return PlayedTake.of(Source.parse("take:" + file), FAST, room, in);
    }

    @Test
    void theNotesThatWerePlayedAreFoundWithTheirErrors() throws Exception {
        PassageFigures exact = played("exact.take", 0, tuning).figures();
        PassageFigures sharp = played("sharp.take", 25, tuning).figures();
        assertEquals(
                List.of("C4", "D4", "E4", "F4", "G4", "A4", "C5"),
                exact.notes().stream().map(PlayedNote::name).toList());
        assertEquals(2, exact.notes().get(0).visits());
        assertEquals(8, exact.visits().size());
        assertEquals(0, exact.sound().meanCents(), ROOM_CENTS);
        assertEquals(25, sharp.sound().meanCents() - exact.sound().meanCents(), SAME_ERROR_CENTS);
        // eight notes of 0.55 s, their ends lost to glides by some hundredths each
        assertEquals(8 * HOLD_S, exact.time().onNotesS(), 0.8);
        assertTrue(exact.vibrato().found().isEmpty());
    }

    @Test
    void stepsHideTheHandFromTheSoundButNotFromTheReport() throws Exception {
        PassageFigures figures =
                played("steps.take", 25, tuning.withSnap(Snap.STEPS)).figures();
        assertEquals(0, figures.sound().rmsCents(), 1);
        assertEquals(25, figures.hand().meanCents(), ROOM_CENTS);
    }

    /**
     * The simulated player adds a vibrato of 1 to 3 mm at 5.5 to 6.5 Hz to notes of 0.6 s and more: 6.1 to 18.3 cents.
     */
    @Test
    void theVibratoOfALongNoteIsFoundAsItWasPlayed() throws Exception {
        PassageFigures figures = played("vibrato.take", 0, 4, tuning).figures();
        assertEquals(1, figures.vibrato().found().size());
        assertEquals(6, figures.vibrato().rateHz(), 0.55);
        assertEquals(12.2, figures.vibrato().widthCents(), 6.5);
    }

    /** Half a minute in each of eight hands that tremble and wander; stated is one passage in a hundred. */
    @Test
    void aStillHandHasNoVibrato() throws Exception {
        int found = 0;
        for (int seed = 1; seed <= 8; seed++) {
            Path file = folder.resolve("still" + seed + ".take");
            SourceOptions options = new SourceOptions(115200, OptionalDouble.empty(), seed, false);
            try (Recording recording = Recording.into(file, "now", "Moth", Source.parse("sim:hall"), 115200);
                    Rig rig = Rigs.open(
                            Source.parse("sim:hall"),
                            options,
                            room.room().instrument().shape(),
                            List.of(),
                            recording)) {
                rig.submit(new Command.Play(room, tuning, PathSettings.USUAL));
                long start = rig.snapshot().timeNanos();
                rig.simulation().orElseThrow().holdStill(0.5, start);
                rig.follow(snapshot -> snapshot.timeNanos() < start + 30 * Nanos.PER_SECOND);
            }
            PassageFigures figures = PlayedTake.of(Source.parse("take:" + file), FAST, room, tuning)
                    .figures();
            assertTrue(figures.vibrato().searched() >= 1);
            found += figures.vibrato().found().size();
        }
        assertEquals(0, found);
    }

    @Test
    void whatBelongsToAnotherInstrumentPlaysNothing() throws Exception {
        Path log = folder.resolve("other.csv");
        java.nio.file.Files.writeString(log, "temp=21.5\n".repeat(300));
        PlayedTake played = PlayedTake.of(
                Source.parse("take:" + log), new SourceOptions(115200, OptionalDouble.of(50), 1, false), room, tuning);
        assertTrue(played.figures().visits().isEmpty());
        assertTrue(played.remark().contains("not there any more"), played.remark());
    }
}
