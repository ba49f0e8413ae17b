package handspan.show.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Prints a note strip at full size: as many sheets on their side as its length asks for, each with a bar of 100 mm to
 * check the printer by.
 */
public final class StripPdf {
    /** From the last mark to the strip's end, mm. */
    private static final double TAIL_MM = 6;

    /** Least that neighbouring sheets share on either side of their join, mm. Joins then lie between two figures. */
    private static final double LEAST_LAP_MM = 15;

    /** What is added to that at a time, mm. */
    private static final double MORE_LAP_MM = 10;

    private StripPdf() {}

    /**
     * What was printed.
     *
     * @param pages how many sheets
     * @param marks notes or levels on the strip
     * @param named how many of them bear their names
     * @param lengthMm of the strip, from the sensor
     */
    public record Printed(int pages, int marks, int named, double lengthMm) {}

    /**
     * Prints.
     *
     * @param strip what
     * @param paper on which
     * @param pdf the file, replaced if it is there; its folder must exist
     * @throws IOException when the file cannot be written
     */
    public static Printed write(NoteStrip strip, Paper paper, Path pdf) throws IOException {
        try (VectorPdf document = new VectorPdf(StripWords.title(strip) + ", " + strip.source())) {
            List<NameRows.Name> names = NameRows.place(strip.marks(), document.font());
            double lengthMm = lengthMm(strip, names);
            double usableMm = paper.landscape().widthMm() - 2 * StripFrame.LEFT_MM;
            List<StripPage> pages = StripPage.of(lengthMm, usableMm, lapMm(names));
            for (StripPage page : pages) {
                document.page(paper.landscape(), graphics -> {
                    StripFrame frame = new StripFrame(page, new Pen(graphics, document.font()));
                    new StripSheet(strip, names, paper, frame).draw();
                });
            }
            document.write(pdf);
            return new Printed(pages.size(), strip.marks().size(), names.size(), lengthMm);
        }
    }

    /** Whole mm, so that the end falls on a line of the scale. */
    private static double lengthMm(NoteStrip strip, List<NameRows.Name> names) {
        double lastNameMm =
                names.stream().mapToDouble(NameRows.Name::rightMm).max().orElse(0);
        return Math.ceil(Math.max(strip.zone().farMm() + TAIL_MM, lastNameMm + 1));
    }

    /** So much that a name which crosses a join is whole on both sheets. */
    private static double lapMm(List<NameRows.Name> names) {
        double widestMm = names.stream()
                .mapToDouble(name -> name.rightMm() - name.leftMm())
                .max()
                .orElse(0);
        double more = Math.ceil(Math.max(0, widestMm + 1 - LEAST_LAP_MM) / MORE_LAP_MM);
        return LEAST_LAP_MM + more * MORE_LAP_MM;
    }
}
