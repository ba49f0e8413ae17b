package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Reports of all kinds of rooms on both papers, read back; PDFs and some pictures stay in {@code target/pictures}. */
class ReportPdfTest {
    private static final Path FOLDER = Path.of("target", "pictures");
    private static final int DPI = 100;

    /** Of numbers in a PDF, mm and points. */
    private static final double ROUNDING = 0.01;

    /** What home printers may leave white (common practice, from memory: 3 to 6 mm; more than that), mm. */
    private static final double MARGIN_MM = 10;

    /** Smallest letters of tables and charts, points. */
    private static final double LEAST_POINTS = 6;

    /** Rooms whose pages become pictures to be looked at; drawing them takes longest. */
    private static final Set<String> DRAWN = Set.of("saltmill-hall", "Fennel Loft", "sixty notes");

    private static final List<Print> PRINTS = printAll();

    /** A printed report, read back. */
    record Print(String name, Paper paper, RoomReport report, Path pdf, int said, List<PrintedPage> pages) {
        @Override
        public String toString() {
            return name + " on " + paper.word();
        }
    }

    private static List<Print> printAll() {
        try {
            Files.createDirectories(FOLDER);
            List<Print> prints = new ArrayList<>();
            for (Map.Entry<String, RoomReport> room : ReportRooms.allReports().entrySet()) {
                for (Paper paper : Paper.values()) {
                    prints.add(print(room.getKey(), paper, room.getValue()));
                }
            }
            return prints;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Print print(String name, Paper paper, RoomReport report) throws IOException {
        String base = "report-" + name.replaceAll("[^A-Za-z0-9]+", "-") + "-" + paper.word();
        Path pdf = FOLDER.resolve(base + ".pdf");
        int pages = ReportFile.of(pdf).write(report, paper);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            if (!DRAWN.contains(name)) {
                return new Print(name, paper, report, pdf, pages, PrintedPage.all(pdf));
            }
            PDFRenderer renderer = new PDFRenderer(document);
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                Path png = FOLDER.resolve(base + "-" + (i + 1) + ".png");
                ImageIO.write(renderer.renderImageWithDPI(i, DPI), "png", png.toFile());
            }
        }
        return new Print(name, paper, report, pdf, pages, PrintedPage.all(pdf));
    }

    static List<Print> prints() {
        return PRINTS;
    }

    @ParameterizedTest
    @MethodSource("prints")
    void aReportHasTwoToFourPages(Print print) {
        assertTrue(print.pages.size() >= 2 && print.pages.size() <= 4, print.pages.size() + " pages");
        assertEquals(print.pages.size(), print.said);
    }

    /** A4 is 210 x 297 mm (ISO 216:2007); US Letter is 8.5 x 11 inches of 25.4 mm: 215.9 x 279.4. */
    @ParameterizedTest
    @MethodSource("prints")
    void itsPagesAreOfThePaper(Print print) {
        boolean letter = print.paper == Paper.LETTER;
        for (PrintedPage page : print.pages) {
            assertEquals(letter ? 215.9 : 210, page.widthMm, ROUNDING);
            assertEquals(letter ? 279.4 : 297, page.heightMm, ROUNDING);
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void nothingIsWrittenInTheMargins(Print print) {
        for (PrintedPage page : print.pages) {
            Rectangle2D inside = new Rectangle2D.Double(
                    MARGIN_MM, MARGIN_MM, page.widthMm - 2 * MARGIN_MM, page.heightMm - 2 * MARGIN_MM);
            for (PrintedPage.Words words : page.words) {
                assertTrue(inside.contains(words.box()), words::toString);
                assertTrue(words.points() >= LEAST_POINTS - ROUNDING, words::toString);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void noTextStandsOnAnother(Print print) {
        for (PrintedPage page : print.pages) {
            for (int i = 0; i < page.words.size(); i++) {
                for (int j = 0; j < i; j++) {
                    Rectangle2D both = page.words
                            .get(i)
                            .box()
                            .createIntersection(page.words.get(j).box());
                    // boxes reach from capitals to descenders: lines of text may share a hair
                    assertFalse(
                            both.getWidth() > 0.3 && both.getHeight() > 0.6,
                            page.words.get(i) + " on " + page.words.get(j));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void chartsAreLinesAndNotPictures(Print print) {
        int strokes = 0;
        for (PrintedPage page : print.pages) {
            assertEquals(0, page.images);
            strokes += page.strokes.size();
            assertTrue(page.fonts.stream().allMatch(PrintedPage::isEmbedded), "fonts in the file");
        }
        assertTrue(strokes > 300, strokes + " lines");
    }

    @ParameterizedTest
    @MethodSource("prints")
    void eachPageSaysWhichItIs(Print print) {
        for (int i = 0; i < print.pages.size(); i++) {
            String number = (i + 1) + " of " + print.pages.size();
            assertTrue(
                    print.pages.get(i).words.stream()
                            .anyMatch(words -> words.text().equals(number)),
                    number);
        }
    }

    @Test
    void theSameReportMakesTheSameBytes() throws IOException {
        Print print = PRINTS.get(0);
        byte[] once = Files.readAllBytes(print.pdf);
        ReportFile.of(print.pdf).write(print.report, print.paper);
        assertArrayEquals(once, Files.readAllBytes(print.pdf));
    }

    /** All that the report says stands on paper, but for names that are cut short. */
    @ParameterizedTest
    @MethodSource("prints")
    void allThatIsSaidStandsOnPaper(Print print) throws IOException {
        if (print.name.startsWith("long")) {
            return;
        }
        String paper;
        try (PDDocument document = Loader.loadPDF(print.pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(false);
            paper = stripper.getText(document).replaceAll("\\s+", "");
        }
        for (String words : RoomReportTest.said(print.report)) {
            assertTrue(paper.contains(words.replaceAll("\\s+", "")), words);
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void noHeadingAndNoTableHeadStandsAtAPagesFoot(Print print) {
        List<String> heads = print.report.parts().stream()
                .filter(ReportPart.Heading.class::isInstance)
                .map(part -> ((ReportPart.Heading) part).words())
                .toList();
        for (PrintedPage page : print.pages) {
            double lowest = page.words.stream()
                    .filter(words -> words.box().getMaxY() < page.heightMm - 18)
                    .mapToDouble(words -> words.box().getMaxY())
                    .max()
                    .orElseThrow();
            for (PrintedPage.Words words : page.words) {
                assertFalse(heads.contains(words.text()) && words.box().getMaxY() > lowest - 1, words::toString);
            }
        }
    }
}
