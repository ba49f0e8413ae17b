package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.outside.osc.UdpTarget;
import java.util.ArrayList;
import java.util.List;

/**
 * The targets of one instrument, opened from its plan. Each is looked after by a thread of its own: a name is looked up
 * there, and one in trouble again every few seconds, so that neither playing nor another target waits for it.
 */
public final class Targets implements AutoCloseable {
    private static final long LOOK_AGAIN_MS = 3000;

    private final List<UdpTarget> targets = new ArrayList<>();
    private final List<Thread> care = new ArrayList<>();
    private volatile boolean closing;

    private Targets() {}

    /** Opens all targets of a plan; returns at once, names are looked up meanwhile. */
    public static Targets open(SendPlan plan) {
        Targets opened = new Targets();
        plan.targets().forEach(target -> opened.add(target, plan.lines()));
        opened.care.forEach(Thread::start);
        return opened;
    }

    private void add(SendTarget target, List<SendLine> lines) {
        boolean known = target.isKnownAtOnce();
        UdpTarget udp = known ? UdpTarget.open(target, lines) : UdpTarget.later(target, lines);
        targets.add(udp);
        Thread thread = new Thread(() -> lookAfter(udp, known), "care of " + target.text());
        thread.setDaemon(true);
        care.add(thread);
    }

    /** To be plugged into a rig. */
    public List<FrameTarget> all() {
        return List.copyOf(targets);
    }

    /** How each stands. */
    public List<TargetStatus> status() {
        return targets.stream().map(UdpTarget::status).toList();
    }

    private void lookAfter(UdpTarget target, boolean opened) {
        try {
            if (!opened) {
                target.reopen();
            }
            while (!closing) {
                Thread.sleep(LOOK_AGAIN_MS);
                if (!closing && !target.status().trouble().isEmpty()) {
                    target.reopen();
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
        care.forEach(Thread::interrupt);
        targets.forEach(UdpTarget::close);
    }
}
