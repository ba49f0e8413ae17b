package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Snapping;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.VibratoBudget;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A vibrato of 25 cents either way at 6 Hz on A4, through the whole path: how much of it is sent. */
class VibratoTest {
    private static final double CENTS = 25;
    private static final double HZ = 6;
    private static final double CENTS_PER_MM = 6;

    /** What the stated share may be off the measured one. */
    private static final double STATED_01 = 0.06;

    private static final int RUNS = 24;
    private static final Tuning FREE = Tuning.usual();

    private static double kept01(Tuning tuning, double ratePerS, double noiseMm, long seed) {
        double sum = 0;
        for (int i = 0; i < RUNS; i++) {
            sum += keptOnce01(tuning, ratePerS, noiseMm, seed + i);
        }
        return sum / RUNS;
    }

    /** Share of the vibrato's width in what is sent, by correlation with its sine and cosine over ten seconds. */
    private static double keptOnce01(Tuning tuning, double ratePerS, double noiseMm, long seed) {
        RoomProfile profile = TestRooms.twoDistances(ratePerS, tuning, noiseMm);
        FrameList frames = new FrameList();
        long start = Nanos.PER_SECOND;
        PlayPath path =
                new PlayPath(profile, tuning, TestRooms.SHAPE, PathSettings.USUAL.muted(false), List.of(frames), start);
        Random random = new Random(seed);
        double restS = 2;
        double halfMm = CENTS / CENTS_PER_MM * measured01(profile.room());
        for (int i = 0; i < 14 * ratePerS; i++) {
            double seconds = i / ratePerS;
            long now = start + Nanos.ofSeconds(seconds);
            while (path.nextDeadlineNanos() <= now) {
                path.onTick(path.nextDeadlineNanos());
            }
            double sway = seconds < restS ? 0 : halfMm * Math.sin(2 * Math.PI * HZ * (seconds - restS));
            // 2 mm off the place of A4: a note has to be drawn to
            double mm = 302 + sway + noiseMm * random.nextGaussian();
            path.onReading(new Reading(now, new double[] {mm, 300}, 0b11));
        }
        double sine = 0;
        double cosine = 0;
        int count = 0;
        for (SoundFrame frame : frames.frames()) {
            double seconds = Nanos.toSeconds(frame.timeNanos() - start);
            if (seconds >= 4) {
                double cents = 1200 * Math.log(frame.pitchHz() / 440) / Math.log(2);
                sine += cents * Math.sin(2 * Math.PI * HZ * seconds);
                cosine += cents * Math.cos(2 * Math.PI * HZ * seconds);
                count++;
            }
        }
        return 2 * Math.hypot(sine, cosine) / count / CENTS;
    }

    private static double stated01(Tuning tuning, double ratePerS, double noiseMm) {
        return VibratoBudget.of(
                        TestRooms.twoDistances(ratePerS, tuning, noiseMm).room(), tuning)
                .kept01();
    }

    /** What a sensor leaves of a sine by taking its mean over the measuring time: {@code sin(x) / x}, x = pi f T. */
    private static double measured01(Room room) {
        double x = Math.PI * HZ * room.sensor(room.pitch()).measuringMs() / 1000;
        return Math.sin(x) / x;
    }

    @ParameterizedTest(name = "{0} at {1}/s, noise {2} mm: {3}")
    @CsvSource({"free,  50, 2.15, 0.8", "onset, 50, 2.15, 0.8", "free,  100, 2.15, 0.8", "onset, 100, 2.15, 0.8"})
    void fourFifthsAreKeptAtFiftyReadingsASecond(String snap, double ratePerS, double noiseMm, double least01) {
        Tuning tuning = FREE.withSnap(Snap.parse(snap));
        double kept = kept01(tuning, ratePerS, noiseMm, 7);
        assertTrue(kept >= least01, "kept " + kept);
        assertEquals(kept, stated01(tuning, ratePerS, noiseMm), STATED_01);
    }

    @ParameterizedTest(name = "strength {0}")
    @CsvSource({"0.25", "0.5", "0.75"})
    void pullKeepsWhatItsStrengthLeaves(double strength01) {
        Tuning tuning = FREE.with(new Snapping(Snap.PULL, strength01));
        double kept = kept01(tuning, 50, 2.15, 8);
        double ofFree = kept / kept01(FREE, 50, 2.15, 8);
        assertEquals(1 - strength01, ofFree, 0.03);
    }

    /** Slower boards: what is said is what is measured, and under 30 a second it is said to be lost. */
    @ParameterizedTest(name = "{0} readings a second")
    @CsvSource({"30, false", "20, true", "18, true"})
    void slowBoardsLoseItAndItIsSaid(double ratePerS, boolean lost) {
        double kept = kept01(FREE, ratePerS, 2.15, 9);
        double stated = stated01(FREE, ratePerS, 2.15);
        assertEquals(kept, stated, STATED_01);
        var room = TestRooms.twoDistances(ratePerS, FREE, 2.15).room();
        VibratoBudget budget = VibratoBudget.of(room, FREE);
        assertEquals(lost, budget.isLost(), budget.words());
        assertEquals(lost, budget.words().startsWith("vibrato will be lost"), budget.words());
    }
}
