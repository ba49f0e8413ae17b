package handspan.wiring.evening;

import handspan.instrument.sensor.Instrument;
import handspan.live.path.TargetStatus;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.ReferencePitch;
import handspan.profile.RoomProfile;
import handspan.wiring.TryRun;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Is the patch hearing? A sound without an instrument, by a thread of its own; one at a time. */
final class PatchTrial {
    private final EveningState state;
    private volatile @Nullable TryRun run;

    PatchTrial(EveningState state) {
        this.state = state;
    }

    /** Plays A4, swelling and dying away, to the targets; nothing new where it does already. */
    void begin() {
        if (run != null) {
            return;
        }
        EveningView seen = state.view();
        try {
            Optional<RoomProfile> profile = seen.keeping().profile();
            String name = seen.arrival().instrument().map(Instrument::name).orElse(Instrument.USUAL_NAME);
            SendPlan plan = profile.map(RoomProfile::send)
                    .orElseGet(() -> SendPlan.byDefault(name, List.of()))
                    .to(seen.sounding().wanted());
            TryRun begun = TryRun.open(
                    profile.map(RoomProfile::level).orElse(LevelCurve.USUAL),
                    profile.map(kept -> kept.tunings().get(0).reference()).orElse(ReferencePitch.A440),
                    plan);
            run = begun;
            state.change(now -> now.with(now.sounding()
                    .trying(true, now.sounding().tried(), List.of())
                    .troubled("")));
            Thread thread = new Thread(() -> play(begun), "trying the patch");
            thread.setDaemon(true);
            thread.start();
        } catch (IllegalArgumentException e) {
            state.soundTrouble(String.valueOf(e.getMessage()));
        }
    }

    private void play(TryRun begun) {
        begun.play();
        List<TargetStatus> status = begun.targets().status();
        begun.close();
        run = null;
        state.change(seen -> seen.with(seen.sounding().trying(false, true, status)));
    }

    /** How its targets stand; empty when it does not sound. */
    Optional<List<TargetStatus>> status() {
        return Optional.ofNullable(run).map(sounding -> sounding.targets().status());
    }

    /** Fades it. Never waits. */
    void stop() {
        TryRun sounding = run;
        if (sounding != null) {
            sounding.stop();
        }
    }

    /** Fades it; returns when it is over. */
    void end() {
        TryRun sounding = run;
        if (sounding != null) {
            sounding.close();
        }
    }
}
