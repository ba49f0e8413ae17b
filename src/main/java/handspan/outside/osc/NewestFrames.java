package handspan.outside.osc;

import handspan.music.send.SoundFrame;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * What waits for a slow way out: one ordinary frame, the newest, and before it in their order those that tell of a
 * change: sound or silence, a hand that comes or goes, another state. So a receiver that lags behind hears what is true
 * now, and misses neither an end nor a beginning. Pure; guarded by its owner.
 */
final class NewestFrames {
    /**
     * The most changes that wait. A receiver that takes nothing is given up after seconds; a hand can't come and go
     * thirty times in them.
     */
    static final int MOST = 64;

    /**
     * A frame on its way.
     *
     * @param withState whether the state line goes along
     * @param news whether it tells of a change
     */
    record Waiting(SoundFrame frame, boolean withState, boolean news) {}

    private final Deque<Waiting> waiting = new ArrayDeque<>();
    private @Nullable SoundFrame latest;

    /**
     * Puts a frame at the end.
     *
     * @return how many frames are left out because of it
     */
    int offer(SoundFrame frame, boolean withState) {
        boolean news = isNews(frame);
        latest = frame;
        int left = 0;
        boolean state = withState;
        Waiting tail = waiting.peekLast();
        if (tail != null && !tail.news()) {
            waiting.removeLast();
            state |= tail.withState();
            left++;
        }
        waiting.addLast(new Waiting(frame, state, news));
        if (waiting.size() > MOST) {
            waiting.removeFirst();
            left++;
        }
        return left;
    }

    private boolean isNews(SoundFrame frame) {
        SoundFrame before = latest;
        return before == null
                || before.state() != frame.state()
                || before.hand() != frame.hand()
                || (before.gain01() <= 0) != (frame.gain01() <= 0);
    }

    /** While nobody can be told: keeps this frame alone. */
    int keepOnly(SoundFrame frame) {
        int left = clear();
        latest = frame;
        waiting.addLast(new Waiting(frame, true, true));
        return left;
    }

    /**
     * Somebody listens who knows nothing: the newest frame, even if it has gone elsewhere, is next, with its state.
     *
     * @return how many frames are left out
     */
    int beginAnew() {
        SoundFrame newest = latest;
        if (newest == null) {
            return 0;
        }
        boolean unsent = !waiting.isEmpty();
        int left = keepOnly(newest);
        return unsent ? left - 1 : left;
    }

    /** Takes the first. */
    @Nullable
    Waiting poll() {
        return waiting.pollFirst();
    }

    /** Leaves all out that waits. */
    int clear() {
        int left = waiting.size();
        waiting.clear();
        return left;
    }
}
