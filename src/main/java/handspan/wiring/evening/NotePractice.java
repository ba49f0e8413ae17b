package handspan.wiring.evening;

import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.music.practice.Attempt;
import handspan.music.practice.Course;
import handspan.music.practice.CourseWish;
import handspan.music.practice.PracticeInWords;
import handspan.music.practice.PracticeRun;
import handspan.music.tuning.Tuning;
import handspan.profile.Player;
import handspan.profile.PlayerFolder;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Aim;
import handspan.room.calibrate.AimFit;
import handspan.wiring.Cues;
import handspan.wiring.PracticeOutcome;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Practice in an evening: notes are asked for while the instrument plays, and a run is kept when it ends. */
public final class NotePractice {
    private static final double NOTE_S = 20;

    private final EveningState state;
    private final SoundOut sound;
    private final RoomInHand room;
    private final Cues cues;
    private final AtomicReference<Run> run = new AtomicReference<>();
    private volatile @Nullable Double wantedHz;

    /** What is asked for, until it is told and kept. */
    private record Run(CourseWish wish, String player, String room, String tuning) {}

    NotePractice(EveningState state, SoundOut sound, RoomInHand room, Cues cues) {
        this.state = state;
        this.sound = sound;
        this.room = room;
        this.cues = cues;
        sound.beforeEnd(this::ending);
    }

    /** A view that also tells whether notes can be heard. */
    EveningView standing(EveningView seen) {
        return seen.with(seen.practice().heard(cues.sound()));
    }

    /** Changes what the next run asks for. */
    public void want(UnaryOperator<CourseWish> changed) {
        state.change(seen -> seen.with(
                seen.practice().wanting(changed.apply(seen.practice().wish())).troubled("")));
    }

    /** Says under whose name runs are kept; empty for none. */
    public void of(String player) {
        state.change(seen -> seen.with(seen.practice().of(player).troubled("")));
    }

    /** Plays the tuning that is worked on, muted at first, and asks for its notes. What plays ends before. */
    public void begin() {
        sound.begin("getting ready to practise", this::notBegun, () -> {
            EveningView seen = state.view();
            if (isOf(seen, Source.Kind.TAKE)) {
                throw new IllegalArgumentException(
                        "a recording can't look for notes: open a board, or a simulated instrument");
            }
            RoomProfile profile = state.needProfile();
            Tuning tuning =
                    seen.keeping().edited().orElseGet(() -> profile.tunings().get(0));
            Practice practice = seen.practice();
            Player player = player(practice.player());
            String name = profile.room().name();
            Course course = practice.wish().course(tuning, name, player.runs(), seed(seen, player.runs()));
            run.set(new Run(practice.wish(), player.name(), name, tuning.name()));
            state.change(now -> now.with(now.practice().begun()));
            return new SoundOut.Part(tuning, play -> new Command.Practise(play, course, NOTE_S));
        });
    }

    private void notBegun(String why) {
        run.set(null);
        state.change(seen -> seen.with(seen.practice().ended().troubled(why)));
    }

    /** The player as kept so far; one of no name where runs are not kept. */
    private Player player(String name) throws ProfileException {
        return name.isEmpty() ? new Player("", List.of()) : new PlayerFolder(room.folder()).load(name);
    }

    /** Each run of a player goes another way; those of a simulation can be had again. */
    private static long seed(EveningView seen, List<PracticeRun> runs) {
        return isOf(seen, Source.Kind.SIMULATION) ? runs.size() : Rigs.CLOCK.getAsLong();
    }

    private static boolean isOf(EveningView seen, Source.Kind kind) {
        return seen.arrival().source().filter(source -> source.kind() == kind).isPresent();
    }

    /** Sounds the note that is asked for once more. Never waits. */
    public void hearAgain() {
        Double hz = wantedHz;
        if (hz != null) {
            cues.note(hz);
        }
    }

    /** What the open instrument tells; called by the thread that follows it. */
    void look(Snapshot snapshot, List<Event> fresh) {
        Run going = run.get();
        if (going == null || !(snapshot.activity() instanceof ActivityView.Practising practising)) {
            return;
        }
        for (Event event : fresh) {
            if (event.what() instanceof Event.NoteAsked asked
                    && going.wish().asking().sounds()) {
                wantedHz = asked.note().hz();
                hearAgain();
            }
        }
        if (practising.over()) {
            conclude(practising.attempts());
        }
    }

    /** A run that ends early is kept as far as it has come. */
    private void ending(Snapshot snapshot) {
        if (snapshot.activity() instanceof ActivityView.Practising practising) {
            conclude(practising.attempts());
        }
        run.set(null);
        wantedHz = null;
        state.change(seen -> seen.with(seen.practice().ended()));
    }

    /** Once for each run. */
    private void conclude(List<Attempt> attempts) {
        Run done = run.getAndSet(null);
        if (done == null || attempts.isEmpty()) {
            return;
        }
        PracticeOutcome outcome = PracticeOutcome.of(done.wish(), attempts);
        List<String> words = new ArrayList<>(PracticeInWords.of(outcome.tally()));
        outcome.aim().map(AimFit::words).ifPresent(aim -> words.add("your aim: " + aim));
        outcome.keptAim(false).ifPresent(aim -> words.add(aimed(aim)));
        if (!done.player().isEmpty()) {
            try {
                words.addAll(kept(done, outcome));
            } catch (ProfileException e) {
                trouble(String.valueOf(e.getMessage()));
            }
        }
        state.change(
                seen -> seen.with(seen.practice().told(words, outcome.tally().notes())));
    }

    private String aimed(Aim aim) {
        Optional<String> refusal = room.change("your aim was measured", profile -> profile.with(aim));
        return refusal.orElse("the room takes it in place of the aim it had, once it is saved");
    }

    private List<String> kept(Run done, PracticeOutcome outcome) throws ProfileException {
        PlayerFolder players = new PlayerFolder(room.folder());
        PracticeRun played = outcome.run(Rigs.dateAndTime(), done.room(), done.tuning());
        List<String> words = new ArrayList<>();
        played.lastLike(players.load(done.player()).runs())
                .map(played::comparedWith)
                .filter(compared -> !compared.isEmpty())
                .ifPresent(words::add);
        Player more = players.add(done.player(), played);
        words.add("run " + more.runs().size() + " of " + more.name() + " is kept");
        return words;
    }

    private void trouble(String words) {
        state.change(seen -> seen.with(seen.practice().troubled(words)));
    }
}
