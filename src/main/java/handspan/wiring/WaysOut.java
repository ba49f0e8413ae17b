package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All that gets the frames of an instrument that plays: targets, the listening tone, a MIDI file. */
public final class WaysOut implements AutoCloseable {
    private final Targets targets;
    private final Listening tone;
    private final @Nullable MidiFile midiFile;

    /**
     * Ways out that are open; closed with this.
     *
     * @param midiFile null for none
     */
    public WaysOut(Targets targets, Listening tone, @Nullable MidiFile midiFile) {
        this.targets = targets;
        this.tone = tone;
        this.midiFile = midiFile;
    }

    /** To be plugged into a rig. */
    public List<FrameTarget> all() {
        List<FrameTarget> all = new ArrayList<>(tone.after(targets.all()));
        if (midiFile != null) {
            all.add(midiFile.target());
        }
        return all;
    }

    /** The listening tone. */
    public Listening tone() {
        return tone;
    }

    /** How targets and the MIDI file stand. */
    public List<TargetStatus> status() {
        List<TargetStatus> all = new ArrayList<>(targets.status());
        if (midiFile != null) {
            all.add(midiFile.status());
        }
        return all;
    }

    /** Why the MIDI file could not be written, once this is closed; empty where nothing is wrong. */
    public String midiFileTrouble() {
        return midiFile == null ? "" : midiFile.status().trouble();
    }

    /** Ends files and lets go of all; to be called after the rig's own end. Does nothing the second time. */
    @Override
    public void close() {
        targets.close();
        if (midiFile != null) {
            midiFile.close();
        }
        tone.close();
    }
}
