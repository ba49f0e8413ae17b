package handspan.show.chart;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a picture or a sheet first beside its file, then into its place: it is there whole or not at all. */
public final class WholeFile {
    private WholeFile() {}

    /** What goes into a file. */
    public interface Content {
        /** Writes it; does not close the stream. */
        void to(OutputStream out) throws IOException;
    }

    /**
     * Writes.
     *
     * @param file replaced if it is there; its folder must exist
     * @throws IOException when it cannot be written
     */
    public static void write(Path file, Content content) throws IOException {
        Path whole = file.toAbsolutePath();
        Path part = whole.resolveSibling(whole.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(part)) {
                content.to(out);
            }
            replace(part, whole);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void replace(Path part, Path whole) throws IOException {
        try {
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            // some network folders cannot; a picture can be drawn again
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
