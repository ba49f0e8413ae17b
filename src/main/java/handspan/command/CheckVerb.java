package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.session.ActivityView;
import handspan.live.session.LinkException;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.RoomCheck;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Refit;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Does a saved room still fit? */
@Command(
        name = "check",
        description =
                "does a saved room still fit: takes both ends and the open light, and says how far off pitch and level"
                        + " would be, and what to do")
final class CheckVerb extends Verb {
    @Mixin
    SourceArguments source = new SourceArguments();

    @Mixin
    RoomArguments room = new RoomArguments();

    @Mixin
    CueArguments cues = new CueArguments();

    @Option(
            names = "--by-mark",
            description = "the ends are held at a ruler or at fixed marks, not found by feel: the check is stricter")
    boolean byMark;

    @Option(names = "--one-end", description = "hold the near end only: quicker, but a change of scale is not seen")
    boolean oneEnd;

    @Option(
            names = "--hold",
            paramLabel = "S",
            defaultValue = "1.5",
            description = "seconds a hand must be still" + " (${DEFAULT-VALUE})")
    double holdSeconds;

    @Option(
            names = "--timeout",
            paramLabel = "S",
            defaultValue = "60",
            description = "gives up after this long" + " (${DEFAULT-VALUE})")
    double timeoutSeconds;

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        RoomProfile profile = room.load();
        Room kept = profile.room().in(source.air(profile.room().air()));
        Optional<String> newer = new InstrumentShelf(room.folder()).rebuiltSince(kept);
        if (newer.isPresent()) {
            return conclude(talk, RoomCheck.rebuilt(newer.get()));
        }
        HoldRules rules = UsageException.reading(() -> HoldRules.USUAL.lasting(holdSeconds));
        CalibrationPlan plan = oneEnd ? Refit.nearOnly(kept) : Refit.plan(kept, false);
        Optional<ActivityView.Calibrating> held;
        try (Known known = Known.open(source, kept.instrument(), talk, null);
                Keys keys = new Keys(talk, parent().in())) {
            talk.say("check of '" + kept.name() + "'");
            held = new HoldSession(talk, kept.air(), rules, timeoutSeconds, cues.open(source, talk))
                    .lead(known, plan, keys);
        }
        if (held.isEmpty()) {
            talk.event("result", Map.of("exitCode", Exit.NO, "error", "time-out or link lost"));
            return Exit.NO;
        }
        double centsPerMm =
                profile.tunings().get(0).centsPerMm(kept.pitch().zone().lengthMm());
        return conclude(
                talk, RoomCheck.of(kept, profile.level(), centsPerMm, held.get().holds(), byMark));
    }

    private int conclude(Talk talk, RoomCheck check) {
        talk.say(check.verdict().words() + ": pitch up to " + Figures.text(check.pitchCents(), 0)
                + " cents off, level up to " + Figures.text(check.levelDb(), 1) + " dB");
        check.reasons().forEach(reason -> talk.say("  " + reason));
        if (!check.remedy().isEmpty()) {
            talk.say("  to do: " + check.remedy());
        }
        int exit = check.verdict() == RoomCheck.Verdict.FITS ? Exit.DONE : Exit.NO;
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("room", room.room);
        result.put("verdict", check.verdict().words());
        JsonViews.number(result, "pitchCents", check.pitchCents());
        JsonViews.number(result, "levelDb", check.levelDb());
        ArrayNode reasons = result.putArray("reasons");
        check.reasons().forEach(reasons::add);
        result.put("remedy", check.remedy());
        result.put("exitCode", exit);
        talk.object(result);
        return exit;
    }
}
