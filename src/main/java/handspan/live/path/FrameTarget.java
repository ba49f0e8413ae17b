package handspan.live.path;

import handspan.music.send.SoundFrame;

/**
 * Where frames leave the path. Called by the path thread only; a call must return at once, whatever the network does:
 * what can't be sent now is counted, never waited for and never thrown.
 */
public interface FrameTarget extends AutoCloseable {
    /**
     * Sends a frame.
     *
     * @param frame the frame
     * @param withState whether the state line goes along (on change and once a second)
     */
    void send(SoundFrame frame, boolean withState);

    /** What has happened so far; may be read by any thread. */
    TargetStatus status();

    @Override
    void close();
}
