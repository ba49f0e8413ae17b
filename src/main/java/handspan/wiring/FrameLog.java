package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import java.util.ArrayList;
import java.util.List;

/** A target that keeps what it gets, in memory, to be measured afterwards. For minutes, not for a concert. */
public final class FrameLog implements FrameTarget {
    private final List<SoundFrame> frames = new ArrayList<>();

    @Override
    public synchronized void send(SoundFrame frame, boolean withState) {
        frames.add(frame);
    }

    /** All frames so far. */
    public synchronized List<SoundFrame> frames() {
        return List.copyOf(frames);
    }

    @Override
    public synchronized TargetStatus status() {
        return new TargetStatus("log", frames.size(), 0, 0, "");
    }

    @Override
    public void close() {}
}
