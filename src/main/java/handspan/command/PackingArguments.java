package handspan.command;

import handspan.music.send.MidiForm;
import handspan.music.send.Packing;
import handspan.music.send.SendPlan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How what is sent travels. */
final class PackingArguments {
    @Option(names = "--separate", description = "each message in a packet of its own")
    boolean separate;

    @Option(names = "--bundled", description = "all messages of a frame in one bundle (the usual)")
    boolean bundled;

    @Option(
            names = "--latency",
            paramLabel = "MS",
            description = "bundles say when to act: so long after each frame, 0..10000; or now (the usual)")
    @Nullable
    String latency;

    @Option(names = "--midi-channel", paramLabel = "N", description = "MIDI channel, 1..16 (usual: 1)")
    @Nullable
    Integer midiChannel;

    @Option(
            names = "--midi-bend",
            paramLabel = "SEMITONES",
            description = "how far the receiver bends a note either way, 1..96 (usual: 2)")
    @Nullable
    Integer midiBend;

    @Option(
            names = "--midi-level",
            paramLabel = "HOW",
            description = "what carries the level: expression (the usual), fine-expression or pressure")
    @Nullable
    String midiLevel;

    SendPlan changed(SendPlan before) {
        if (separate && bundled) {
            throw new IllegalArgumentException("--separate with --bundled: choose one");
        }
        Packing packing = before.packing();
        if (separate || bundled) {
            packing = packing.bundled(bundled);
        }
        if (latency != null) {
            packing = latency.equals("now") ? packing.atOnce() : packing.after(ms(latency));
        }
        return before.with(packing).with(midi(before.midi()));
    }

    private static double ms(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("latency '" + text + "' (0..10000 ms, or now)", e);
        }
    }

    private MidiForm midi(MidiForm before) {
        MidiForm.Loudness loudness = before.loudness();
        if (midiLevel != null) {
            loudness = MidiForm.Loudness.parse(midiLevel);
        }
        return new MidiForm(
                midiChannel == null ? before.channel() : midiChannel,
                midiBend == null ? before.bendSemitones() : midiBend,
                loudness);
    }
}
