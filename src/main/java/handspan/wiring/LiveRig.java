package handspan.wiring;

import handspan.live.session.Command;
import handspan.live.session.LinkFacts;
import handspan.live.session.LinkState;
import handspan.live.session.Session;
import handspan.live.session.Snapshot;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A rig that runs by the clock, in the session's threads. */
final class LiveRig implements Rig {
    private static final long LOOK_MS = 30;

    private final Session session;
    private final @Nullable Simulation simulation;
    private final @Nullable Reel reel;
    private final LongSupplier clockNanos;

    LiveRig(Session session, @Nullable Simulation simulation, @Nullable Reel reel, LongSupplier clockNanos) {
        this.session = session;
        this.simulation = simulation;
        this.reel = reel;
        this.clockNanos = clockNanos;
    }

    @Override
    public void submit(Command command) {
        if (simulation != null) {
            simulation.onCommand(command, clockNanos.getAsLong());
        }
        session.submit(command);
    }

    @Override
    public Snapshot follow(Predicate<Snapshot> goesOn) {
        Snapshot snapshot = session.snapshot();
        try {
            while (goesOn.test(snapshot) && snapshot.link() != LinkState.ENDED) {
                Thread.sleep(LOOK_MS);
                snapshot = session.snapshot();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return snapshot;
    }

    @Override
    public Snapshot snapshot() {
        return session.snapshot();
    }

    @Override
    public Optional<Simulation> simulation() {
        return Optional.ofNullable(simulation);
    }

    @Override
    public Optional<Reel> reel() {
        return Optional.ofNullable(reel);
    }

    @Override
    public String remark() {
        return reel == null ? "" : reel.remark();
    }

    @Override
    public int recordedBaud() {
        return reel == null ? 0 : reel.baud();
    }

    @Override
    public LinkFacts facts() {
        return session.facts();
    }

    @Override
    public void close() {
        session.close();
        if (reel != null) {
            reel.close();
        }
    }
}
