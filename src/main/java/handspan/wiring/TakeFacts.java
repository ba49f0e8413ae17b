package handspan.wiring;

import handspan.number.units.Figures;
import handspan.outside.take.TakeFile;
import handspan.outside.take.TakeHeader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;

/** What a recording says of itself without being read through. */
public final class TakeFacts {
    private static final double BYTES_PER_KB = 1000;

    private TakeFacts() {}

    /** Of which instrument, from where, how large; for one that can't be read, why. */
    public static String words(Path file) {
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            TakeHeader header = take.header();
            double kb = Files.size(file) / BYTES_PER_KB;
            String size = kb < BYTES_PER_KB ? Figures.text(kb, 0) + " kB" : Figures.text(kb / BYTES_PER_KB, 1) + " MB";
            return (header.instrument().isEmpty() ? "" : header.instrument() + ", ")
                    + (header.source().isEmpty() ? "" : "from " + header.source() + ", ")
                    + size;
        } catch (IOException e) {
            return String.valueOf(e.getMessage());
        }
    }
}
