package handspan.wiring.evening;

import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.PlayDesk;
import handspan.live.session.Snapshot;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.budget.StepsBudget;
import handspan.wiring.Listening;
import handspan.wiring.Rigs;
import handspan.wiring.Targets;
import handspan.wiring.WaysOut;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Where sound goes in an evening: is the patch hearing, and playing, which starts muted. */
public final class SoundOut {
    private static final long FADE_OUT_NANOS = 3 * Nanos.PER_SECOND;
    private static final long LOOK_NANOS = 2 * Nanos.PER_MS;

    private final EveningState state;
    private final Turns turns;
    private final PatchTrial trial;
    private volatile @Nullable WaysOut ways;
    private volatile @Nullable PlayDesk desk;
    private Consumer<Snapshot> ending = snapshot -> {};

    SoundOut(EveningState state, Turns turns) {
        this.state = state;
        this.turns = turns;
        this.trial = new PatchTrial(state);
    }

    /** A view that also tells how the desk is set and how what is open stands. */
    EveningView standing(EveningView seen) {
        WaysOut out = ways;
        List<TargetStatus> status = out != null
                ? out.status()
                : trial.status().orElse(seen.sounding().targets());
        return seen.with(seen.sounding().standing(desk().map(PlayDesk::setting), status));
    }

    /** What can be set while it plays; empty when it does not. */
    public Optional<PlayDesk> desk() {
        return Optional.ofNullable(desk);
    }

    /** Tells a player why something could not be set while it plays. */
    public void refuse(String reason) {
        state.soundTrouble("no further: " + reason);
    }

    /** Plays A4, swelling and dying away, to the targets: is the patch hearing? Not while it plays. */
    public void tryPatch() {
        if (desk == null) {
            trial.begin();
        }
    }

    /** Fades the sound for trying; returns when it is over. */
    void endTrial() {
        trial.end();
    }

    /**
     * What shall be played.
     *
     * @param tuning to begin with
     * @param activity made of playing it
     */
    record Part(Tuning tuning, Function<Command.Play, Command> activity) {}

    /** Tells what shall be played, once what played before has ended. */
    interface Choice {
        Part made() throws ProfileException;
    }

    /** Plays the room, muted at first; nothing new where it plays already. */
    public void play() {
        turns.add("getting ready to play", state::soundTrouble, () -> {
            if (ways == null) {
                open(new Part(state.needProfile().tunings().get(0), play -> play));
            }
        });
    }

    /** What is shown the last of what played, each time before it ends; set once, before anything plays. */
    void beforeEnd(Consumer<Snapshot> last) {
        ending = last;
    }

    /**
     * Plays the room, muted at first, in the place of what plays.
     *
     * @param words shown meanwhile
     * @param trouble told what went wrong
     */
    void begin(String words, Consumer<String> trouble, Choice choice) {
        silence();
        turns.add(words, trouble, () -> {
            endPlaying();
            open(choice.made());
        });
    }

    private void open(Part part) throws IOException {
        endTrial();
        RoomProfile profile = state.needProfile();
        OpenInstrument instrument = state.needInstrument();
        Optional<String> refusal = StepsBudget.refusal(profile.room(), part.tuning());
        if (refusal.isPresent()) {
            throw new IllegalArgumentException(refusal.get());
        }
        WaysOut out =
                new WaysOut(Targets.open(profile.send()), Listening.open(null, false, instrument.isByTheClock()), null);
        instrument.out().to(out.all());
        ways = out;
        state.soundTrouble("");
        Command.Play play = new Command.Play(profile, part.tuning(), PathSettings.USUAL);
        instrument.submit(part.activity().apply(play));
        // only now: what is turned at the desk must not come before what it turns
        desk = new PlayDesk(profile.tunings(), part.tuning(), true, state::order);
    }

    /**
     * Has what plays follow tunings that were changed; what was added to it at the desk stays.
     *
     * @param tunings as they are now
     * @param renamed what is made of a name from before
     */
    void retune(List<Tuning> tunings, UnaryOperator<String> renamed) {
        PlayDesk turned = desk;
        if (turned != null) {
            turned.follow(tunings, renamed.apply(turned.setting().tuning()));
        }
    }

    /** Has what plays follow a level curve that was changed. */
    void relevel(LevelCurve curve) {
        if (desk != null) {
            state.order(new Command.Level(curve));
        }
    }

    /** Closes all sound at once, by the fade. Never waits. */
    public void silence() {
        desk().ifPresent(turned -> turned.mute(true));
        trial.stop();
    }

    /** Fades and ends playing. */
    public void stopPlaying() {
        silence();
        turns.add("fading", state::soundTrouble, this::endPlaying);
    }

    /** Fades and lets go of the ways out; returns when that is done. */
    void endPlaying() {
        WaysOut out = ways;
        OpenInstrument instrument = state.instrument().orElse(null);
        if (out == null || instrument == null) {
            return;
        }
        instrument.submit(new Command.Stop());
        long until = Rigs.CLOCK.getAsLong() + FADE_OUT_NANOS;
        while (isSounding(instrument.snapshot()) && Rigs.CLOCK.getAsLong() < until) {
            LockSupport.parkNanos(LOOK_NANOS);
        }
        ending.accept(instrument.snapshot());
        instrument.out().to(List.of());
        desk = null;
        ways = null;
        out.close();
        instrument.submit(new Command.Watch());
    }

    private static boolean isSounding(Snapshot snapshot) {
        return snapshot.activity()
                .played()
                .filter(playing -> !playing.stopped())
                .isPresent();
    }

    /** Takes note of what became of a tuning. */
    void onTuning(Event event, Snapshot snapshot) {
        if (event.what() instanceof Event.TuningRefused refused) {
            snapshot.activity()
                    .played()
                    .ifPresent(playing -> desk().ifPresent(turned -> turned.onRefused(playing.tuning())));
            state.soundTrouble("tuning '" + refused.tuning() + "' stays out: " + refused.reason());
        } else if (event.what() instanceof Event.Tuned) {
            state.soundTrouble("");
        }
    }
}
