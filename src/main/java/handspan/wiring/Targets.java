package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.MidiTarget;
import handspan.music.send.NetworkTarget;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.outside.midi.MidiOutTarget;
import handspan.outside.osc.OscEncoder;
import handspan.outside.osc.StreamTarget;
import handspan.outside.osc.UdpTarget;
import java.util.ArrayList;
import java.util.List;

/**
 * The targets of one instrument, opened from its plan. Each is looked after by a thread of its own: a name is looked up
 * there, and one in trouble again every few seconds, so that neither playing nor another target waits for it.
 */
public final class Targets implements AutoCloseable {
    private static final long LOOK_AGAIN_MS = 3000;

    private final List<FrameTarget> targets = new ArrayList<>();
    private final List<Thread> care = new ArrayList<>();
    private volatile boolean closing;

    private Targets() {}

    /**
     * Opens all targets of a plan; returns at once, names are looked up meanwhile.
     *
     * @throws IllegalArgumentException if what the plan sends can't be sent so
     */
    public static Targets open(SendPlan plan) {
        Targets opened = new Targets();
        try {
            for (SendTarget target : plan.targets()) {
                opened.targets.add(opened.open(target, plan));
            }
        } catch (IllegalArgumentException e) {
            opened.close();
            throw e;
        }
        opened.care.forEach(Thread::start);
        return opened;
    }

    private FrameTarget open(SendTarget target, SendPlan plan) {
        if (target instanceof NetworkTarget network) {
            return network.protocol().isDatagram() ? datagrams(network, plan) : stream(network, plan);
        } else if (target instanceof MidiTarget midi) {
            // looks after itself
            return MidiOutTarget.start(midi, plan.midi(), Rigs.CLOCK);
        }
        throw new IllegalStateException("a target that is neither network nor MIDI: " + target.text());
    }

    private UdpTarget datagrams(NetworkTarget target, SendPlan plan) {
        OscEncoder encoder = new OscEncoder(plan, Rigs.WALL);
        boolean known = target.isKnownAtOnce();
        UdpTarget udp = known ? UdpTarget.open(target, encoder) : UdpTarget.later(target, encoder);
        Thread thread = new Thread(() -> lookAfter(udp, known), "care of " + target.text());
        thread.setDaemon(true);
        care.add(thread);
        return udp;
    }

    /** Has a thread of its own that connects again. */
    private static StreamTarget stream(NetworkTarget target, SendPlan plan) {
        return StreamTarget.start(target, () -> new OscEncoder(plan, Rigs.WALL), Rigs.CLOCK);
    }

    /** To be plugged into a rig. */
    public List<FrameTarget> all() {
        return List.copyOf(targets);
    }

    /** How each stands. */
    public List<TargetStatus> status() {
        return targets.stream().map(FrameTarget::status).toList();
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

    /** To be called after the rig's own end: what waits is still sent, for half a second each at most. */
    @Override
    public void close() {
        closing = true;
        care.forEach(Thread::interrupt);
        targets.forEach(FrameTarget::close);
    }
}
