package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.path.TargetStatus;
import handspan.music.practice.Attempt;
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
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The end of a run of practice: what it was worth, what is kept of it.
 *
 * @param talk to whom it is told
 * @param folder of the rooms
 * @param room its name
 * @param tuning that was played
 * @param wishes how notes were asked for
 * @param saveAim whether the aim is to be kept in the room, by however few reaches
 */
record PracticeEnd(
        Talk talk, ProfileFolder folder, String room, Tuning tuning, CourseArguments wishes, boolean saveAim) {
    /**
     * Tells and keeps.
     *
     * @param player to whom the run belongs; null for none
     * @param exit what went wrong; done where nothing did
     * @return the exit code: a "no" where no note was answered
     */
    int of(List<Attempt> attempts, @Nullable Player player, List<TargetStatus> targets, int exit)
            throws ProfileException {
        Tally tally = Tally.of(attempts);
        int code = exit == Exit.DONE && tally.asked() == 0 ? Exit.NO : exit;
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("room", room);
        result.put("tuning", tuning.name());
        result.put("ask", wishes.asking.word());
        result.put("help", wishes.helps());
        PracticeView.into(result, tally);
        PracticeView.lines(tally).forEach(talk::say);
        aim(result, attempts);
        keep(result, tally, player);
        PracticeView.notes(result, tally);
        result.set("targets", JsonViews.targets(targets));
        result.put("exitCode", code);
        talk.object(result);
        return code;
    }

    private void aim(ObjectNode result, List<Attempt> attempts) throws ProfileException {
        Optional<AimFit> fit = AimFit.of(attempts.stream()
                .flatMap(attempt -> attempt.stop().stream())
                .map(stop -> new AimFit.Miss(stop.offMm(), stop.standardUncertaintyMm() * stop.standardUncertaintyMm()))
                .toList());
        boolean aided = wishes.helps();
        boolean enough = fit.filter(aim -> saveAim || aim.aim().reaches() >= CalibrationPlan.REACHES)
                .isPresent();
        boolean saved = enough && !aided;
        JsonViews.number(result, "aimMm", fit.map(aim -> aim.aim().mm()).orElse(Double.NaN));
        JsonViews.number(
                result,
                "aimUncertaintyMm",
                fit.map(AimFit::standardUncertaintyMm).orElse(Double.NaN));
        result.put("aimReaches", fit.map(aim -> aim.aim().reaches()).orElse(0));
        result.put("aimAided", aided);
        result.put("aimSaved", saved);
        if (fit.isEmpty()) {
            talk.say("your aim: " + AimFit.FEWEST + " notes or more have to be reached to tell it");
            return;
        }
        talk.say((aided ? "your aim with help: " : "your aim: ") + fit.get().words());
        if (saved) {
            save(fit.get().aim());
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

    private void keep(ObjectNode result, Tally tally, @Nullable Player player) throws ProfileException {
        result.put("player", player == null ? "" : player.name());
        result.put("compared", "");
        result.put("runs", player == null ? 0 : player.runs().size());
        if (player == null || tally.asked() == 0) {
            return;
        }
        PracticeRun run = new PracticeRun(Takes.now(), room, tuning.name(), wishes.asking, wishes.helps(), tally);
        String words = run.lastLike(player.runs()).map(run::comparedWith).orElse("");
        if (!words.isEmpty()) {
            talk.say(player.name() + ": " + words);
        }
        PlayerFolder players = new PlayerFolder(folder);
        Player kept = players.add(player.name(), run);
        talk.say("run " + kept.runs().size() + " of " + kept.name() + " is kept in " + players.fileOf(kept.name()));
        result.put("compared", words);
        result.put("runs", kept.runs().size());
    }
}
