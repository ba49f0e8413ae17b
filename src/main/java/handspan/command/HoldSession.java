package handspan.command;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import handspan.wiring.Cues;
import handspan.wiring.EventReader;
import java.util.Optional;

/** Leads a player through a plan and waits for its holds: the same for a calibration, a re-fit and a check. */
final class HoldSession {
    private final Talk talk;
    private final Air air;
    private final HoldRules rules;
    private final double timeoutSeconds;
    private final Cues cues;

    /**
     * A session.
     *
     * @param cues closed when it is over
     */
    HoldSession(Talk talk, Air air, HoldRules rules, double timeoutSeconds, Cues cues) {
        this.talk = talk;
        this.air = air;
        this.rules = rules;
        this.timeoutSeconds = timeoutSeconds;
        this.cues = cues;
    }

    /** The captured holds; empty when time ran out. */
    Optional<ActivityView.Calibrating> lead(Known known, CalibrationPlan plan, Keys keys) {
        return lead(known, plan, keys, () -> {});
    }

    /**
     * The same with something looked after all the while.
     *
     * @param look done some thirty times a second
     */
    Optional<ActivityView.Calibrating> lead(Known known, CalibrationPlan plan, Keys keys, Runnable look) {
        try (cues) {
            return led(known, plan, keys, look);
        }
    }

    private Optional<ActivityView.Calibrating> led(Known known, CalibrationPlan plan, Keys keys, Runnable look) {
        Instrument instrument = known.instrument();
        EventReader events = new EventReader();
        events.fresh(known.rig().snapshot()); // what was told while it was listened to
        known.rig().submit(new Command.Calibrate(instrument, instrument.sensors(air), plan, rules));
        keys.on("u", () -> known.rig().submit(new Command.Undo()));
        keys.listen();
        long startNanos = known.rig().snapshot().timeNanos();
        Snapshot last = known.rig().follow(snapshot -> {
            events.fresh(snapshot).forEach(this::tell);
            look.run();
            return !snapshot.done() && Nanos.toSeconds(snapshot.timeNanos() - startNanos) < timeoutSeconds;
        });
        events.fresh(last).forEach(this::tell);
        if (last.activity() instanceof ActivityView.Calibrating done && done.done()) {
            cues.finished();
            return Optional.of(done);
        }
        talk.warn("not finished within " + Figures.text(timeoutSeconds, 0) + " s"
                + (last.link() == LinkState.LOST ? ": " + last.linkReason() : ""));
        return Optional.empty();
    }

    private void tell(Event event) {
        cues.onEvent(event);
        CalibrationTalk.tell(talk, event);
    }
}
