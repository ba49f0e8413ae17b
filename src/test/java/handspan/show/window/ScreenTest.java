package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.profile.ProfileFolder;
import handspan.show.scene.Guide;
import handspan.show.scene.Showing;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class ScreenTest {
    /** No test machine has a screen of this number. */
    private static final String STALE = ":987";

    private static final long PATIENCE_S = 60;

    @TempDir
    Path folder;

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
        assertFalse(Screens.canBeOpened());
        try (Evening evening =
                new Evening(new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL)) {
            EveningWindow window = new EveningWindow(
                    new Guide(evening, Showing.first(true)), new WindowMemory(new MemoryPreferences()));
            assertThrows(IllegalStateException.class, window::showAndWait);
        }
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
