package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.wiring.Recording;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Records a source. */
@Command(name = "record", description = "records what a source sends, line for line, with times")
final class RecordVerb extends Verb {
    @Mixin
    SourceArguments source = new OneSource();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "the take; one that is there is moved to a name of its own first")
    Path out = Path.of("");

    @Option(names = "--seconds", paramLabel = "S", description = "how long (default: until it is stopped)")
    @Nullable
    Double seconds;

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        source.told();
        Snapshot last;
        Recording tap = Takes.into(out, source, talk);
        try (Recording recording = tap;
                Rig rig = talk.log()
                        .following(
                                Rigs.open(source.source(), source.options(false), null, List.of(), recording),
                                source.source().text());
                AtExit atExit = AtExit.run(() -> {
                    rig.close();
                    recording.close();
                })) {
            rig.submit(new handspan.live.session.Command.Watch());
            LinkTalk links = new LinkTalk(talk, source.source());
            long startNanos = rig.snapshot().timeNanos();
            last = rig.follow(snapshot -> {
                links.hear(snapshot);
                return recording.trouble().isEmpty()
                        && (seconds == null || Nanos.toSeconds(snapshot.timeNanos() - startNanos) < seconds);
            });
        }
        if (!tap.trouble().isEmpty()) {
            throw new IOException(tap.trouble() + ": make room on the disk and start it again");
        }
        talk.say(Figures.count(tap.lines()) + " lines in " + out + (tap.lost() > 0 ? ", " + tap.lost() + " lost" : ""));
        ObjectNode result = Talk.node();
        result.put("file", out.toString());
        result.put("setAside", tap.setAside().map(Path::toString).orElse(""));
        result.put("lines", tap.lines());
        result.put("readings", last.readings());
        result.put("lost", tap.lost());
        int exit = tap.lines() > 0 ? Exit.DONE : Exit.NO;
        result.put("exitCode", exit);
        talk.object(result);
        return exit;
    }
}
