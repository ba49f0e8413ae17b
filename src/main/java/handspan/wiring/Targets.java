package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SendPlan;
import handspan.outside.osc.UdpTarget;
import java.util.ArrayList;
import java.util.List;

/**
 * The targets of one instrument, opened from its plan, and looked after by a thread of their own: one in trouble is
 * looked up again every few seconds, off the path.
 */
public final class Targets implements AutoCloseable {
    private static final long LOOK_AGAIN_MS = 3000;

    private final List<UdpTarget> targets = new ArrayList<>();
    private final Thread care;
    private volatile boolean closing;

    private Targets(SendPlan plan) {
        plan.targets().forEach(target -> targets.add(UdpTarget.open(target, plan.lines())));
        this.care = new Thread(this::lookAgain, "target care");
        care.setDaemon(true);
    }

    /** Opens all targets of a plan; looks names up, so not for a path thread. */
    public static Targets open(SendPlan plan) {
        Targets opened = new Targets(plan);
        if (!opened.targets.isEmpty()) {
            opened.care.start();
        }
        return opened;
    }

    /** To be plugged into a rig. */
    public List<FrameTarget> all() {
        return List.copyOf(targets);
    }

    /** How each stands. */
    public List<TargetStatus> status() {
        return targets.stream().map(UdpTarget::status).toList();
    }

    private void lookAgain() {
        try {
            while (!closing) {
                Thread.sleep(LOOK_AGAIN_MS);
                for (UdpTarget target : targets) {
                    if (!closing && !target.status().trouble().isEmpty()) {
                        target.reopen();
                    }
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** To be called after the rig's own end. */
    @Override
    public void close() {
        closing = true;
        care.interrupt();
        targets.forEach(UdpTarget::close);
    }
}
