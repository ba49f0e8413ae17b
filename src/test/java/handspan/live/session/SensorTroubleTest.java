package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/** Sensors that fail while their board goes on printing: it is said, and what sounds is safe. */
class SensorTroubleTest {
    private final Random random = new Random(8);
    private final FrameList frames = new FrameList();
    private final List<String> said = new ArrayList<>();
    private long now = Nanos.PER_SECOND;
    private final Engine engine = playing();

    private Engine playing() {
        RoomProfile room = TestRooms.twoDistances(50, Tuning.usual(), 2);
        Engine made = new Engine(
                new Engine.Plugs(TestRooms.SHAPE, List.of(frames), LineTap.NONE, event -> {
                    if (event.what() instanceof Event.Sensor sensor) {
                        said.add(sensor.trouble());
                    }
                }),
                now);
        made.onLinkUp(now);
        made.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)), now);
        return made;
    }

    private void lines(double seconds, IntFunction<String> line) {
        for (int i = 0; i < 50 * seconds; i++) {
            now += 20 * Nanos.PER_MS;
            Replay.tickUntil(engine, now);
            byte[] bytes = (line.apply(i) + "\n").getBytes(StandardCharsets.ISO_8859_1);
            engine.onBytes(bytes, bytes.length, now);
        }
    }

    private int about(double mm) {
        return (int) Math.rint(mm + 2 * random.nextGaussian());
    }

    private SoundFrame last() {
        return frames.last();
    }

    @Test
    void aFrozenPitchSensorFadesIsSaidAndComesBackByItself() {
        lines(5, i -> about(300) + "," + about(200));
        assertEquals(PlayState.PLAYING, last().state());
        lines(4, i -> "301," + about(200));
        assertEquals(0, last().gain01());
        assertEquals(PlayState.AWAY, last().state());
        assertEquals(1, said.size());
        assertTrue(said.get(0).startsWith("the pitch channel has given 301 for 2 s"), said.get(0));
        lines(0.02, i -> "310,200");
        assertEquals(0, last().gain01(), "one reading is not enough");
        lines(2, i -> about(300) + "," + about(200));
        assertEquals(PlayState.PLAYING, last().state());
        assertTrue(last().gain01() > 0);
        assertEquals("", said.get(1));
    }

    /** A level that stays is heard as it is, under the ceiling: nothing to close, but worth a word. */
    @Test
    void aFrozenLevelSensorIsSaidAndPlaysOn() {
        lines(5, i -> about(300) + "," + about(200));
        lines(4, i -> about(300) + ",200");
        assertEquals(PlayState.PLAYING, last().state());
        assertTrue(last().gain01() > 0);
        assertTrue(said.get(0).startsWith("the level channel has given 200 for"), said.get(0));
    }

    @Test
    void aLevelChannelThatIsGoneFadesAndIsSaidWhileThePitchChannelLives() {
        lines(5, i -> about(300) + "," + about(200));
        lines(4, i -> about(300) + ",nan");
        assertEquals(0, last().gain01());
        lines(2, i -> about(300) + "," + about(200));
        assertTrue(last().gain01() > 0);
    }

    @Test
    void aPitchChannelThatIsGoneFadesWhileTheLevelChannelLives() {
        lines(5, i -> about(300) + "," + about(200));
        lines(3, i -> "," + about(200));
        assertEquals(0, last().gain01());
        assertEquals(PlayState.AWAY, last().state());
    }

    /** No sound is lost by it, but nobody need wonder why. */
    @Test
    void aPitchSensorThatSeesNothingWhileTheOtherHandPlaysIsSaid() {
        lines(5, i -> about(300) + "," + about(200));
        lines(2.5, i -> "8190," + about(200));
        assertEquals(List.of(), said);
        lines(2, i -> "8190," + about(200));
        assertEquals(0, last().gain01());
        assertTrue(said.get(0).startsWith("the pitch channel gives 8190 only, which is no reading"), said.get(0));
        lines(0.1, i -> about(300) + "," + about(200));
        assertEquals(List.of(said.get(0), ""), said);
    }

    /** Away for long, and a hand that is kept as still as can be: nothing is said. */
    @Test
    void aHandAwayAndAHandKeptStillAreNoTrouble() {
        lines(5, i -> about(300) + "," + about(200));
        lines(60, i -> about(300) + "," + about(200));
        lines(60, i -> "8190,8190");
        assertEquals(List.of(), said);
    }
}
