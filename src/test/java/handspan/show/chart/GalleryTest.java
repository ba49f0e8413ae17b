package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.hand.smooth.Quickness;
import handspan.music.practice.Accuracy;
import handspan.music.practice.Asking;
import handspan.music.practice.PracticeRun;
import handspan.music.practice.Tally;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.budget.FeelBudget;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Draws every chart in both themes; the pictures stay in {@code target/pictures} to be looked at. */
class GalleryTest {
    private static final Path FOLDER = Path.of("target", "pictures");

    /** A picture of one line and one ground has fewer; text smoothing alone gives more. */
    private static final int LEAST_COLOURS = 40;

    private static Map<String, JFreeChart> charts(Theme theme) {
        var chromatic = Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE);
        var pentatonic = Samples.twoOctaves("minor-pentatonic", Direction.HIGH_NEAR, Snap.STEPS);
        Map<String, JFreeChart> charts = new LinkedHashMap<>();
        charts.put("raw", RawReadingsChart.of(Samples.raw(), theme));
        charts.put("map-chromatic", PitchLadderChart.of(Samples.granary(chromatic), chromatic, theme));
        charts.put("map-pentatonic", PitchLadderChart.of(Samples.granary(pentatonic), pentatonic, theme));
        charts.put(
                "ladder-chances",
                PitchLadderChart.of(Samples.granary(chromatic), chromatic, Samples.chances(chromatic, 0.03), theme));
        charts.put(
                "ladder-near",
                PitchLadderChart.of(Samples.granary(pentatonic), pentatonic, Samples.chances(pentatonic, 0.08), theme));
        charts.put("level-distance", LevelCurveChart.of(Samples.granary(chromatic), theme));
        charts.put("level-light", LevelCurveChart.of(Samples.boathouse(chromatic), theme));
        charts.put("steady-quick", steadyQuick(Samples.granary(chromatic), chromatic, theme));
        charts.put(
                "steady-quick-noisy", steadyQuick(Samples.attic(chromatic), chromatic.with(new Quickness(-1)), theme));
        charts.put("level-none", LevelCurveChart.of(Samples.attic(chromatic), theme));
        charts.put("map-wide", PitchLadderChart.of(Samples.attic(Samples.wide()), Samples.wide(), theme));
        charts.put("map-place", PitchLadderChart.of(Samples.shed(chromatic), chromatic, theme));
        charts.put("raw-nothing", RawReadingsChart.of(Samples.nothingSeen(), theme));
        charts.put("progress", ProgressChart.of("Mira", practice(), theme));
        charts.put("passage", PassageChart.of(Samples.passage(), pentatonic, theme));
        charts.put(
                "pitch-errors",
                PitchErrorChart.of(List.of(Samples.errors("what was played", 0)), List.of("invented"), theme));
        charts.put(
                "pitch-errors-two",
                PitchErrorChart.of(
                        List.of(Samples.errors("A", 0), Samples.errors("B", 30)), List.of("invented"), theme));
        return charts;
    }

    /** Invented: ten runs that get better, one of another kind among them, one in which nothing was reached. */
    private static List<PracticeRun> practice() {
        List<PracticeRun> runs = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            Accuracy accuracy = new Accuracy(3, 70 - 4.5 * i + 9 * (i % 2), 0.5, 9, 2.6 - 0.12 * i);
            Tally tally = i == 6
                    ? new Tally(20, 0, 0, Optional.empty(), List.of())
                    : new Tally(20, 20, 12 + i / 2, Optional.of(accuracy), List.of());
            Asking asking = i == 3 ? Asking.SOUND : Asking.NAME;
            runs.add(new PracticeRun("2026-01-01", "granary", "first", asking, false, tally));
        }
        return runs;
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyPictureHasTheAskedSizeAndSomethingOnIt(Theme theme) throws IOException {
        Files.createDirectories(FOLDER);
        for (var entry : charts(theme).entrySet()) {
            Path png = FOLDER.resolve(entry.getKey() + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png");
            ChartFile.write(entry.getValue(), FOLDER.resolve("small-" + png.getFileName()), 640, 400);
            ChartFile.write(entry.getValue(), png, ChartFile.USUAL_WIDTH_PX, ChartFile.USUAL_HEIGHT_PX);
            BufferedImage read = ImageIO.read(png.toFile());
            assertAll(
                    entry.getKey(),
                    () -> assertEquals(1200, read.getWidth()),
                    () -> assertEquals(700, read.getHeight()),
                    () -> assertEquals(theme.background().getRGB(), read.getRGB(1, 1)),
                    () -> assertTrue(
                            colours(read).size() > LEAST_COLOURS,
                            () -> colours(read).size() + " colours"),
                    () -> assertTrue(colours(read).contains(theme.line().getRGB())));
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyAxisThatIsSeenSaysItsUnit(Theme theme) {
        for (JFreeChart chart : charts(theme).values()) {
            for (ValueAxis axis : Parts.axes(chart)) {
                assertTrue(axis.getLabel().matches(".*\\(.+\\).*"), () -> "axis '" + axis.getLabel() + "'");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void noTextIsSmallerThanElevenPoints(Theme theme) {
        for (JFreeChart chart : charts(theme).values()) {
            for (Font font : Parts.fonts(chart)) {
                assertTrue(font.getSize2D() >= 11, font::toString);
            }
        }
    }

    private static Set<Integer> colours(BufferedImage image) {
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours;
    }

    private static JFreeChart steadyQuick(RoomProfile room, Tuning tuning, Theme theme) {
        return SteadyQuickChart.of(room, tuning, FeelBudget.of(room.room(), tuning), theme);
    }
}
