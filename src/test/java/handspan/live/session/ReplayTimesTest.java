package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.live.path.PathSettings;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When the frames of a replay are dated. */
class ReplayTimesTest {
    private static final long READING = 20 * Nanos.PER_MS;

    private final RoomProfile room = TestRooms.twoDistances(50);
    private final FrameList frames = new FrameList();
    private long now = Nanos.PER_SECOND;
    private final Engine engine =
            new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), (line, length, time) -> {}, e -> {}), now);

    private void lines(int count, String text) {
        for (int i = 0; i < count; i++) {
            now += READING;
            Replay.tickUntil(engine, now);
            byte[] bytes = (text + "\n").getBytes(StandardCharsets.ISO_8859_1);
            engine.onBytes(bytes, bytes.length, now);
        }
    }

    /** A hand that comes back after a silence is not heard at times before it came. */
    @Test
    void framesNeverGoBackInTime() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)), now);
        lines(40, "250,200");
        lines(150, "8190,200");
        long came = now;
        lines(21, "300,200");
        List<SoundFrame> all = frames.frames();
        for (int i = 1; i < all.size(); i++) {
            assertTrue(all.get(i).timeNanos() > all.get(i - 1).timeNanos(), "frame " + i);
            long since = all.get(i).timeNanos() - came;
            // 250 mm sound below 400 Hz, 300 mm at 440
            assertTrue(all.get(i).pitchHz() < 400 || since > 0, () -> "sounds " + since + " ns after it came");
        }
    }
}
