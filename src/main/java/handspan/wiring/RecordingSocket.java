package handspan.wiring;

import handspan.live.path.LineTap;
import handspan.live.session.Event;
import org.jspecify.annotations.Nullable;

/** Where a recording can be plugged in and out while the instrument runs. */
public final class RecordingSocket {
    private volatile @Nullable Recording plugged;

    /** Records from now on; the one before is not closed. */
    public void plug(Recording recording) {
        plugged = recording;
    }

    /** Records no more. */
    public void unplug() {
        plugged = null;
    }

    LineTap tap() {
        return (line, length, timeNanos) -> {
            Recording recording = plugged;
            if (recording != null) {
                recording.tap().onLine(line, length, timeNanos);
            }
        };
    }

    void onEvent(Event event) {
        Recording recording = plugged;
        if (recording != null) {
            recording.onEvent(event);
        }
    }
}
