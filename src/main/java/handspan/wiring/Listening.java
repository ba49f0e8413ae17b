package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.outside.tone.ListenTarget;
import handspan.outside.tone.WavTarget;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The listening tone: what is sent, heard through this machine, written as sound, both or neither. */
public final class Listening implements AutoCloseable {
    /**
     * What has become of a file.
     *
     * @param file as it was named
     * @param seconds of sound in it; all of it once this is closed
     * @param dropped frames that are not in it
     * @param trouble why it stopped; empty where it did not
     */
    public record Written(String file, double seconds, long dropped, String trouble) {}

    private final @Nullable WavTarget wav;
    private final @Nullable ListenTarget listen;

    private Listening(@Nullable WavTarget wav, @Nullable ListenTarget listen) {
        this.wav = wav;
        this.listen = listen;
    }

    /**
     * Opens what is wanted.
     *
     * @param wav made or emptied; null for no file
     * @param listen whether it shall be heard
     * @param realTime whether frames come by the clock; else the file makes them wait where need be
     */
    public static Listening open(@Nullable Path wav, boolean listen, boolean realTime) throws IOException {
        WavTarget file = wav == null ? null : WavTarget.into(wav, !realTime);
        return new Listening(file, listen ? ListenTarget.start() : null);
    }

    /** To be plugged into a rig, after others. */
    public List<FrameTarget> after(List<FrameTarget> others) {
        List<FrameTarget> all = new ArrayList<>(others);
        all.addAll(targets());
        return all;
    }

    private List<FrameTarget> targets() {
        List<FrameTarget> targets = new ArrayList<>();
        if (wav != null) {
            targets.add(wav);
        }
        if (listen != null) {
            targets.add(listen);
        }
        return targets;
    }

    /** Whether anything is heard or written. */
    public boolean isOn() {
        return wav != null || listen != null;
    }

    /** How each stands. */
    public List<TargetStatus> status() {
        return targets().stream().map(FrameTarget::status).toList();
    }

    /** The file, where there is one. */
    public Optional<Written> written() {
        if (wav == null) {
            return Optional.empty();
        }
        TargetStatus status = wav.status();
        return Optional.of(new Written(wav.name(), wav.seconds(), status.dropped(), status.trouble()));
    }

    /** Lets the tone fade and ends the file; to be called after the rig's own end. */
    @Override
    public void close() {
        targets().forEach(FrameTarget::close);
    }
}
