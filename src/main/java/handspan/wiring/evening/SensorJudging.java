package handspan.wiring.evening;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.survey.ChannelReport;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import handspan.room.budget.SurveyWords;
import handspan.wiring.SessionLog;
import handspan.wiring.Simulation;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Judges the sensors of the open instrument in its room: both hands away at first, then each held still. The same
 * activity that the verb runs.
 */
public final class SensorJudging {
    /** So long readings are taken. */
    static final double LENGTH_S = 12;

    /** A simulated player has been heard playing, and takes so long to let go. */
    private static final long AWAY_NANOS = 2 * Nanos.PER_SECOND;

    private final EveningState state;
    private final Turns turns;
    private final SoundOut sound;
    private final SessionLog log;

    /** To be begun once the hands are away; null where nothing is. */
    private volatile Command.@Nullable Survey waiting;

    /** When they are; owned by the thread that follows the instrument. */
    private long awayNanos = Long.MAX_VALUE;

    SensorJudging(EveningState state, Turns turns, SoundOut sound, SessionLog log) {
        this.state = state;
        this.turns = turns;
        this.sound = sound;
        this.log = log;
    }

    /** Begins; playing ends first, by its fade. */
    public void begin() {
        turns.add("getting ready", this::refused, () -> {
            if (state.view().measuring().task().isPresent()) {
                throw new IllegalArgumentException("holds are being taken: end them first");
            }
            sound.endTrial();
            sound.endPlaying();
            state.needInstrument();
            Instrument known = state.view()
                    .arrival()
                    .instrument()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "it is not known which number is which hand: find the hands first"));
            waiting = new Command.Survey(known.channels(), known.sensors(Air.USUAL));
            tell(new Surveyed(true, 0, LENGTH_S, List.of(), ""));
        });
    }

    /** Ends it, or lets go of what it found. */
    public void end() {
        if (state.view().surveyed().running()) {
            letGo();
            state.order(new Command.Stop());
            state.order(new Command.Watch());
        } else {
            letGo();
        }
    }

    /** The instrument is gone, or does something else. */
    void letGo() {
        waiting = null;
        tell(Surveyed.nothing());
    }

    /** It could not be done. */
    void refused(String words) {
        waiting = null;
        tell(new Surveyed(false, 0, LENGTH_S, List.of(), words));
    }

    private void tell(Surveyed now) {
        state.change(seen -> seen.with(now));
    }

    /** Looks on; by the thread that follows the instrument. */
    void look(Snapshot snapshot) {
        if (!state.view().surveyed().running()) {
            return;
        }
        Command.Survey next = waiting;
        if (next != null) {
            takeAway(next, snapshot.timeNanos());
        } else if (snapshot.activity() instanceof ActivityView.Surveying surveying) {
            look(surveying, snapshot.done());
        } else if (!(snapshot.activity() instanceof ActivityView.Watching)) {
            letGo();
        }
    }

    private void takeAway(Command.Survey next, long nowNanos) {
        Optional<Simulation> simulation =
                state.instrument().flatMap(instrument -> instrument.rig().simulation());
        if (simulation.isPresent() && awayNanos == Long.MAX_VALUE) {
            simulation.get().leave(nowNanos);
            awayNanos = nowNanos + AWAY_NANOS;
        }
        if (simulation.isEmpty() || nowNanos >= awayNanos) {
            awayNanos = Long.MAX_VALUE;
            waiting = null;
            state.order(next);
        }
    }

    private void look(ActivityView.Surveying surveying, boolean done) {
        if (done) {
            List<ChannelReport> reports = surveying.reports();
            tell(new Surveyed(false, LENGTH_S, LENGTH_S, List.of(), ""));
            state.order(new Command.Watch());
            turns.add("judging the sensors", this::refused, () -> conclude(reports));
            return;
        }
        tell(new Surveyed(true, Math.min(surveying.seconds(), LENGTH_S), LENGTH_S, List.of(), ""));
        if (surveying.seconds() >= LENGTH_S) {
            state.order(new Command.Stop());
        }
    }

    private void conclude(List<ChannelReport> reports) {
        List<SurveyWords> words = reports.stream().map(SurveyWords::of).toList();
        words.forEach(each -> log.note(each.judgement()));
        tell(new Surveyed(
                false, LENGTH_S, LENGTH_S, words, words.isEmpty() ? "no reading came: nothing can be judged" : ""));
    }
}
