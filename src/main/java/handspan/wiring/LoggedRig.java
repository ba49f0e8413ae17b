package handspan.wiring;

import handspan.instrument.line.Rejection;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.LinkFacts;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A rig whose events are written into the log by whoever follows it, and its rejections once a minute and at the end.
 */
final class LoggedRig implements Rig {
    private static final long EVERY_NANOS = 60 * Nanos.PER_SECOND;

    private final Rig rig;
    private final SessionLog log;
    private final String source;
    private long seen;
    private long lookedNanos;
    private Map<Rejection, Long> told = Map.of();
    private boolean closed;

    LoggedRig(Rig rig, SessionLog log, String source) {
        this.rig = rig;
        this.log = log;
        this.source = source;
        this.lookedNanos = rig.snapshot().timeNanos();
    }

    @Override
    public void submit(Command command) {
        rig.submit(command);
    }

    @Override
    public Snapshot follow(Predicate<Snapshot> goesOn) {
        Snapshot last = rig.follow(snapshot -> {
            look(snapshot);
            return goesOn.test(snapshot);
        });
        look(last);
        return last;
    }

    private synchronized void look(Snapshot snapshot) {
        for (Event event : snapshot.events()) {
            if (event.number() > seen) {
                seen = event.number();
                String words = SessionLog.words(event);
                if (!words.isEmpty()) {
                    log.note(source + ": " + words);
                }
            }
        }
        if (snapshot.timeNanos() - lookedNanos >= EVERY_NANOS) {
            lookedNanos = snapshot.timeNanos();
            tellRejections(snapshot);
        }
    }

    private void tellRejections(Snapshot snapshot) {
        Map<Rejection, Long> now = snapshot.rejections();
        if (!now.isEmpty() && !now.equals(told)) {
            told = Map.copyOf(now);
            log.note(source + ": of " + snapshot.lines() + " lines rejected: "
                    + now.entrySet().stream()
                            .map(entry ->
                                    entry.getValue() + " " + entry.getKey().words())
                            .collect(Collectors.joining(", ")));
        }
    }

    @Override
    public Snapshot snapshot() {
        return rig.snapshot();
    }

    @Override
    public Optional<Simulation> simulation() {
        return rig.simulation();
    }

    @Override
    public Optional<Reel> reel() {
        return rig.reel();
    }

    @Override
    public String remark() {
        return rig.remark();
    }

    @Override
    public int recordedBaud() {
        return rig.recordedBaud();
    }

    @Override
    public LinkFacts facts() {
        return rig.facts();
    }

    @Override
    public void close() {
        rig.close();
        finish();
    }

    private synchronized void finish() {
        if (!closed) {
            closed = true;
            Snapshot last = rig.snapshot();
            look(last);
            tellRejections(last);
            log.note(source + ": closed after " + last.readings() + " readings");
        }
    }
}
