package handspan.wiring;

import handspan.instrument.survey.WavePart;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.Replay;
import handspan.music.practice.WantedNote;
import handspan.outside.simulate.Cue;
import handspan.outside.simulate.PassageNote;
import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedInstrument;
import handspan.outside.simulate.SimulatedInstruments;
import handspan.outside.simulate.SimulatedPlayer;
import handspan.outside.simulate.Stage;
import handspan.room.HandRole;
import handspan.room.StepKind;
import handspan.room.calibrate.Step;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * A simulated instrument in its player's hands: does what commands and calibration steps ask of a player. Called by the
 * thread that gives commands and by the path thread; its bytes are read by one thread.
 */
public final class Simulation implements Replay.TimedBytes {
    private static final int NOTES = 400;
    private static final double LOWEST_HEARD = 57;
    private static final double HEARD_SPAN = 24;
    private static final double WAVE_HZ = 0.7;
    private static final double WAVE_SECONDS = 7;

    private final SimulatedInstrument instrument;

    Simulation(String name, long seed, long startNanos) {
        this.instrument = SimulatedInstruments.create(name, seed, startNanos);
    }

    /** The instrument: its true hands among other things. */
    SimulatedInstrument instrument() {
        return instrument;
    }

    @Override
    public long nextNanos() {
        return instrument.board().nextArrivalNanos();
    }

    @Override
    public byte[] next() {
        long now = nextNanos();
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        do {
            chunk.writeBytes(instrument.board().nextLine());
        } while (instrument.board().settings().timerMs() > 0 && nextNanos() == now);
        return chunk.toByteArray();
    }

    /** A command has been given: what a player would do. */
    void onCommand(Command command, long timeNanos) {
        SimulatedPlayer player = instrument.player();
        if (command instanceof Command.Survey) {
            player.react(
                    Cue.at(
                            Cue.Kind.PLACE,
                            PlayerHand.PITCH,
                            player.stage(PlayerHand.PITCH).midMm()),
                    timeNanos);
            player.react(Cue.of(Cue.Kind.MID, PlayerHand.LEVEL), timeNanos);
        } else if (command instanceof Command.Practise) {
            player.react(Cue.of(Cue.Kind.MID, PlayerHand.LEVEL), timeNanos);
        } else if (command instanceof Command.Play || command instanceof Command.Watch) {
            player.playPassage(player.improvise(NOTES), timeNanos);
        }
    }

    /**
     * Plays given places instead of improvising; the pitch hand stays at the last one.
     *
     * @param places01 between the true places of near and far
     * @param holdSeconds on each but the last
     * @param lastSeconds on the last
     * @param timeNanos when it begins
     * @return when it is over
     */
    public long play(List<Double> places01, double holdSeconds, double lastSeconds, long timeNanos) {
        List<PassageNote> notes = new ArrayList<>();
        for (int i = 0; i < places01.size(); i++) {
            notes.add(new PassageNote(mm(places01.get(i)), i == places01.size() - 1 ? lastSeconds : holdSeconds));
        }
        return instrument.player().playPassage(notes, timeNanos);
    }

    /** Holds the pitch hand still at a place, the level hand away from its sensor. */
    public void holdStill(double place01, long timeNanos) {
        instrument.player().react(Cue.at(Cue.Kind.PLACE, PlayerHand.PITCH, mm(place01)), timeNanos);
        instrument.player().react(Cue.of(Cue.Kind.OPEN, PlayerHand.LEVEL), timeNanos);
    }

    /** Takes the pitch hand away. */
    public void leave(long timeNanos) {
        instrument.player().react(Cue.of(Cue.Kind.REST, PlayerHand.PITCH), timeNanos);
    }

    /** Moves the pitch hand to and fro for some seconds. */
    public void wave(long timeNanos) {
        wave(PlayerHand.PITCH, timeNanos);
    }

    /** Whether the pitch hand is there at all. */
    public boolean isHandThere(long timeNanos) {
        return instrument.player().hand(PlayerHand.PITCH).presentAt(timeNanos);
    }

    /** True distance of the pitch hand, mm. */
    public double trueMm(long timeNanos) {
        return instrument.player().hand(PlayerHand.PITCH).trueMm(timeNanos);
    }

    /** Distance that the player means to hold, mm: without tremor and wander. */
    public double meantMm(long timeNanos) {
        return instrument.player().hand(PlayerHand.PITCH).intendedMm(timeNanos);
    }

    /** Place of a true distance between the true places of near and far, not held to 0..1. */
    public double truePlace(double mm) {
        Stage stage = instrument.player().stage(PlayerHand.PITCH);
        return (mm - stage.nearMm()) / (stage.farMm() - stage.nearMm());
    }

    private double mm(double place01) {
        Stage stage = instrument.player().stage(PlayerHand.PITCH);
        return stage.nearMm() + place01 * (stage.farMm() - stage.nearMm());
    }

    /** Something has happened: a player follows the calibration's steps. */
    void onEvent(Event event) {
        if (event.what() instanceof Event.WaveAsked asked) {
            instrument.player().react(Cue.of(Cue.Kind.REST, PlayerHand.PITCH), event.timeNanos());
            instrument.player().react(Cue.of(Cue.Kind.REST, PlayerHand.LEVEL), event.timeNanos());
            if (asked.part() != WavePart.AWAY) {
                wave(asked.part() == WavePart.PITCH ? PlayerHand.PITCH : PlayerHand.LEVEL, event.timeNanos());
            }
        } else if (event.what() instanceof Event.NoteAsked asked) {
            reach(asked.note(), event.timeNanos());
        } else if (event.what() instanceof Event.NoteNotYet notYet) {
            // what a still hand is told is that it has not moved: it goes on
            reach(notYet.note(), event.timeNanos());
        } else if (event.what() instanceof Event.Asked asked) {
            instrument.player().react(cue(asked.step()), event.timeNanos());
            if (asked.step().kind() == StepKind.REST) {
                instrument.player().react(Cue.of(Cue.Kind.REST, PlayerHand.LEVEL), event.timeNanos());
            }
        }
    }

    /** From now on the player reaches better, or worse: rms error of unaided reaches, 0..100 mm. */
    public void aimWithin(double rmsMm) {
        instrument.player().aimWithin(rmsMm);
    }

    /** This player has learned where the notes lie, but that does not bring a hand exactly there. */
    private void reach(WantedNote note, long timeNanos) {
        Cue cue = Cue.at(Cue.Kind.REACH, PlayerHand.PITCH, mm(note.place01()));
        instrument.player().react(cue, timeNanos);
    }

    private void wave(PlayerHand which, long timeNanos) {
        Stage stage = instrument.player().stage(which);
        double centreMm = (stage.nearMm() + stage.farMm()) / 2;
        double amplitudeMm = Math.abs(stage.farMm() - stage.nearMm()) / 2;
        instrument.player().hand(which).sway(centreMm, amplitudeMm, WAVE_HZ, timeNanos, WAVE_SECONDS);
    }

    private Cue cue(Step step) {
        PlayerHand hand = step.hand() == HandRole.PITCH ? PlayerHand.PITCH : PlayerHand.LEVEL;
        Cue.Kind kind = switch (step.kind()) {
            case REST -> Cue.Kind.REST;
            case NEAR -> Cue.Kind.NEAR;
            case FAR -> Cue.Kind.FAR;
            case OPEN -> Cue.Kind.OPEN;
            case MID -> Cue.Kind.MID;
            case COVERED -> Cue.Kind.COVERED;
            case RULER -> Cue.Kind.RULER;
            case NOTE -> Cue.Kind.PLACE;
            case AIM -> Cue.Kind.REACH;
        };
        return kind.hasDistance() ? Cue.at(kind, hand, placeMm(step)) : Cue.of(kind, hand);
    }

    /** Where the pitch hand truly means to go in a step that names a place, or reaches for one. */
    private double placeMm(Step step) {
        Stage stage = instrument.player().stage(PlayerHand.PITCH);
        return switch (step.reach().map(Step.Reach::target).orElse(step.kind())) {
            case NEAR -> stage.nearMm();
            case MID -> stage.midMm();
            case FAR -> stage.farMm();
            case RULER -> step.mm().orElseThrow();
            // this player hears two octaves from A3 over the whole stage
            case NOTE -> mm((step.key().orElseThrow() - LOWEST_HEARD) / HEARD_SPAN);
            case REST, OPEN, COVERED, AIM -> throw new IllegalStateException("step " + step.id() + " names no place");
        };
    }
}
