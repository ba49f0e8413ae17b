package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.MidiForm;
import handspan.outside.midi.MidiFileTarget;
import java.io.IOException;
import java.nio.file.Path;

/** What is played as a standard MIDI file, to be plugged into a rig. */
public final class MidiFile implements AutoCloseable {
    private final MidiFileTarget target;

    private MidiFile(MidiFileTarget target) {
        this.target = target;
    }

    /**
     * Begins a file.
     *
     * @param file its folder is made where it is missing
     * @param name of the track
     * @param form of the MIDI in it
     * @throws IOException when it can't be written
     */
    public static MidiFile into(Path file, String name, MidiForm form) throws IOException {
        return new MidiFile(MidiFileTarget.into(file, name, form));
    }

    /** What gets the frames. */
    public FrameTarget target() {
        return target;
    }

    /** How it stands; what is in its way once it is closed. */
    public TargetStatus status() {
        return target.status();
    }

    /** Writes it. To be called after the rig's own end. */
    @Override
    public void close() {
        target.close();
    }
}
