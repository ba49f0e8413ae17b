package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Tuning;
import handspan.show.chart.LevelCurveChart;
import handspan.show.chart.Picture;
import handspan.show.chart.PitchLadderChart;
import handspan.show.chart.RawReadingsChart;
import handspan.show.chart.Samples;
import handspan.show.chart.Theme;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Frame;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("screen")
class ChartWindowTest {
    private static final Path FOLDER = Path.of("target", "pictures");

    private static final long PATIENCE_S = 30;

    /** A panel of one colour has a handful with its tabs. */
    private static final int LEAST_COLOURS = 40;

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyTabPaintsAndEscapeCloses(Theme theme)
            throws IOException, InterruptedException, ExecutionException, TimeoutException, AWTException,
                    InvocationTargetException {
        assertTrue(ChartWindow.screenCanBeOpened());
        CompletableFuture<JFrame> active = new CompletableFuture<>();
        AWTEventListener listener = event -> {
            if (event.getID() == WindowEvent.WINDOW_ACTIVATED && event.getSource() instanceof JFrame frame) {
                active.complete(frame);
            }
        };
        Toolkit.getDefaultToolkit().addAWTEventListener(listener, AWTEvent.WINDOW_EVENT_MASK);
        CompletableFuture<Void> shown = CompletableFuture.runAsync(window(theme)::showAndWait);
        JFrame frame = active.get(PATIENCE_S, TimeUnit.SECONDS);
        Toolkit.getDefaultToolkit().removeAWTEventListener(listener);

        JTabbedPane tabs = (JTabbedPane) frame.getContentPane();
        assertEquals(List.of("Notes", "Level", "Raw"), titles(tabs));
        Files.createDirectories(FOLDER);
        Set<Integer> hashes = new HashSet<>();
        for (int tab = 0; tab < tabs.getTabCount(); tab++) {
            BufferedImage image = painted(frame, tabs, tab);
            String name = "window-" + tab + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png";
            ImageIO.write(image, "png", FOLDER.resolve(name).toFile());
            Set<Integer> colours = colours(image);
            assertTrue(colours.size() > LEAST_COLOURS, () -> colours.size() + " colours");
            assertTrue(colours.contains(theme.line().getRGB()));
            assertTrue(colours.contains(theme.background().getRGB()));
            hashes.add(colours.hashCode());
        }
        assertEquals(3, hashes.size());

        assertFalse(shown.isDone());
        Robot robot = new Robot();
        robot.keyPress(KeyEvent.VK_ESCAPE);
        robot.keyRelease(KeyEvent.VK_ESCAPE);
        shown.get(PATIENCE_S, TimeUnit.SECONDS);
        assertFalse(frame.isDisplayable());
        assertEquals(
                0, Arrays.stream(Frame.getFrames()).filter(Frame::isVisible).count());
    }

    private static ChartWindow window(Theme theme) {
        var room = Samples.granary(Tuning.usual());
        return new ChartWindow(
                "Old Granary",
                List.of(
                        new Picture("Notes", "notes.png", PitchLadderChart.of(room, Tuning.usual(), theme)),
                        new Picture("Level", "level.png", LevelCurveChart.of(room, theme)),
                        new Picture("Raw", "raw.png", RawReadingsChart.of(Samples.raw(), theme))),
                theme);
    }

    private static List<String> titles(JTabbedPane tabs) {
        return IntStream.range(0, tabs.getTabCount()).mapToObj(tabs::getTitleAt).toList();
    }

    private static BufferedImage painted(JFrame frame, JTabbedPane tabs, int tab)
            throws InterruptedException, InvocationTargetException {
        var size = frame.getRootPane().getSize();
        BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        SwingUtilities.invokeAndWait(() -> {
            tabs.setSelectedIndex(tab);
            frame.validate();
            var graphics = image.createGraphics();
            frame.getRootPane().paint(graphics);
            graphics.dispose();
        });
        return image;
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
}
