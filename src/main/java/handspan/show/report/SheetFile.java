package handspan.show.report;

import handspan.show.chart.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where sheets and reports are put down: in a folder that is there, whole or not at all. */
final class SheetFile {
    private SheetFile() {}

    /**
     * Writes: first beside the file, then into its place.
     *
     * @param file replaced if it is there; its folder must exist
     * @throws IOException when the file cannot be written
     */
    static void write(Path file, WholeFile.Content content) throws IOException {
        Path whole = file.toAbsolutePath();
        Path folder = whole.resolveSibling(".").normalize();
        if (!Files.isDirectory(folder)) {
            throw new IOException(
                    file + " cannot be written: there is no folder " + folder + "; make it, or name another");
        }
        if (Files.isDirectory(whole)) {
            throw new IOException(file + " cannot be written: it is a folder; name a file in it");
        }
        WholeFile.write(whole, content);
    }
}
