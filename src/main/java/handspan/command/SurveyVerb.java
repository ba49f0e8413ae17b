package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.survey.ChannelReport;
import handspan.instrument.survey.Verdict;
import handspan.live.session.ActivityView;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.room.budget.SurveyWords;
import handspan.wiring.Rig;
import handspan.wiring.Source;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Judges the sensors. */
@Command(
        name = "survey",
        description =
                "judges each sensor while the hands are held still: rate, noise, step, dropouts, repeats, drift, wobble,"
                        + " clutter; good, usable or poor, and what to do")
final class SurveyVerb extends Verb {
    private static final double USUAL_SECONDS = 10;
    private static final long AWAY_NANOS = 2 * Nanos.PER_SECOND;

    @Mixin
    SourceArguments source = new OneSource();

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "how long (default: 10; a recording is read to its end)")
    @Nullable
    Double seconds;

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        Air air = source.air();
        try (Known known = Known.open(source, talk, false, null)) {
            Instrument instrument = known.instrument();
            talk.say("survey: begin with the hands away, then hold each still over its sensor");
            handsAway(known.rig());
            known.rig()
                    .submit(new handspan.live.session.Command.Survey(instrument.channels(), instrument.sensors(air)));
            boolean toTheEnd = source.source().kind() == Source.Kind.TAKE && seconds == null;
            double limit = seconds == null ? USUAL_SECONDS : seconds;
            Snapshot last = known.rig()
                    .follow(snapshot -> !(snapshot.activity() instanceof ActivityView.Surveying surveying)
                            || toTheEnd
                            || surveying.seconds() < limit);
            if (!last.done()) {
                known.rig().submit(new handspan.live.session.Command.Stop());
                last = known.rig().snapshot();
                if (!last.done()) {
                    last = known.rig().follow(snapshot -> !snapshot.done());
                }
            }
            return conclude(talk, last, known.rig().remark());
        }
    }

    /** A simulated player has been heard playing; a rest before the hold shows what else is in the beam. */
    private static void handsAway(Rig rig) {
        rig.simulation().ifPresent(simulation -> {
            long sinceNanos = rig.snapshot().timeNanos();
            simulation.leave(sinceNanos);
            rig.follow(snapshot -> snapshot.timeNanos() < sinceNanos + AWAY_NANOS);
        });
    }

    private int conclude(Talk talk, Snapshot last, String remark) {
        if (!(last.activity() instanceof ActivityView.Surveying surveying)) {
            talk.warn("no survey came about: no reading");
            return Exit.NO;
        }
        ObjectNode result = Talk.node();
        result.put("source", source.source().text());
        result.put("readings", surveying.count());
        JsonViews.number(result, "seconds", surveying.seconds());
        JsonViews.number(result, "ratePerS", surveying.ratePerS());
        JsonViews.number(result, "rateJitterMs", surveying.jitterMs());
        result.set("rejections", JsonViews.rejections(last.rejections()));
        result.set("channels", SurveyJson.channels(surveying.reports()));
        result.put("remark", remark);
        talk.say(Figures.count(surveying.count()) + " readings in " + Figures.text(surveying.seconds(), 1) + " s, "
                + Figures.text(surveying.ratePerS(), 1) + " a second; left out: " + JsonViews.words(last.rejections()));
        boolean poor = false;
        for (ChannelReport report : surveying.reports()) {
            poor |= report.verdict() == Verdict.POOR;
            SurveyWords words = SurveyWords.of(report);
            talk.say(words.judgement());
            talk.log().note(words.judgement());
            if (!words.held().isEmpty()) {
                talk.say("  " + words.held());
            }
            if (!words.feel().isEmpty()) {
                talk.say("  " + words.feel());
            }
            if (!words.remedy().isEmpty()) {
                talk.say("  to do: " + words.remedy());
            }
        }
        if (!remark.isEmpty()) {
            talk.say("note: " + remark);
        }
        int exit = poor ? Exit.NO : Exit.DONE;
        result.put("exitCode", exit);
        talk.object(result);
        return exit;
    }
}
