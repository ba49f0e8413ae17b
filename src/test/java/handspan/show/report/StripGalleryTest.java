package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.tuning.Direction;
import handspan.music.tuning.JustIntonation;
import handspan.music.tuning.Temperament;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Strips of all kinds on both papers, read back; PDFs and pictures stay in {@code target/pictures} to be looked at. */
class StripGalleryTest {
    private static final Path FOLDER = Path.of("target", "pictures");
    private static final int DPI = 150;

    private static final Direction FAR = Direction.HIGH_FAR;
    private static final Direction NEAR = Direction.HIGH_NEAR;

    /** Of numbers in a PDF, mm and points. */
    private static final double ROUNDING = 0.01;

    /** What home printers may leave white (common practice, from memory: 3 to 6 mm; more than that), mm. */
    private static final double MARGIN_MM = 10;

    /** Smallest letters anywhere on a sheet, points. */
    private static final double LEAST_POINTS = 7;

    private static final List<Print> PRINTS = printAll();

    private static Map<String, NoteStrip> strips() throws ProfileException {
        RoomProfile hall = new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
        Map<String, NoteStrip> strips = new LinkedHashMap<>();
        strips.put("saltmill-hall", NoteStrip.ofPitch(hall, hall.tunings().get(0)));
        strips.put("saltmill-hymn", NoteStrip.ofPitch(hall, hall.tuning("hymn")));
        Tuning chromatic = Samples.tuning("chromatic", "A", Samples.TWELVE, 57, 81, FAR, 0);
        strips.put("chromatic-400", strip(100, 500, chromatic));
        strips.put("chromatic-120", strip(60, 180, chromatic));
        strips.put("chromatic-50", strip(5, 55, chromatic));
        strips.put("chromatic-900", strip(80, 980, chromatic));
        strips.put(
                "pentatonic-120",
                strip(60, 180, Samples.tuning("minor-pentatonic", "A", Samples.TWELVE, 57, 69, FAR, 0)));
        strips.put("high-near", strip(80, 230, Samples.tuning("major", "Bb", Samples.TWELVE, 58, 70, NEAR, 0)));
        strips.put("warped", strip(15, 240, Samples.tuning("chromatic", "D", Samples.TWELVE, 50, 74, FAR, 2)));
        strips.put(
                "rast",
                strip(
                        45,
                        245,
                        Samples.tuning("rast", "D", Samples.TWELVE, 62, 74, FAR, 0)
                                .shifted(3, -20)));
        strips.put("just-50", strip(30, 80, Samples.tuning("major", "Eb", new JustIntonation(), 51, 75, FAR, -1)));
        strips.put(
                "thirty-one",
                strip(90, 290, Samples.tuning("chromatic", "A", Temperament.parse("31-equal"), 45, 81, FAR, 0)));
        strips.put("ten-octaves", strip(50, 350, Samples.tuning("chromatic", "C", Samples.TWELVE, 0, 127, NEAR, -3)));
        strips.put("two-metres", strip(20, 2020, Samples.tuning("major", "G", Samples.TWELVE, 43, 79, NEAR, 1)));
        strips.put("level", NoteStrip.ofLevel(Samples.room(100, 500, chromatic)));
        strips.put(
                "level-near",
                NoteStrip.ofLevel(Samples.room(100, 500, chromatic, new LevelCurve(-50, -4, 0.2, false, 1))));
        return strips;
    }

    private static NoteStrip strip(double nearMm, double farMm, Tuning tuning) {
        return NoteStrip.ofPitch(Samples.room(nearMm, farMm, tuning), tuning);
    }

    /** A strip that was printed and read back. */
    private record Print(String name, NoteStrip strip, Paper paper, Path pdf, StripPdf.Printed printed) {
        @Override
        public String toString() {
            return name + " on " + paper.word();
        }
    }

    private static List<Print> printAll() {
        List<Print> prints = new ArrayList<>();
        try {
            Files.createDirectories(FOLDER);
            for (var entry : strips().entrySet()) {
                for (Paper paper : Paper.values()) {
                    Path pdf = FOLDER.resolve("strip-" + entry.getKey() + "-" + paper.word() + ".pdf");
                    StripPdf.Printed printed = StripPdf.write(entry.getValue(), paper, pdf);
                    prints.add(new Print(entry.getKey(), entry.getValue(), paper, pdf, printed));
                }
            }
        } catch (IOException | ProfileException e) {
            throw new IllegalStateException("strips that cannot be printed", e);
        }
        return prints;
    }

    static Stream<Print> prints() {
        return PRINTS.stream();
    }

    @ParameterizedTest
    @MethodSource("prints")
    void sheetsAreAsLargeAsTheirPaperAndDrawnWithinItsMargins(Print print) throws IOException {
        // ISO 216:2007: A4 is 210 x 297 mm; ANSI/ASME Y14.1: size A is 8.5 x 11 inches, of 25.4 mm (from memory)
        double longMm = print.paper == Paper.A4 ? 297 : 11 * 25.4;
        double shortMm = print.paper == Paper.A4 ? 210 : 8.5 * 25.4;
        List<PrintedPage> pages = PrintedPage.all(print.pdf);
        assertEquals(print.printed.pages(), pages.size());
        for (PrintedPage page : pages) {
            assertEquals(longMm, page.widthMm, ROUNDING);
            assertEquals(shortMm, page.heightMm, ROUNDING);
            Rectangle2D free =
                    new Rectangle2D.Double(MARGIN_MM, MARGIN_MM, longMm - 2 * MARGIN_MM, shortMm - 2 * MARGIN_MM);
            for (PrintedPage.Words words : page.words) {
                assertTrue(free.contains(words.box()), words::toString);
            }
            for (PrintedPage.Stroke stroke : page.strokes) {
                assertTrue(free.contains(stroke.x1(), stroke.y1()), stroke::toString);
                assertTrue(free.contains(stroke.x2(), stroke.y2()), stroke::toString);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void noWordsTouchOthersOrTheLinesOfNotes(Print print) throws IOException {
        for (PrintedPage page : PrintedPage.all(print.pdf)) {
            for (int i = 0; i < page.words.size(); i++) {
                PrintedPage.Words words = page.words.get(i);
                for (PrintedPage.Words other : page.words.subList(0, i)) {
                    assertFalse(words.box().intersects(other.box()), () -> words + " touches " + other);
                }
                for (PrintedPage.Stroke line : page.noteLines()) {
                    assertFalse(
                            words.box().intersectsLine(line.x1(), line.y1(), line.x2(), line.y2()),
                            () -> words + " touches " + line);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void lettersAreEmbeddedAndLargeEnough(Print print) throws IOException {
        for (PrintedPage page : PrintedPage.all(print.pdf)) {
            assertTrue(page.fonts.stream().allMatch(PrintedPage::isEmbedded), "fonts in the file");
            for (PrintedPage.Words words : page.words) {
                assertTrue(words.points() >= LEAST_POINTS - ROUNDING, words::toString);
            }
        }
    }

    /** Legible at arm's length where there is room: a name at 14 points is at most 12 mm wide without cents. */
    @ParameterizedTest
    @MethodSource("prints")
    void namesAreLargeWhereNotesAreWide(Print print) throws IOException {
        double narrowestMm = print.strip.cells().stream()
                .skip(1)
                .mapToDouble(NoteStrip.Cell::widthMm)
                .min()
                .orElse(0);
        if (narrowestMm > 14
                && print.strip.marks().stream().noneMatch(mark -> mark.name().contains("+"))) {
            for (PrintedPage page : PrintedPage.all(print.pdf)) {
                page.words.stream()
                        .filter(words -> Pattern.matches("[A-G][#b]?\\d", words.text()))
                        .forEach(words -> assertTrue(words.points() >= 14 - ROUNDING, words::toString));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("prints")
    void namesCanBeReadOutOfThePdfAsManyAsAreSaidToBeNamed(Print print) throws IOException {
        String text;
        try (PDDocument document = Loader.loadPDF(print.pdf.toFile())) {
            text = new PDFTextStripper().getText(document);
        }
        List<String> words = List.of(text.split("\\s+"));
        List<String> names = print.strip.marks().stream()
                .map(mark -> mark.name().replaceFirst(" dB", ""))
                .toList();
        long named = names.stream().filter(words::contains).count();
        assertTrue(named >= print.printed.named(), () -> named + " of " + print.printed);
        assertEquals(names.size(), print.printed.marks());
        int unnamed = print.printed.marks() - print.printed.named();
        assertEquals(unnamed > 0, text.contains(unnamed + " of " + names.size() + " have a line but no name"));
        assertTrue(text.contains("must measure 100 mm"));
        assertTrue(text.contains("this edge at the sensor"));
        assertTrue(text.contains("sheet " + print.printed.pages() + " of " + print.printed.pages()));
    }

    @ParameterizedTest
    @MethodSource("prints")
    void everySheetCanBeLookedAt(Print print) throws IOException {
        try (PDDocument document = Loader.loadPDF(print.pdf.toFile())) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                String name = print.pdf.getFileName().toString().replace(".pdf", "-" + (page + 1) + ".png");
                assertTrue(ImageIO.write(
                        new PDFRenderer(document).renderImageWithDPI(page, DPI),
                        "png",
                        FOLDER.resolve(name).toFile()));
            }
        }
    }
}
