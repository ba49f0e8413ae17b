package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Level curves that change under a hand that sounds. Amplitude from dB is {@code 10^(dB/20)} (IEC 60027-3). */
class LevelChangeTest {
    /** Rounding of a few products of doubles, as a share. */
    private static final double ROUNDING = 1e-9;

    /** The short fade of the path: what sounds falls no faster than it would to nothing in that time. */
    private static final double FADE_MS = 60;

    private static final long START = Nanos.PER_SECOND;
    private static final long READING = 20 * Nanos.PER_MS;

    private final Random random = new Random(41);

    /** A path with all that it sent. */
    private static final class Played {
        private final FrameList frames = new FrameList();
        private final PlayPath path;
        private long reached = START;

        Played(RoomProfile profile, boolean glide) {
            path = new PlayPath(
                    profile,
                    profile.tunings().get(0),
                    TestRooms.SHAPE,
                    PathSettings.USUAL.muted(false).gliding(glide),
                    List.of(frames),
                    START);
        }

        void line(double pitchMm, double levelMm, long nanos) {
            tick(nanos);
            path.onReading(new Reading(nanos, new double[] {pitchMm, levelMm}, 0b11));
        }

        void tick(long nanos) {
            while (path.nextDeadlineNanos() <= nanos) {
                reached = Math.max(reached, path.nextDeadlineNanos());
                path.onTick(reached);
            }
            reached = Math.max(reached, nanos);
        }

        SoundFrame last() {
            return frames.last();
        }
    }

    private static double gain(double db) {
        return Math.pow(10, db / 20);
    }

    /** Knees so low that the hand never comes under them. */
    private LevelCurve curve() {
        double floorDb = -20 - random.nextInt(70);
        double ceilingDb = Math.min(0, floorDb + 1 + random.nextInt(60));
        double rise = Math.pow(10, -1 + 2 * random.nextDouble());
        Leaving leaving = new Leaving(random.nextBoolean(), 5 + random.nextInt(300));
        return new LevelCurve(floorDb, ceilingDb, 0.15 * random.nextDouble(), random.nextBoolean(), rise, leaving);
    }

    /**
     * Up by the new rise at most, counted from the lower of the floors that came together; down by no more than a fade
     * of 60 ms from what sounded at the change; and above a lowered ceiling for no longer than that fade.
     */
    @Test
    void underAStillHandNoGainStepIsLargerThanTheRulesAllow() {
        for (int evening = 0; evening < 60; evening++) {
            LevelCurve curve = curve();
            double levelMm = 140 + random.nextInt(120);
            Played played = new Played(TestRooms.twoDistances(50).with(curve), evening % 3 > 0);
            long now = START;
            for (int i = 0; i < 60; i++) {
                now += READING;
                played.line(300, levelMm, now);
            }
            double lowestDb = curve.floorDb();
            double before01 = played.last().gain01();
            double left01 = before01;
            long changed = now;
            int judged = played.frames.frames().size();
            for (int i = 0; i < 400; i++) {
                long next = now + (1 + random.nextInt(19)) * Nanos.PER_MS;
                if (random.nextInt(12) == 0) {
                    curve = curve();
                    lowestDb = Math.min(lowestDb, curve.floorDb());
                    left01 = before01;
                    changed = now;
                    played.path.level(curve);
                }
                played.line(300, levelMm, next);
                now = next;
                List<SoundFrame> frames = played.frames.frames();
                for (SoundFrame frame : frames.subList(judged, frames.size())) {
                    double sinceMs = Nanos.toMs(frame.timeNanos()
                            - frames.get(frames.indexOf(frame) - 1).timeNanos());
                    double most01 = Math.max(before01, gain(lowestDb)) * gain(curve.riseDbPerMs() * sinceMs);
                    double least01 = before01 - left01 * sinceMs / FADE_MS;
                    double now01 = frame.gain01();
                    String words = before01 + " to " + now01 + " in " + sinceMs + " ms, " + curve;
                    assertTrue(now01 <= most01 * (1 + ROUNDING), () -> "rises too fast: " + words);
                    assertTrue(now01 >= least01 - ROUNDING, () -> "falls too fast: " + words);
                    boolean over = Nanos.toMs(frame.timeNanos() - changed) >= FADE_MS;
                    double ceiling01 = gain(curve.ceilingDb());
                    assertTrue(
                            now01 <= (over ? ceiling01 : Math.max(ceiling01, before01)) * (1 + ROUNDING),
                            () -> "above the ceiling: " + words);
                    before01 = now01;
                }
                judged = frames.size();
            }
        }
    }

    /** When the fade, or the rise from the lower floor to the new ceiling, is over, whichever takes longer. */
    private static double settledMs(LevelCurve before, LevelCurve after) {
        double lowest = Math.min(before.floorDb(), after.floorDb());
        return Math.max(FADE_MS, (after.ceilingDb() - lowest) / after.riseDbPerMs());
    }

    private double farthestApart(double noiseMm, double extraMs) {
        double farthest = 0;
        for (int evening = 0; evening < 40; evening++) {
            LevelCurve before = curve();
            LevelCurve after = curve();
            RoomProfile profile = TestRooms.twoDistances(50, Tuning.usual(), noiseMm);
            Played changing = new Played(profile.with(before), evening % 2 == 0);
            Played fresh = new Played(profile.with(after), evening % 2 == 0);
            List<Double> hand = new ArrayList<>();
            double phase = random.nextDouble() * 6;
            for (int i = 0; i < 300; i++) {
                hand.add(200 + 60 * Math.sin(phase + i / 30.0) + noiseMm * random.nextGaussian());
            }
            long now = START;
            long changed = START + (50 + random.nextInt(60)) * READING;
            for (double mm : hand) {
                now += READING;
                if (now >= changed && now - READING < changed) {
                    changing.path.level(after);
                }
                // a pitch sensor without its noise would be taken for one that has stopped
                double pitchMm = 300 + noiseMm * random.nextGaussian();
                changing.line(pitchMm, mm, now);
                fresh.line(pitchMm, mm, now);
                if (Nanos.toMs(now - changed) >= settledMs(before, after) + extraMs + 20) {
                    double ratio = changing.last().gain01() / fresh.last().gain01();
                    farthest = Math.max(farthest, Math.abs(20 * Math.log10(ratio)));
                }
            }
        }
        return farthest;
    }

    /** Without noise nothing is smoothed: the gains are then the very same. */
    @Test
    void onceTheFadeOrTheRiseIsOverGainsAreThoseOfAFreshPathWithTheNewCurve() {
        assertEquals(0, farthestApart(0, 0), 1e-9);
    }

    /** With noise the smoothing of the level hand changes too, and what the filter remembers has to go. */
    @Test
    void withNoiseTheySoonAreToo() {
        double mostDb = 0.2;
        assertEquals(0, farthestApart(2, 1500), mostDb);
    }

    /** Half of the new fade of 200 ms is over after 100: half of the ceiling of -6 dB, give or take a frame. */
    @Test
    void aHeldNoteEndsWhenItShallNoLongerBeHeld() {
        LevelCurve holding = LevelCurve.USUAL.with(new Leaving(true, 60));
        Played played = new Played(TestRooms.twoDistances(50).with(holding), true);
        long now = START;
        for (int i = 0; i < 50; i++) {
            now += READING;
            played.line(300, 300, now);
        }
        for (int i = 0; i < 50; i++) {
            now += READING;
            played.line(8190, 300, now);
        }
        assertEquals(gain(-6), played.last().gain01(), ROUNDING);
        played.path.level(LevelCurve.USUAL.with(new Leaving(false, 200)));
        played.tick(now + 100 * Nanos.PER_MS);
        double half01 = played.last().gain01();
        assertTrue(half01 > 0.4 * gain(-6) && half01 < 0.6 * gain(-6), half01 + " after half of the fade");
        played.tick(now + 210 * Nanos.PER_MS);
        assertEquals(0, played.last().gain01(), ROUNDING);
    }
}
