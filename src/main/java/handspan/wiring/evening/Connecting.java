package handspan.wiring.evening;

import handspan.instrument.line.CommaRule;
import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.survey.ChannelGuess;
import handspan.instrument.survey.FoundHands;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.wiring.Heard;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.SessionLog;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.SwitchedOut;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Opens an evening's instrument and finds out which number is which hand. */
public final class Connecting {
    private static final long ENOUGH_READINGS = 60;

    private final EveningState state;
    private final Turns turns;
    private final SoundOut sound;
    private final HoldTaking holds;
    private final TakeKeeping takes;
    private final SensorJudging judging;
    private final SessionLog log;
    private final Supplier<Consumer<Snapshot>> watchers;

    /**
     * Of an evening.
     *
     * @param watchers one for each instrument that is opened; shown what it tells, by the thread that follows it
     */
    Connecting(
            EveningState state,
            Turns turns,
            SoundOut sound,
            HoldTaking holds,
            TakeKeeping takes,
            SensorJudging judging,
            SessionLog log,
            Supplier<Consumer<Snapshot>> watchers) {
        this.state = state;
        this.turns = turns;
        this.sound = sound;
        this.holds = holds;
        this.takes = takes;
        this.judging = judging;
        this.log = log;
        this.watchers = watchers;
    }

    /** Looks for serial ports, without opening any. */
    public void lookForPorts() {
        turns.add("looking for ports", state::arrivalTrouble, () -> {
            var found = Rigs.ports(false);
            state.change(seen -> seen.with(seen.arrival().with(found)));
        });
    }

    /** Opens a source in place of the one that is open, and watches it. */
    public void open(Source source) {
        open(source, state.view().arrival().options());
    }

    /** Opens it in a certain way. */
    public void open(Source source, SourceOptions options) {
        turns.add("opening " + source.text(), state::arrivalTrouble, () -> {
            letGo();
            state.change(seen -> seen.with(seen.arrival().opening(source, options))
                    .with(seen.taking().making(Optional.empty(), "")));
            if (source.kind() == Source.Kind.SIMULATION) {
                // an unknown simulation is said before anything is opened
                Instrument told = InstrumentFinder.ofSimulation(source.name());
                know(told, true, List.of("a simulated instrument: which number is which hand is known"));
            }
            SwitchedOut out = new SwitchedOut();
            Rig rig = log.following(
                    Rigs.openWith(source, options.staying(true), null, List.of(out), takes.socket()), source.text());
            OpenInstrument opened =
                    new OpenInstrument(rig, options.byTheClock(source), out, watchers.get(), state::arrivalTrouble);
            state.opened(opened);
            opened.submit(new Command.Watch());
            opened.begin();
        });
    }

    /** Opens the next source at another link speed; {@link SourceOptions#AUTO} to find it. */
    public void speed(int baud) {
        state.change(
                seen -> seen.with(seen.arrival().at(seen.arrival().options().at(baud))));
    }

    /** Opens the same source, knowing what a comma between digits stands for. */
    public void reopenWith(CommaRule rule) {
        Arrival arrival = state.view().arrival();
        arrival.source().ifPresent(source -> open(source, arrival.options().with(rule)));
    }

    /** Fades if it plays, and closes the source. */
    public void leave() {
        turns.add("closing", state::arrivalTrouble, () -> {
            letGo();
            state.change(seen -> seen.with(seen.arrival().closed()));
        });
    }

    /** Fades if it plays, and lets go of the instrument; returns when that is done. */
    void letGo() {
        sound.endPlaying();
        state.instrument().ifPresent(instrument -> {
            instrument.close();
            state.opened(null);
        });
        takes.end();
        holds.letGo();
        judging.letGo();
    }

    // ---- which number is which hand ----

    /** Asks for no hand, the one, the other, and finds which number follows which. */
    public void findHands() {
        state.order(new Command.FindHands());
    }

    /**
     * Says which number is which hand.
     *
     * @param pitch as on the command line, {@code CHANNEL:KIND[:UNIT]}
     * @param level likewise; empty for none
     */
    public void say(String pitch, String level) {
        try {
            int chosen = state.view().arrival().options().baud();
            Instrument said = InstrumentFinder.named(
                    name(),
                    chosen == SourceOptions.AUTO ? Instrument.USUAL_BAUD : chosen,
                    ChannelSpec.parse(pitch),
                    level.isEmpty() ? null : ChannelSpec.parse(level),
                    Instrument.USUAL_REFERENCE_VOLTS);
            know(said, true, List.of("as you said"));
            state.arrivalTrouble("");
        } catch (IllegalArgumentException e) {
            state.arrivalTrouble(String.valueOf(e.getMessage()));
        }
    }

    /** Takes a guess by what the numbers look like, until more is known. */
    void propose(Snapshot snapshot, ActivityView.Watching watching) {
        if (state.view().arrival().instrument().isPresent()
                || snapshot.readings() < ENOUGH_READINGS
                || snapshot.shape().isEmpty()) {
            return;
        }
        Heard heard = new Heard(snapshot.shape().get(), watching.guesses());
        InstrumentFinder.proposed(Instrument.USUAL_NAME, baud(), Instrument.USUAL_REFERENCE_VOLTS, heard)
                .ifPresent(found -> know(found.instrument(), isSure(watching.guesses()), found.remarks()));
    }

    private static boolean isSure(List<ChannelGuess> guesses) {
        return guesses.stream().noneMatch(guess -> guess.nature() == LineShape.Nature.LIVE && !guess.sure());
    }

    /** Takes what the moving hands have shown. */
    void take(FoundHands found) {
        state.order(new Command.Watch());
        if (found.pitch().isEmpty()) {
            state.arrivalTrouble("no number followed the pitch hand: move it slowly, 10 to 50 cm over its sensor, all"
                    + " the time; and look at the sensor's wires");
            return;
        }
        know(
                InstrumentFinder.named(
                        name(),
                        baud(),
                        found.pitch().get().spec(),
                        found.level().map(ChannelGuess::spec).orElse(null),
                        Instrument.USUAL_REFERENCE_VOLTS),
                true,
                List.of("the numbers followed the hands"));
        state.arrivalTrouble("");
    }

    private void know(Instrument instrument, boolean sure, List<String> why) {
        state.change(seen -> seen.with(seen.arrival().knowing(instrument, sure, why)));
    }

    private String name() {
        return state.view().arrival().instrument().map(Instrument::name).orElse(Instrument.USUAL_NAME);
    }

    private int baud() {
        int found = state.instrument()
                .map(instrument -> instrument.rig().facts().baud())
                .orElse(0);
        int chosen = state.view().arrival().options().baud();
        return found > 0 ? found : chosen == SourceOptions.AUTO ? Instrument.USUAL_BAUD : chosen;
    }
}
