package handspan.command;

import handspan.wiring.Cues;
import picocli.CommandLine.Option;

/** Whether the player hears signals. */
final class CueArguments {
    @Option(
            names = "--no-cues",
            description = "no signals by sound: by default they tell of each step, so that the eyes and hands stay free"
                    + " (recordings and --fast never have them)")
    boolean noCues;

    /** Signals for a source that runs by the clock, silence for others. */
    Cues open(SourceArguments source, Talk talk) {
        boolean heard = !noCues && source.options(false).realTime();
        return heard ? Cues.heard(talk::warn) : Cues.silent();
    }
}
