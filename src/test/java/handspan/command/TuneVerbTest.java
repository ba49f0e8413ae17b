package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tunings of a room by the command line. */
class TuneVerbTest {
    private static final double SAID_CENTS = 0.05;
    private static final String ROOM = "saltmill-hall";

    @TempDir
    Path folder;

    @BeforeEach
    void copyARoom() throws IOException {
        Files.copy(Path.of("profiles", ROOM + ".json"), folder.resolve(ROOM + ".json"));
    }

    private Cli run(String line) {
        return Cli.line(line + " --room " + ROOM, folder);
    }

    private JsonNode done(String line) {
        Cli cli = run(line);
        assertEquals(0, cli.exitCode(), line + "\n" + cli.out() + cli.err());
        return cli.last();
    }

    private List<String> tunings() {
        List<String> names = new ArrayList<>();
        done("rooms show")
                .get("tunings")
                .forEach(tuning -> names.add(tuning.get("name").asText()));
        return names;
    }

    @Test
    void aNewNameAddsATuningThatCanBecomeTheFirstAndBeRemoved() {
        done("tune --name late --scale dorian --key Bb --low Bb2 --high Bb3 --snap pull --strength 0.3");
        assertEquals(List.of("first", "hymn", "late"), tunings());
        JsonNode late = done("tune --name late --first").get("tuning");
        assertEquals("Bb2", late.get("low").asText());
        assertEquals(0.3, late.get("strength01").asDouble());
        assertEquals(List.of("late", "first", "hymn"), tunings());
        done("tune --name hymn --remove");
        assertEquals(List.of("late", "first"), tunings());
        done("tune --remove");
        Cli only = run("tune --remove");
        assertEquals(2, only.exitCode());
        assertTrue(only.err().contains("the only one"), only.err());
        assertEquals(List.of("first"), tunings());
    }

    /**
     * Just major on F, its notes against the keys of twelve equal steps, in cents: 0, 4, -14, -2, 2, -16, -12 (Ellis
     * 1885: 203.91, 386.31, 498.04, 701.96, 884.36, 1088.27).
     */
    @Test
    void aJustScaleIsMappedToTheCent() {
        done("tune --name just --scale major --key F --low F3 --high F4 --temperament just --a4 442");
        JsonNode points = done("map --tuning just").get("points");
        double[] cents = {0, 3.91, -13.69, -1.96, 1.96, -15.64, -11.73, 0};
        assertEquals(cents.length, points.size());
        for (int i = 0; i < cents.length; i++) {
            assertEquals(cents[i], points.get(i).get("centsFromNote").asDouble(), SAID_CENTS);
        }
        // F3 of A4 = 442 Hz: 442 * 2^(-16/12)
        assertEquals(175.408, points.get(0).get("pitchHz").asDouble(), 0.001);
    }

    /** A scale of one's own, in cents and ratios, is kept in the file as it was written. */
    @Test
    void aScaleOfOnesOwnIsKept() throws IOException {
        done("tune --name own --steps 1/1,9/8,386.3,3/2 --scale mine --key D --low D3 --high D4");
        String file = Files.readString(folder.resolve(ROOM + ".json"));
        assertTrue(file.contains("\"steps\": [ \"1/1\", \"9/8\", \"386.3\", \"3/2\" ]"), file);
        JsonNode points = done("map --tuning own").get("points");
        assertEquals(5, points.size());
        assertEquals(386.3 - 400, points.get(2).get("centsFromNote").asDouble(), SAID_CENTS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tune --temperament 54-equal",
                "tune --temperament 5-equal --scale major",
                "tune --a4 414",
                "tune --a4 467",
                "tune --steps 0,x",
                "tune --key H",
                "tune --snap hard",
                "tune --strength 1.1",
                "tune --curve 3.5",
                "tune --trim 101",
                "tune --transpose 49",
                "tune --name nobody --remove"
            })
    void whatIsNoTuningIsRefusedAndTheFileStays(String line) throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve(ROOM + ".json"));
        Cli cli = run(line);
        assertEquals(2, cli.exitCode(), cli.out() + cli.err());
        assertTrue(cli.err().contains("handspan: "), cli.err());
        assertEquals(
                new String(before, java.nio.charset.StandardCharsets.UTF_8),
                Files.readString(folder.resolve(ROOM + ".json")));
    }

    @Test
    void whatBecomesOfTheSoundWhenTheHandLeavesIsKept() throws IOException {
        assertEquals("fade", done("level").get("onLeaving").asText());
        JsonNode held = done("level --on-leaving hold --fade-ms 250");
        assertTrue(held.get("saved").asBoolean());
        assertEquals("hold", done("level").get("onLeaving").asText());
        assertEquals(250, done("level").get("fadeMs").asDouble());
        done("level --on-leaving fade --fade-ms 60");
        String file = Files.readString(folder.resolve(ROOM + ".json"));
        assertTrue(!file.contains("onLeaving") && !file.contains("fadeMs"), "the usual is left out");
        assertEquals(2, run("level --on-leaving hang").exitCode());
        assertEquals(2, run("level --fade-ms 4").exitCode());
    }
}
