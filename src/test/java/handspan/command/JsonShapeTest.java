package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The JSON that each verb prints is a contract: its keys and types are compared with golden files. A key more or less,
 * or of another type, fails here. What a run really printed is left in {@code target/golden} for whoever changes the
 * contract on purpose.
 */
class JsonShapeTest {
    @TempDir
    static Path folder;

    @BeforeAll
    static void aRoomIsThere() {
        assertEquals(
                0,
                Cli.run("calibrate", "sim:hall", "--room", "hall", "--profiles", folder.toString(), "--fast")
                        .exitCode());
        assertEquals(
                0,
                Cli.run(
                                "record",
                                "sim:hall",
                                "--out",
                                folder.resolve("passage.take").toString(),
                                "--seconds",
                                "6",
                                "--fast")
                        .exitCode());
        assertEquals(
                0,
                Cli.run(
                                "practice",
                                "sim:hall",
                                "--room",
                                "hall",
                                "--player",
                                "Mira",
                                "--fast",
                                "--profiles",
                                folder.toString())
                        .exitCode());
        // so that there is an earlier version
        assertEquals(
                0,
                Cli.run("tune", "--room", "hall", "--trim", "5", "--profiles", folder.toString())
                        .exitCode());
    }

    static Stream<String> verbs() {
        return Stream.of(
                "ports",
                "watch sim:hall --seconds 3 --fast",
                "survey sim:hall --fast",
                "survey sim:echo --fast",
                "calibrate sim:hall --room new --profiles DIR --fast --replace",
                "calibrate sim:echo-cm --room bare --profiles DIR --fast --replace",
                "tune --room hall --profiles DIR --scale major --key D",
                "level --room hall --profiles DIR",
                "send --room hall --profiles DIR",
                "map --room hall --profiles DIR --at 100 300 --raw 200 --level-raw 500 --level-at 100",
                "strip --room hall --profiles DIR --paper a4 --out DIR/strip.pdf",
                "report --room hall --profiles DIR --out DIR/report.pdf",
                "check sim:hall --room hall --profiles DIR --fast",
                "play sim:hall --room hall --profiles DIR --seconds 3 --fast --wav DIR/x.wav",
                "practice sim:hall --room hall --profiles DIR --fast --notes 12 --player Mira",
                "progress --player Mira --profiles DIR --chart DIR/progress.png",
                "play sim:hall sim:hall --room hall --room hall --as Wren --as Rook --profiles DIR --seconds 3 --fast"
                        + " --wav DIR/wavs",
                "record sim:hall --out DIR/x.take --seconds 2 --fast",
                "report take:DIR/passage.take --room hall --profiles DIR",
                "report take:DIR/passage.take take:DIR/passage.take --room hall --profiles DIR",
                "rooms list --profiles DIR",
                "rooms show --room hall --profiles DIR",
                "rooms history --room hall --profiles DIR",
                "rooms compare --room hall --profiles DIR",
                "rooms restore --room hall --profiles DIR --version 1",
                "scales",
                "advise --room hall --profiles DIR");
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void eachVerbPrintsItsShape(String commandLine) throws IOException {
        String[] args = (commandLine.replace("DIR", folder.toString()) + " --json").split(" ", -1);
        Cli cli = Cli.run(args);
        assertEquals(0, cli.exitCode(), cli.err());
        String name =
                commandLine.replaceAll(" --.*", "").replaceAll("[^a-z-]+", "-").replaceAll("-$", "") + ".txt";
        Path made = Path.of("target", "golden", name);
        Files.createDirectories(made.getParent());
        Files.writeString(made, cli.shape());
        try (InputStream golden = JsonShapeTest.class.getResourceAsStream("/golden/" + name)) {
            assertTrue(golden != null, "no golden file " + name);
            String expected = new String(golden.readAllBytes(), StandardCharsets.UTF_8);
            // a machine without serial ports has an empty list
            boolean noPorts =
                    commandLine.equals("ports") && cli.last().get("ports").isEmpty();
            assertEquals(noPorts ? "ports: array\n" : expected, cli.shape());
        }
    }

    /** Verbs that end print one object; verbs that run print one a line, the last of them the result. */
    @ParameterizedTest
    @MethodSource("verbs")
    void runningVerbsEndWithTheirResultAndEndingOnesPrintOneObject(String commandLine) {
        boolean runs = commandLine.matches("(watch|calibrate|check|play|practice) .*");
        String[] args = (commandLine.replace("DIR", folder.toString()) + " --json").split(" ", -1);
        Cli cli = Cli.run(args);
        if (runs) {
            assertTrue(cli.objects().stream().allMatch(object -> object.has("event")));
            assertEquals("result", cli.last().get("event").asText());
        } else {
            assertEquals(1, cli.objects().size());
        }
    }
}
