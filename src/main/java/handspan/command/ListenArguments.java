package handspan.command;

import handspan.wiring.Listening;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether what is played is heard by a tone of the program's own, without a sound patch. */
final class ListenArguments {
    @Option(names = "--listen", description = "hear what is sent, as a plain tone through this machine's sound device")
    boolean listen;

    @Option(
            names = "--wav",
            paramLabel = "FILE",
            description = "write what is sent as sound, a plain tone (48,000 samples a second, 16 bit)")
    @Nullable
    Path wav;

    /**
     * Opens what is wanted, with a word of caution.
     *
     * @param recorded where the take goes; null where there is none
     */
    Listening open(Talk talk, Source source, SourceOptions options, @Nullable Path recorded)
            throws UsageException, IOException {
        boolean byTheClock = options.byTheClock(source);
        if (listen && !byTheClock) {
            throw new UsageException(
                    "--listen with --fast: what goes faster than the clock can't be heard; --wav FILE" + " writes it");
        }
        if (isWav(recorded) || (source.kind() == Source.Kind.TAKE && isWav(Path.of(source.name())))) {
            throw new UsageException("--wav " + wav + " is the take itself: give each a file of its own");
        }
        Listening listening = Listening.open(wav, listen, byTheClock);
        caution(talk, listening);
        return listening;
    }

    /**
     * Opens the file of one of several instruments.
     *
     * @param file null for none
     */
    Listening written(Talk talk, @Nullable Path file, boolean byTheClock) throws UsageException, IOException {
        if (listen) {
            throw new UsageException("--listen with several rooms: their tones together would pass the tone's own"
                    + " ceiling; play one of them alone with --listen, or write each as sound with --wav DIR");
        }
        Listening listening = Listening.open(file, false, byTheClock);
        caution(talk, listening);
        return listening;
    }

    private static void caution(Talk talk, Listening listening) {
        if (listening.isOn()) {
            talk.say("caution: turn monitors or headphones low before you listen; the tone never peaks above -12 dBFS,"
                    + " and that ceiling stays. This is no safety device.");
        }
    }

    private boolean isWav(@Nullable Path other) {
        return wav != null
                && other != null
                && wav.toAbsolutePath()
                        .normalize()
                        .equals(other.toAbsolutePath().normalize());
    }
}
