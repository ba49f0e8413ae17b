package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.line.Learning;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.wiring.EventReader;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    SourceArguments source = new OneSource();

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
    private final Pulse remarkPulse = new Pulse(Nanos.PER_SECOND);
    private String toldRemark = "";

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
            return new WatchReport(talk, source).conclude(last, rig);
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

    /** What a board says besides its numbers, as it starts or later: at most once a second. */
    private void showRemark(Talk talk, Snapshot snapshot) {
        String remark = snapshot.text().remark();
        boolean live = source.options(false).realTime();
        if (live && !remark.isEmpty() && !remark.equals(toldRemark) && remarkPulse.isDue(snapshot.timeNanos())) {
            toldRemark = remark;
            talk.say("the board says: '" + remark + "'");
            talk.event("board", Map.of("says", remark));
        }
    }

    private void show(Talk talk, Snapshot snapshot) {
        showRemark(talk, snapshot);
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
}
