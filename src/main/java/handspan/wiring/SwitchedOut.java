package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import java.util.List;

/**
 * A way out whose far ends can be changed while the instrument stays open, so that a board does not have to start anew
 * between its sound check and its playing. Far ends are owned by whoever plugs them in.
 */
public final class SwitchedOut implements FrameTarget {
    private volatile List<FrameTarget> ends = List.of();

    /** Sends there from now on; the ends before should have been told of silence by then. */
    public void to(List<FrameTarget> others) {
        ends = List.copyOf(others);
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        for (FrameTarget end : ends) {
            end.send(frame, withState);
        }
    }

    @Override
    public TargetStatus status() {
        long sent = 0;
        long refused = 0;
        long dropped = 0;
        String trouble = "";
        for (FrameTarget end : ends) {
            TargetStatus status = end.status();
            sent += status.sent();
            refused += status.refused();
            dropped += status.dropped();
            trouble = trouble.isEmpty() ? status.trouble() : trouble;
        }
        return new TargetStatus("all ways out", sent, refused, dropped, trouble);
    }

    @Override
    public void close() {
        ends = List.of();
    }
}
