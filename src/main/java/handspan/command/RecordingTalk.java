package handspan.command;

import handspan.wiring.Recording;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says once, and at once, that a recording has stopped by itself. What it is a recording of goes on. */
final class RecordingTalk implements AutoCloseable {
    private final Talk talk;
    private final @Nullable Recording recording;
    private final String goesOn;
    private boolean told;

    /**
     * Nothing is said yet.
     *
     * @param recording null where nothing is recorded
     * @param goesOn what goes on without it, such as {@code playing}
     */
    RecordingTalk(Talk talk, @Nullable Recording recording, String goesOn) {
        this.talk = talk;
        this.recording = recording;
        this.goesOn = goesOn;
    }

    /** To be called again and again while it goes on. */
    void look() {
        tell("; " + goesOn + " goes on");
    }

    /** Closes the recording; what it could not write even then is said too. */
    @Override
    public void close() {
        if (recording != null) {
            recording.close();
            tell("");
        }
    }

    private synchronized void tell(String more) {
        if (recording == null || told || recording.trouble().isEmpty()) {
            return;
        }
        told = true;
        String reason = recording.trouble();
        talk.warn(reason + more);
        talk.event("recording", Map.of("on", false, "reason", reason, "lines", recording.lines()));
    }
}
