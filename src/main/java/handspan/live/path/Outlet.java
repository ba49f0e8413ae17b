package handspan.live.path;

import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where frames leave the path: all of them while anything sounds; in silence as often as {@link HandOff} says. The
 * state goes along on change and once a second. Owned by the path thread.
 */
final class Outlet {
    private final HandOff handOff = new HandOff();
    private final List<FrameTarget> targets;
    private boolean sounded;
    private PlayState sentState = PlayState.AWAY;
    private long stateNanos;
    private long frames;
    private @Nullable SoundFrame latest;

    /**
     * An outlet that has said nothing yet.
     *
     * @param targets get every frame
     */
    Outlet(List<FrameTarget> targets, long startNanos) {
        this.targets = List.copyOf(targets);
        handOff.start(startNanos);
    }

    /**
     * Sends a frame if it is due.
     *
     * @param silent whether nothing sounds
     * @return whether it was sent
     */
    boolean offer(SoundFrame frame, boolean silent) {
        long timeNanos = frame.timeNanos();
        boolean news = frame.state() != sentState;
        if (silent && (sounded || news)) {
            handOff.start(timeNanos);
        }
        sounded = !silent;
        if (silent && !handOff.isDue(timeNanos)) {
            return false;
        }
        send(frame, news || timeNanos - stateNanos >= Nanos.PER_SECOND || frames == 0);
        if (silent) {
            handOff.said(timeNanos);
        }
        return true;
    }

    private void send(SoundFrame frame, boolean withState) {
        for (FrameTarget target : targets) {
            target.send(frame, withState);
        }
        if (withState) {
            stateNanos = frame.timeNanos();
            sentState = frame.state();
        }
        frames++;
        latest = frame;
    }

    /** Says "silence" as often as at any end of sound, but at once. */
    void silence(long timeNanos) {
        SoundFrame last = latest;
        if (last == null) {
            return;
        }
        SoundFrame silent = last.silent(timeNanos, PlayState.LOST);
        for (FrameTarget target : targets) {
            for (int i = 0; i < HandOff.REPEATS; i++) {
                target.send(silent, true);
            }
        }
    }

    /** Whether the latest frame sounded. */
    boolean sounded() {
        return sounded;
    }

    /** Whether the receiver has been told of silence often enough. */
    boolean isOver() {
        return !sounded && handOff.isOver();
    }

    /** When silence has to be said next. */
    long nextNanos() {
        return handOff.nextNanos();
    }

    long frames() {
        return frames;
    }

    @Nullable
    SoundFrame latest() {
        return latest;
    }
}
