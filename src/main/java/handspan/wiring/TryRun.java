package handspan.wiring;

import handspan.live.path.TrySound;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.ReferencePitch;
import handspan.profile.RoomProfile;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** Plays a {@link TrySound} to the targets of a room by the clock. Ending it early fades first. */
public final class TryRun implements AutoCloseable {
    private static final long FADE_OUT_S = 2;

    private final Targets targets;
    private final TrySound sound;
    private final CountDownLatch over = new CountDownLatch(1);
    private volatile boolean stopping;

    private TryRun(Targets targets, TrySound sound) {
        this.targets = targets;
        this.sound = sound;
    }

    /**
     * Opens targets.
     *
     * @param profile its level curve and the A4 of its first tuning
     * @param plan where to
     */
    public static TryRun open(RoomProfile profile, SendPlan plan) {
        return open(profile.level(), profile.tunings().get(0).reference(), plan);
    }

    /** The same before there is a room. */
    public static TryRun open(LevelCurve level, ReferencePitch reference, SendPlan plan) {
        Targets targets = Targets.open(plan);
        return new TryRun(targets, new TrySound(level, reference, targets.all(), Rigs.CLOCK.getAsLong()));
    }

    /** Plays to the end; returns then. */
    public void play() {
        long nowNanos = Rigs.CLOCK.getAsLong();
        while (!sound.isOver(nowNanos)) {
            if (stopping) {
                sound.stop();
            }
            if (nowNanos >= sound.nextDeadlineNanos()) {
                sound.onTick(nowNanos);
            }
            LockSupport.parkNanos(Math.min(sound.nextDeadlineNanos() - nowNanos, TimeUnit.MILLISECONDS.toNanos(5)));
            nowNanos = Rigs.CLOCK.getAsLong();
        }
        over.countDown();
    }

    /** How each target stands. */
    public Targets targets() {
        return targets;
    }

    /** Frames sent to each. */
    public long frames() {
        return sound.frames();
    }

    /** Fades; does not wait for it. */
    public void stop() {
        stopping = true;
    }

    /**
     * Fades if it still sounds, then lets go of the targets. May be called by another thread than the one that plays.
     */
    @Override
    public void close() {
        stopping = true;
        try {
            if (!over.await(FADE_OUT_S, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        targets.close();
    }
}
