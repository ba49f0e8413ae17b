package handspan.wiring;

import handspan.live.path.LineTap;
import handspan.live.session.Event;
import handspan.number.units.Figures;
import handspan.outside.take.RecordingTap;
import handspan.outside.take.TakeHeader;
import handspan.outside.take.TakeWriter;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A take being recorded, to be plugged into a rig. */
public final class Recording implements AutoCloseable {
    /** What its files end in. */
    public static final String SUFFIX = ".take";

    private static final int MOST_OF_A_MOMENT = 100;
    private static final int MOST_OF_A_NAME = 1000;

    private final Path file;
    private final RecordingTap tap;
    private final Optional<Path> setAside;

    private Recording(Path file, RecordingTap tap, Optional<Path> setAside) {
        this.file = file;
        this.tap = tap;
        this.setAside = setAside;
    }

    /**
     * Starts a take. One that is there already can't be had again: it is moved to a name of its own, see
     * {@link #setAside}.
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
        if (source.kind() == Source.Kind.TAKE && isSame(file, Path.of(source.name()))) {
            throw new IOException(file + " is the recording that is played: name another file to record into");
        }
        Optional<Path> before = moved(file);
        TakeHeader header = new TakeHeader(startedAt, instrument, source.text(), baud, List.of());
        return new Recording(file, new RecordingTap(TakeWriter.into(file, header)), before);
    }

    private static boolean isSame(Path file, Path played) throws IOException {
        return Files.exists(file) && Files.exists(played) && Files.isSameFile(file, played);
    }

    /** Moves what is there to {@code NAME-2.take}, or the next number that is free; a device or a pipe stays. */
    private static Optional<Path> moved(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) == 0) {
            return Optional.empty();
        }
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String ending = dot > 0 ? name.substring(dot) : "";
        for (int number = 2; ; number++) {
            Path other = file.resolveSibling(stem + "-" + number + ending);
            try {
                return Optional.of(Files.move(file, other));
            } catch (FileAlreadyExistsException e) {
                if (number >= MOST_OF_A_NAME) {
                    throw new IOException(
                            file + " is there, and so are " + MOST_OF_A_NAME + " earlier ones: name another file", e);
                }
            }
        }
    }

    /**
     * Starts a take in a file of its own, named by the moment: {@code 2031-05-04-193000.take}. None that is there is
     * written over.
     *
     * @param folder made where it is missing
     * @param startedAt ISO 8601 text
     * @param instrument name of the instrument
     * @param source where the lines come from
     * @param baud link speed
     */
    public static Recording fresh(Path folder, String startedAt, String instrument, Source source, int baud)
            throws IOException {
        Files.createDirectories(folder);
        String name = startedAt.replace(":", "").replace("Z", "").replace('T', '-');
        for (int number = 1; ; number++) {
            Path file = folder.resolve(name + (number == 1 ? "" : "-" + number) + SUFFIX);
            try {
                Files.createFile(file);
                return into(file, startedAt, instrument, source, baud);
            } catch (FileAlreadyExistsException e) {
                if (number >= MOST_OF_A_MOMENT) {
                    throw e;
                }
            }
        }
    }

    /** Where it is written. */
    public Path file() {
        return file;
    }

    /** Where the take is now that was in the file before; empty where there was none. */
    public Optional<Path> setAside() {
        return setAside;
    }

    LineTap tap() {
        return tap;
    }

    void onEvent(Event event) {
        tap.onEvent(event);
    }

    /** Lines in the file so far, but for those of the last half second. */
    public long lines() {
        return tap.written();
    }

    /** Lines that came and are not in the file, once it is closed. */
    public long lost() {
        return tap.lost();
    }

    /** Why recording stopped, and how much is in the file; empty while it goes on. */
    public String trouble() {
        String reason = tap.trouble();
        return reason.isEmpty() ? "" : reason + ": " + Figures.count(tap.written()) + " lines are in " + file;
    }

    /** Writes what is queued, then closes the file. */
    @Override
    public void close() {
        tap.close();
    }
}
