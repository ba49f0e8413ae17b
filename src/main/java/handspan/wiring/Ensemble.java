package handspan.wiring;

import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/**
 * Several instruments that play in one process, each with its own link, threads and targets: what becomes of one is
 * nothing to the others. All open at once and all fade at once.
 */
public final class Ensemble implements AutoCloseable {
    private static final long LOOK_MS = 30;
    private static final long LOOK_NANOS = LOOK_MS * Nanos.PER_MS;

    private final List<Member> members;
    private final boolean byTheClock;
    private final long startNanos;
    private final AtomicLong nowNanos;
    private final Object gate = new Object();
    private boolean closed;

    private Ensemble(List<Member> members, boolean byTheClock) {
        this.members = List.copyOf(members);
        this.byTheClock = byTheClock;
        // recordings and simulations that run fast begin a second into their own time
        this.startNanos = byTheClock ? Rigs.CLOCK.getAsLong() : Nanos.PER_SECOND;
        this.nowNanos = new AtomicLong(startNanos);
    }

    /**
     * An ensemble that has yet to start.
     *
     * @param members by their numbers; closed with this
     * @param byTheClock whether all run by the clock; else all run as fast as the machine can, each by its own time
     */
    public static Ensemble of(List<Member> members, boolean byTheClock) {
        return new Ensemble(members, byTheClock);
    }

    /** Opens all; returns when each is open or has said why not. Those that are not there go on being looked for. */
    public void start() {
        members.forEach(Member::start);
        try {
            for (Member member : members) {
                member.awaitTried();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Those who play, by their numbers. */
    public List<Member> members() {
        return members;
    }

    /** How long it has played. */
    public double seconds() {
        return Nanos.toSeconds(nowNanos.get() - startNanos);
    }

    /** Now, on the clock that its members go by. */
    public long nowNanos() {
        return nowNanos.get();
    }

    /**
     * Follows all until the watcher has seen enough or nothing more can come.
     *
     * @param goesOn asked some thirty times a second; false ends it
     */
    public void follow(BooleanSupplier goesOn) {
        try {
            while (goesOn.getAsBoolean() && !members.stream().allMatch(Member::isOver)) {
                step();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void step() throws InterruptedException {
        if (byTheClock) {
            Thread.sleep(LOOK_MS);
            nowNanos.set(Rigs.CLOCK.getAsLong());
            members.forEach(Member::look);
        } else {
            long untilNanos = nowNanos.addAndGet(LOOK_NANOS);
            members.forEach(member -> member.run(untilNanos));
        }
    }

    /** Closes or opens the sound of all. */
    public void mute(boolean on) {
        members.forEach(member -> member.desk().mute(on));
    }

    /** Closes the sound of all where any is open; else opens all. */
    public void turnMute() {
        mute(members.stream().anyMatch(member -> !member.desk().setting().muted()));
    }

    /** All fade at once, say "silence" and let go. Does nothing the second time, but waits for the first. */
    @Override
    public void close() {
        synchronized (gate) {
            if (!closed) {
                closed = true;
                closeAll();
            }
        }
    }

    private void closeAll() {
        List<Thread> closing = new ArrayList<>();
        for (Member member : members) {
            Thread thread = new Thread(member::close, "closing " + member.seat().name());
            closing.add(thread);
            thread.start();
        }
        try {
            for (Thread thread : closing) {
                thread.join();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
