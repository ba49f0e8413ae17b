package handspan.wiring.evening;

import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.music.send.SendTarget;
import handspan.profile.ProfileFolder;
import handspan.wiring.Cues;
import handspan.wiring.EventReader;
import handspan.wiring.NewRoom;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One instrument's evening, from plugging in to playing: its parts open and close what they need, lead through holds,
 * keep the room that is worked on, open the ways out. Every call returns at once; what takes time is done by one thread
 * in the order of the calls, and shows in the {@link #view}. What can be ordered of an instrument goes to it as a
 * {@link Command}.
 */
public final class Evening implements AutoCloseable {
    private final EveningState state;
    private final Turns turns;
    private final SessionLog log;
    private final Cues cues;
    private final SoundOut sound;
    private final RoomInHand room;
    private final Shelf shelf;
    private final HoldTaking holds;
    private final TakeKeeping takes;
    private final SensorJudging judging;
    private final NotePractice practice;
    private final Connecting connecting;

    /**
     * An evening that begins with nothing.
     *
     * @param folder of the rooms
     * @param log where what happens is written down
     * @param cues signals for whoever has the hands in the air; closed with this
     * @param options how sources are opened unless another way is chosen
     */
    public Evening(ProfileFolder folder, SessionLog log, Cues cues, SourceOptions options) {
        this.log = log;
        this.cues = cues;
        this.state = new EveningState(new EveningView(
                "",
                new Arrival(List.of(), false, Optional.empty(), options, Optional.empty(), false, List.of(), ""),
                new Keeping(List.of(), "tonight", Optional.empty(), false, "", ""),
                Measuring.nothing(),
                new Sounding(
                        List.of(SendTarget.parse(NewRoom.USUAL_TARGET)), Optional.empty(), List.of(), false, false, ""),
                Thought.none(),
                Optional.empty()));
        this.turns = new Turns(state);
        this.sound = new SoundOut(state, turns);
        this.room = new RoomInHand(state, turns, sound, folder);
        this.shelf = new Shelf(state, turns, sound, room, folder);
        this.holds = new HoldTaking(state, turns, sound, room, cues);
        this.takes = new TakeKeeping(state, turns, folder.beside("takes"));
        this.judging = new SensorJudging(state, turns, sound, log);
        this.practice = new NotePractice(state, sound, room, cues);
        this.connecting = new Connecting(state, turns, sound, holds, takes, judging, log, this::watcher);
    }

    /** How all stands now. May be called by any thread, as often as a screen is drawn. */
    public EveningView view() {
        return practice.standing(takes.standing(sound.standing(state.view())))
                .with(state.instrument().map(OpenInstrument::snapshot));
    }

    /** The instrument and how it is connected. */
    public Connecting connecting() {
        return connecting;
    }

    /** Holds, for a room or a look at one. */
    public HoldTaking holds() {
        return holds;
    }

    /** The rooms that are kept. */
    public Shelf shelf() {
        return shelf;
    }

    /** The room that is worked on. */
    public RoomInHand room() {
        return room;
    }

    /** Where sound goes. */
    public SoundOut sound() {
        return sound;
    }

    /** Recordings: one that runs in place of a board, one that is made. */
    public TakeKeeping takes() {
        return takes;
    }

    /** Whether the sensors are well. */
    public SensorJudging judging() {
        return judging;
    }

    /** Notes to be found. */
    public NotePractice practice() {
        return practice;
    }

    /** Of an instrument, whose events count from its opening. */
    private Consumer<Snapshot> watcher() {
        EventReader events = new EventReader();
        return snapshot -> look(snapshot, events.fresh(snapshot));
    }

    /** What the open instrument tells; called by the thread that follows it. */
    private void look(Snapshot snapshot, List<Event> fresh) {
        for (Event event : fresh) {
            cues.onEvent(event);
            sound.onTuning(event, snapshot);
            if (event.what() instanceof Event.Refused refused) {
                refused(refused.reason());
            } else if (event.what() instanceof Event.Failed failed) {
                refused(failed.reason() + ": please report it with what you did");
            }
        }
        judging.look(snapshot);
        practice.look(snapshot, fresh);
        if (snapshot.activity() instanceof ActivityView.Watching watching) {
            connecting.propose(snapshot, watching);
        } else if (snapshot.activity() instanceof ActivityView.FindingHands finding
                && finding.found().isPresent()) {
            connecting.take(finding.found().get());
        } else if (snapshot.activity() instanceof ActivityView.Calibrating calibrating && snapshot.done()) {
            holds.conclude(snapshot, calibrating);
        }
    }

    /** Tells a player of a mistake in this program, without what programmers read: that goes into the log. */
    public void onMistake(Throwable mistake) {
        StringWriter trace = new StringWriter();
        mistake.printStackTrace(new PrintWriter(trace));
        log.note(trace.toString());
        refused("a mistake in this program: " + mistake + "; please report it with what you did");
    }

    /** Said where whoever asked is looking. */
    private void refused(String reason) {
        if (sound.desk().isPresent()) {
            state.soundTrouble(reason);
        } else if (state.view().surveyed().running()) {
            judging.refused(reason);
        } else if (state.view().measuring().task().isPresent()) {
            state.measuringTrouble(reason);
        } else {
            state.arrivalTrouble(reason);
        }
    }

    /** Fades if it plays, then lets go of all; afterwards something else is done, by the evening's thread. */
    public void end(Runnable afterwards) {
        sound.silence();
        turns.add("ending", words -> {}, () -> {
            sound.endTrial();
            connecting.letGo();
            cues.close();
            afterwards.run();
        });
        turns.end();
    }

    @Override
    public void close() {
        if (!turns.isEnding()) {
            end(() -> {});
        }
        turns.await();
    }
}
