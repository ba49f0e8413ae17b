package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.tuning.Direction;
import handspan.music.tuning.JustIntonation;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Temperament;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.Zone;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A strip is read back from its PDF, and every line on it is measured. */
class StripSizeTest {
    /** Of a line in the PDF: what a good ruler shows, mm. */
    private static final double LINE_MM = 0.1;

    /** Of a line in a picture of 300 dots an inch, whose dots are 0.085 mm wide, mm. */
    private static final double PICTURE_MM = 0.2;

    private static final int DPI = 300;
    private static final Direction FAR = Direction.HIGH_FAR;
    private static final Direction NEAR = Direction.HIGH_NEAR;

    @TempDir
    Path folder;

    /** A place that a line of a strip should have. */
    private record Line(String name, double mm) {}

    static Stream<Arguments> strips() {
        Tuning chromatic = Samples.tuning("chromatic", "A", Samples.TWELVE, 57, 81, FAR, 0);
        return Stream.of(
                        Arguments.of(100.0, 500.0, chromatic),
                        Arguments.of(60.0, 180.0, chromatic),
                        Arguments.of(80.0, 980.0, chromatic),
                        Arguments.of(0.0, 2000.0, chromatic),
                        Arguments.of(
                                30.0, 80.0, Samples.tuning("minor-pentatonic", "A", Samples.TWELVE, 57, 69, FAR, 0)),
                        Arguments.of(80.0, 230.0, Samples.tuning("major", "Bb", Samples.TWELVE, 58, 70, NEAR, 0)),
                        Arguments.of(15.0, 240.0, Samples.tuning("chromatic", "D", Samples.TWELVE, 50, 74, FAR, 2)),
                        Arguments.of(90.5, 612.25, Samples.tuning("blues", "F#", Samples.TWELVE, 54, 71, NEAR, -3)),
                        Arguments.of(104.0, 498.0, Samples.tuning("rast", "D", Samples.TWELVE, 62, 74, FAR, 0)),
                        Arguments.of(104.0, 498.0, Samples.tuning("bayati", "D", Samples.TWELVE, 62, 74, NEAR, 1)),
                        Arguments.of(120.0, 420.0, Samples.tuning("major", "Eb", new JustIntonation(), 51, 63, FAR, 0)),
                        Arguments.of(
                                90.0,
                                290.0,
                                Samples.tuning("chromatic", "A", Temperament.parse("31-equal"), 57, 81, FAR, 0)))
                .flatMap(strip -> Stream.of(Paper.values())
                        .map(paper -> Arguments.of(strip.get()[0], strip.get()[1], strip.get()[2], paper)));
    }

    @ParameterizedTest
    @MethodSource("strips")
    void everyNoteHasItsLineWhereTheMapHasIt(double nearMm, double farMm, Tuning tuning, Paper paper)
            throws IOException {
        Path pdf = folder.resolve("strip.pdf");
        StripPdf.Printed printed =
                StripPdf.write(NoteStrip.ofPitch(Samples.room(nearMm, farMm, tuning), tuning), paper, pdf);
        List<Line> expected = inverted(nearMm, farMm, tuning);
        assertEquals(expected.size(), printed.marks());
        assertLines(expected, PrintedPage.all(pdf));
        assertPicture(expected, pdf);
    }

    @Test
    void tuningsAndZonesAtRandomComeOutAsWell() throws IOException {
        Random random = new Random(20);
        for (int i = 0; i < 24; i++) {
            int low = 30 + random.nextInt(40);
            Tuning tuning = Samples.tuning(
                            Scales.all()
                                    .get(random.nextInt(Scales.all().size()))
                                    .name(),
                            List.of("C", "Eb", "F#", "A", "Bb").get(random.nextInt(5)),
                            random.nextInt(3) == 0 ? new JustIntonation() : Samples.TWELVE,
                            low,
                            low + 12 + random.nextInt(25),
                            random.nextBoolean() ? FAR : NEAR,
                            random.nextDouble() * 6 - 3)
                    .shifted(random.nextInt(25) - 12, random.nextInt(101) - 50);
            double nearMm = random.nextInt(150);
            double farMm = nearMm + 50 + random.nextInt(700);
            Path pdf = folder.resolve("strip.pdf");
            Paper paper = random.nextBoolean() ? Paper.A4 : Paper.LETTER;
            StripPdf.write(NoteStrip.ofPitch(Samples.room(nearMm, farMm, tuning), tuning), paper, pdf);
            assertLines(inverted(nearMm, farMm, tuning), PrintedPage.all(pdf));
        }
    }

    @Test
    void theScaleCountsMillimetresFromTheSensorsEdge() throws IOException {
        Tuning tuning = Samples.tuning("chromatic", "A", Samples.TWELVE, 57, 81, FAR, 0);
        Path pdf = folder.resolve("strip.pdf");
        StripPdf.write(NoteStrip.ofPitch(Samples.room(100, 500, tuning), tuning), Paper.LETTER, pdf);
        List<PrintedPage> pages = PrintedPage.all(pdf);
        double[] offsets = offsetsMm(pages);
        int figures = 0;
        for (int i = 0; i < pages.size(); i++) {
            PrintedPage page = pages.get(i);
            double offset = offsets[i];
            double top = page.frameTop();
            for (PrintedPage.Words words : page.words) {
                boolean onScale = words.text().matches("\\d+0") && words.box().getMaxY() < top + 10;
                if (onScale && words.box().getMinY() > top) {
                    double mm = Double.parseDouble(words.text());
                    assertEquals(mm, words.middle() + offsets[i], LINE_MM);
                    figures++;
                }
            }
            List<Double> marks = page.strokes.stream()
                    .filter(s -> s.isVertical() && Math.abs(s.top() - top) < 0.01 && s.length() < 6)
                    .map(s -> s.x1() + offset)
                    .toList();
            assertEquals(page.frameRight() - page.frameLeft() + 1, marks.size(), 1.0);
            marks.forEach(mm -> assertEquals(Math.rint(mm), mm, LINE_MM));
        }
        assertTrue(figures >= 50, figures + " figures on 500 mm");
    }

    @Test
    void greyMarksStandWhereNotesMeetAndTheFigureBetweenIsTheirDistance() throws IOException {
        Tuning tuning = Samples.tuning("harmonics-8-to-16", "C", Samples.TWELVE, 60, 72, NEAR, -1);
        Path pdf = folder.resolve("strip.pdf");
        StripPdf.write(NoteStrip.ofPitch(Samples.room(40, 240, tuning), tuning), Paper.A4, pdf);
        PrintedPage page = PrintedPage.all(pdf).get(0);
        ScaleLadder ladder = tuning.ladder();
        Zone zone = new Zone(40, 240, 0, 0);
        List<Double> meetings = new ArrayList<>(List.of(40.0, 240.0));
        for (int note = 1; note < ladder.size(); note++) {
            double halfWay = (ladder.key(note - 1) + ladder.key(note)) / 2;
            meetings.add(halved(40, 240, mm -> tuning.curve().key(zone.place01(mm)), halfWay));
        }
        meetings.sort(null);
        List<Double> grey = page.strokes.stream()
                .filter(s -> s.isVertical() && !s.black() && s.bottom() > page.frameBottom() - 0.01)
                .map(s -> s.x1() - page.frameLeft())
                .toList();
        for (double mm : meetings) {
            assertTrue(grey.stream().anyMatch(found -> Math.abs(found - mm) < LINE_MM), "a mark at " + mm + " mm");
        }
        for (int i = 1; i < meetings.size(); i++) {
            double middle = page.frameLeft() + (meetings.get(i - 1) + meetings.get(i)) / 2;
            String figure = handspan.number.units.Figures.text(meetings.get(i) - meetings.get(i - 1), 1);
            assertTrue(
                    page.words.stream()
                            .anyMatch(w -> w.text().equals(figure) && Math.abs(w.middle() - middle) < LINE_MM),
                    figure);
        }
        assertTrue(page.words.stream().anyMatch(w -> w.text().equals("near end 40.0 mm: high")));
        assertTrue(page.words.stream().anyMatch(w -> w.text().equals("low: far end 240.0 mm")));
    }

    /** By hand: 24 semitones on 400 mm are 16.67 mm each; A4 is the twelfth, C4 the third from A3. */
    @Test
    void evenSemitonesLieWhereTheyDoByHand() {
        Tuning tuning = Samples.tuning("chromatic", "A", Samples.TWELVE, 57, 81, FAR, 0);
        NoteStrip strip = NoteStrip.ofPitch(Samples.room(100, 500, tuning), tuning);
        assertEquals(100, mm(strip, "A3"), 1e-9);
        assertEquals(150, mm(strip, "C4"), 1e-9);
        assertEquals(300, mm(strip, "A4"), 1e-9);
        assertEquals(500, mm(strip, "A5"), 1e-9);
        assertEquals(400 / 24.0, strip.cells().get(7).widthMm(), 1e-9);
        assertEquals(200 / 24.0, strip.cells().get(0).widthMm(), 1e-9);
    }

    /**
     * The just third 5/4 is 386.31 cents, the just fifth 3/2 701.96 cents (H. von Helmholtz, On the Sensations of Tone,
     * tr. A. J. Ellis, 1885, Appendix XX, section D, from memory).
     */
    @Test
    void justNotesLieByTheirRatios() {
        Tuning tuning = Samples.tuning("major", "C", new JustIntonation(), 60, 72, FAR, 0);
        NoteStrip strip = NoteStrip.ofPitch(Samples.room(100, 400, tuning), tuning);
        double mmPerCent = 300 / 1200.0;
        assertEquals(100 + 386.31 * mmPerCent, strip.marks().get(2).mm(), 0.01 * mmPerCent);
        assertEquals(100 + 701.96 * mmPerCent, strip.marks().get(4).mm(), 0.01 * mmPerCent);
    }

    @Test
    void levelsLieWhereTheCurveHasThem() throws IOException {
        Tuning tuning = Tuning.usual();
        for (LevelCurve curve : List.of(
                LevelCurve.USUAL, new LevelCurve(-50, -4, 0.2, false, 1), new LevelCurve(-61.5, 0, 0, true, 1))) {
            RoomProfile room = Samples.room(100, 500, tuning, curve);
            Zone zone = java.util.Objects.requireNonNull(room.room().level()).zone();
            List<Line> expected = new ArrayList<>();
            IntStream.rangeClosed(-20, 0)
                    .mapToDouble(step -> 6 * step)
                    .filter(levelDb -> levelDb > curve.floorDb() && levelDb < curve.ceilingDb())
                    .forEach(levelDb -> expected.add(level(zone, curve, levelDb, "" + Math.round(levelDb))));
            double floorDb = curve.floorDb() + 1e-9;
            expected.add(
                    level(zone, curve, floorDb, curve.floorDb() == -61.5 ? "-61.5 dB" : Math.round(floorDb) + " dB"));
            expected.add(level(zone, curve, curve.ceilingDb() - 1e-9, Math.round(curve.ceilingDb()) + " dB"));
            if (curve.knee01() > 0) {
                expected.add(new Line("silent", curve.loudFar() ? zone.nearMm() : zone.farMm()));
            }
            Path pdf = folder.resolve("level.pdf");
            StripPdf.write(NoteStrip.ofLevel(room), Paper.A4, pdf);
            assertLines(expected, PrintedPage.all(pdf));
        }
    }

    @Test
    void theBarIs100MmOnEverySheetAndOnItsPicture() throws IOException {
        Tuning tuning = Samples.tuning("chromatic", "A", Samples.TWELVE, 57, 81, FAR, 0);
        for (Paper paper : Paper.values()) {
            Path pdf = folder.resolve("strip.pdf");
            StripPdf.write(NoteStrip.ofPitch(Samples.room(80, 980, tuning), tuning), paper, pdf);
            List<PrintedPage> pages = PrintedPage.all(pdf);
            for (int i = 0; i < pages.size(); i++) {
                PrintedPage page = pages.get(i);
                PrintedPage.Stroke bar = page.strokes.stream()
                        .filter(s -> s.isHorizontal() && s.top() > page.frameBottom() + 10)
                        .findFirst()
                        .orElseThrow();
                assertEquals(100, bar.length(), LINE_MM);
                // its end marks reach beyond it
                List<Double> ends = darkMm(picture(pdf, i), bar.top() - 2, page);
                assertEquals(2, ends.size());
                assertEquals(100, ends.get(1) - ends.get(0), LINE_MM);
            }
        }
    }

    private static double mm(NoteStrip strip, String name) {
        return strip.marks().stream()
                .filter(mark -> mark.name().equals(name))
                .findFirst()
                .orElseThrow()
                .mm();
    }

    /** The notes' places, found by halving from the map alone: from mm to place to key. */
    private static List<Line> inverted(double nearMm, double farMm, Tuning tuning) {
        Zone zone = new Zone(nearMm, farMm, 0, 0);
        PitchCurve curve = tuning.curve();
        ScaleLadder ladder = tuning.ladder();
        return IntStream.range(0, ladder.size())
                .mapToObj(note -> new Line(
                        tuning.noteName(ladder, note),
                        halved(nearMm, farMm, mm -> curve.key(zone.place01(mm)), ladder.key(note))))
                .toList();
    }

    private static Line level(Zone zone, LevelCurve curve, double levelDb, String name) {
        double gain = Math.pow(10, levelDb / 20);
        return new Line(name, halved(zone.nearMm(), zone.farMm(), mm -> curve.gain01(zone.place01(mm)), gain));
    }

    /** Where a function that runs one way between two ends has a value. */
    private static double halved(double from, double to, DoubleUnaryOperator function, double value) {
        boolean rises = function.applyAsDouble(to) > function.applyAsDouble(from);
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (function.applyAsDouble(middle) < value == rises) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** How far right of the first sheet's frame each sheet begins, by the dashes alone. */
    private static double[] offsetsMm(List<PrintedPage> pages) {
        double[] offsets = new double[pages.size()];
        offsets[0] = -pages.get(0).frameLeft();
        for (int i = 1; i < offsets.length; i++) {
            List<Double> before = pages.get(i - 1).joins();
            double here = pages.get(i).joins().get(0);
            offsets[i] = offsets[i - 1] + before.get(before.size() - 1) - here;
        }
        return offsets;
    }

    /** Every expected line is there, on every sheet that shows its place, with its name above it; and no other. */
    private static void assertLines(List<Line> expected, List<PrintedPage> pages) {
        double[] offsets = offsetsMm(pages);
        for (int i = 0; i < pages.size(); i++) {
            PrintedPage page = pages.get(i);
            List<PrintedPage.Stroke> lines = page.noteLines();
            int shown = 0;
            for (Line line : expected) {
                double x = line.mm - offsets[i];
                if (x < page.frameLeft() || x > page.frameRight()) {
                    continue;
                }
                shown++;
                double away = lines.stream()
                        .mapToDouble(found -> Math.abs(found.x1() - x))
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
                assertEquals(0, away, LINE_MM, line.name + " at " + line.mm + " mm on sheet " + (i + 1));
                assertNamed(line, x, page, lines);
            }
            assertEquals(shown, lines.size(), "lines on sheet " + (i + 1));
        }
        assertTrue(
                Stream.of(expected.toArray(new Line[0]))
                        .allMatch(line -> IntStream.range(0, pages.size())
                                .anyMatch(i ->
                                        line.mm - offsets[i] <= pages.get(i).frameRight())),
                "all notes on a sheet");
    }

    /** A line that is longer than those of unnamed notes leads to its name. */
    private static void assertNamed(Line line, double x, PrintedPage page, List<PrintedPage.Stroke> lines) {
        PrintedPage.Stroke stroke = lines.stream()
                .min(java.util.Comparator.comparingDouble(found -> Math.abs(found.x1() - x)))
                .orElseThrow();
        boolean cutOff = x - page.frameLeft() < 12 || page.frameRight() - x < 12;
        if (stroke.length() > 9.5 && !cutOff) {
            assertTrue(
                    page.words.stream()
                            .anyMatch(words -> words.text().equals(line.name)
                                    && Math.abs(words.middle() - x) < 0.3
                                    && words.box().getMaxY() < stroke.top() + 1.5
                                    && words.box().getMaxY() > stroke.top() - 3),
                    () -> line.name + " above its line at " + line.mm + " mm");
        }
    }

    private static BufferedImage picture(Path pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFRenderer(document).renderImageWithDPI(page, DPI);
        }
    }

    /** Middles of the dark stretches of a row of a picture, mm from its left edge. */
    private static List<Double> darkMm(BufferedImage picture, double yMm, PrintedPage page) {
        int y = (int) Math.round(yMm / page.heightMm * picture.getHeight());
        double dotMm = page.widthMm / picture.getWidth();
        List<Double> middles = new ArrayList<>();
        int from = -1;
        for (int x = 0; x <= picture.getWidth(); x++) {
            boolean dark = x < picture.getWidth() && (picture.getRGB(x, y) & 0xFF) < 128;
            if (dark && from < 0) {
                from = x;
            } else if (!dark && from >= 0) {
                middles.add((from + x) / 2.0 * dotMm);
                from = -1;
            }
        }
        return middles;
    }

    /** The lines again, as a printer's dots show them: 6 mm above the lower cut, where there are no grey marks. */
    private static void assertPicture(List<Line> expected, Path pdf) throws IOException {
        List<PrintedPage> pages = PrintedPage.all(pdf);
        double[] offsets = offsetsMm(pages);
        for (int i = 0; i < pages.size(); i++) {
            PrintedPage page = pages.get(i);
            List<Double> dark = darkMm(picture(pdf, i), page.frameBottom() - 6, page);
            for (Line line : expected) {
                double x = line.mm - offsets[i];
                boolean alone = page.joins().stream().allMatch(join -> Math.abs(join - x) > 1)
                        && x > page.frameLeft() + 0.7
                        && x < page.frameRight() - 0.7;
                if (alone) {
                    double away = dark.stream()
                            .mapToDouble(found -> Math.abs(found - x))
                            .min()
                            .orElse(Double.POSITIVE_INFINITY);
                    assertEquals(0, away, PICTURE_MM, line.name + " in the picture of sheet " + (i + 1));
                }
            }
        }
    }
}
