package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever comes in at whatever moment, level keeps its promises; see {@link LevelLaws}. */
class LevelFuzzTest {
    /** Frames of a second that are judged, on the average at least; most of an evening is silence. */
    private static final double LEAST_FRAMES_PER_S = 25;

    private final RoomProfile hall;

    LevelFuzzTest() throws ProfileException {
        hall = new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
    }

    /** Every other evening in a room whose level is by light, where blackouts and lamps come in. */
    private Havoc evening(long seed) {
        return seed % 2 == 0 ? Havoc.withTwoDistances(seed) : new Havoc(seed, hall, 1023);
    }

    private void evenings(long from, long count, double seconds) {
        AtomicLong frames = new AtomicLong();
        AtomicInteger loud = new AtomicInteger();
        AtomicInteger starts = new AtomicInteger();
        LongStream.range(from, from + count).parallel().forEach(seed -> {
            Havoc evening = evening(seed);
            try {
                evening.run(seconds);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed + ": " + e, e);
            }
            frames.addAndGet(evening.laws().frames());
            loud.addAndGet(evening.laws().loudestOfCeiling() > 0.5 ? 1 : 0);
            starts.addAndGet(evening.starts());
        });
        // what stays silent proves nothing
        assertTrue(frames.get() > LEAST_FRAMES_PER_S * seconds * count, frames + " frames");
        assertTrue(loud.get() > count / 4, loud + " of " + count + " evenings were ever loud");
        assertTrue(starts.get() > count, starts + " starts");
    }

    @Test
    void threeHundredEvenings() {
        evenings(1, 300, 6);
    }

    @Test
    @Tag("deep")
    void tenThousandEvenings() {
        evenings(1_000, 10_000, 4);
    }

    @Test
    void theLawsCanBeBroken() {
        LevelLaws laws = new LevelLaws(LevelCurve.USUAL);
        laws.allow(Tuning.usual());
        assertThrows(
                AssertionError.class, () -> laws.send(frame(440, 0.0011, 1000), true), "from silence to the floor");
        laws.send(frame(440, 0.001, 1000), true);
        assertThrows(AssertionError.class, () -> laws.send(frame(440, 0.00180, 1005), true), "5 ms, more than 5 dB");
        laws.send(frame(440, 0.00177, 1005), true);
        assertThrows(AssertionError.class, () -> laws.send(frame(440, 0.51, 2000), true), "above -6 dB");
        laws.send(frame(440, 0.5, 2000), true);
        assertThrows(AssertionError.class, () -> laws.send(frame(910, 0.5, 2005), true), "above the range");
        assertThrows(AssertionError.class, () -> laws.send(frame(Double.NaN, 0.5, 2005), true), "no pitch");
        laws.shut();
        laws.send(frame(440, 0.4, 2005), true);
        assertThrows(AssertionError.class, () -> laws.send(frame(440, 0.41, 2010), true), "closed, but louder");
        assertThrows(AssertionError.class, () -> laws.send(frame(440, 0.1, 2065), true), "closed for 60 ms");
        laws.send(frame(440, 0, 2065), true);
        laws.start();
        assertThrows(AssertionError.class, () -> laws.send(frame(440, 0.1, 9000), true), "a loud start");
    }

    private static SoundFrame frame(double hz, double gain01, double timeMs) {
        return new SoundFrame(Nanos.ofMs(timeMs), hz, 69, 0, 0, 4, gain01, true, 0.5, 0.5, PlayState.PLAYING);
    }
}
