package handspan.live.path;

import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.ReferencePitch;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;
import java.util.List;

/**
 * A sound without an instrument, to hear whether a receiver listens: A4, swelling in a straight line of dB from the
 * floor to the level ceiling and down again, then silence, said as often as at any end of sound. Pure but for what the
 * targets do. Owned by one thread.
 */
public final class TrySound {
    /** Up, and down again. */
    private static final double RAMP_S = 2.5;

    private static final double TOP_S = 1;
    private static final long FRAME_NANOS = 5 * Nanos.PER_MS;

    /** 69 is A4, where degree and octave count from it too. */
    private static final int A4 = 69;

    private static final int A4_OCTAVE = 4;

    private final LevelCurve level;
    private final ReferencePitch reference;
    private final Fade fade;
    private final Outlet outlet;
    private final long startNanos;
    private long nextNanos;
    private boolean stopping;

    /**
     * A sound that begins now.
     *
     * @param level its floor and ceiling
     * @param reference its A4
     * @param targets get every frame
     */
    public TrySound(LevelCurve level, ReferencePitch reference, List<FrameTarget> targets, long startNanos) {
        this.level = level;
        this.reference = reference;
        this.fade = new Fade(level);
        this.outlet = new Outlet(targets, startNanos);
        this.startNanos = startNanos;
        this.nextNanos = startNanos;
    }

    /** Time passes: called at {@link #nextDeadlineNanos} at the latest. */
    public void onTick(long timeNanos) {
        double sinceS = Nanos.toSeconds(timeNanos - startNanos);
        boolean open = !stopping && sinceS < 2 * RAMP_S + TOP_S;
        double up01 = Math.min(1, Math.min(sinceS, 2 * RAMP_S + TOP_S - sinceS) / RAMP_S);
        double wanted01 = Decibels.gain(level.floorDb() + (level.ceilingDb() - level.floorDb()) * up01);
        double gain01 = fade.next(wanted01, open, Nanos.ofMs(Leaving.SHORT_MS), timeNanos);
        boolean sounds = open || gain01 > 0;
        SoundFrame frame = new SoundFrame(
                timeNanos,
                reference.a4Hz(),
                A4,
                0,
                1,
                A4_OCTAVE,
                gain01,
                sounds,
                0.5,
                Math.max(0, up01),
                sounds ? PlayState.PLAYING : PlayState.AWAY);
        outlet.offer(frame, !sounds);
        nextNanos = sounds ? timeNanos + FRAME_NANOS : outlet.nextNanos();
    }

    /** Fades now. */
    public void stop() {
        stopping = true;
    }

    /** Whether it is over and receivers have been told often enough. */
    public boolean isOver(long timeNanos) {
        return (stopping || Nanos.toSeconds(timeNanos - startNanos) > 2 * RAMP_S + TOP_S) && outlet.isOver();
    }

    /** When {@link #onTick} has to be called. */
    public long nextDeadlineNanos() {
        return nextNanos;
    }

    /** Frames sent. */
    public long frames() {
        return outlet.frames();
    }
}
