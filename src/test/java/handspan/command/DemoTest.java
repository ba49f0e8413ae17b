package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.profile.ProfileFolder;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README's first command, without a window. */
class DemoTest {
    @TempDir
    Path folder;

    @Test
    void theDemoDoesTheWholeJobAndSaysWhatCameOfIt() throws Exception {
        Cli cli = Cli.run("demo", "--out", folder.toString(), "--no-window", "--json");
        assertEquals(0, cli.exitCode(), cli.err());
        JsonNode result = cli.last();
        Path made = Path.of("target", "golden", "demo.txt");
        Files.createDirectories(made.getParent());
        Files.writeString(made, cli.shape());
        assertEquals(
                result.get("bundlesSent").asLong(),
                result.get("bundlesReceived").asLong());
        assertTrue(result.get("bundlesReceived").asLong() > 1000);
        assertTrue(result.get("messagesReceived").asLong()
                > 6 * result.get("bundlesReceived").asLong());
        assertEquals(0, result.get("malformed").asLong());
        // between the sensor's half measuring time with one glide interval (36 ms) and the whole budget of a still hand
        double lagMs = result.get("totalLagMs").asDouble();
        double budgetMs = result.get("room").get("latency").get("totalMs").asDouble();
        assertTrue(lagMs > 30 && lagMs < budgetMs + 10, "lag " + lagMs + " ms, budget " + budgetMs + " ms");
        double jitter = result.get("jitterCents").asDouble();
        assertTrue(jitter > 1 && jitter < 20, "jitter " + jitter + " cents");
        assertTrue(Math.abs(result.get("stillErrorCents").asDouble()) < 40);
        for (JsonNode chart : result.get("charts")) {
            BufferedImage picture = ImageIO.read(Path.of(chart.asText()).toFile());
            assertEquals(1200, picture.getWidth());
        }
        assertEquals(5, result.get("charts").size());
        assertEquals(Files.readString(Path.of("src", "test", "resources", "golden", "demo.txt")), cli.shape());
        ProfileFolder kept = new ProfileFolder(folder.resolve("profiles"));
        assertEquals("saltmill-hall", kept.load("saltmill-hall").room().name());
    }
}
