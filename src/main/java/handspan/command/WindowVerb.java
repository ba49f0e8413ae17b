package handspan.command;

import handspan.live.session.LinkException;
import handspan.show.scene.Showing;
import handspan.show.window.Screens;
import handspan.show.window.WindowMemory;
import handspan.show.window.WindowScale;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens the desktop program. */
@Command(
        name = "window",
        description = "the desktop program: from plugging in to playing, with both hands in the air for most of it",
        footer = {
            "",
            "Alt+1 to Alt+7 go to its stations, Esc is silence, F9 turns dark to light, Ctrl+Q closes. It starts",
            "muted.",
            "Caution: start with the monitors low; the level ceiling protects ears. This is no safety device."
        })
final class WindowVerb extends Verb {
    @Parameters(arity = "0..1", paramLabel = "SOURCE", description = "opened at once: a port, take:FILE or sim:NAME")
    @Nullable
    String source;

    @Option(names = "--room", paramLabel = "NAME", description = "loaded at once")
    @Nullable
    String room;

    @Mixin
    ProfilesArguments profiles = new ProfilesArguments();

    /** Light on dark, or dark on light. */
    static final class Ground {
        @Option(names = "--light", description = "dark on light, for daylight (default: as it was last)")
        boolean light;

        @Option(names = "--dark", description = "light on dark, for a stage (the first time it is so)")
        boolean dark;
    }

    @Option(names = "--scale", paramLabel = "PERCENT", description = "how large all is, 100..200 %% (default: 100)")
    int scalePercent = WindowScale.LEAST_PERCENT;

    @ArgGroup
    @Nullable
    Ground ground;

    @Option(names = "--no-cues", description = "no signals by sound while holds are taken")
    boolean noCues;

    @Override
    int run(Talk talk) throws LinkException, UsageException {
        UsageException.reading(() -> {
            WindowScale.use(scalePercent);
            return scalePercent;
        });
        if (!Screens.canBeOpened()) {
            throw new LinkException(
                    LinkException.Kind.REFUSED,
                    "no screen can be opened here: use the verbs instead, 'handspan calibrate' and 'handspan play'");
        }
        WindowMemory memory = WindowMemory.ofUser();
        boolean dark = ground == null ? memory.dark() : ground.dark;
        new OpenWindow(
                        profiles.folder(),
                        SourceOptions.USUAL,
                        !noCues,
                        room,
                        source == null ? null : Source.parse(source),
                        Showing.first(dark))
                .showAndWait(talk, memory);
        talk.event("result", Map.of("exitCode", Exit.DONE));
        return Exit.DONE;
    }
}
