package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.Event;
import handspan.live.session.Replay;
import handspan.music.practice.Asking;
import handspan.music.practice.Course;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hand at 250 mm is asked for A4, which lies at 300 mm of a zone from 100 to 500 mm that carries A3 to A5. */
class PracticeTalkTest {
    @TempDir
    Path folder;

    private final RoomProfile room = TestRooms.twoDistances(50);
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final CourseArguments wishes = new CourseArguments();
    private final PracticeTalk.Deafness deafness = new PracticeTalk.Deafness();
    private final List<Event> heard = new ArrayList<>();

    private String words() {
        return said.toString(StandardCharsets.UTF_8);
    }

    /** Half a second of a hand that has been asked. */
    private PracticeTalk asked(Engine engine) {
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        Course course = new Course(List.of(12, 13));
        PracticeTalk talk = new PracticeTalk(
                new Talk(out, out, false, new SessionLog(folder, "practice")),
                wishes,
                Cues.silent(),
                deafness,
                room.room().pitch().zone(),
                course);
        long now = Nanos.PER_SECOND;
        engine.onLinkUp(now);
        engine.onCommand(
                new Command.Practise(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL), course, 20),
                now);
        for (int i = 0; i < 25; i++) {
            now += 20 * Nanos.PER_MS;
            Replay.tickUntil(engine, now);
            byte[] line = "250,250\r\n".getBytes(StandardCharsets.US_ASCII);
            engine.onBytes(line, line.length, now);
        }
        heard.forEach(talk::tell);
        talk.help(engine.snapshot());
        return talk;
    }

    private Engine engine() {
        return new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(), LineTap.NONE, heard::add), Nanos.PER_SECOND);
    }

    /** 50 mm of 400 mm are three of 24 semitones. */
    @Test
    void aNoteIsNamedAndTheWayShown() {
        asked(engine());
        assertEquals(
                List.of("-> note 1 of 2: A4", "   50 mm further away (300 cents higher)"),
                words().lines().toList());
    }

    @Test
    void withoutHelpNoWayIsShown() {
        wishes.noHelp = true;
        asked(engine());
        assertEquals("-> note 1 of 2: A4", words().strip());
    }

    @Test
    void bySoundNeitherNameNorWayIsShown() {
        wishes.asking = Asking.SOUND;
        asked(engine());
        assertEquals("-> note 1 of 2: listen", words().strip());
    }

    @Test
    void whereNothingCanBeHeardTheNameIsShownAfterAll() {
        wishes.asking = Asking.SOUND;
        Engine engine = engine();
        PracticeTalk talk = asked(engine);
        assertFalse(words().contains("A4"));
        deafness.begin();
        talk.help(engine.snapshot());
        talk.help(engine.snapshot());
        assertEquals(
                1,
                words().lines()
                        .filter(line -> line.equals("-> note 1 of 2: A4"))
                        .count());
        assertTrue(words().lines().noneMatch(line -> line.contains("further")), words());
    }
}
