package handspan.wiring;

import handspan.live.path.LineTap;
import handspan.live.session.Event;
import handspan.outside.take.RecordingTap;
import handspan.outside.take.TakeHeader;
import handspan.outside.take.TakeWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A take being recorded, to be plugged into a rig. */
public final class Recording implements AutoCloseable {
    private final RecordingTap tap;

    private Recording(RecordingTap tap) {
        this.tap = tap;
    }

    /**
     * Starts a take.
     *
     * @param file of it; its folder is made where it is missing
     * @param startedAt ISO 8601 text
     * @param instrument name of the instrument
     * @param source where the lines come from
     * @param baud link speed
     */
    public static Recording into(Path file, String startedAt, String instrument, Source source, int baud)
            throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        TakeHeader header = new TakeHeader(startedAt, instrument, source.text(), baud, List.of());
        return new Recording(new RecordingTap(new TakeWriter(Files.newOutputStream(file), header)));
    }

    LineTap tap() {
        return tap;
    }

    void onEvent(Event event) {
        tap.onEvent(event);
    }

    /** Lines taken so far. */
    public long lines() {
        return tap.lines();
    }

    /** Lines and marks lost because writing failed or was too slow. */
    public long dropped() {
        return tap.dropped();
    }

    /** Why recording stopped; empty while it goes on. */
    public String trouble() {
        return tap.trouble();
    }

    /** Writes what is queued, then closes the file. */
    @Override
    public void close() {
        tap.close();
    }
}
