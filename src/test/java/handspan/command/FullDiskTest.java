package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Recording to a device that takes no byte (Linux, full(4)). */
@EnabledOnOs(OS.LINUX)
class FullDiskTest {
    private static final String ROOMS = Path.of("profiles").toString();

    @TempDir
    Path folder;

    private static JsonNode recordingEvent(Cli cli) {
        List<JsonNode> events = cli.objects().stream()
                .filter(node -> node.path("event").asText().equals("recording"))
                .toList();
        assertEquals(1, events.size(), "said once: " + cli.out());
        return events.get(0);
    }

    @Test
    void playingGoesOnAndSaysSo() {
        Cli cli = Cli.run(
                "play",
                "sim:hall",
                "--room",
                "saltmill-hall",
                "--profiles",
                ROOMS,
                "--seconds",
                "2.5",
                "--json",
                "--record",
                "/dev/full",
                "--send",
                "udp:127.0.0.1:9");
        assertEquals(0, cli.exitCode(), cli.err());
        JsonNode said = recordingEvent(cli);
        assertEquals(false, said.path("on").asBoolean(true));
        assertEquals(0, said.path("lines").asInt(-1));
        assertTrue(said.path("reason").asText().startsWith("recording stopped: "), said.toString());
        assertTrue(said.path("reason").asText().endsWith(": 0 lines are in /dev/full"), said.toString());
        assertTrue(cli.err().contains("; playing goes on"), cli.err());
        List<JsonNode> objects = cli.objects();
        int saidAt = objects.indexOf(said);
        assertTrue(
                objects.subList(saidAt, objects.size()).stream()
                        .anyMatch(node -> node.path("state").asText().equals("playing")),
                "a hand plays after that: " + cli.out());
    }

    @Test
    void aRecordingThatIsWantedForItselfEndsWith4() {
        Cli cli = Cli.run("record", "sim:hall", "--out", "/dev/full", "--seconds", "20", "--fast", "--json");
        assertEquals(4, cli.exitCode(), cli.err());
        assertTrue(cli.last().path("error").asText().contains("0 lines are in /dev/full"), cli.out());
    }

    @Test
    void aCalibrationGoesOnAndKeepsTheRoom() {
        Cli cli = Cli.run(
                "calibrate",
                "sim:hall",
                "--room",
                "hall",
                "--profiles",
                folder.toString(),
                "--fast",
                "--json",
                "--record",
                "/dev/full");
        assertEquals(0, cli.exitCode(), cli.err());
        recordingEvent(cli);
        assertTrue(cli.last().path("exitCode").asInt(-1) == 0, cli.out());
    }
}
