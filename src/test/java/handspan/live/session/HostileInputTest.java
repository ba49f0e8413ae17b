package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineSplitter;
import handspan.instrument.line.SpoiltLines;
import handspan.live.path.FrameTarget;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever a line holds, nothing is thrown, no frame holds a number that is none, and level stays under the ceiling.
 */
class HostileInputTest {
    private static final double CEILING = 0.501187233628;

    /** Beyond what tests in the same process leave behind; a list of the lines of a long run would take more. */
    private static final long MOST_GROWTH_BYTES = 24_000_000;

    private static final String[] NASTY = {
        "NaN",
        "inf",
        "-inf",
        "1e308",
        "-1e308",
        "1e999",
        "-0",
        "0",
        "-1",
        "8190",
        "65535",
        "99999999999999999999999",
        "",
        "300",
        "301",
        "299.5",
        "1e-320",
        "+",
        "-",
        ".",
        "e",
        "\u0000",
        "\u00ff",
        "300 mm",
        "x300"
    };

    /** A target that refuses frames no receiver should get. */
    private static final class Guard implements FrameTarget {
        private long frames;

        @Override
        public void send(SoundFrame frame, boolean withState) {
            frames++;
            boolean numbers = Double.isFinite(frame.pitchHz())
                    && Double.isFinite(frame.centsFromKey())
                    && Double.isFinite(frame.pitchPlace01())
                    && Double.isFinite(frame.levelPlace01());
            assertTrue(numbers, "" + frame);
            assertTrue(frame.gain01() >= 0 && frame.gain01() <= CEILING, "" + frame);
            assertTrue(frame.pitchHz() >= 219.9 && frame.pitchHz() <= 880.1, "" + frame);
        }

        @Override
        public TargetStatus status() {
            return new TargetStatus("guard", frames, 0, 0, "");
        }

        @Override
        public void close() {}
    }

    private static Engine playing(FrameTarget target, long now) {
        RoomProfile profile = TestRooms.twoDistances(50);
        Engine engine = new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(target), LineTap.NONE, event -> {}), now);
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)), now);
        return engine;
    }

    private static void mutatedLines(int count, long seed) {
        Random random = new Random(seed);
        Guard guard = new Guard();
        long now = Nanos.PER_SECOND;
        Engine engine = playing(guard, now);
        for (int i = 0; i < count; i++) {
            now += 1 + random.nextInt(40) * Nanos.PER_MS;
            Replay.tickUntil(engine, now);
            String first =
                    random.nextInt(4) > 0 ? "" + (100 + random.nextInt(400)) : NASTY[random.nextInt(NASTY.length)];
            String second = random.nextInt(4) > 0 ? "300" : NASTY[random.nextInt(NASTY.length)];
            String separator = random.nextInt(50) == 0 ? ";" : ",";
            byte[] line = (first + separator + second + (random.nextInt(30) == 0 ? "" : "\r\n"))
                    .getBytes(StandardCharsets.ISO_8859_1);
            engine.onBytes(line, line.length, now);
        }
        assertTrue(guard.frames > count / 10, guard.frames + " frames");
    }

    private static void randomBytes(int count, long seed) {
        Random random = new Random(seed);
        Guard guard = new Guard();
        long now = Nanos.PER_SECOND;
        Engine playing = playing(guard, now);
        Engine learning = new Engine(Engine.Plugs.none(), now);
        learning.onLinkUp(now);
        learning.onCommand(new Command.Watch(), now);
        byte[] chunk = new byte[500];
        for (int sent = 0; sent < count; sent += chunk.length) {
            now += 10 * Nanos.PER_MS;
            random.nextBytes(chunk);
            for (int i = 0; i < chunk.length; i += 1 + random.nextInt(40)) {
                chunk[i] = (byte) (random.nextBoolean() ? '\n' : '0' + random.nextInt(10));
            }
            Replay.tickUntil(playing, now);
            playing.onBytes(chunk, chunk.length, now);
            learning.onBytes(chunk, chunk.length, now);
        }
        assertTrue(playing.snapshot().lines() > 0 && learning.snapshot().bytes() >= count);
    }

    private static void deliver(Engine engine, byte[] line, long now) {
        Replay.tickUntil(engine, now);
        engine.onBytes(line, line.length, now);
    }

    /** Nothing that is shown is endless, or longer than the longest line. */
    private static void assertShownInBounds(Snapshot snapshot) {
        if (snapshot.activity() instanceof ActivityView.Watching watching) {
            assertTrue(watching.values().stream().noneMatch(value -> Double.isInfinite(value)), "" + watching);
            assertTrue(Double.isFinite(watching.ratePerS()) && Double.isFinite(watching.jitterMs()), "" + watching);
            assertTrue(watching.names().size() <= LineShape.MOST_SLOTS);
        }
        assertTrue(snapshot.text().latest().length() <= LineSplitter.LONGEST);
        assertTrue(snapshot.text().remark().length() <= LineSplitter.LONGEST);
        assertTrue(snapshot.events().size() < 1000, snapshot.events().size() + " events");
    }

    /** One engine learns each shape from nothing, one plays on while the board turns into another again and again. */
    private static void spoiltLines(int count, long seed) {
        SpoiltLines lines = new SpoiltLines(seed);
        Guard guard = new Guard();
        long now = Nanos.PER_SECOND;
        Engine playing = playing(guard, now);
        int each = count / lines.shapes() + 1;
        long readings = 0;
        long kept = 0;
        for (int shape = 0; shape < lines.shapes(); shape++) {
            Engine learning = new Engine(Engine.Plugs.none(), now);
            learning.onLinkUp(now);
            learning.onCommand(new Command.Watch(), now);
            for (int i = 0; i < each; i++) {
                now += 20 * Nanos.PER_MS;
                byte[] line = lines.line(shape, i);
                deliver(learning, line, now);
                deliver(playing, line, now);
                if (i % 100 == 99) {
                    assertShownInBounds(learning.snapshot());
                }
            }
            readings += learning.snapshot().readings();
            assertShownInBounds(playing.snapshot());
            if (shape == lines.shapes() / 4) {
                kept = usedBytes();
            }
        }
        assertTrue(readings > count / 5, readings + " readings of " + count + " lines");
        assertTrue(guard.frames > count / 10, guard.frames + " frames");
        long grown = usedBytes() - kept;
        assertTrue(grown < MOST_GROWTH_BYTES, "grown by " + grown + " bytes");
    }

    private static long usedBytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    @Test
    void aHundredThousandSpoiltLinesOfAllShapesDoNoHarm() {
        spoiltLines(100_000, 5);
    }

    /** Two at a time. */
    @Test
    @Tag("deep")
    void aMillionSpoiltLinesOfAllShapesDoNoHarm() {
        LongStream.of(6, 7).parallel().forEach(seed -> spoiltLines(500_000, seed));
    }

    @Test
    void aHundredThousandMutatedLinesDoNoHarm() {
        mutatedLines(100_000, 1);
    }

    @Test
    void aHundredThousandRandomBytesDoNoHarm() {
        randomBytes(100_000, 2);
    }

    @Test
    @Tag("deep")
    void aMillionMutatedLinesDoNoHarm() {
        mutatedLines(1_000_000, 3);
    }

    @Test
    @Tag("deep")
    void tenMillionRandomBytesDoNoHarm() {
        randomBytes(10_000_000, 4);
    }

    /** A list of frames would grow without end here; the guard keeps none. */
    @Test
    void theGuardCanFail() {
        Guard guard = new Guard();
        FrameList list = new FrameList();
        Engine engine = playing(list, Nanos.PER_SECOND);
        engine.onTick(Nanos.PER_SECOND);
        SoundFrame good = list.last();
        SoundFrame bad = new SoundFrame(0, Double.NaN, 69, 0, 1, 4, 0.1, true, 0.5, 0.5, good.state());
        guard.send(good, false);
        org.junit.jupiter.api.Assertions.assertThrows(AssertionError.class, () -> guard.send(bad, false));
    }
}
