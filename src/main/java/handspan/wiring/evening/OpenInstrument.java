package handspan.wiring.evening;

import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.wiring.Rig;
import handspan.wiring.SwitchedOut;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;

/**
 * An instrument that is open and followed by a thread of its own until it is let go. Orders may come from any thread:
 * what runs by the clock gets them at once, what runs as fast as the machine can gets them between two looks, in its
 * own thread.
 */
final class OpenInstrument {
    private static final long LONGEST_END_MS = 5000;

    private final Rig rig;
    private final boolean byTheClock;
    private final SwitchedOut out;
    private final Queue<Command> orders = new ConcurrentLinkedQueue<>();
    private final Thread follower;
    private volatile Snapshot latest;
    private volatile boolean closing;

    /**
     * Begins to follow it.
     *
     * @param rig closed with this
     * @param byTheClock whether the rig has threads of its own
     * @param out plugged into the rig
     * @param watcher shown snapshots, by the following thread
     * @param trouble told what ended the following, where it should not have
     */
    OpenInstrument(Rig rig, boolean byTheClock, SwitchedOut out, Consumer<Snapshot> watcher, Consumer<String> trouble) {
        this.rig = rig;
        this.byTheClock = byTheClock;
        this.out = out;
        this.latest = rig.snapshot();
        this.follower = new Thread(() -> follow(watcher, trouble), "evening follower");
        follower.setDaemon(true);
    }

    void begin() {
        follower.start();
    }

    private void follow(Consumer<Snapshot> watcher, Consumer<String> trouble) {
        try {
            Snapshot last = rig.follow(snapshot -> {
                latest = snapshot;
                watcher.accept(snapshot);
                Command order = orders.poll();
                while (order != null) {
                    rig.submit(order);
                    order = orders.poll();
                }
                return !closing;
            });
            latest = last;
            if (!closing) {
                watcher.accept(last);
            }
        } catch (RuntimeException e) {
            trouble.accept("a mistake in this program: " + e + "; please report it with what you did");
        }
    }

    void submit(Command command) {
        if (byTheClock) {
            rig.submit(command);
        } else {
            orders.add(command);
        }
    }

    Snapshot snapshot() {
        return byTheClock ? rig.snapshot() : latest;
    }

    Rig rig() {
        return rig;
    }

    boolean isByTheClock() {
        return byTheClock;
    }

    SwitchedOut out() {
        return out;
    }

    /** Fades, then lets go. */
    void close() {
        closing = true;
        try {
            follower.join(LONGEST_END_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        rig.close();
    }
}
