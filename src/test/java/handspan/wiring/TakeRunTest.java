package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.LineShape;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.Event;
import handspan.live.session.LinkState;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.outside.take.TakeIndex;
import handspan.profile.RoomProfile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A recording that is paused and taken elsewhere, through the whole path, with times as arguments. */
class TakeRunTest {
    private static final int SECONDS = 60;
    private static final int RATE = 50;

    /** A board so quick that seven readings, after which a hand counts as there, are over before a fade is. */
    private static final int QUICK_RATE = 500;

    /** Pitch passes over at 4 cents a millisecond at most; what the path promises of a tuning that changes. */
    private static final double MOST_CENTS_PER_MS = 4;

    /** A fade of 60 ms from a ceiling of -6 dB, and the rounding of frames 5 ms apart. */
    private static final double MOST_FALL_PER_MS = Math.pow(10, -6 / 20.0) / 60 + 1e-3;

    /** How far the pitch of one place may differ, cents: what smoothing knew before has been forgotten in 2 s. */
    private static final double SAME_CENTS = 3;

    private static final double SAME_GAIN = 0.01;
    private static final double MICROS_PER_S = 1e6;

    @TempDir
    Path folder;

    private Path take;
    private RoomProfile room = TestRooms.twoDistances(RATE);

    /** A hand that sways by 150 mm in 7 s and a level hand that swells, with the board's own milliseconds. */
    @BeforeEach
    void aMinuteOfPlaying() throws IOException {
        record(RATE, 1);
    }

    private void record(int rate, double noiseMm) throws IOException {
        room = TestRooms.twoDistances(rate);
        Random random = new Random(11);
        StringBuilder text = new StringBuilder("# handspan-take/1\n");
        for (int i = 0; i < SECONDS * rate; i++) {
            double s = i / (double) rate;
            long pitch = Math.round(300 + 150 * Math.sin(2 * Math.PI * s / 7) + noiseMm * random.nextGaussian());
            long level = Math.round(250 + 40 * Math.sin(2 * Math.PI * s / 11));
            long arrival = Math.round(s * MICROS_PER_S) + random.nextInt(100_000 / rate);
            text.append(arrival).append('\t').append(pitch).append(',').append(level);
            text.append(',').append(4000 + i * 1000L / rate).append('\n');
        }
        take = Files.write(folder.resolve("minute.take"), text.toString().getBytes(StandardCharsets.ISO_8859_1));
    }

    /** A run with the engine that it plays, and the frames with the places they belong to. */
    private final class Played {
        private final FrameList frames = new FrameList();
        private final List<Event> heard = new ArrayList<>();
        private final List<Long> places = new ArrayList<>();
        private final TakeRun run;
        private final Engine engine;
        private long now = Nanos.PER_SECOND;

        Played(long beginMicros, boolean stays) throws IOException {
            TakeIndex index = TakeIndex.of(take, OptionalDouble.empty(), () -> true);
            run = new TakeRun(new TakeSource(take, OptionalDouble.empty(), 0, beginMicros), stays, () -> index);
            engine = new Engine(
                    new Engine.Plugs(LineShape.numbers(',', 3), List.of(frames), LineTap.NONE, heard::add), now);
            engine.onLinkUp(now);
            engine.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)), now);
        }

        private void tick(long untilNanos) {
            // one deadline after the other, to know the place of each frame
            while (engine.nextDeadlineNanos() <= untilNanos) {
                long at = Math.max(engine.nextDeadlineNanos(), engine.timeNanos());
                engine.onTick(at);
                keep();
            }
            now = untilNanos;
        }

        private void keep() {
            while (places.size() < frames.status().sent()) {
                places.add(run.clock().placeMicros(engine.timeNanos()));
            }
        }

        /** Lets so much time pass; false where the recording is over before. */
        boolean pass(double seconds) {
            long end = now + Math.round(seconds * Nanos.PER_SECOND);
            while (true) {
                TakeRun.Turn turn = run.next(now);
                if (turn instanceof TakeRun.Turn.Chunk chunk) {
                    engine.onBytes(chunk.bytes(), chunk.bytes().length, now);
                    keep();
                } else if (turn instanceof TakeRun.Turn.Break stop) {
                    engine.onBreak(stop.words(), now);
                    keep();
                } else if (turn instanceof TakeRun.Turn.Over) {
                    return false;
                } else if (turn instanceof TakeRun.Turn.Wait wait && wait.untilNanos() > now) {
                    tick(Math.min(end, wait.untilNanos()));
                    if (now >= end) {
                        return true;
                    }
                }
            }
        }

        double placeS() {
            return run.clock().placeMicros(now) / MICROS_PER_S;
        }
    }

    private static double cents(SoundFrame from, SoundFrame to) {
        return Cents.between(from.pitchHz(), to.pitchHz());
    }

    /** Nothing leaps while it sounds, nothing is lost, and sound goes no faster than by its fade. */
    private static void nothingLeaps(Played played) {
        List<SoundFrame> frames = played.frames.frames();
        for (int i = 1; i < frames.size(); i++) {
            SoundFrame before = frames.get(i - 1);
            SoundFrame after = frames.get(i);
            double ms = Math.max(1, Nanos.toMs(after.timeNanos() - before.timeNanos()));
            if (before.gain01() > 0 && after.gain01() > 0) {
                assertEquals(0, cents(before, after), MOST_CENTS_PER_MS * ms, "at " + after.timeNanos());
            }
            assertTrue(before.gain01() - after.gain01() <= MOST_FALL_PER_MS * ms, "at " + after.timeNanos());
            assertTrue(after.state() != PlayState.LOST);
        }
        assertTrue(played.heard.stream()
                .noneMatch(event -> event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST));
    }

    /** From 2 s after a place on for 5 s, what comes is what comes when it is run through from 3 s before. */
    private void soundsAs(Played played, int fromFrame, double placeS) throws IOException {
        Played reference = new Played(Math.round(Math.max(0, placeS - 3) * MICROS_PER_S), false);
        reference.pass(Math.min(placeS, 3) + 8);
        List<SoundFrame> frames = played.frames.frames();
        int compared = 0;
        int at = 1;
        for (int i = fromFrame; i < frames.size(); i++) {
            double s = played.places.get(i) / MICROS_PER_S - placeS;
            if (s < 2 || s > 7) {
                continue;
            }
            while (reference.places.get(at) < played.places.get(i)) {
                at++;
            }
            SoundFrame low = reference.frames.frames().get(at - 1);
            SoundFrame high = reference.frames.frames().get(at);
            double spanMicros = reference.places.get(at) - (double) reference.places.get(at - 1);
            double part = (played.places.get(i) - (double) reference.places.get(at - 1)) / spanMicros;
            double expected = cents(frames.get(i), low) + part * cents(low, high);
            assertEquals(0, expected, SAME_CENTS, "at " + played.places.get(i));
            assertEquals(
                    low.gain01() + part * (high.gain01() - low.gain01()),
                    frames.get(i).gain01(),
                    SAME_GAIN);
            assertTrue(frames.get(i).hand());
            compared++;
        }
        assertTrue(compared > 900, compared + " frames compared of 5 s at 200 a second");
    }

    @ParameterizedTest
    @ValueSource(doubles = {40.3, 5.77, 0, 49.9})
    void afterAJumpComesWhatComesThere(double toS) throws IOException {
        Played played = new Played(0, true);
        played.pass(12.345);
        int frames = played.frames.frames().size();
        played.run.jump(Math.round(toS * MICROS_PER_S));
        played.pass(8);
        // 150 ms of silence before it, and no more
        assertEquals(toS + 8 - 0.15, played.placeS(), 0.001);
        nothingLeaps(played);
        soundsAs(played, frames + 60, toS);
        List<SoundFrame> between = played.frames.frames().subList(frames, frames + 40);
        assertTrue(between.stream().anyMatch(frame -> frame.gain01() == 0), "silent between both places");
    }

    @Test
    void aJumpOfAQuickBoardWaitsForTheFade() throws IOException {
        record(QUICK_RATE, 0);
        Played played = new Played(0, true);
        played.pass(3);
        int frames = played.frames.frames().size();
        played.run.jump(40_000_000);
        played.pass(8);
        nothingLeaps(played);
        soundsAs(played, frames + 60, 40);
    }

    @Test
    void aPauseFadesAndWhatFollowsItFollowsWhatWasBefore() throws IOException {
        Played played = new Played(0, true);
        played.pass(10);
        played.run.pause(played.now);
        played.pass(300);
        assertEquals(10, played.placeS(), 0.001);
        assertEquals(LinkState.PAUSED, played.engine.snapshot().link());
        assertEquals("paused", played.engine.snapshot().linkReason());
        assertEquals(0, played.frames.last().gain01());
        int frames = played.frames.frames().size();
        played.run.goOn();
        played.pass(8);
        assertEquals(18, played.placeS(), 0.001);
        assertEquals(LinkState.UP, played.engine.snapshot().link());
        nothingLeaps(played);
        soundsAs(played, frames + 60, 10);
    }

    /** Thirty jumps, pauses and goings-on at any moments, some within one fade, some while it is paused. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whateverIsDoneToItNothingLeapsAndItSoundsRightAfterwards(long seed) throws IOException {
        Random random = new Random(seed);
        Played played = new Played(0, true);
        played.pass(2);
        for (int i = 0; i < 30; i++) {
            List<Consumer<TakeRun>> wishes = List.of(
                    run -> run.jump(random.nextLong(SECONDS * 1_000_000L)),
                    run -> run.jump(run.clock().placeMicros(played.now) + 5_000_000),
                    run -> run.turn(played.now),
                    run -> run.jump(-7));
            wishes.get(random.nextInt(wishes.size())).accept(played.run);
            played.pass(random.nextInt(3) == 0 ? random.nextDouble() * 3 : random.nextDouble() * 0.2);
        }
        if (!played.run.isRunning()) {
            played.run.goOn();
        }
        played.pass(0.5);
        int frames = played.frames.frames().size();
        played.run.jump(20_000_000);
        played.pass(8);
        nothingLeaps(played);
        soundsAs(played, frames + 60, 20);
    }

    @Test
    void atItsEndItWaitsThereAndGoesOnFromItsStart() throws IOException {
        Played played = new Played(57_000_000, true);
        assertTrue(played.pass(20));
        assertTrue(played.run.isEnded());
        assertEquals(SECONDS - 0.02, played.placeS(), 0.003);
        assertEquals(LinkState.PAUSED, played.engine.snapshot().link());
        assertEquals("at the end of the recording", played.engine.snapshot().linkReason());
        assertEquals(0, played.frames.last().gain01());
        int frames = played.frames.frames().size();
        played.run.turn(played.now);
        played.pass(8);
        soundsAs(played, frames + 60, 0);
        nothingLeaps(played);
    }

    @Test
    void aRecordingThatDoesNotStayIsOverAtItsEnd() throws IOException {
        assertTrue(!new Played(57_000_000, false).pass(20));
    }

    /** A machine that slept for an hour goes on where it was, not an hour's lines at once. */
    @Test
    void afterASleepItGoesOnWhereItWas() throws IOException {
        TakeRun run = new TakeRun(new TakeSource(take, OptionalDouble.empty(), 0), false, () -> null);
        long now = Nanos.PER_SECOND;
        TakeRun.Turn turn = run.next(now);
        while (run.clock().placeMicros(now) < 5_000_000) {
            now = turn instanceof TakeRun.Turn.Wait wait ? wait.untilNanos() : now;
            turn = run.next(now);
        }
        now += 3600 * Nanos.PER_SECOND;
        assertInstanceOf(TakeRun.Turn.Chunk.class, run.next(now));
        assertInstanceOf(TakeRun.Turn.Wait.class, run.next(now));
        assertEquals(5, run.clock().placeMicros(now) / MICROS_PER_S, 0.05);
    }

    /** Before its length is known, a place is found by reading to it. */
    @Test
    void aPlaceIsFoundBeforeTheLengthIsKnown() throws IOException {
        TakeIndex index = TakeIndex.of(take, OptionalDouble.empty(), () -> true);
        for (long micros : new long[] {47_000_000, 3_000_000, 30_000_001}) {
            TakeSource known = new TakeSource(take, OptionalDouble.empty(), 0);
            TakeSource unknown = new TakeSource(take, OptionalDouble.empty(), 0);
            known.goTo(micros, index.before(micros));
            unknown.goTo(micros, unknown.start());
            assertEquals(known.nextMicros(), unknown.nextMicros());
            assertArrayEquals(known.next(), unknown.next());
            assertTrue(known.nextMicros() >= micros && known.nextMicros() < micros + 50_000);
            known.close();
            unknown.close();
        }
    }

    /** As fast as the machine can: the same lines, dated from the place on. */
    @Test
    void aRecordingFromAPlaceOnBeginsThere() throws IOException {
        try (TakeSource whole = new TakeSource(take, OptionalDouble.empty(), 1000);
                TakeSource part = new TakeSource(take, OptionalDouble.empty(), 1000, 20_000_000)) {
            while (whole.nextMicros() < 20_000_000) {
                whole.next();
            }
            assertEquals(whole.nextNanos() - 20 * Nanos.PER_SECOND, part.nextNanos());
            part.next();
            whole.next();
            for (int i = 0; i < 100; i++) {
                assertEquals(whole.nextNanos() - 20 * Nanos.PER_SECOND, part.nextNanos());
                assertArrayEquals(whole.next(), part.next());
            }
        }
    }
}
