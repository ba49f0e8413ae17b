package handspan.wiring.evening;

import handspan.instrument.sensor.Instrument;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.PlayDesk;
import handspan.live.session.Snapshot;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.budget.StepsBudget;
import handspan.wiring.Listening;
import handspan.wiring.Rigs;
import handspan.wiring.Targets;
import handspan.wiring.TryRun;
import handspan.wiring.WaysOut;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Where sound goes in an evening: is the patch hearing, and playing, which starts muted. */
public final class SoundOut {
    private static final long FADE_OUT_NANOS = 3 * Nanos.PER_SECOND;
    private static final long LOOK_NANOS = 2 * Nanos.PER_MS;

    private final EveningState state;
    private final Turns turns;
    private volatile @Nullable WaysOut ways;
    private volatile @Nullable PlayDesk desk;
    private volatile @Nullable TryRun trial;

    SoundOut(EveningState state, Turns turns) {
        this.state = state;
        this.turns = turns;
    }

    /** A view that also tells how the desk is set and how what is open stands. */
    EveningView standing(EveningView seen) {
        WaysOut out = ways;
        TryRun tried = trial;
        List<TargetStatus> status = out != null
                ? out.status()
                : tried != null ? tried.targets().status() : seen.sounding().targets();
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
        EveningView seen = state.view();
        if (trial != null || desk != null) {
            return;
        }
        try {
            Optional<RoomProfile> profile = seen.keeping().profile();
            String name = seen.arrival().instrument().map(Instrument::name).orElse(Instrument.USUAL_NAME);
            SendPlan plan = profile.map(RoomProfile::send)
                    .orElseGet(() -> SendPlan.byDefault(name, List.of()))
                    .to(seen.sounding().wanted());
            TryRun run = TryRun.open(
                    profile.map(RoomProfile::level).orElse(LevelCurve.USUAL),
                    profile.map(kept -> kept.tunings().get(0).reference()).orElse(ReferencePitch.A440),
                    plan);
            trial = run;
            state.change(now -> now.with(now.sounding()
                    .trying(true, now.sounding().tried(), List.of())
                    .troubled("")));
            Thread thread = new Thread(() -> play(run), "trying the patch");
            thread.setDaemon(true);
            thread.start();
        } catch (IllegalArgumentException e) {
            state.soundTrouble(String.valueOf(e.getMessage()));
        }
    }

    private void play(TryRun run) {
        run.play();
        List<TargetStatus> status = run.targets().status();
        run.close();
        trial = null;
        state.change(seen -> seen.with(seen.sounding().trying(false, true, status)));
    }

    /** Fades the sound for trying; returns when it is over. */
    void endTrial() {
        TryRun run = trial;
        if (run != null) {
            run.close();
        }
    }

    /** Plays the room, muted at first; nothing new where it plays already. */
    public void play() {
        turns.add("getting ready to play", state::soundTrouble, () -> {
            if (ways != null) {
                return;
            }
            endTrial();
            RoomProfile profile = state.needProfile();
            OpenInstrument instrument = state.needInstrument();
            Tuning tuning = profile.tunings().get(0);
            Optional<String> refusal = StepsBudget.refusal(profile.room(), tuning);
            if (refusal.isPresent()) {
                throw new IllegalArgumentException(refusal.get());
            }
            WaysOut out = new WaysOut(
                    Targets.open(profile.send()), Listening.open(null, false, instrument.isByTheClock()), null);
            instrument.out().to(out.all());
            ways = out;
            state.soundTrouble("");
            instrument.submit(new Command.Play(profile, tuning, PathSettings.USUAL));
            // only now: what is turned at the desk must not come before what it turns
            desk = new PlayDesk(profile.tunings(), tuning, true, state::order);
        });
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
        TryRun run = trial;
        if (run != null) {
            run.stop();
        }
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
        instrument.out().to(List.of());
        desk = null;
        ways = null;
        out.close();
        instrument.submit(new Command.Watch());
    }

    private static boolean isSounding(Snapshot snapshot) {
        return snapshot.activity() instanceof ActivityView.Playing playing && !playing.stopped();
    }

    /** Takes note of what became of a tuning. */
    void onTuning(Event event, Snapshot snapshot) {
        if (event.what() instanceof Event.TuningRefused refused) {
            if (snapshot.activity() instanceof ActivityView.Playing playing) {
                desk().ifPresent(turned -> turned.onRefused(playing.tuning()));
            }
            state.soundTrouble("tuning '" + refused.tuning() + "' stays out: " + refused.reason());
        } else if (event.what() instanceof Event.Tuned) {
            state.soundTrouble("");
        }
    }
}
