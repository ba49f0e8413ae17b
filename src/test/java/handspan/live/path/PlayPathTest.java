package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlayPathTest {
    private static final double TOLERANCE_HZ = 0.0075;
    private static final double CEILING = 0.501187233627;
    private static final long READING = 20 * Nanos.PER_MS;

    private final FrameList frames = new FrameList();
    private long now = Nanos.PER_SECOND;
    private PlayPath path = open(TestRooms.twoDistances(50), PathSettings.USUAL.muted(false));

    private PlayPath open(RoomProfile profile, PathSettings settings) {
        return new PlayPath(profile, profile.tunings().get(0), TestRooms.SHAPE, settings, List.of(frames), now);
    }

    private void reading(double pitchMm, double levelMm) {
        now += READING;
        tickTo(now);
        path.onReading(new Reading(now, new double[] {pitchMm, levelMm}, 0b11));
    }

    private void nothing(long nanos) {
        now += nanos;
        tickTo(now);
    }

    private void tickTo(long time) {
        while (path.nextDeadlineNanos() <= time) {
            path.onTick(path.nextDeadlineNanos());
        }
    }

    private void hold(double pitchMm, double levelMm, int readings) {
        for (int i = 0; i < readings; i++) {
            reading(pitchMm, levelMm);
        }
        nothing(READING - 1);
    }

    /** A3, A4 and A5 of the published note table (B. H. Suits, Physics of Music - Notes): 220.00, 440.00, 880.00 Hz. */
    @Test
    void theZonePlaysTwoOctavesFromA3ToA5() {
        hold(100, 300, 50);
        assertEquals(220.00, frames.last().pitchHz(), TOLERANCE_HZ);
        hold(300, 300, 50);
        assertEquals(440.00, frames.last().pitchHz(), TOLERANCE_HZ);
        assertEquals(69, frames.last().key());
        assertEquals(0, frames.last().centsFromKey(), 0.05);
        hold(500, 300, 50);
        assertEquals(880.00, frames.last().pitchHz(), TOLERANCE_HZ);
        assertTrue(frames.last().hand());
        assertEquals(PlayState.PLAYING, frames.last().state());
        assertEquals(CEILING, frames.last().gain01(), 1e-9);
    }

    @Test
    void mutedAtTheStartNothingSoundsUntilItIsOpened() {
        path = open(TestRooms.twoDistances(50), PathSettings.USUAL);
        hold(300, 300, 50);
        assertTrue(frames.frames().stream().allMatch(frame -> frame.gain01() == 0 && !frame.hand()));
        assertEquals(PlayState.MUTED, frames.last().state());
        path.mute(false);
        hold(300, 300, 20);
        assertTrue(frames.last().gain01() > 0.4);
    }

    @Test
    void leavingFadesKeepsPitchAndTellsSilenceFiveTimesThenOnceASecond() {
        hold(300, 300, 50);
        double pitchHz = frames.last().pitchHz();
        long gone = now;
        nothing(5 * Nanos.PER_SECOND);
        List<SoundFrame> after = frames.frames().stream()
                .filter(frame -> frame.timeNanos() > gone)
                .toList();
        assertTrue(after.stream().allMatch(frame -> Math.abs(Cents.between(pitchHz, frame.pitchHz())) < 0.01));
        List<SoundFrame> silent = after.stream().filter(frame -> !frame.hand()).toList();
        assertTrue(silent.stream().allMatch(frame -> frame.gain01() == 0));
        long first = silent.get(0).timeNanos();
        long within = silent.stream()
                .filter(frame -> frame.timeNanos() <= first + 100 * Nanos.PER_MS)
                .count();
        assertEquals(5, within);
        assertEquals(5 + 4, silent.size(), "four more, one a second");
        double fadeMs = Nanos.toMs(first - gone);
        assertTrue(fadeMs > 180 && fadeMs < 300, "silent " + fadeMs + " ms after the last reading");
    }

    @Test
    void aHalfWayGhostNeverSounds() {
        nothing(Nanos.PER_SECOND);
        reading(480, 300);
        reading(310, 300);
        nothing(Nanos.PER_SECOND);
        assertTrue(frames.frames().stream().noneMatch(frame -> frame.gain01() > 0));
    }

    @Test
    void aReadingOutsideTheZoneIsNoHand() {
        hold(900, 300, 30);
        assertTrue(frames.frames().stream().noneMatch(SoundFrame::hand));
        hold(520, 300, 30);
        assertTrue(frames.last().hand(), "20 mm beyond the end is within its margin");
        assertEquals(880.00, frames.last().pitchHz(), TOLERANCE_HZ);
    }

    @Test
    void aSingleOutlierDoesNotReachTheSound() {
        hold(300, 300, 50);
        reading(460, 300);
        hold(300, 300, 10);
        double largest = frames.frames().stream()
                .filter(SoundFrame::hand)
                .mapToDouble(frame -> Math.abs(Cents.between(440, frame.pitchHz())))
                .max()
                .orElseThrow();
        assertTrue(largest < 0.5, "largest " + largest + " cents");
        assertEquals(1, path.spikes());
    }

    /**
     * 200 mm a second are 1200 cents a second here: 6 cents a frame at 200 frames a second, 24 a reading; starting at
     * once at that speed it has to catch up.
     */
    @Test
    void glideMakesSmallStepsOfLargeOnes() {
        for (int i = 0; i < 100; i++) {
            reading(100 + 4.0 * i, 300);
        }
        double largest = largestStepCents();
        assertTrue(largest < 9, "largest step " + largest + " cents");
    }

    /**
     * A sensor of 20 readings a second, noise 1.7 mm, two octaves in 400 mm: pitch steps of 5 cents are about the
     * smallest that are heard (textbooks). A moving hand's noise comes on top of its way: at 100 mm/s, which is 600
     * cents a second, it takes 500 messages a second.
     */
    @ParameterizedTest(name = "{0} mm/s, {1} messages a second")
    @CsvSource({"0, 200", "3.33, 200", "20, 200", "100, 500"})
    void aSlowSensorsPitchGoesInStepsUnderFiveCents(double mmPerS, double framesPerS) {
        double withGlide = largestStepOfSlowSensor(mmPerS, true, framesPerS);
        assertTrue(withGlide < 5, "largest step " + withGlide + " cents");
        double without = largestStepOfSlowSensor(mmPerS, false, 200);
        assertTrue(without > 5, "without glide " + without + " cents");
    }

    /**
     * The same sensor on a board that prints each value five times: glide goes by the sensor's pace, or each value
     * would come as a step of 10 ms and a stop of 40.
     */
    @Test
    void aBoardThatRepeatsValuesGlidesAtItsSensorsPace() {
        FrameList frames = new FrameList();
        now = Nanos.PER_SECOND;
        RoomProfile profile = TestRooms.twoDistances(100, Tuning.usual(), 1);
        path = new PlayPath(
                profile,
                profile.tunings().get(0),
                TestRooms.SHAPE,
                PathSettings.USUAL.muted(false),
                List.of(frames),
                now);
        double mm = 0;
        for (int i = 0; i < 1500; i++) {
            now += 10 * Nanos.PER_MS;
            tickTo(now);
            mm = i % 5 == 0 ? 300 + 60 * Math.sin(2 * Math.PI * 0.2 * i / 100) : mm;
            path.onReading(new Reading(now, new double[] {mm, 300}, 0b11));
        }
        // at most 75 mm/s, 452 cents a second, 2.3 a message
        double largest =
                largestStepCents(frames.frames().subList(800, frames.frames().size()));
        assertTrue(largest < 3.5, "largest step " + largest + " cents");
    }

    private double largestStepOfSlowSensor(double mmPerS, boolean glide, double framesPerS) {
        now = Nanos.PER_SECOND;
        FrameList slow = new FrameList();
        RoomProfile profile = TestRooms.twoDistances(20, Tuning.usual(), 1.7);
        PathSettings settings = PathSettings.USUAL.muted(false).gliding(glide).withFrames(framesPerS);
        path = new PlayPath(profile, profile.tunings().get(0), TestRooms.SHAPE, settings, List.of(slow), now);
        Random random = new Random(11);
        double wayMm = 380;
        for (int i = 0; i < 400; i++) {
            now += 50 * Nanos.PER_MS;
            tickTo(now);
            // a triangle from end to end
            double travelled = mmPerS * i * 0.05 % (2 * wayMm);
            double mm = 110 + (travelled < wayMm ? travelled : 2 * wayMm - travelled) + 1.7 * random.nextGaussian();
            path.onReading(new Reading(now, new double[] {mm, 300}, 0b11));
        }
        return largestStepCents(slow.frames());
    }

    private double largestStepCents() {
        return largestStepCents(frames.frames());
    }

    private static double largestStepCents(List<SoundFrame> frames) {
        List<SoundFrame> sounding = frames.stream().filter(SoundFrame::hand).toList();
        double largest = 0;
        for (int i = 1; i < sounding.size(); i++) {
            double step = Math.abs(
                    Cents.between(sounding.get(i - 1).pitchHz(), sounding.get(i).pitchHz()));
            largest = Math.max(largest, step);
        }
        return largest;
    }

    @Test
    void withGlideOffAFrameGoesOutWithEachReading() {
        path = open(TestRooms.twoDistances(50), PathSettings.USUAL.muted(false).gliding(false));
        hold(300, 300, 20);
        int before = frames.frames().size();
        hold(300, 300, 10);
        assertEquals(10, frames.frames().size() - before);
    }

    @Test
    void stepsSoundOnlyNotesOfTheScale() {
        Tuning steps = Tuning.usual().withSnap(Snap.STEPS);
        path = open(TestRooms.twoDistances(50, steps, 0), PathSettings.USUAL.muted(false));
        for (int i = 0; i < 200; i++) {
            reading(100 + 2.0 * i, 300);
        }
        assertTrue(frames.frames().stream()
                .filter(SoundFrame::hand)
                .allMatch(frame -> Math.abs(frame.centsFromKey()) < 1e-9));
        assertEquals(
                25,
                frames.frames().stream()
                        .filter(SoundFrame::hand)
                        .map(SoundFrame::key)
                        .distinct()
                        .count());
    }

    @Test
    void theLevelHandPlaysLevelAndItsAbsenceIsSilence() {
        hold(300, 200, 50);
        // half-way up the zone: knee at 3 %, -60 dB there, -6 dB at the far end
        double expectedDb = -60 + 54 * (0.5 - 0.03) / 0.97;
        assertEquals(Math.pow(10, expectedDb / 20), frames.last().gain01(), 1e-6);
        for (int i = 0; i < 30; i++) {
            reading(300, 8190);
        }
        assertEquals(0, frames.last().gain01(), 1e-12);
        assertTrue(frames.last().hand());
    }

    @Test
    void aLossFadesAndNeedsTwoReadingsToSoundAgain() {
        hold(300, 300, 50);
        path.onLost();
        nothing(100 * Nanos.PER_MS);
        assertEquals(0, frames.last().gain01(), 0);
        assertEquals(PlayState.LOST, frames.last().state());
        reading(300, 300);
        nothing(40 * Nanos.PER_MS);
        assertEquals(0, frames.last().gain01(), 0);
        hold(300, 300, 30);
        assertTrue(frames.last().gain01() > 0.4);
    }

    @Test
    void stoppedItIsSilentForGoodAndSaysSo() {
        hold(300, 300, 50);
        assertFalse(path.isStopped());
        path.stop();
        hold(300, 300, 15);
        assertTrue(path.isStopped());
        assertEquals(0, frames.last().gain01(), 0);
        assertFalse(frames.last().hand());
    }

    @Test
    void theStateGoesAlongOnChangeAndOnceASecond() {
        hold(300, 300, 150);
        List<SoundFrame> states = frames.withState();
        long playing = states.stream()
                .filter(frame -> frame.state() == PlayState.PLAYING)
                .count();
        assertEquals(PlayState.AWAY, states.get(0).state());
        assertTrue(playing >= 3 && playing <= 4, playing + " states in 3 s of playing");
    }

    @Test
    void anotherTuningTakesOverWithoutSilence() {
        hold(300, 300, 50);
        path.tune(Tuning.usual().withRange(69, 93));
        hold(300, 300, 30);
        assertEquals(880.00, frames.last().pitchHz(), TOLERANCE_HZ);
        assertTrue(frames.last().gain01() > 0.4);
    }

    @Test
    void theSameCallsGiveTheSameFrames() {
        FrameList again = new FrameList();
        hold(312, 287, 60);
        List<SoundFrame> first = frames.frames();
        now = Nanos.PER_SECOND;
        RoomProfile profile = TestRooms.twoDistances(50);
        path = new PlayPath(
                profile,
                profile.tunings().get(0),
                TestRooms.SHAPE,
                PathSettings.USUAL.muted(false),
                List.of(again),
                now);
        hold(312, 287, 60);
        assertEquals(first, again.frames());
    }
}
