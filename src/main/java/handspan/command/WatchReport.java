package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.line.LineShape.Nature;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.survey.ChannelGuess;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.room.budget.LatencyBudget;
import handspan.wiring.Heard;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.Rig;
import handspan.wiring.Source;
import java.util.Optional;

/** What was seen while a source was watched: counts, channels, proposed hands, latency. */
final class WatchReport {
    private final Talk talk;
    private final SourceArguments source;

    WatchReport(Talk talk, SourceArguments source) {
        this.talk = talk;
        this.source = source;
    }

    /** Says it all; the exit code. */
    int conclude(Snapshot last, Rig rig) {
        String remark = rig.remark();
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("lines", last.lines());
        result.put("readings", last.readings());
        result.set("rejections", JsonViews.rejections(last.rejections()));
        talk.say(Figures.count(last.lines()) + " lines, " + Figures.count(last.readings()) + " readings; left out: "
                + JsonViews.words(last.rejections()));
        int exit = Exit.NO;
        if (last.activity() instanceof ActivityView.Watching watching && last.readings() > 0) {
            exit = Exit.DONE;
            JsonViews.number(result, "ratePerS", watching.ratePerS());
            JsonViews.number(result, "rateJitterMs", watching.jitterMs());
            result.set("channels", JsonViews.guesses(watching.guesses()));
            talk.say(Figures.text(watching.ratePerS(), 1) + " readings a second, intervals vary by "
                    + Figures.text(watching.jitterMs(), 1) + " ms");
            result.set("arrivals", JsonViews.arrivals(last.arrivals()));
            if (!last.arrivals().words().isEmpty()) {
                talk.say(last.arrivals().words());
            }
            for (ChannelGuess guess : watching.guesses()) {
                talk.say("channel " + guess.spec().channel() + ": "
                        + (guess.nature() == Nature.COUNTER || guess.nature() == Nature.TIME
                                ? guess.nature().words() + "; "
                                : "")
                        + (guess.sure() ? "" : "perhaps ")
                        + guess.spec().kind().word() + " in "
                        + guess.spec().unit().word() + " (" + guess.evidence()
                        + ")");
            }
            propose(result, watching, last, source.baud(rig));
            latency(watching, last, rig).ifPresent(budget -> {
                result.set("latency", JsonViews.latency(budget));
                LatencyView.lines("latency without smoothing", budget).forEach(talk::say);
            });
        } else {
            talk.warn(
                    last.question().isEmpty()
                            ? "no reading came: is the board's program running, and is " + source.baud(rig)
                                    + " its baud rate ('--baud auto' finds it)?"
                            : "no reading came of it: " + last.question());
        }
        if (!remark.isEmpty()) {
            talk.say("note: " + remark);
        }
        LinesTalk.remarks(last).forEach(talk::say);
        result.put("boardSaid", last.text().remark());
        result.put("question", last.question());
        result.put("remark", remark);
        result.put("exitCode", exit);
        talk.object(result);
        return exit;
    }

    /** Which number is which hand, as it would be written on the command line. */
    private void propose(ObjectNode result, ActivityView.Watching watching, Snapshot last, int baud) {
        ObjectNode proposal = result.putObject("proposal");
        last.shape()
                .flatMap(shape -> InstrumentFinder.proposed(
                        source.name(), baud, source.referenceVolts, new Heard(shape, watching.guesses())))
                .ifPresent(found -> {
                    ChannelSpec level = found.instrument().level();
                    proposal.put("pitch", found.instrument().pitch().text());
                    proposal.put("level", level == null ? null : level.text());
                    talk.say("proposed hands: --pitch "
                            + LinesTalk.typed(found.instrument().pitch().text())
                            + (level == null ? "" : " --level " + LinesTalk.typed(level.text())));
                });
    }

    private Optional<LatencyBudget> latency(ActivityView.Watching watching, Snapshot last, Rig rig) {
        boolean take = source.source().kind() == Source.Kind.TAKE;
        // a log that was given its rate says nothing of when its lines came
        boolean hasTimes = !take || source.ratePerS == null;
        if (!hasTimes || watching.ratePerS() <= 0 || watching.guesses().isEmpty() || last.lines() == 0) {
            return Optional.empty();
        }
        Sensor sensor = Sensor.of(pitch(watching, last), Air.USUAL, Instrument.USUAL_REFERENCE_VOLTS);
        int baud = take && source.baudNamed == null ? rig.recordedBaud() : source.baud(rig);
        double characters = last.bytes() / (double) last.lines();
        return Optional.of(LatencyBudget.of(sensor.measuringMs(), watching.ratePerS(), characters, baud, 0, false)
                .cyclingIn(sensor.cycleMs())
                .waitingFor(last.arrivals().known() ? last.arrivals().timerMs() : Double.NaN));
    }

    /** The channel that would carry pitch: a time or a counter before it has no measuring time. */
    private ChannelSpec pitch(ActivityView.Watching watching, Snapshot last) {
        return last.shape()
                .flatMap(shape -> InstrumentFinder.proposed(
                        source.name(),
                        Instrument.USUAL_BAUD,
                        source.referenceVolts,
                        new Heard(shape, watching.guesses())))
                .map(found -> found.instrument().pitch())
                .orElse(watching.guesses().get(0).spec());
    }
}
