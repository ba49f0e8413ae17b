package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class StripScreenTest {
    /** No test machine has a screen of this number. */
    private static final String STALE = ":987";

    private static final long PATIENCE_S = 60;

    @TempDir
    Path folder;

    /** As over a remote shell whose screen is gone. The library's log must stay quiet too. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aStripIsPrintedWhereTheScreenIsGone() throws IOException, InterruptedException, ProfileException {
        new ProfileFolder(folder).save(TestRooms.twoDistances(50));
        Path pdf = folder.resolve("strip.pdf");
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Handspan.class.getName(),
                "strip",
                "--room",
                "test",
                "--paper",
                "a4",
                "--out",
                pdf.toString(),
                "--profiles",
                folder.toString());
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.environment().put("DISPLAY", STALE);
        builder.redirectErrorStream(true);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(PATIENCE_S, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue(), said);
        assertEquals(2, said.lines().count(), said);
        assertTrue(Files.size(pdf) > 10_000);
    }
}
