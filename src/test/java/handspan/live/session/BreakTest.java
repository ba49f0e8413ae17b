package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines that stop for now on purpose: a fade, no alarm, and nothing that was heard before reaches past it. */
class BreakTest {
    private static final double HZ = 0.01;

    /** Two octaves over 400 mm from 220 Hz; see TestRooms. */
    private static final double NEAR_HZ = 220;

    private static final double FAR_HZ = 880;

    private final FrameList frames = new FrameList();
    private final List<Event> heard = new ArrayList<>();
    private final Engine engine =
            new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), LineTap.NONE, heard::add), Nanos.PER_SECOND);
    private long now = Nanos.PER_SECOND;

    private void lines(int count, String line) {
        byte[] bytes = (line + "\n").getBytes(StandardCharsets.ISO_8859_1);
        for (int i = 0; i < count; i++) {
            now += 20 * Nanos.PER_MS;
            Replay.tickUntil(engine, now);
            engine.onBytes(bytes, bytes.length, now);
        }
    }

    private void pass(long nanos) {
        now += nanos;
        Replay.tickUntil(engine, now);
    }

    private void play() {
        RoomProfile room = TestRooms.twoDistances(50);
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)), now);
        lines(40, "100,300");
        assertEquals(PlayState.PLAYING, frames.last().state());
    }

    @Test
    void soundFadesIn60MsAndIsTakenForAHandThatIsAway() {
        play();
        engine.onBreak("paused", now);
        pass(80 * Nanos.PER_MS);
        assertEquals(0, frames.last().gain01());
        assertEquals(PlayState.AWAY, frames.last().state());
        List<SoundFrame> all = frames.frames();
        double loudest = 0;
        for (int i = 1; i < all.size(); i++) {
            loudest = Math.max(loudest, all.get(i - 1).gain01() - all.get(i).gain01());
        }
        // 60 ms at 200 frames a second are 12 steps of a twelfth of the ceiling, -6 dB
        assertEquals(Math.pow(10, -6 / 20.0) / 12, loudest, 0.005);
    }

    @Test
    void aPauseOfMinutesIsNoLossAndOpensNoPort() {
        play();
        engine.onBreak("paused", now);
        pass(600 * Nanos.PER_SECOND);
        assertEquals(LinkState.PAUSED, engine.snapshot().link());
        assertEquals("paused", engine.snapshot().linkReason());
        assertFalse(engine.takeReopen());
        assertTrue(heard.stream()
                .noneMatch(event -> event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST));
        assertTrue(frames.frames().stream().noneMatch(frame -> frame.state() == PlayState.LOST));
        engine.onBytes(new byte[] {'\n'}, 1, now);
        lines(30, "500,300");
        assertEquals(LinkState.UP, engine.snapshot().link());
        assertEquals(FAR_HZ, frames.last().pitchHz(), HZ);
    }

    /** Half a line before it and half a line after it are not one line. */
    @Test
    void halfALineIsForgotten() {
        play();
        long rejected = engine.snapshot().rejections().values().stream()
                .mapToLong(count -> count)
                .sum();
        engine.onBytes("1".getBytes(StandardCharsets.ISO_8859_1), 1, now);
        engine.onBreak("moving", now);
        pass(150 * Nanos.PER_MS);
        engine.onBytes("\n".getBytes(StandardCharsets.ISO_8859_1), 1, now);
        lines(20, "100,300");
        long settled = engine.snapshot().rejections().values().stream()
                .mapToLong(count -> count)
                .sum();
        // the readings that settle, no more
        assertEquals(handspan.live.path.Intake.SETTLING_READINGS, settled - rejected);
        assertEquals(NEAR_HZ, frames.last().pitchHz(), HZ);
    }

    @Test
    void aBoardThatIsLostDuringAPauseOfItsOwnIsStillTakenUp() {
        play();
        engine.onBreak("paused", now);
        pass(5 * Nanos.PER_SECOND);
        engine.onLinkDown(LinkWatch.ENDED, now);
        assertEquals(LinkState.LOST, engine.snapshot().link());
        engine.onLinkUp(now);
        lines(30, "300,300");
        assertEquals(PlayState.PLAYING, frames.last().state());
    }
}
