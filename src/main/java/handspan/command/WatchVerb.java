package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.line.Learning;
import handspan.instrument.line.LineShape.Nature;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.survey.ChannelGuess;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.room.budget.LatencyBudget;
import handspan.wiring.Heard;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows what a source sends. */
@Command(
        name = "watch",
        description =
                "shows what a source sends: line shape in words, rate, rejected lines, live values, latency; proposes"
                        + " which channel is which hand")
final class WatchVerb extends Verb {
    @Mixin
    SourceArguments source = new SourceArguments();

    @Option(names = "--seconds", paramLabel = "S", description = "how long (default: until it is stopped)")
    @Nullable
    Double seconds;

    @Option(
            names = "--wave",
            description =
                    "find the hands: asks for no hand, the pitch hand, the other hand, five seconds each, and says"
                            + " which number followed which")
    boolean wave;

    @Mixin
    CueArguments cues = new CueArguments();

    private final Pulse pulse = new Pulse(Nanos.PER_SECOND);

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        LinkTalk.announce(talk, source);
        source.told(); // a wrong channel or simulation is said before anything is opened
        try (Rig rig = talk.log()
                        .following(
                                Rigs.open(source.source(), source.options(false), null, List.of(), null),
                                source.source().text());
                AtExit atExit = AtExit.run(rig::close)) {
            if (wave) {
                return new WaveTalk(talk, source.source().text()).lead(rig, cues.open(source, talk));
            }
            rig.submit(new handspan.live.session.Command.Watch());
            EventReader events = new EventReader();
            LinkTalk links = new LinkTalk(talk, source.source());
            long startNanos = rig.snapshot().timeNanos();
            Snapshot last = rig.follow(snapshot -> {
                events.fresh(snapshot).forEach(event -> tell(talk, links, event));
                show(talk, snapshot);
                return seconds == null || Nanos.toSeconds(snapshot.timeNanos() - startNanos) < seconds;
            });
            events.fresh(last).forEach(event -> tell(talk, links, event));
            return conclude(talk, last, rig);
        }
    }

    private void tell(Talk talk, LinkTalk links, Event event) {
        if (event.what() instanceof Event.Learned learned) {
            talk.say("lines: " + learned.shape().words());
            ObjectNode node = Talk.node();
            node.put("event", "shape");
            node.setAll(JsonViews.shape(learned.shape()));
            talk.object(node);
        } else if (event.what() instanceof Event.Ambiguous ambiguous) {
            ask(talk, ambiguous.either());
        } else if (event.what() instanceof Event.BoardChanged changed) {
            talk.say(changed.words());
            ObjectNode node = Talk.node();
            node.put("event", "shape");
            node.setAll(JsonViews.shape(changed.shape()));
            talk.object(node);
        } else {
            links.tell(event);
        }
    }

    private static void ask(Talk talk, Learning.Ambiguous either) {
        talk.say("question: " + either.question());
        talk.say("  as decimal: " + either.decimal().words());
        talk.say("  as parts:   " + either.parts().words());
        talk.event(
                "question",
                Map.of(
                        "question",
                        either.question(),
                        "decimal",
                        either.decimal().words(),
                        "parts",
                        either.parts().words()));
    }

    private void show(Talk talk, Snapshot snapshot) {
        if (!(snapshot.activity() instanceof ActivityView.Watching watching) || !pulse.isDue(snapshot.timeNanos())) {
            return;
        }
        Map<String, @Nullable Double> values = new LinkedHashMap<>();
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < watching.names().size(); i++) {
            double value = watching.values().get(i);
            boolean there = !Double.isNaN(value);
            values.put(watching.names().get(i), there ? value : null);
            words.append(words.isEmpty() ? "" : "   ")
                    .append(watching.names().get(i))
                    .append(" = ")
                    .append(there ? plain(value) : "-");
        }
        if (talk.isJson()) {
            talk.event(
                    "values",
                    Map.of(
                            "timeS",
                            Nanos.toSeconds(snapshot.timeNanos()),
                            "values",
                            values,
                            "line",
                            snapshot.text().latest()));
        } else if (source.options(false).realTime()) {
            talk.say(words + "   (" + Figures.text(watching.ratePerS(), 1) + "/s)");
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Figures.text(value, 0) : Figures.text(value, 3);
    }

    private int conclude(Talk talk, Snapshot last, Rig rig) {
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
            propose(talk, result, watching, last, source.baud(rig));
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
    private void propose(Talk talk, ObjectNode result, ActivityView.Watching watching, Snapshot last, int baud) {
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
        Sensor sensor = Sensor.of(
                pitch(watching, last), handspan.instrument.sensor.Air.USUAL, Instrument.USUAL_REFERENCE_VOLTS);
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
