package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.live.path.HandsNow;
import handspan.live.path.PathSettings;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a snapshot says of the last second or two, beside what it says of its own moment. */
class RecentTest {
    private static final long READING = 20 * Nanos.PER_MS;
    private static final double TOLERANCE_MM = 1e-9;

    private final RoomProfile room = TestRooms.twoDistances(50);
    private final FrameList frames = new FrameList();
    private long now = Nanos.PER_SECOND;
    private final Engine engine =
            new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), (line, length, time) -> {}, e -> {}), now);

    private void line(String text) {
        now += READING;
        Replay.tickUntil(engine, now);
        byte[] bytes = (text + "\n").getBytes(StandardCharsets.ISO_8859_1);
        engine.onBytes(bytes, bytes.length, now);
    }

    private void lines(int count, String text) {
        for (int i = 0; i < count; i++) {
            line(text);
        }
    }

    private void play(boolean muted) {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(muted)), now);
    }

    private ActivityView.Playing view() {
        return assertInstanceOf(ActivityView.Playing.class, engine.snapshot().activity());
    }

    /** A log that is read after every few things loses none, and nothing that was handed out ever changes. */
    @Test
    void aReaderWhoComesOftenEnoughMissesNothing() {
        RecentLog<Integer> log = new RecentLog<>();
        Recent<Integer> early = log.recent();
        List<Integer> read = new ArrayList<>();
        long next = 0;
        for (int i = 0; i < 5000; i++) {
            log.add(i);
            if (i % 300 == 299) {
                Recent<Integer> now = log.recent();
                assertTrue(now.first() <= next, () -> "the oldest is " + now.first());
                for (; next < now.next(); next++) {
                    read.add(now.at(next));
                }
            }
        }
        assertEquals(4800, read.size());
        for (int i = 0; i < read.size(); i++) {
            assertEquals(i, read.get(i));
        }
        assertEquals(0, early.size());
        assertThrows(IllegalArgumentException.class, () -> early.at(0));
        assertTrue(log.recent().size() <= RecentLog.CHUNK * RecentLog.CHUNKS);
    }

    /** The target's own list is the witness. */
    @Test
    void everyFrameThatWasSentIsAmongTheRecentOnes() {
        play(false);
        lines(60, "250,200");
        Recent<SoundFrame> sent = view().sent();
        List<SoundFrame> all = frames.frames();
        assertEquals(all.size(), sent.next());
        for (long i = sent.first(); i < sent.next(); i++) {
            assertEquals(all.get((int) i), sent.at(i));
        }
    }

    @Test
    void spikesAndLinesThatAreNoneStandAmongTheReadings() {
        play(false);
        lines(40, "250,200");
        line("250,200,7");
        line("251,200");
        line("480,200");
        line("250,200");
        Recent<LineSeen> seen = engine.snapshot().seen();
        List<LineSeen.Fate> latest = new ArrayList<>();
        for (long i = seen.next() - 4; i < seen.next(); i++) {
            latest.add(seen.at(i).fate());
        }
        assertEquals(
                List.of(LineSeen.Fate.REJECTED, LineSeen.Fate.TAKEN, LineSeen.Fate.HELD_BACK, LineSeen.Fate.TAKEN),
                latest);
        LineSeen spike = seen.at(seen.next() - 2);
        assertEquals(480, java.util.Objects.requireNonNull(spike.reading()).value(0));
        assertEquals(now - READING, spike.timeNanos());
    }

    /** While the sound is closed frames go out once a second; the hand is seen to move all the same. */
    @Test
    void aMutedHandIsSeenToMove() {
        play(true);
        lines(20, "200,150");
        for (int mm = 200; mm <= 300; mm += 4) {
            line(mm + ",250");
        }
        lines(50, "300,250");
        HandsNow hands = view().hands();
        assertTrue(hands.pitch() && hands.level());
        // 200 mm up the zone of 400, 150 up the one of 200
        assertEquals(300, hands.pitchMm(), TOLERANCE_MM);
        assertEquals(0.5, hands.pitchPlace01(), TOLERANCE_MM);
        assertEquals(0.75, hands.levelPlace01(), TOLERANCE_MM);
    }

    @Test
    void withoutAHandThereIsNone() {
        play(true);
        lines(40, "8190,8190");
        HandsNow hands = view().hands();
        assertFalse(hands.pitch() || hands.level());
        assertTrue(Double.isNaN(hands.pitchMm()) && Double.isNaN(hands.levelPlace01()));
    }
}
