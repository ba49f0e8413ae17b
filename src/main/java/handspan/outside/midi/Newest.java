package handspan.outside.midi;

import handspan.music.send.SoundFrame;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * What is handed from the path to the thread of a device: the newest frame alone, and whether there was a silence
 * before it that has not been taken yet. So the queue is never longer than one, and no end of a note gets lost. Putting
 * never waits.
 */
final class Newest {
    /**
     * What is there.
     *
     * @param frame the newest
     * @param silenceBefore whether an untaken frame before it was silent
     */
    record Taken(SoundFrame frame, boolean silenceBefore) {}

    private final AtomicReference<@Nullable Taken> there = new AtomicReference<>();

    /**
     * Puts a frame in the place of the one before.
     *
     * @return whether that had not been taken
     */
    boolean put(SoundFrame frame) {
        while (true) {
            Taken before = there.get();
            boolean silence =
                    before != null && (before.silenceBefore() || before.frame().gain01() <= 0);
            if (there.compareAndSet(before, new Taken(frame, silence))) {
                return before != null;
            }
        }
    }

    /** Takes what is there; null where nothing is new. */
    @Nullable
    Taken take() {
        return there.getAndSet(null);
    }
}
