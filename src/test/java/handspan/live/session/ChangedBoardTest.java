package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.CommaRule;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineShape.Matching;
import handspan.instrument.line.LineShape.Slot;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.send.PlayState;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.Zone;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A board whose lines change their shape in mid-stream, whatever it was and whatever it becomes. */
class ChangedBoardTest {
    private final FrameList frames = new FrameList();
    private final List<Event> heard = new ArrayList<>();
    private long now = Nanos.PER_SECOND;

    private Engine engine(@Nullable LineShape shape) {
        Engine engine =
                new Engine(new Engine.Plugs(shape, CommaRule.ASK, List.of(frames), LineTap.NONE, heard::add), now);
        engine.onLinkUp(now);
        return engine;
    }

    private void lines(Engine engine, int count, String end, IntFunction<String> line) {
        for (int i = 0; i < count; i++) {
            now += 20 * Nanos.PER_MS;
            Replay.tickUntil(engine, now);
            byte[] bytes = (line.apply(i) + end).getBytes(StandardCharsets.ISO_8859_1);
            engine.onBytes(bytes, bytes.length, now);
        }
    }

    private static int hand(int i) {
        return 200 + i * 7 % 60;
    }

    private static String written(String form, int i) {
        return form.replace("H", "" + hand(i))
                .replace("L", "" + (500 + i % 90))
                .replace("#", "" + i)
                .replace("~", " ");
    }

    private static Optional<String> latestShape(List<Event> events) {
        String words = null;
        for (Event event : events) {
            if (event.what() instanceof Event.Learned learned) {
                words = learned.shape().words();
            } else if (event.what() instanceof Event.BoardChanged changed) {
                words = changed.shape().words();
            }
        }
        return Optional.ofNullable(words);
    }

    /** H is the hand, L the light, # counts, ~ is a blank. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '>',
            value = {
                "H,L > H;L > 2 numbers a line parted by semicolons: 1, 2",
                "H,L > Distance: H mm > 1 number with labels: Distance in mm",
                "Distance: H mm > H,L > 2 numbers a line parted by commas: 1, 2",
                "d=H l=L > #,H,L > 3 numbers a line parted by commas: 1, 2, 3",
                "$H,L; > {\"d\":H,\"l\":L} > 2 numbers with labels parted by commas, from { to }: d, l",
                "H > H~~L > 2 numbers a line parted by blanks: 1, 2",
                "H|L > d:H > 1 number with labels: d",
                "H mm > H cm > 1 number a line: 1 in cm",
                "d=Hmm l=L > d=Hcm l=L > 2 numbers with labels parted by blanks: d in cm, l",
                "H > H:L > 2 numbers a line parted by colons: 1, 2"
            })
    void theNewShapeIsLearnedWithinTwentyLinesAndReadInFull(String before, String after, String words) {
        Engine engine = engine(null);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 200, "\r\n", i -> written(before, i));
        long readings = engine.snapshot().readings();
        assertEquals(194, readings, "one line is the tail of another, five settle");
        lines(engine, 200, "\r\n", i -> written(after, i));
        assertEquals(words, latestShape(heard).orElseThrow());
        assertEquals(180, engine.snapshot().readings() - readings);
        assertInstanceOf(ActivityView.Watching.class, engine.snapshot().activity());
    }

    @ParameterizedTest
    @CsvSource({"CR", "LF", "CRLF", "LFCR"})
    void allLineEndsWillDo(String name) {
        String end = name.replace("CR", "\r").replace("LF", "\n");
        Engine engine = engine(null);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 200, end, i -> "  " + written("H,L", i) + (i % 7 == 0 ? end : ""));
        assertEquals(199, engine.snapshot().lines());
        assertEquals(194, engine.snapshot().readings());
    }

    private static RoomProfile labelledRoom() {
        return labelledRoom("");
    }

    private static RoomProfile labelledRoom(String unit) {
        RoomProfile plain = TestRooms.twoDistances(50);
        ChannelSpec pitch = ChannelSpec.parse("d:distance:mm");
        LineShape shape = new LineShape(
                        ',', false, Matching.BY_LABEL, 2, List.of(new Slot("d", unit, 0), new Slot("l", "", 1)))
                .within(new LineShape.Layout('<', '>', false, 1));
        Instrument instrument = new Instrument("Test reed", 1, 115_200, shape, pitch, null, 5);
        Room room = new Room(
                "test",
                "2026-01-01T00:00:00Z",
                instrument,
                plain.room().air(),
                50,
                new HandSetup(pitch, new Response.AsMeasured(), new Zone(100, 500, 0, 0), 0, false),
                null,
                List.of());
        return new RoomProfile(room, plain.tunings(), plain.level(), plain.send());
    }

    private Engine playing(RoomProfile room) {
        Engine engine = engine(room.room().instrument().shape());
        engine.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)), now);
        return engine;
    }

    /** The same number under the same label is the same hand, wherever it stands. */
    @Test
    void playingGoesOnWithALabelThatIsStillThere() {
        Engine engine = playing(labelledRoom());
        lines(engine, 50, "\n", i -> "<d:300,l:5>");
        double before = frames.last().pitchHz();
        assertEquals(PlayState.PLAYING, frames.last().state());
        int frame = frames.frames().size();
        lines(engine, 60, "\n", i -> "x=" + i + " t=7 d=300");
        assertTrue(
                frames.frames().subList(frame, frames.frames().size()).stream().anyMatch(f -> f.gain01() == 0));
        assertEquals(PlayState.PLAYING, frames.last().state());
        assertEquals(before, frames.last().pitchHz(), 1e-6);
        assertTrue(heard.stream()
                .anyMatch(event -> event.what() instanceof Event.BoardChanged changed
                        && changed.words().contains("not there any more: l")));
    }

    /** Read by the old unit, a hand would seem a tenth as far. */
    @Test
    void playingFallsSilentWhereTheUnitHasChanged() {
        Engine engine = playing(labelledRoom("mm"));
        lines(engine, 50, "\n", i -> "<d:300mm,l:5>");
        double before = frames.last().pitchHz();
        assertEquals(PlayState.PLAYING, frames.last().state());
        lines(engine, 100, "\n", i -> "<d:30cm,l:5>");
        assertEquals(0, frames.last().gain01());
        assertEquals(20, engine.snapshot().rejections().get(handspan.instrument.line.Rejection.OTHER_UNIT));
        lines(engine, 100, "\n", i -> "<d:300mm,l:5>");
        assertEquals(PlayState.PLAYING, frames.last().state());
        assertEquals(before, frames.last().pitchHz(), 1e-6);
    }

    /** A board that printed no commas may mean either by them. */
    @ParameterizedTest
    @CsvSource({"ASK, 0", "DECIMAL, 180", "PARTS, 180"})
    void aChangeToCommasIsAskedAboutToo(CommaRule rule, long readings) {
        Engine engine = new Engine(new Engine.Plugs(null, rule, List.of(frames), LineTap.NONE, heard::add), now);
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 100, "\n", i -> "" + hand(i));
        long before = engine.snapshot().readings();
        lines(engine, 200, "\n", i -> "23," + i % 10);
        assertEquals(readings, engine.snapshot().readings() - before);
        assertEquals(rule == CommaRule.ASK, engine.snapshot().question().contains("--comma parts"));
        lines(engine, 60, "\n", i -> "" + hand(i));
        assertTrue(engine.snapshot().readings() > before + readings + 30);
    }

    /** Another count of numbers without labels: nobody knows which is the hand. */
    @Test
    void playingFallsSilentWhereTheHandCannotBeKnown() {
        Engine engine = playing(TestRooms.twoDistances(50));
        lines(engine, 50, "\n", i -> "300,200");
        assertEquals(PlayState.PLAYING, frames.last().state());
        lines(engine, 200, "\n", i -> i + ",300,200");
        assertEquals(0, frames.last().gain01());
        assertTrue(heard.stream()
                .anyMatch(event -> event.what() instanceof Event.BoardChanged changed
                        && changed.gone().equals(List.of("1", "2"))));
    }

    @Test
    void whatCanBeReadInTwoWaysIsAskedOnceAndNothingGoesOn() {
        Engine engine = engine(null);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 100, "\n", i -> "23," + i % 10);
        assertEquals(0, engine.snapshot().readings());
        assertTrue(engine.snapshot().question().contains("--comma decimal"));
        assertEquals(
                1,
                heard.stream()
                        .filter(event -> event.what() instanceof Event.Ambiguous)
                        .count());
        lines(engine, 40, "\n", i -> "23," + i % 20);
        assertEquals("", engine.snapshot().question(), "now the lines tell by themselves");
        assertTrue(engine.snapshot().readings() > 0);
    }

    /** What comes round after every reading is no news, and no hand lost. */
    @Test
    void aLineDrawnBetweenReadingsDoesNotHideWhatTheBoardSaid() {
        Engine engine = engine(null);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 2, "\n", i -> "Booting the sensor");
        lines(engine, 300, "\n", i -> new String[] {"d: " + hand(i), "l: " + i % 9, "= = = ="}[i % 3]);
        assertEquals("Booting the sensor", engine.snapshot().text().remark());
        lines(engine, 30, "\n", i -> i % 10 == 4 ? "Low light" : new String[] {"d: 5", "l: 6"}[i % 2]);
        assertEquals("Low light", engine.snapshot().text().remark());
        assertEquals(
                "2 numbers with labels in 2 lines: d, l", latestShape(heard).orElseThrow());
    }

    /** It names the fault, others follow it, and then there is silence. */
    @Test
    void whatTellsOfAFailureStaysAndIsShownAtOnce() {
        Engine engine = engine(null);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 1, "\n", i -> "tail");
        lines(engine, 1, "\n", i -> "Starting up");
        assertEquals("Starting up", engine.snapshot().text().remark());
        lines(engine, 1, "\n", i -> "Sensor 0x29 not found");
        lines(engine, 1, "\n", i -> "ready");
        assertEquals("Sensor 0x29 not found", engine.snapshot().text().remark());
        lines(engine, 60, "\n", i -> written("H,L", i));
        assertEquals("Sensor 0x29 not found", engine.snapshot().text().remark());
    }

    @Test
    void whatABoardSaysAsItStartsIsKept() {
        Engine engine = engine(null);
        engine.onCommand(new Command.Watch(), now);
        lines(engine, 1, "\n", i -> "tail");
        lines(engine, 1, "\n", i -> "sensor test");
        lines(engine, 1, "\n", i -> "\u001b[31mFailed to boot sensor");
        lines(engine, 60, "\n", i -> written("H,L", i));
        assertEquals("Failed to boot sensor", engine.snapshot().text().remark());
        engine.onLinkUp(now);
        assertEquals("", engine.snapshot().text().remark());
    }
}
