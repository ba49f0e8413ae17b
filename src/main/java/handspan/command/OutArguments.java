package handspan.command;

import handspan.music.send.SendTarget;
import handspan.profile.RoomProfile;
import handspan.wiring.Listening;
import handspan.wiring.MidiFile;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.Targets;
import handspan.wiring.WaysOut;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where what is played goes, for this time. */
final class OutArguments {
    @Option(names = "--send", paramLabel = "TARGET", description = "send there, for this time, as 'send --add' does")
    List<String> send = List.of();

    @Option(
            names = "--midi-file",
            paramLabel = "FILE",
            description =
                    "write what is played as a standard MIDI file, at the end; from take:FILE at once with --fast")
    @Nullable
    Path midiFile;

    @Mixin
    ListenArguments listening = new ListenArguments();

    /** The room as it is to send tonight. */
    RoomProfile in(RoomProfile kept) throws UsageException {
        return send.isEmpty()
                ? kept
                : kept.with(kept.send()
                        .to(UsageException.reading(
                                () -> send.stream().map(SendTarget::parse).toList())));
    }

    /**
     * Opens all ways out.
     *
     * @param recorded where the take goes; null where there is none
     */
    WaysOut open(Talk talk, Source source, RoomProfile profile, SourceOptions options, @Nullable Path recorded)
            throws UsageException, IOException {
        return open(profile, listening.open(talk, source, options, recorded), midiFile);
    }

    /**
     * Opens all ways out of one of several instruments: what is a file for one is a folder for several.
     *
     * @param files its files in such folders
     */
    WaysOut open(Talk talk, RoomProfile profile, SeatFiles files, boolean byTheClock)
            throws UsageException, IOException {
        Path wav = files.in(listening.wav, "--wav", ".wav");
        Path midi = files.in(midiFile, "--midi-file", ".mid");
        return open(profile, listening.written(talk, wav, byTheClock), midi);
    }

    private static WaysOut open(RoomProfile profile, Listening tone, @Nullable Path midi) throws IOException {
        try {
            MidiFile file = midi == null
                    ? null
                    : MidiFile.into(
                            midi,
                            profile.room().instrument().name(),
                            profile.send().midi());
            return new WaysOut(Targets.open(profile.send()), tone, file);
        } catch (IOException | RuntimeException e) {
            tone.close();
            throw e;
        }
    }
}
