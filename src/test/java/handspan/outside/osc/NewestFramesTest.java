package handspan.outside.osc;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What waits for a slow way out, against the two rules of the design: the newest wins, changes are never dropped. */
class NewestFramesTest {
    private final NewestFrames frames = new NewestFrames();
    private long timeNanos;

    private SoundFrame playing() {
        return Frames.at(++timeNanos);
    }

    private SoundFrame silent() {
        return Frames.at(0).silent(++timeNanos, PlayState.AWAY);
    }

    private List<SoundFrame> rest() {
        List<SoundFrame> rest = new ArrayList<>();
        for (NewestFrames.Waiting next = frames.poll(); next != null; next = frames.poll()) {
            rest.add(next.frame());
        }
        return rest;
    }

    @Test
    void ofOrdinaryFramesOnlyTheNewestWaits() {
        SoundFrame first = playing();
        assertEquals(0, frames.offer(first, true));
        assertEquals(0, frames.offer(playing(), false));
        assertEquals(1, frames.offer(playing(), false));
        SoundFrame newest = playing();
        assertEquals(1, frames.offer(newest, false));
        assertEquals(List.of(first, newest), rest(), "the first was news: somebody plays");
    }

    @Test
    void anEndAndANewBeginningBothWaitInTheirOrder() {
        frames.offer(playing(), true);
        rest();
        SoundFrame end = silent();
        SoundFrame beginning = playing();
        SoundFrame newest = playing();
        assertEquals(0, frames.offer(playing(), false));
        assertEquals(1, frames.offer(end, true), "the sound before its end is worth nothing any more");
        assertEquals(0, frames.offer(beginning, true));
        assertEquals(0, frames.offer(newest, false));
        assertEquals(List.of(end, beginning, newest), rest());
    }

    @Test
    void repeatsOfSilenceMergeIntoTheNewest() {
        frames.offer(playing(), true);
        rest();
        SoundFrame end = silent();
        frames.offer(end, true);
        for (int i = 0; i < 3; i++) {
            frames.offer(silent(), true);
        }
        SoundFrame newest = silent();
        frames.offer(newest, false);
        assertEquals(end, requireNonNull(frames.poll()).frame());
        NewestFrames.Waiting last = requireNonNull(frames.poll());
        assertEquals(newest, last.frame());
        assertTrue(last.withState(), "the state that a merged repeat would have told goes along");
        assertNull(frames.poll());
    }

    @Test
    void whoeverConnectsGetsThePresentAloneWithItsState() {
        assertEquals(0, frames.beginAnew());
        assertNull(frames.poll(), "nothing has been yet");
        frames.offer(playing(), true);
        frames.offer(silent(), false);
        SoundFrame present = playing();
        frames.offer(present, false);
        assertEquals(2, frames.beginAnew());
        NewestFrames.Waiting next = requireNonNull(frames.poll());
        assertEquals(present, next.frame());
        assertTrue(next.withState());
        assertNull(frames.poll());
        assertEquals(0, frames.beginAnew(), "what had gone elsewhere is told again and was not lost");
        assertEquals(present, requireNonNull(frames.poll()).frame());
    }

    @Test
    void whileNobodyCanBeToldOneFrameWaits() {
        for (int i = 0; i < 1000; i++) {
            assertEquals(i == 0 ? 0 : 1, frames.keepOnly(i % 2 == 0 ? playing() : silent()));
        }
        assertEquals(1, rest().size());
    }

    /** However it comes: every frame is sent or counted, memory is bounded, the last heard is the last offered. */
    @Test
    void byChanceNothingIsLostUncounted() {
        Random random = new Random(7);
        for (int evening = 0; evening < 300; evening++) {
            NewestFrames some = new NewestFrames();
            int offered = 200;
            int left = 0;
            int taken = 0;
            List<Boolean> told = new ArrayList<>();
            List<Boolean> heard = new ArrayList<>();
            SoundFrame last = silent();
            for (int i = 0; i < offered; i++) {
                last = random.nextInt(8) == 0 ? silent() : playing();
                if (told.isEmpty() || told.get(told.size() - 1) != last.hand()) {
                    told.add(last.hand());
                }
                left += some.offer(last, random.nextInt(20) == 0);
                if (random.nextInt(4) == 0) {
                    NewestFrames.Waiting next = some.poll();
                    if (next != null) {
                        taken++;
                        hear(heard, next.frame());
                    }
                }
            }
            SoundFrame lastHeard = null;
            int waiting = 0;
            for (NewestFrames.Waiting next = some.poll(); next != null; next = some.poll()) {
                waiting++;
                lastHeard = next.frame();
                hear(heard, next.frame());
            }
            assertTrue(waiting <= NewestFrames.MOST, waiting + " wait");
            assertEquals(offered, taken + left + waiting);
            assertTrue(waiting == 0 || last.equals(lastHeard));
            if (told.size() < NewestFrames.MOST) {
                assertEquals(told, heard, "every coming and going of a hand");
            }
        }
    }

    private static void hear(List<Boolean> heard, SoundFrame frame) {
        if (heard.isEmpty() || heard.get(heard.size() - 1) != frame.hand()) {
            heard.add(frame.hand());
        }
    }

    @Test
    void evenTooManyChangesLeaveTheLatest() {
        SoundFrame last = silent();
        int left = 0;
        for (int i = 0; i < 1000; i++) {
            last = i % 2 == 0 ? playing() : silent();
            left += frames.offer(last, true);
        }
        List<SoundFrame> rest = rest();
        assertEquals(NewestFrames.MOST, rest.size());
        assertEquals(1000 - NewestFrames.MOST, left);
        assertEquals(last, rest.get(rest.size() - 1));
        assertFalse(last.hand());
    }
}
