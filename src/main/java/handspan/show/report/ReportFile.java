package handspan.show.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Where a report goes.
 *
 * @param file replaced if it is there; its folder must exist
 * @param format what its name asks for
 */
public record ReportFile(Path file, Format format) {
    /** What a report can be written as. */
    public enum Format {
        /** Pages. */
        PDF,
        /** One page for a browser. */
        HTML;

        /** The word, and how a file's name ends. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A file of a kind that can be written.
     *
     * @throws IllegalArgumentException when its name ends otherwise
     */
    public static ReportFile of(Path file) {
        for (Format format : Format.values()) {
            if (file.toString().toLowerCase(Locale.ROOT).endsWith("." + format.word())) {
                return new ReportFile(file, format);
            }
        }
        throw new IllegalArgumentException("report '" + file + "' (a name that ends in .pdf or .html): name it so");
    }

    /**
     * Writes it: there whole or not at all.
     *
     * @param paper of a PDF
     * @return how many pages it has; 1 for HTML
     * @throws IOException when the file cannot be written
     */
    public int write(RoomReport report, Paper paper) throws IOException {
        return switch (format) {
            case PDF -> ReportPdf.write(report, paper, file);
            case HTML -> {
                ReportHtml.write(report, file);
                yield 1;
            }
        };
    }
}
