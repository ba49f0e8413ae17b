package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.Tuning;
import handspan.show.chart.PitchLadderChart;
import handspan.show.chart.Theme;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VectorPdfTest {
    /** Of numbers in a PDF, mm. */
    private static final double ROUNDING_MM = 0.001;

    @TempDir
    Path folder;

    private Path pdf() {
        return folder.resolve("drawing.pdf");
    }

    private interface Content {
        void into(VectorPdf pdf) throws IOException;
    }

    private PrintedPage printed(Content content) throws IOException {
        try (VectorPdf pdf = new VectorPdf("a drawing")) {
            content.into(pdf);
            pdf.write(pdf());
        }
        return PrintedPage.all(pdf()).get(0);
    }

    @Test
    void aMillimetreDrawnIsAMillimetreOnPaper() throws IOException {
        PrintedPage page = printed(pdf -> pdf.page(Paper.A4.portrait(), drawing -> {
            drawing.setPaint(Color.BLACK);
            drawing.setStroke(new java.awt.BasicStroke(0.5f));
            drawing.draw(new Line2D.Double(20, 30, 120, 30));
        }));
        PrintedPage.Stroke line = page.strokes.get(0);
        assertEquals(20, line.x1(), ROUNDING_MM);
        assertEquals(30, line.y1(), ROUNDING_MM);
        assertEquals(100, line.length(), ROUNDING_MM);
        assertEquals(0.5, line.thickMm(), ROUNDING_MM);
    }

    /** The way a report's charts will go. */
    @Test
    void aChartComesOutAsVectorsAndEmbeddedText() throws IOException {
        Tuning tuning = Samples.tuning("chromatic", "A", Samples.TWELVE, 57, 81, Direction.HIGH_FAR, 0);
        JFreeChart chart = PitchLadderChart.of(Samples.room(100, 500, tuning), tuning, Theme.LIGHT);
        Rectangle2D place = new Rectangle2D.Double(20, 40, 170, 100);
        PrintedPage page =
                printed(pdf -> pdf.page(Paper.A4.portrait(), drawing -> ChartOnPage.draw(drawing, place, chart)));
        assertEquals(0, page.images, "no pictures");
        assertTrue(page.strokes.size() > 50, page.strokes.size() + " lines");
        assertTrue(page.fonts.stream().allMatch(PrintedPage::isEmbedded), "fonts in the file");
        PrintedPage.Words across = words(page, chart.getXYPlot().getDomainAxis().getLabel());
        PrintedPage.Words upwards = words(page, chart.getXYPlot().getRangeAxis().getLabel());
        assertTrue(across.upright() && !upwards.upright());
        assertEquals(place.getCenterX(), across.middle(), 15);
        for (PrintedPage.Words each : page.words) {
            assertTrue(each.points() > 7, each::toString);
            assertTrue(place.contains(each.box().getCenterX(), each.box().getCenterY()), each::toString);
        }
        assertTrue(page.strokes.stream().allMatch(s -> place.contains(s.x1(), s.y1())));
    }

    private static PrintedPage.Words words(PrintedPage page, @Nullable String text) {
        return page.words.stream()
                .filter(words -> words.text().equals(text))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameDrawingMakesTheSameBytes() throws IOException {
        Content content = pdf -> pdf.page(Paper.LETTER.landscape(), drawing -> {
            drawing.setPaint(new Color(200, 0, 0, 90));
            drawing.setFont(new Font(Font.SERIF, Font.BOLD, 9));
            drawing.drawString("A3 Bb3 F#4 E4-50 \u2013 100 %", 20, 20);
        });
        printed(content);
        byte[] once = Files.readAllBytes(pdf());
        printed(content);
        assertArrayEquals(once, Files.readAllBytes(pdf()));
    }

    /** Text in whatever font is asked for becomes text, in the face that is embedded. */
    @Test
    void textCanBeReadOut() throws IOException {
        PrintedPage page = printed(pdf -> pdf.page(Paper.A4.landscape(), drawing -> {
            drawing.setPaint(Color.BLACK);
            drawing.setFont(new Font(Font.MONOSPACED, Font.ITALIC, 7));
            drawing.drawString("gr\u00fcn \u0416\u03a9", 20, 20);
        }));
        try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
            assertTrue(new PDFTextStripper().getText(document).contains("gr\u00fcn \u0416\u03a9"));
            assertEquals("a drawing", document.getDocumentInformation().getTitle());
        }
        assertTrue(
                page.fonts.get(0).getName().endsWith("+LiberationSans"),
                page.fonts.get(0).getName());
    }

    /** What the face lacks is drawn by the machine's own fonts, and breaks nothing. */
    @Test
    void charactersThatTheFaceLacksBecomeShapes() throws IOException {
        PrintedPage page = printed(pdf -> pdf.page(Paper.A4.landscape(), drawing -> {
            drawing.setPaint(Color.BLACK);
            drawing.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 7));
            drawing.drawString("\u90e8\u5c4b", 20, 20);
        }));
        assertEquals(List.of(), page.words);
        assertTrue(page.fills > 0);
    }

    /** ISO 32000-1:2008, 12.2, table 150: None means no scaling when printed. */
    @Test
    void viewersAreAskedToPrintAtFullSize() throws IOException {
        printed(pdf -> pdf.page(Paper.A4.landscape(), drawing -> {}));
        try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
            assertEquals(
                    "None", document.getDocumentCatalog().getViewerPreferences().getPrintScaling());
        }
    }

    @Test
    void aFileTakesThePlaceOfAnOlderOneAndLeavesNothingBeside() throws IOException {
        Files.writeString(pdf(), "an older file");
        printed(pdf -> pdf.page(Paper.A4.landscape(), drawing -> {}));
        try (var files = Files.list(folder)) {
            assertEquals(List.of(pdf()), files.toList());
        }
    }

    @Test
    void aMissingFolderIsNamedAndAFolderIsNoFile() throws IOException {
        Path nowhere = folder.resolve("nowhere").resolve("strip.pdf");
        try (VectorPdf pdf = new VectorPdf("a drawing")) {
            IOException missing = assertThrows(IOException.class, () -> pdf.write(nowhere));
            assertTrue(String.valueOf(missing.getMessage()).contains("there is no folder"), missing.getMessage());
            IOException isFolder = assertThrows(IOException.class, () -> pdf.write(folder));
            assertTrue(String.valueOf(isFolder.getMessage()).contains("it is a folder"), isFolder.getMessage());
        }
    }
}
