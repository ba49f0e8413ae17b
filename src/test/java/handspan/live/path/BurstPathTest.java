package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Sensor;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.budget.PitchSmoothing;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bursts and backlogs on their way through the path. */
class BurstPathTest {
    /** Of a laser ranger before a fixed target, sd over an hour. */
    private static final double NOISE_MM = 2.15;

    private static final LineShape SHAPE = LineShape.numbers(',', 2);

    /** Rms of smoothed positions about what the same hand and noise give when every line comes at once, mm. */
    private static double roughnessMm(double ratePerS, boolean dates) {
        RoomProfile room = TestRooms.twoDistances(ratePerS, Tuning.usual(), NOISE_MM);
        HandSetup hand = room.room().pitch();
        TimedBoard board = TimedBoard.even((int) (60 * ratePerS), 0.987 * ratePerS);
        HandTracker prompt = tracker(room, hand, ratePerS);
        HandTracker late = tracker(room, hand, ratePerS);
        board.throughTimer(16, 5);
        ArrivalClock clock = new ArrivalClock();
        long[] dated = board.dated(clock);
        Random random = new Random(7);
        double squares = 0;
        int count = 0;
        for (int i = 0; i < board.count(); i++) {
            double seconds = Nanos.toSeconds(board.printed(i));
            double mm = 300 + 80 * Math.sin(2 * Math.PI * 0.7 * seconds) + hand.noiseMm() * random.nextGaussian();
            double[] values = {mm, 300};
            Hand even = prompt.onReading(new Reading(board.printed(i), values, 0b11));
            Reading reading = new Reading(board.arrived(i), values, 0b11);
            Hand burst = late.onReading(dates ? reading.printedAt(dated[i]) : reading);
            if (i > 300 && even != null && burst != null) {
                squares += Math.pow(burst.mm() - even.mm(), 2);
                count++;
            }
        }
        assertTrue(count > 0.99 * (board.count() - 301), count + " positions");
        return Math.sqrt(squares / count);
    }

    private static HandTracker tracker(RoomProfile room, HandSetup hand, double ratePerS) {
        Sensor sensor = Sensor.of(hand.channel(), Air.USUAL, 5);
        return new HandTracker(
                0, sensor, hand, PitchSmoothing.of(room.room(), room.tunings().get(0)), ratePerS, 60 * Nanos.PER_MS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 100})
    void aMovingHandIsSmoothedAsIfItsLinesHadComeAtOnce(double ratePerS) {
        double before = roughnessMm(ratePerS, false);
        double after = roughnessMm(ratePerS, true);
        assertTrue(after < 0.1 * before, after + " mm after, " + before + " mm before");
    }

    private static byte[] lines(long fromNanos, int count, long everyNanos) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            double seconds = Nanos.toSeconds(fromNanos + i * everyNanos);
            text.append(String.format(Locale.ROOT, "%.1f,300.0%n", 200 + 30 * seconds));
        }
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static FrameList stalled(boolean glide, FrameList frames) {
        Engine engine = new Engine(new Engine.Plugs(SHAPE, List.of(frames), LineTap.NONE, event -> {}), 0);
        RoomProfile room = TestRooms.twoDistances(50);
        engine.onLinkUp(0);
        engine.onCommand(
                new Command.Play(
                        room,
                        room.tunings().get(0),
                        PathSettings.USUAL.muted(false).gliding(glide)),
                0);
        long every = 20 * Nanos.PER_MS;
        for (int i = 1; i <= 150; i++) {
            send(engine, lines(i * every, 1, every), i * every);
        }
        // 8 lines wait for 150 ms, then come in two pieces
        long end = 158 * every;
        send(engine, lines(151 * every, 5, every), end);
        send(engine, lines(156 * every, 3, every), end + 200_000);
        for (int i = 159; i < 180; i++) {
            send(engine, lines(i * every, 1, every), i * every);
        }
        return frames;
    }

    private static void send(Engine engine, byte[] bytes, long timeNanos) {
        while (engine.nextDeadlineNanos() <= timeNanos) {
            engine.onTick(engine.nextDeadlineNanos());
        }
        engine.onBytes(bytes, bytes.length, timeNanos);
    }

    @Test
    void ofABacklogOnlyTheNewestSounds() {
        FrameList frames = stalled(false, new FrameList());
        long end = 158 * 20 * Nanos.PER_MS;
        List<SoundFrame> then = frames.frames().stream()
                .filter(frame -> frame.timeNanos() >= end && frame.timeNanos() < end + 15 * Nanos.PER_MS)
                .toList();
        // one for each of the two pieces that it came in
        assertEquals(2, then.size());
        SoundFrame next = frames.frames().stream()
                .filter(frame -> frame.timeNanos() >= end + 15 * Nanos.PER_MS)
                .findFirst()
                .orElseThrow();
        double steady = next.pitchPlace01() - then.get(1).pitchPlace01();
        // a hand of 30 mm/s: 0.6 mm from line to line, of a zone of some 400 mm
        assertTrue(steady > 0 && steady < 0.004, steady + " of the zone");
        assertTrue(then.stream().allMatch(SoundFrame::hand));
    }

    @Test
    void withGlideTheNewestIsWhereItGoes() {
        FrameList frames = stalled(true, new FrameList());
        long end = 158 * 20 * Nanos.PER_MS;
        double before = 0;
        long last = 0;
        for (SoundFrame frame : frames.frames()) {
            assertTrue(frame.timeNanos() >= last, "frames run on");
            last = frame.timeNanos();
            boolean hand = frame.timeNanos() > Nanos.PER_SECOND;
            assertTrue(!hand || frame.pitchPlace01() >= before - 1e-3, "the hand goes one way, and so does pitch");
            before = hand ? frame.pitchPlace01() : 0;
        }
        double glided = frames.frames().stream()
                .filter(frame -> frame.timeNanos() >= end + 20 * Nanos.PER_MS)
                .findFirst()
                .orElseThrow()
                .pitchPlace01();
        double later = frames.frames().stream()
                .filter(frame -> frame.timeNanos() >= end + 60 * Nanos.PER_MS)
                .findFirst()
                .orElseThrow()
                .pitchPlace01();
        assertEquals(2 * 0.6 / 400, later - glided, 0.002);
    }
}
