package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.music.practice.Attempt;
import handspan.music.practice.CourseWish;
import handspan.music.practice.PracticeInWords;
import handspan.music.practice.PracticeRun;
import handspan.music.practice.Tally;
import handspan.music.tuning.Tuning;
import handspan.profile.Player;
import handspan.profile.PlayerFolder;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.room.Aim;
import handspan.room.calibrate.AimFit;
import handspan.room.calibrate.CalibrationPlan;
import handspan.wiring.PracticeOutcome;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The end of a run of practice: what it was worth, what is kept of it. */
final class PracticeEnd {
    private final Talk talk;
    private final ProfileFolder folder;
    private final String room;
    private final Tuning tuning;
    private final CourseWish wish;
    private final boolean saveAim;
    private final @Nullable Player player;
    private boolean kept;

    /**
     * Of a run that is still to come.
     *
     * @param talk to whom it is told
     * @param folder of the rooms
     * @param played the room and the tuning that is played
     * @param wish what was wanted
     * @param saveAim whether the aim is to be kept in the room, by however few reaches
     * @param player to whom the run belongs; null for none
     */
    PracticeEnd(
            Talk talk,
            ProfileFolder folder,
            Command.Play played,
            CourseWish wish,
            boolean saveAim,
            @Nullable Player player) {
        this.talk = talk;
        this.folder = folder;
        this.room = played.profile().room().name();
        this.tuning = played.tuning();
        this.wish = wish;
        this.saveAim = saveAim;
        this.player = player;
    }

    /**
     * Tells and keeps.
     *
     * @param exit what went wrong; done where nothing did
     * @return the exit code: a "no" where no note was answered
     */
    int of(List<Attempt> attempts, List<TargetStatus> targets, int exit) throws ProfileException {
        PracticeOutcome outcome = PracticeOutcome.of(wish, attempts);
        Tally tally = outcome.tally();
        int code = exit == Exit.DONE && tally.asked() == 0 ? Exit.NO : exit;
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("room", room);
        result.put("tuning", tuning.name());
        result.put("ask", wish.asking().word());
        result.put("help", wish.helps());
        PracticeView.into(result, tally);
        PracticeInWords.of(tally).forEach(talk::say);
        aim(result, outcome);
        keep(result, outcome);
        PracticeView.notes(result, tally);
        result.set("targets", JsonViews.targets(targets));
        result.put("exitCode", code);
        talk.object(result);
        return code;
    }

    /** Keeps what there is of a run that a signal ends; the room stays as it was. */
    void onSignal(List<Attempt> attempts) {
        try {
            keep(Talk.node(), PracticeOutcome.of(wish, attempts));
        } catch (ProfileException e) {
            talk.warn(String.valueOf(e.getMessage()));
        }
    }

    private void aim(ObjectNode result, PracticeOutcome outcome) throws ProfileException {
        Optional<AimFit> fit = outcome.aim();
        boolean aided = wish.helps();
        Optional<Aim> keepable = outcome.keptAim(saveAim);
        JsonViews.number(result, "aimMm", fit.map(aim -> aim.aim().mm()).orElse(Double.NaN));
        JsonViews.number(
                result,
                "aimUncertaintyMm",
                fit.map(AimFit::standardUncertaintyMm).orElse(Double.NaN));
        result.put("aimReaches", fit.map(aim -> aim.aim().reaches()).orElse(0));
        result.put("aimAided", aided);
        result.put("aimSaved", keepable.isPresent());
        if (fit.isEmpty()) {
            talk.say("your aim: " + AimFit.FEWEST + " notes or more have to be reached to tell it");
            return;
        }
        talk.say((aided ? "your aim with help: " : "your aim: ") + fit.get().words());
        if (keepable.isPresent()) {
            save(keepable.get());
        } else if (!aided) {
            talk.say("the room's aim stays as it was: " + CalibrationPlan.REACHES
                    + " reaches are needed, or say --save-aim");
        }
    }

    private void save(Aim aim) throws ProfileException {
        Aim before = folder.load(room).room().aim();
        folder.save(folder.load(room).with(aim));
        talk.say("kept as the aim of room '" + room + "', for 'handspan advise' (before: " + before.words()
                + "; 'handspan rooms restore' brings it back)");
    }

    /** Once: the run's own end and a signal may come at the same time. */
    private synchronized void keep(ObjectNode result, PracticeOutcome outcome) throws ProfileException {
        Player known = player;
        result.put("player", known == null ? "" : known.name());
        result.put("compared", "");
        result.put("runs", known == null ? 0 : known.runs().size());
        if (known == null || kept || outcome.tally().asked() == 0) {
            return;
        }
        kept = true;
        PracticeRun run = outcome.run(Takes.now(), room, tuning.name());
        String words = run.lastLike(known.runs()).map(run::comparedWith).orElse("");
        if (!words.isEmpty()) {
            talk.say(known.name() + ": " + words);
        }
        PlayerFolder players = new PlayerFolder(folder);
        Player more = players.add(known.name(), run);
        talk.say("run " + more.runs().size() + " of " + more.name() + " is kept in " + players.fileOf(more.name()));
        result.put("compared", words);
        result.put("runs", more.runs().size());
    }
}
