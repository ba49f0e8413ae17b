package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.hand.trial.Feel;
import handspan.hand.trial.Gesture;
import handspan.hand.trial.Trace;
import handspan.instrument.line.Reading;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Wild readings, halves of numbers and dropouts through the whole path: what is heard of them, 6 cents a mm, 100 mm =
 * A3. Their shapes and shares are measured ones: echo sensors lose 4.5 to 12.5 % of lines in runs of one or two and
 * jump by 12 to 20 cm between lines; a ranger's 234 loses its first digit to a line cut short.
 */
class WildReadingsTest {
    private static final double CENTS_PER_MM = 6;
    private static final double NEAR_MM = 100;
    private static final double NO_READING = 8190;

    /** What spoils a reading of a hand. */
    private interface Spoiler {
        double spoiled(double mm, Random random);
    }

    /** Sent pitch as mm of the hand that it stands for. */
    private static Trace sent(Trace hand, double ratePerS, double noiseMm, Spoiler spoiler) {
        Tuning tuning = Tuning.usual();
        RoomProfile profile = TestRooms.twoDistances(ratePerS, tuning, noiseMm);
        FrameList frames = new FrameList();
        long start = Nanos.PER_SECOND;
        PlayPath path =
                new PlayPath(profile, tuning, TestRooms.SHAPE, PathSettings.USUAL.muted(false), List.of(frames), start);
        Random random = new Random(8);
        for (int i = 0; i < hand.seconds() * ratePerS; i++) {
            long now = start + Nanos.ofSeconds(i / ratePerS);
            while (path.nextDeadlineNanos() <= now) {
                path.onTick(path.nextDeadlineNanos());
            }
            double mm = hand.mmAt(i / ratePerS) + noiseMm * random.nextGaussian();
            path.onReading(new Reading(now, new double[] {spoiler.spoiled(mm, random), 300}, 0b11));
        }
        List<SoundFrame> all = frames.frames();
        int[] at = {0};
        return Trace.of(hand.seconds(), time -> {
            while (at[0] + 1 < all.size() && Nanos.toSeconds(all.get(at[0] + 1).timeNanos() - start) <= time) {
                at[0]++;
            }
            return NEAR_MM + Cents.between(220, all.get(at[0]).pitchHz()) / CENTS_PER_MM;
        });
    }

    private static double sometimes(double mm, double otherwise, Random random, double share01) {
        return random.nextDouble() < share01 ? otherwise : mm;
    }

    /**
     * Five times the wobble of a still hand is a spike that is heard; one a minute of several hundred is let through.
     */
    @ParameterizedTest(name = "{0} readings a second, noise {1} mm, {2} mm off")
    @CsvSource({"50, 2.15, 160", "50, 2.15, -120", "18, 1.7, 160", "18, 1.7, -200", "50, 2.15, 45", "26, 2, 60"})
    void singleWildReadingsAreNotHeard(double ratePerS, double noiseMm, double offMm) {
        Trace hand = Gesture.still(120, 300);
        Trace clean = sent(hand, ratePerS, noiseMm, (mm, random) -> mm);
        boolean[] last = {false};
        Trace out = sent(hand, ratePerS, noiseMm, (mm, random) -> {
            last[0] = !last[0] && random.nextDouble() < 0.02;
            return last[0] ? mm + offMm + 5 * random.nextGaussian() : mm;
        });
        double heardMm = 5 * Feel.jitter(clean);
        int through = Feel.spikesThrough(hand, out, heardMm);
        assertTrue(through <= 2, through + " of about " + Math.round(120 * ratePerS * 0.02) + " came through");
        assertTrue(Feel.jitter(out) < 1.3 * Feel.jitter(clean), Feel.jitter(out) + " instead of " + Feel.jitter(clean));
    }

    /** {@code 34} instead of {@code 234}. */
    @ParameterizedTest(name = "{0} readings a second")
    @CsvSource({"50", "18"})
    void aNumberCutShortIsNotHeard(double ratePerS) {
        Trace hand = Gesture.still(60, 234);
        Trace out = sent(hand, ratePerS, 1, (mm, random) -> sometimes(mm, mm % 100, random, 0.01));
        assertEquals(0, Feel.spikesThrough(hand, out, 8));
    }

    /**
     * One or two readings in ten are missing; a moving hand is still followed, within the readings that are missing.
     */
    @ParameterizedTest(name = "{0} readings a second")
    @CsvSource({"50, 25", "18, 50"})
    void dropoutsOfOneAndTwoAreBridged(double ratePerS, double mostMoreMs) {
        Trace hand = Gesture.moves(60, 130, 470, new Random(9));
        int[] missing = {0};
        Spoiler dropouts = (mm, random) -> {
            missing[0] = missing[0] > 0 ? missing[0] - 1 : random.nextDouble() < 0.08 ? 1 + random.nextInt(2) : 0;
            return missing[0] > 0 ? NO_READING : mm;
        };
        Trace whole = sent(hand, ratePerS, 2, (mm, random) -> mm);
        Trace out = sent(hand, ratePerS, 2, dropouts);
        double more = Feel.lagMs(hand, out, 200) - Feel.lagMs(hand, whole, 200);
        assertTrue(more < mostMoreMs, more + " ms more");
    }

    /** 2 m/s at the middle of each stroke: the pitch arrives, and arrives in time. */
    @ParameterizedTest(name = "{0} readings a second")
    @CsvSource({"100, 45", "50, 60", "18, 140"})
    void aHandAtTwoMetresASecondIsNoSpike(double ratePerS, double mostLagMs) {
        Trace hand = Gesture.sway(30, 300, 180, 2000 / (2 * Math.PI * 180), 0);
        Trace out = sent(hand, ratePerS, 2, (mm, random) -> mm);
        double lagMs = Feel.lagMs(hand, out, 200);
        assertTrue(lagMs < mostLagMs, lagMs + " ms");
        double kept = Feel.gain01(out, 2000 / (2 * Math.PI * 180), 180);
        assertTrue(kept > 0.8, kept + " of the stroke");
    }
}
