package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Snapping;
import handspan.music.tuning.Tuning;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.budget.StepsBudget;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Snapping and changes of tuning through the whole path: what is sent, 6 cents a mm, 100 mm = A3. */
class SnapPathTest {
    private static final double A4_MM = 300;
    private static final double MM_PER_CENT = 1 / 6.0;

    private FrameList frames = new FrameList();
    private final long start = Nanos.PER_SECOND;

    private PlayPath path(Tuning tuning, double ratePerS, double noiseMm, boolean glide) {
        RoomProfile profile = TestRooms.twoDistances(ratePerS, tuning, noiseMm);
        return new PlayPath(
                profile,
                tuning,
                TestRooms.SHAPE,
                PathSettings.USUAL.muted(false).gliding(glide),
                List.of(frames),
                start);
    }

    /** A hand's way, in cents above A4 at a second, with noise on its readings. */
    private void play(
            PlayPath path, double ratePerS, double noiseMm, double fromS, double toS, DoubleUnaryOperator cents) {
        Random random = new Random(Math.round(1000 * fromS) + 5);
        for (long i = Math.round(fromS * ratePerS); i < toS * ratePerS; i++) {
            double seconds = i / ratePerS;
            long now = start + Nanos.ofSeconds(seconds);
            while (path.nextDeadlineNanos() <= now) {
                path.onTick(path.nextDeadlineNanos());
            }
            double mm = A4_MM + MM_PER_CENT * cents.applyAsDouble(seconds) + noiseMm * random.nextGaussian();
            path.onReading(new Reading(now, new double[] {mm, 300}, 0b11));
        }
    }

    private List<Double> sentCents(double fromS) {
        List<Double> cents = new ArrayList<>();
        for (SoundFrame frame : frames.frames()) {
            if (frame.hand() && Nanos.toSeconds(frame.timeNanos() - start) >= fromS) {
                cents.add(Cents.between(440, frame.pitchHz()));
            }
        }
        return cents;
    }

    private static double largestJump(List<Double> cents) {
        double largest = 0;
        for (int i = 1; i < cents.size(); i++) {
            largest = Math.max(largest, Math.abs(cents.get(i) - cents.get(i - 1)));
        }
        return largest;
    }

    private static Tuning chromatic(Snap snap) {
        return Tuning.usual().withSnap(snap);
    }

    /** 35 cents beside A4; the last of its way takes a tenth of a second, then 150 ms of rest and 80 ms of shift. */
    @Test
    void aHandThatComesToRestIsOnTheNoteAndNothingStepped() {
        PlayPath path = path(chromatic(Snap.ONSET), 50, 0, true);
        play(path, 50, 0, 0, 3, seconds -> seconds < 0.5 ? 400 : Math.max(35, 400 - 1500 * (seconds - 0.5)));
        List<Double> settled = sentCents(1.4);
        settled.forEach(cents -> assertEquals(0, cents, 0.2));
        // the hand's own 1500 cents/s are 7.5 between messages
        assertTrue(largestJump(sentCents(0.5)) < 12, largestJump(sentCents(0.5)) + " cents");
    }

    /** As the settled map is bent around the rest: 40 cents further is 40 cents higher, and there is no new rest. */
    @Test
    void fromTheRestPitchIsFree() {
        PlayPath path = path(chromatic(Snap.ONSET), 50, 0, true);
        play(path, 50, 0, 0, 5, seconds -> seconds < 2 ? 35 : Math.min(75, 35 + 20 * (seconds - 2)));
        assertEquals(40, sentCents(4.9).get(0), 0.5);
    }

    /**
     * A slide of 20 cents/s over five semitones: nothing but its own tenth of a cent a message, 9 at the first rest.
     */
    @ParameterizedTest(name = "noise {0} mm, glide {1}")
    @CsvSource({"0, true, 0.5", "2.15, true, 6", "0, false, 2", "2.15, false, 24"})
    void aSlowSlidePassesOnsetWithoutAStep(double noiseMm, boolean glide, double mostCents) {
        PlayPath path = path(chromatic(Snap.ONSET), 50, noiseMm, glide);
        play(path, 50, noiseMm, 0, 28, seconds -> seconds < 2 ? 20 : 20 + 20 * (seconds - 2));
        List<Double> slide = sentCents(2);
        double jump = largestJump(slide);
        assertTrue(jump < mostCents, jump + " cents between messages");
        // what the smoothing alone does with this noise
        frames = new FrameList();
        PlayPath free = path(chromatic(Snap.FREE), 50, noiseMm, glide);
        play(free, 50, noiseMm, 0, 28, seconds -> seconds < 2 ? 20 : 20 + 20 * (seconds - 2));
        double freeJump = largestJump(sentCents(2));
        assertTrue(jump < 1.5 * freeJump + 0.2, jump + " against " + freeJump + " free");
    }

    /** Vibrato from the first moment: its turning points are no rest, the map stays as it is. */
    @Test
    void vibratoIsNoRest() {
        PlayPath path = path(chromatic(Snap.ONSET), 50, 0, true);
        play(path, 50, 0, 0, 4, seconds -> 30 + 25 * Math.sin(2 * Math.PI * 6 * seconds));
        double mean = sentCents(2).stream().mapToDouble(c -> c).average().orElseThrow();
        assertEquals(30, mean, 2);
    }

    /** Gone and back: the bend of before is forgotten. */
    @Test
    void aHandThatWentStartsAfresh() {
        PlayPath path = path(chromatic(Snap.ONSET), 50, 0, true);
        play(path, 50, 0, 0, 2, seconds -> 35);
        assertEquals(0, sentCents(1.9).get(0), 0.2, "bent to A4");
        play(path, 50, 0, 4, 4.12, seconds -> 35);
        // back for less than a rest takes: the map is straight again
        sentCents(4).forEach(cents -> assertEquals(35, cents, 0.2));
        assertTrue(sentCents(4).size() > 5);
    }

    /** Two octaves up at once while a note sounds: no message is more than 20 cents from the last, and it arrives. */
    @ParameterizedTest
    @CsvSource({"free", "steps", "pull", "onset"})
    void anotherTuningTakesOverWithoutAStep(String snap) {
        PlayPath path = path(Tuning.usual(), 50, 0, true);
        play(path, 50, 0, 0, 2, seconds -> 10);
        assertTrue(path.tune(Tuning.usual()
                        .withRange(69, 93)
                        .withSnap(Snap.parse(snap))
                        .shifted(12, 5))
                .isEmpty());
        int before = frames.frames().size();
        play(path, 50, 0, 2, 5, seconds -> 10);
        assertTrue(largestJump(sentCents(1.9)) <= 20.5, largestJump(sentCents(1.9)) + " cents");
        double own = snap.equals("free") ? 10 : snap.equals("pull") ? 5 : 0;
        assertEquals(2400 + 5 + own, sentCents(4.9).get(0), 0.5);
        frames.frames()
                .subList(before, frames.frames().size())
                .forEach(frame -> assertEquals(frames.frames().get(before - 1).gain01(), frame.gain01(), 1e-9));
    }

    /** In silence there is nothing to pass over from. */
    @Test
    void inSilenceATuningIsThereAtOnce() {
        PlayPath path = path(Tuning.usual(), 50, 0, true);
        play(path, 50, 0, 0, 2, seconds -> 0);
        while (path.nextDeadlineNanos() < start + 4 * Nanos.PER_SECOND) {
            path.onTick(path.nextDeadlineNanos());
        }
        path.tune(Tuning.usual().shifted(12, 0));
        play(path, 50, 0, 4, 4.2, seconds -> 0);
        assertEquals(1200, sentCents(4).get(0), 0.5);
    }

    /** A tuning that would flutter stays out with its reason; a narrower one that the reason names comes in. */
    @Test
    void aTuningTooFineForTheRoomStaysOut() {
        PlayPath path = path(Tuning.usual(), 50, 4, true);
        play(path, 50, 4, 0, 2, seconds -> 0);
        Tuning fine = chromatic(Snap.STEPS);
        String reason = path.tune(fine).orElseThrow();
        assertTrue(reason.contains("would flutter"), reason);
        play(path, 50, 4, 2, 3, seconds -> 0);
        assertEquals(0, sentCents(2.9).get(0), 40);
        var room = TestRooms.twoDistances(50, Tuning.usual(), 4).room();
        var range = StepsBudget.widest(room, fine).orElseThrow();
        assertTrue(reason.contains("A3 to " + fine.with(range).highName()), reason);
        assertTrue(path.tune(fine.with(range)).isEmpty());
        assertTrue(
                path.tune(fine.withRange(range.lowKey(), range.highKey() + 1)).isPresent());
    }

    /** A warped curve is steeper at one end; what holds there holds everywhere. */
    @ParameterizedTest
    @CsvSource({"0, chromatic", "1.5, chromatic", "-2, major", "0, blues"})
    void theRangeThatIsNamedHolds(double warp, String scale) {
        Tuning wide = Tuning.usual()
                .withScale(Scales.named(scale))
                .withWarp(warp)
                .withRange(57, 93)
                .withSnap(Snap.STEPS);
        var room = TestRooms.twoDistances(50, wide, 3).room();
        assertTrue(StepsBudget.refusal(room, wide).isPresent());
        StepsBudget.widest(room, wide)
                .ifPresent(range ->
                        assertTrue(StepsBudget.refusal(room, wide.with(range)).isEmpty()));
        assertTrue(StepsBudget.refusal(room, wide.with(Snapping.of(Snap.PULL))).isEmpty());
    }
}
