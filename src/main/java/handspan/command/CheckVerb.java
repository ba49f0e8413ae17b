package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.session.ActivityView;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.RoomCheck;
import handspan.room.budget.VenueLine;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Refit;
import handspan.wiring.InstrumentShelf;
import handspan.wiring.Rig;
import handspan.wiring.TargetCheck;
import handspan.wiring.VenueCheck;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
    /** Long enough for a rate, short enough for a break. */
    private static final double WATCHED_SECONDS = 3;

    @Mixin
    SourceArguments source = new OneSource();

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

    @Option(
            names = "--no-holds",
            description = "link and targets alone, hands away, in some seconds: the room itself is not checked")
    boolean noHolds;

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        RoomProfile profile = room.load();
        Room kept = profile.room().in(source.air(profile.room().air()));
        List<VenueLine> lines = new ArrayList<>();
        Optional<String> newer = new InstrumentShelf(room.folder()).rebuiltSince(kept);
        if (newer.isPresent()) {
            return conclude(talk, VenueCheck.rebuilt(newer.get()));
        }
        HoldRules rules = UsageException.reading(() -> HoldRules.USUAL.lasting(holdSeconds));
        CalibrationPlan plan = oneEnd ? Refit.nearOnly(kept) : Refit.plan(kept, false);
        Optional<ActivityView.Calibrating> held = Optional.empty();
        try (Known known = Known.open(source, kept.instrument(), talk, null);
                Keys keys = new Keys(talk, parent().in())) {
            talk.say("check of '" + kept.name() + "'");
            if (noHolds) {
                lines.add(VenueCheck.link(watched(known.rig()), kept));
            } else {
                held = new HoldSession(talk, kept.air(), rules, timeoutSeconds, cues.open(source, talk))
                        .lead(known, plan, keys);
                lines.add(VenueCheck.link(known.rig().snapshot(), kept));
            }
        } catch (LinkException e) {
            lines.add(new VenueLine("link", VenueLine.Grade.BAD, String.valueOf(e.getMessage()), ""));
            return withoutHolds(talk, profile, lines, "the link does not stand", Exit.INSTRUMENT);
        }
        if (held.isEmpty()) {
            return noHolds
                    ? withoutHolds(talk, profile, lines, "left out", Exit.DONE)
                    : withoutHolds(talk, profile, lines, "time-out or link lost", Exit.NO);
        }
        return conclude(
                talk, VenueCheck.of(profile, kept, lines.get(0), held.get().holds(), byMark));
    }

    private static Snapshot watched(Rig rig) {
        rig.submit(new handspan.live.session.Command.Watch());
        long startNanos = rig.snapshot().timeNanos();
        return rig.follow(snapshot -> Nanos.toSeconds(snapshot.timeNanos() - startNanos) < WATCHED_SECONDS);
    }

    /** The page without what needs hands; targets are looked at all the same. */
    private int withoutHolds(Talk talk, RoomProfile profile, List<VenueLine> lines, String why, int exit) {
        lines.add(VenueLine.notChecked("sensors", why));
        lines.add(VenueLine.notChecked("room", why));
        lines.addAll(TargetCheck.lines(profile));
        say(talk, lines);
        boolean bad = VenueLine.worst(lines) == VenueLine.Grade.BAD;
        int code = exit == Exit.DONE && bad ? Exit.NO : exit;
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("room", room.room);
        result.put("verdict", VenueLine.Grade.NOT_CHECKED.words());
        if (exit != Exit.DONE) {
            result.put("error", exit == Exit.NO ? why : lines.get(0).reason());
        }
        into(result, lines);
        result.put("exitCode", code);
        talk.object(result);
        talk.log().note("check of '" + room.room + "': " + lines.get(0).reason() + "; room " + why);
        return code;
    }

    private int conclude(Talk talk, VenueCheck venue) {
        RoomCheck check = venue.room();
        List<VenueLine> lines = venue.lines();
        String words = check.words();
        talk.say(words);
        check.reasons().forEach(reason -> talk.say("  " + reason));
        if (!check.remedy().isEmpty()) {
            talk.say("  to do: " + check.remedy());
        }
        say(talk, lines);
        boolean bad = VenueLine.worst(lines) == VenueLine.Grade.BAD;
        int exit = check.verdict() == RoomCheck.Verdict.FITS && !bad ? Exit.DONE : Exit.NO;
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("room", room.room);
        result.put("verdict", check.verdict().words());
        JsonViews.number(result, "pitchCents", check.pitchCents());
        JsonViews.number(result, "levelDb", check.levelDb());
        ArrayNode reasons = result.putArray("reasons");
        check.reasons().forEach(reasons::add);
        result.put("remedy", check.remedy());
        into(result, lines);
        result.put("exitCode", exit);
        talk.object(result);
        talk.log().note("check of '" + room.room + "': " + words);
        return exit;
    }

    private static void say(Talk talk, List<VenueLine> lines) {
        talk.say("in all: " + VenueLine.worst(lines).words());
        for (VenueLine line : lines) {
            talk.say("  " + line.what() + ": " + line.grade().words() + " - " + line.reason()
                    + (line.remedy().isEmpty() ? "" : "; to do: " + line.remedy()));
        }
        talk.say("log: " + talk.log().file());
    }

    private static void into(ObjectNode result, List<VenueLine> lines) {
        ArrayNode array = result.putArray("lines");
        for (VenueLine line : lines) {
            array.addObject()
                    .put("what", line.what())
                    .put("verdict", line.grade().words())
                    .put("reason", line.reason())
                    .put("remedy", line.remedy());
        }
        result.put("overall", VenueLine.worst(lines).words());
    }
}
