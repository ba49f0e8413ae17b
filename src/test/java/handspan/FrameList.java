package handspan;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import java.util.ArrayList;
import java.util.List;

/** A target that keeps all it gets. */
public final class FrameList implements FrameTarget {
    private final List<SoundFrame> frames = new ArrayList<>();
    private final List<SoundFrame> withState = new ArrayList<>();

    @Override
    public synchronized void send(SoundFrame frame, boolean state) {
        frames.add(frame);
        if (state) {
            withState.add(frame);
        }
    }

    /** All frames so far. */
    public synchronized List<SoundFrame> frames() {
        return List.copyOf(frames);
    }

    /** Those that carried the state line. */
    public synchronized List<SoundFrame> withState() {
        return List.copyOf(withState);
    }

    /** The latest. */
    public synchronized SoundFrame last() {
        return frames.get(frames.size() - 1);
    }

    @Override
    public synchronized TargetStatus status() {
        return new TargetStatus("list", frames.size(), 0, 0, "");
    }

    @Override
    public void close() {}
}
