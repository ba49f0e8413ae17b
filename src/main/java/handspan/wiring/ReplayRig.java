package handspan.wiring;

import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.LinkFacts;
import handspan.live.session.Replay;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A rig that runs in the caller's thread with its source's own times, as fast as the machine can. */
final class ReplayRig implements Rig {
    private static final long LOOK_NANOS = 30 * Nanos.PER_MS;
    private static final long FADE_OUT_NANOS = 3 * Nanos.PER_SECOND;

    private final Engine engine;
    private final Replay replay;
    private final @Nullable Simulation simulation;
    private final @Nullable TakeSource take;
    private long nowNanos;
    private long lookedNanos;
    private long lookedEvent = -1;

    ReplayRig(
            Engine engine,
            Replay.TimedBytes source,
            @Nullable Simulation simulation,
            @Nullable TakeSource take,
            long startNanos) {
        this.engine = engine;
        this.replay = new Replay(engine, source);
        this.simulation = simulation;
        this.take = take;
        this.nowNanos = startNanos;
    }

    @Override
    public void submit(Command command) {
        if (simulation != null) {
            simulation.onCommand(command, nowNanos);
        }
        engine.onCommand(command, nowNanos);
    }

    @Override
    public Snapshot follow(Predicate<Snapshot> goesOn) {
        replay.run(running -> {
            nowNanos = running.timeNanos();
            boolean due = running.eventNumber() != lookedEvent || nowNanos - lookedNanos >= LOOK_NANOS;
            if (!due) {
                return true;
            }
            lookedEvent = running.eventNumber();
            lookedNanos = nowNanos;
            return goesOn.test(running.snapshot());
        });
        nowNanos = engine.timeNanos();
        return engine.snapshot();
    }

    @Override
    public Snapshot snapshot() {
        return engine.snapshot();
    }

    @Override
    public Optional<Simulation> simulation() {
        return Optional.ofNullable(simulation);
    }

    @Override
    public String remark() {
        return take == null ? "" : take.remark();
    }

    @Override
    public int recordedBaud() {
        return take == null ? 0 : take.baud();
    }

    @Override
    public LinkFacts facts() {
        return LinkFacts.NONE;
    }

    @Override
    public void close() {
        if (engine.snapshot().activity().played().isPresent()) {
            engine.onCommand(new Command.Stop(), nowNanos);
            long until = nowNanos + FADE_OUT_NANOS;
            while (!engine.snapshot().done() && engine.nextDeadlineNanos() <= until) {
                engine.onTick(engine.nextDeadlineNanos());
            }
        }
        if (take != null) {
            take.close();
        }
    }
}
