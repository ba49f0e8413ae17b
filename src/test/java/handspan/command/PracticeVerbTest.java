package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.Program;
import handspan.Waits;
import handspan.music.practice.PracticeRun;
import handspan.profile.PlayerFolder;
import handspan.profile.ProfileFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class PracticeVerbTest {
    @TempDir
    Path folder;

    @BeforeEach
    void aRoomIsThere() {
        // sensors without error and a hand that does not wander: its map is the truth
        assertEquals(
                0, Cli.line("calibrate sim:still --room still --fast", folder).exitCode());
    }

    private Cli practice(String more) {
        Cli cli = Cli.line("practice sim:still --room still --fast " + more, folder);
        assertEquals(0, cli.exitCode(), cli.out() + cli.err());
        return cli;
    }

    private static List<JsonNode> events(Cli cli, String name) {
        return cli.objects().stream()
                .filter(object -> object.path("event").asText().equals(name))
                .toList();
    }

    private double keptAimMm() {
        JsonNode room = Cli.line("rooms show --room still", folder).last();
        return room.findPath("aim").path("mm").asDouble(Double.NaN);
    }

    /**
     * A hundred unaided reaches of a simulated player on ten evenings of the hall, each calibrated by nine ruler holds.
     * The player's aim is 5 mm, the hand wanders by 1 mm rms besides: sigma^2 = 26 mm^2. Of normal errors {@code n s^2
     * / sigma^2} follows chi square with n = 100 degrees of freedom (nothing is taken off for a mean), which lies
     * between 74.222 and 129.561 in 95 % (NIST/SEMATECH e-Handbook 1.3.6.7.4, rows of 100; from memory). That three or
     * more of ten lie outside has a chance of 1.2 %. All thousand together scatter by sqrt(2 / 1000); what the map is
     * off by, 1 mm or less, adds 4 % at most.
     */
    @Test
    void theAimThatIsMeasuredIsTheSimulatedPlayersOwn() {
        int outside = 0;
        double sum = 0;
        for (int seed = 1; seed <= 10; seed++) {
            String room = "hall" + seed;
            String ruler = "--ruler 100,150,200,250,300,350,400,450,500";
            Cli made = Cli.line("calibrate sim:hall --room " + room + " " + ruler + " --fast --seed " + seed, folder);
            assertEquals(0, made.exitCode(), made.err());
            Cli cli = Cli.line(
                    "practice sim:hall --room " + room + " --notes 100 --no-help --fast --seed " + seed, folder);
            int reaches = cli.last().path("aimReaches").asInt();
            assertTrue(reaches >= 98, reaches + " of 100");
            double ratio = Math.pow(cli.last().path("aimMm").asDouble(), 2) / 26;
            outside += 100 * ratio < 74.222 || 100 * ratio > 129.561 ? 1 : 0;
            sum += ratio / 10;
        }
        assertTrue(outside <= 2, outside + " of 10 outside");
        assertEquals(1.02, sum, 3 * Math.sqrt(2 / 1000.0) + 0.02);
    }

    @Test
    void eachNoteIsAskedForAndAnsweredAndTheFiguresAreThoseOfTheAnswers() {
        Cli cli = practice("--notes 12");
        List<JsonNode> asked = events(cli, "asked");
        List<JsonNode> answered = new ArrayList<>(events(cli, "found"));
        answered.addAll(events(cli, "missed"));
        assertEquals(12, asked.size());
        assertEquals(12, answered.size());
        double squares = 0;
        for (JsonNode answer : answered) {
            squares += Math.pow(answer.path("offCents").asDouble(), 2);
            assertTrue(answer.path("seconds").asDouble() > 0.5
                    && answer.path("seconds").asDouble() < 2);
        }
        JsonNode result = cli.last();
        assertEquals("result", result.path("event").asText());
        assertEquals(Math.sqrt(squares / 12), result.path("rmsCents").asDouble(), 1e-9);
        assertEquals(events(cli, "found").size(), result.path("hits").asInt());
        assertFalse(events(cli, "help").isEmpty());
    }

    @Test
    void withoutHelpNoWayIsShownAndAskedBySoundNoName() {
        Cli plain = Cli.run(
                "practice",
                "sim:still",
                "--room",
                "still",
                "--fast",
                "--notes",
                "4",
                "--no-help",
                "--profiles",
                folder.toString());
        assertTrue(plain.out().contains("note 1 of 4: A4"), plain.out());
        assertFalse(plain.out().contains("further away"), plain.out());
        assertTrue(events(practice("--notes 4 --no-help"), "help").isEmpty());
        Cli bySound = practice("--notes 4 --ask sound");
        assertTrue(events(bySound, "help").isEmpty());
        // faster than the clock nothing can sound, which is said, and the names are shown
        assertTrue(bySound.err().contains("the notes to find are shown by name"), bySound.err());
        assertTrue(events(bySound, "asked").get(0).path("shown").asBoolean());
    }

    @Test
    void namedNotesAreAskedForInTheirOrder() {
        List<String> notes = events(practice("--notes C4,E4,G4,C5"), "asked").stream()
                .map(asked -> asked.path("note").asText())
                .toList();
        assertEquals(List.of("C4", "E4", "G4", "C5"), notes);
    }

    @Test
    void tenUnaidedReachesAreKeptAsTheRoomsAimAndTheRoomBeforeStaysInItsHistory() {
        assertTrue(Double.isNaN(keptAimMm()) || keptAimMm() == 6);
        assertFalse(practice("--notes 12").last().path("aimSaved").asBoolean());
        assertFalse(practice("--notes 6 --no-help").last().path("aimSaved").asBoolean());
        int versions = Cli.line("rooms history --room still", folder)
                .last()
                .findPath("versions")
                .size();
        Cli ten = practice("--notes 10 --no-help");
        assertTrue(ten.last().path("aimSaved").asBoolean());
        assertTrue(ten.err().contains("kept as the aim of room 'still'"), ten.err());
        assertEquals(ten.last().path("aimMm").asDouble(), keptAimMm(), 1e-9);
        assertEquals(
                versions + 1,
                Cli.line("rooms history --room still", folder)
                        .last()
                        .findPath("versions")
                        .size());
        Cli advice = Cli.line("advise --room still", folder);
        assertTrue(advice.err().contains("measured by 10 reaches"), advice.err());
    }

    @Test
    void fewerReachesAreKeptWhereItIsAskedFor() {
        assertTrue(practice("--notes 6 --no-help --save-aim")
                .last()
                .path("aimSaved")
                .asBoolean());
        assertFalse(practice("--notes 4 --no-help --save-aim")
                .last()
                .path("aimSaved")
                .asBoolean());
        Cli aided = Cli.line("practice sim:still --room still --fast --save-aim", folder);
        assertEquals(2, aided.exitCode());
        assertTrue(aided.err().contains("--save-aim with help"), aided.err());
    }

    @Test
    void runsOfAPlayerAreKeptComparedAndShown() {
        JsonNode first = practice("--notes 12 --player Mira").last();
        assertEquals(1, first.path("runs").asInt());
        assertEquals("", first.path("compared").asText());
        JsonNode second = practice("--notes 12 --player Mira").last();
        assertEquals(2, second.path("runs").asInt());
        assertTrue(
                second.path("compared").asText().matches("rms \\d+ cents, was \\d+ last time; .*"),
                second.path("compared").asText());
        // another kind of run is compared with none of these
        assertEquals(
                "",
                practice("--notes 12 --player Mira --no-help")
                        .last()
                        .path("compared")
                        .asText());
        JsonNode progress = Cli.line("progress --player Mira", folder).last();
        assertEquals(3, progress.path("runs").size());
        assertEquals(
                first.path("rmsCents").asDouble(),
                progress.path("runs").get(0).path("rmsCents").asDouble(),
                1e-9);
    }

    @Test
    void eachRunOfAPlayerGoesAnotherWay() {
        List<JsonNode> first = events(practice("--notes 12 --player Mira"), "asked");
        List<JsonNode> second = events(practice("--notes 12 --player Mira"), "asked");
        assertNotEquals(
                first.stream().map(asked -> asked.path("note").asText()).toList(),
                second.stream().map(asked -> asked.path("note").asText()).toList());
    }

    @Test
    void aDamagedFileOfAPlayerIsSaidBeforeTheFirstNoteAndStays() throws IOException {
        Path file = folder.resolve("players").resolve("Mira.json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "oops");
        Cli cli = Cli.line("practice sim:still --room still --fast --player Mira", folder);
        assertEquals(4, cli.exitCode());
        assertTrue(cli.err().contains("Mira.json, line 1"), cli.err());
        assertTrue(events(cli, "asked").isEmpty());
        assertEquals("oops", Files.readString(file));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whatWasFoundBeforeASignalIsKept() throws Exception {
        Path profiles = Path.of("profiles").toAbsolutePath();
        Files.copy(profiles.resolve("saltmill-hall.json"), folder.resolve("saltmill-hall.json"));
        String[] words = {
            "practice",
            "sim:hall",
            "--room",
            "saltmill-hall",
            "--profiles",
            folder.toString(),
            "--player",
            "Mira",
            "--send",
            "udp:127.0.0.1:9",
            "--json"
        };
        try (Program program = Program.start(folder, words)) {
            Waits.until(() -> program.out().contains("\"number\":3"), program::words);
            program.signal("INT");
            assertEquals(130, program.await(), program.words());
            PracticeRun run = new PlayerFolder(new ProfileFolder(folder))
                    .load("Mira")
                    .runs()
                    .get(0);
            assertTrue(run.tally().asked() >= 2 && run.tally().asked() < 20, program.words());
        }
    }
}
