package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.show.chart.Picture;
import handspan.show.chart.RawReadingsChart;
import handspan.show.chart.Samples;
import handspan.show.chart.Theme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

class ScreenTest {
    /** No test machine has a screen of this number. */
    private static final String STALE = ":987";

    private static final long PATIENCE_S = 60;

    @Test
    @EnabledOnOs(OS.LINUX)
    void aStaleScreenNameIsNoScreen() throws IOException, InterruptedException {
        assertEquals(List.of("false", "false"), probe(STALE));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void withoutScreenNameThereIsNoScreen() throws IOException, InterruptedException {
        assertEquals(List.of("false", "false"), probe(null));
    }

    @Test
    void headlessThereIsNoScreenAndNoWindow() {
        assertFalse(ChartWindow.screenCanBeOpened());
        var tab = new Picture("raw", "raw.png", RawReadingsChart.of(Samples.raw(), Theme.LIGHT));
        ChartWindow window = new ChartWindow("charts", List.of(tab), Theme.LIGHT);
        assertThrows(IllegalStateException.class, window::showAndWait);
    }

    @Test
    void aWindowWithoutChartIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ChartWindow("charts", List.of(), Theme.LIGHT));
    }

    /** What a process of its own says, with that screen name in its environment and nothing set to headless. */
    private static List<String> probe(@Nullable String display) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                ScreenProbe.class.getName());
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.environment().remove("DISPLAY");
        if (display != null) {
            builder.environment().put("DISPLAY", display);
        }
        builder.redirectErrorStream(true);
        Process process = builder.start();
        byte[] said = process.getInputStream().readAllBytes();
        assertTrue(process.waitFor(PATIENCE_S, TimeUnit.SECONDS));
        return new String(said, StandardCharsets.UTF_8).lines().toList();
    }
}
