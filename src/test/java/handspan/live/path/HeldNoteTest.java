package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A note that is held when the hand leaves, over 100..500 mm for A3 to A5, level over 100..300 mm. */
class HeldNoteTest {
    private static final double TOLERANCE_HZ = 0.0075;
    private static final double CEILING = 0.501187233627;
    private static final double NOTHING = 8190;
    private static final long READING = 20 * Nanos.PER_MS;

    private final FrameList frames = new FrameList();
    private long now = Nanos.PER_SECOND;
    private long reached = now;
    private PlayPath path = open(new Leaving(true, 60), true);

    private PlayPath open(Leaving leaving, boolean glide) {
        RoomProfile profile = TestRooms.twoDistances(50).with(LevelCurve.USUAL.with(leaving));
        return new PlayPath(
                profile,
                profile.tunings().get(0),
                TestRooms.SHAPE,
                PathSettings.USUAL.muted(false).gliding(glide),
                List.of(frames),
                now);
    }

    private void lines(double pitchMm, double levelMm, int count) {
        for (int i = 0; i < count; i++) {
            now += READING;
            tick();
            path.onReading(new Reading(now, new double[] {pitchMm, levelMm}, 0b11));
        }
    }

    private void nothing(long nanos) {
        now += nanos;
        tick();
    }

    private void tick() {
        while (path.nextDeadlineNanos() <= now) {
            reached = Math.max(reached, path.nextDeadlineNanos());
            path.onTick(reached);
        }
        reached = Math.max(reached, now);
    }

    private List<SoundFrame> since(long nanos) {
        return frames.frames().stream()
                .filter(frame -> frame.timeNanos() > nanos)
                .toList();
    }

    /** 440.00 Hz at the middle of the zone (B. H. Suits, Physics of Music - Notes). */
    @Test
    void theNoteGoesOnAtItsPitchAndLevelAndCountsAsPlayed() {
        lines(300, 300, 50);
        long gone = now;
        lines(NOTHING, 300, 500);
        for (SoundFrame frame : since(gone)) {
            assertEquals(440.00, frame.pitchHz(), TOLERANCE_HZ);
            assertEquals(CEILING, frame.gain01(), 1e-9);
            assertTrue(frame.hand());
            assertEquals(PlayState.PLAYING, frame.state());
        }
        assertTrue(since(gone).size() > 1900, "200 frames a second for ten seconds");
    }

    @Test
    void withGlideOffAFrameStillGoesOutWithEachLine() {
        path = open(new Leaving(true, 60), false);
        lines(300, 300, 50);
        long gone = now;
        lines(NOTHING, 300, 50);
        assertEquals(52, since(gone).size(), "one with each line, one when it leaves, one when it is away");
        assertEquals(CEILING, frames.last().gain01(), 1e-9);
    }

    /** Outward at 1.5 m/s: what is held is what sounded when it was known to leave, not where the glide was going. */
    @Test
    void aHandThatLeavesFastLeavesThePitchThatSounded() {
        lines(440, 300, 50);
        for (double mm = 470; mm < 540; mm += 30) {
            lines(mm, 300, 1);
        }
        lines(700, 300, 1);
        double heldHz = frames.last().pitchHz();
        long gone = now;
        lines(NOTHING, 300, 100);
        assertTrue(since(gone).stream().allMatch(frame -> Math.abs(Cents.between(heldHz, frame.pitchHz())) < 0.01));
        assertTrue(frames.last().hand());
    }

    /** The next hand takes over: level goes on, and pitch is at the new place with the first frame, without a slide. */
    @Test
    void theNextHandTakesOverAtOnceWithoutSlideOrDip() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 100);
        long came = now;
        lines(500, 300, 50);
        for (SoundFrame frame : since(came)) {
            assertEquals(CEILING, frame.gain01(), 1e-9);
            boolean old = Math.abs(frame.pitchHz() - 440) < TOLERANCE_HZ;
            boolean fresh = Math.abs(frame.pitchHz() - 880) < TOLERANCE_HZ;
            assertTrue(old || fresh, frame.pitchHz() + " Hz");
        }
        assertEquals(880.00, frames.last().pitchHz(), TOLERANCE_HZ);
    }

    @Test
    void aGhostDoesNotTakeOver() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 100);
        lines(480, 300, 1);
        lines(NOTHING, 300, 100);
        assertEquals(440.00, frames.last().pitchHz(), TOLERANCE_HZ);
        assertEquals(CEILING, frames.last().gain01(), 1e-9);
    }

    @Test
    void theLevelHandShapesAHeldNoteAndWhenItLeavesItsLevelStays() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 50);
        lines(NOTHING, 200, 50);
        // half-way up the zone: knee at 3 %, -60 dB there, -6 dB at the far end
        double expected = Math.pow(10, (-60 + 54 * (0.5 - 0.03) / 0.97) / 20);
        assertEquals(expected, frames.last().gain01(), 1e-6);
        lines(NOTHING, NOTHING, 100);
        assertEquals(expected, frames.last().gain01(), 1e-6);
        lines(NOTHING, 300, 50);
        assertEquals(CEILING, frames.last().gain01(), 1e-9);
    }

    @Test
    void muteEndsItForGood() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 50);
        path.mute(true);
        lines(NOTHING, 300, 6);
        assertSilent(PlayState.MUTED);
        path.mute(false);
        lines(NOTHING, 300, 50);
        assertSilent(PlayState.AWAY);
    }

    @Test
    void aHandThatLeavesWhileMutedIsNotHeld() {
        lines(300, 300, 50);
        path.mute(true);
        lines(NOTHING, 300, 50);
        path.mute(false);
        lines(NOTHING, 300, 50);
        assertSilent(PlayState.AWAY);
    }

    @Test
    void aLossEndsItForGoodEvenWhenTheNextLineComesAtOnce() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 50);
        path.onLost();
        lines(NOTHING, 300, 50);
        assertSilent(PlayState.AWAY);
        lines(300, 300, 50);
        path.onLost();
        lines(NOTHING, 300, 50);
        assertSilent(PlayState.AWAY);
    }

    @Test
    void stopEndsIt() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 50);
        path.stop();
        nothing(300 * Nanos.PER_MS);
        assertTrue(path.isStopped());
        assertSilent(PlayState.MUTED);
    }

    @Test
    void anotherTuningMovesIt() {
        lines(300, 300, 50);
        lines(NOTHING, 300, 50);
        path.tune(Tuning.usual().withRange(69, 93));
        lines(NOTHING, 300, 50);
        assertEquals(880.00, frames.last().pitchHz(), TOLERANCE_HZ);
        assertEquals(CEILING, frames.last().gain01(), 1e-9);
    }

    /** A fade of half a second as chosen; mute cuts it short. */
    @Test
    void aLongFadeIsAsLongAsChosenButMuteIsQuick() {
        path = open(new Leaving(false, 500), true);
        lines(300, 300, 50);
        lines(NOTHING, 300, 10);
        long left = now;
        lines(NOTHING, 300, 11);
        assertEquals(CEILING / 2, frames.last().gain01(), 0.03);
        path.mute(true);
        nothing(65 * Nanos.PER_MS);
        assertEquals(0, frames.last().gain01(), 0);
        assertTrue(since(left).stream().allMatch(frame -> Math.abs(frame.pitchHz() - 440) < TOLERANCE_HZ));
    }

    /** The level hand's leaving fades too: from the ceiling no step is larger than 5 ms of a fade of 60. */
    @Test
    void aLevelHandThatLeavesDoesNotClick() {
        path = open(Leaving.USUAL, true);
        lines(300, 300, 50);
        long gone = now;
        lines(300, NOTHING, 50);
        double before = CEILING;
        for (SoundFrame frame : since(gone)) {
            assertTrue(before - frame.gain01() <= CEILING * 5.1 / 60, before + " to " + frame.gain01());
            before = frame.gain01();
        }
        assertEquals(0, before, 0);
        assertTrue(frames.last().hand());
    }

    private void assertSilent(PlayState state) {
        assertEquals(0, frames.last().gain01(), 0);
        assertFalse(frames.last().hand());
        assertEquals(state, frames.last().state());
    }
}
