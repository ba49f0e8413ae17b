package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.Command;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.room.HandRole;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Draws every live chart in both themes; the pictures stay in {@code target/pictures} to be looked at. */
class LiveGalleryTest {
    private static final Path FOLDER = Path.of("target", "pictures");
    private static final int SMALLEST_PX = 12;

    private final Random chance = new Random(8);

    /** All charts after an evening: a calibration's first hold, some seconds muted, some played, a spoilt line. */
    private List<OverStill> charts() {
        Tuning tuning = Samples.twoOctaves("minor-pentatonic", Direction.HIGH_FAR, Snap.FREE);
        Rehearsal rehearsal = new Rehearsal(tuning);
        List<OverStill> charts = new ArrayList<>(List.of(
                new SentPitchChart(tuning),
                new LiveLadderChart(rehearsal.room(), tuning, Aside.atOnce()),
                new LiveLevelChart(rehearsal.room()),
                LiveRawChart.of(rehearsal.room().room(), HandRole.PITCH),
                new LiveResponseChart(Samples.bent(tuning).room(), HandRole.PITCH),
                new HoldNoiseChart(
                        HandRole.PITCH,
                        "1",
                        rehearsal.room().room().sensor(rehearsal.room().room().pitch())),
                new LiveSteadyQuickChart(rehearsal.room(), tuning, Aside.atOnce())));
        LiveChart[] all = charts.toArray(new LiveChart[0]);
        rehearsal.calibrate().play(3, t -> Double.NaN, t -> Double.NaN, all);
        rehearsal.play(5, t -> Math.rint(150 + 2.1 * chance.nextGaussian()), t -> Double.NaN, all);
        rehearsal.tell(new Command.Stop());
        rehearsal.play(true);
        rehearsal.play(3, this::pitchMm, this::levelMm, all);
        rehearsal.tell(new Command.Mute(false));
        rehearsal.play(6, this::pitchMm, this::levelMm, all);
        rehearsal.line("251,200,7", all);
        rehearsal.line("490,200", all);
        rehearsal.play(2, this::pitchMm, this::levelMm, all);
        return charts;
    }

    private double pitchMm(double timeS) {
        boolean away = timeS % 8 > 6.6 && timeS % 8 < 7.4;
        return away ? Double.NaN : 300 + 150 * Math.sin(1.1 * timeS) + 2 * chance.nextGaussian();
    }

    private double levelMm(double timeS) {
        return 210 + 70 * Math.sin(0.8 * timeS) + 2 * chance.nextGaussian();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyChartIsDrawnWithUnitsInReadableTextAndSaysWhatItShows(Theme theme) throws IOException {
        Files.createDirectories(FOLDER);
        for (OverStill chart : charts()) {
            BufferedImage picture = Dots.picture(chart, theme);
            String file = "live-" + chart.getClass().getSimpleName() + "-" + theme;
            ImageIO.write(
                    picture,
                    "png",
                    FOLDER.resolve(file.toLowerCase(Locale.ROOT) + ".png").toFile());
            assertEquals(theme.background().getRGB(), picture.getRGB(1, 1));
            assertTrue(Dots.count(picture, theme.line(), 60, 840) > 50, chart::name);
            assertTrue(chart.version() > 0 || chart instanceof LiveSteadyQuickChart, chart::name);
            assertTrue(chart.words().matches(".*\\d.* (mm|dB|Hz|ms|cents)\\b.*"), chart::words);
            JFreeChart still = chart.still(theme);
            for (ValueAxis axis : Parts.axes(still)) {
                // rows of a list have names, not units
                boolean list = axis.getLabel().isEmpty();
                assertTrue(list || axis.getLabel().matches(".*\\(.+\\).*"), () -> "axis '" + axis.getLabel() + "'");
            }
            for (Font font : Parts.fonts(still)) {
                assertTrue(font.getSize2D() >= SMALLEST_PX, font::toString);
            }
        }
    }
}
