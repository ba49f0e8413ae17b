package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import handspan.music.practice.Accuracy;
import handspan.music.practice.Asking;
import handspan.music.practice.NoteTally;
import handspan.music.practice.PracticeRun;
import handspan.music.practice.Tally;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlayerFolderTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    @TempDir
    Path rooms;

    private PlayerFolder players;

    @BeforeEach
    void aFolder() {
        players = new PlayerFolder(new ProfileFolder(rooms));
    }

    private static PracticeRun run(int minute) {
        Tally tally = new Tally(
                3,
                2,
                1,
                Optional.of(new Accuracy(-3.25, 40.5, 0.5, 6.75, 1.9)),
                List.of(new NoteTally(60, "C4", 1, 1, 1, 10), new NoteTally(64.5, "E4+50", 2, 1, 0, 56.4)));
        return new PracticeRun(
                String.format(java.util.Locale.ROOT, "2026-01-01T%02d:%02d:00Z", minute / 60, minute % 60),
                "Copper Attic",
                "first",
                Asking.BOTH,
                true,
                tally);
    }

    private static PracticeRun emptyRun() {
        Tally tally = new Tally(1, 0, 0, Optional.empty(), List.of(new NoteTally(60, "C4", 1, 0, 0, 0)));
        return new PracticeRun("2026-01-02T00:00:00Z", "hall", "first", Asking.SOUND, false, tally);
    }

    private Path file(String name) {
        return rooms.resolve("players").resolve(name + ".json");
    }

    @Test
    void runsComeBackAsTheyWereKept() throws ProfileException {
        assertEquals(new Player("Mira", List.of()), players.load("Mira"));
        players.add("Mira", run(1));
        players.add("Mira", emptyRun());
        assertEquals(new Player("Mira", List.of(run(1), emptyRun())), players.load("Mira"));
        assertEquals(List.of("Mira"), players.names());
        assertTrue(Files.isRegularFile(file("Mira")));
    }

    @Test
    void aPlayersFileIsNoRoom() throws ProfileException {
        players.add("Mira", run(1));
        assertEquals(List.of(), new ProfileFolder(rooms).rooms());
    }

    @Test
    void theOldestRunsGoWhereThereAreMoreThanTwoHundred() {
        Player player = new Player("Mira", List.of());
        for (int minute = 0; minute < 203; minute++) {
            player = player.and(run(minute));
        }
        assertEquals(200, player.runs().size());
        assertEquals(run(3), player.runs().get(0));
        assertEquals(run(202), player.runs().get(199));
    }

    @Test
    void keysThatAreNotKnownAreKept() throws Exception {
        players.add("Mira", run(1));
        ObjectNode tree = (ObjectNode) MAPPER.readTree(file("Mira").toFile());
        tree.put("teacher", "Oda");
        ((ObjectNode) tree.path("runs").get(0)).put("mood", "tired");
        Files.write(file("Mira"), JsonText.bytes(tree));
        players.add("Mira", run(2));
        JsonNode after = MAPPER.readTree(file("Mira").toFile());
        assertEquals("Oda", after.path("teacher").asText());
        assertEquals("tired", after.path("runs").get(0).path("mood").asText());
        assertEquals(2, after.path("runs").size());
    }

    @Test
    void twoRunsOfOneMinuteAreTwo() throws ProfileException {
        players.add("Mira", run(1));
        players.add("Mira", run(1));
        assertEquals(2, players.load("Mira").runs().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"format\": \"handspan-room/1\", \"player\": \"Mira\", \"runs\": []}",
                "{\"format\": \"handspan-player/1\", \"player\": \"Mira\"}",
                "{\"format\": \"handspan-player/1\", \"player\": \"Mira\", \"runs\": [{\"at\": 5}]}"
            })
    void aDamagedFileIsNamedAndNeverWrittenOver(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Files.createDirectories(file("Mira").getParent());
        Files.write(file("Mira"), bytes);
        String words = String.valueOf(assertThrows(ProfileException.class, () -> players.add("Mira", run(1)))
                .getMessage());
        assertTrue(words.contains("Mira.json"), words);
        assertTrue(words.contains("the file is as it was"), words);
        assertArrayEquals(bytes, Files.readAllBytes(file("Mira")));
        assertThrows(ProfileException.class, () -> players.load("Mira"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "../Mira", "a/b", "a\\b", "con", ".Mira", "Mira ", "x\u0000", "a:b"})
    void namesThatWouldLeaveTheFolderOrBreakACopyAreRefused(String name) {
        ProfileException refused = assertThrows(ProfileException.class, () -> players.add(name, run(1)));
        assertEquals(ProfileException.Kind.BAD_NAME, refused.kind());
        assertFalse(Files.exists(rooms.resolve("Mira.json")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zo\u00eb", "\u674e", "Anna-Lena 2", "O'Dell"})
    void namesOfPeopleAreAllowed(String name) throws ProfileException {
        players.add(name, run(1));
        assertEquals(List.of(name), players.names());
        assertEquals(1, players.load(name).runs().size());
    }

    @Test
    void aNameThatDiffersByCapitalsAloneIsRefused() throws ProfileException {
        players.add("Mira", run(1));
        String words = String.valueOf(assertThrows(ProfileException.class, () -> players.add("MIRA", run(2)))
                .getMessage());
        assertTrue(words.contains("name 'Mira' if you mean it"), words);
    }

    @Test
    void twoThatAddAtOnceLoseNoRun() throws Exception {
        ExecutorService workers = Executors.newFixedThreadPool(2);
        try {
            List<Future<?>> adding = new ArrayList<>();
            for (int first : new int[] {0, 100}) {
                adding.add(workers.submit(() -> {
                    for (int i = 0; i < 30; i++) {
                        new PlayerFolder(new ProfileFolder(rooms)).add("Mira", run(first + i));
                    }
                    return null;
                }));
            }
            for (Future<?> each : adding) {
                each.get(60, TimeUnit.SECONDS);
            }
        } finally {
            workers.shutdownNow();
        }
        assertEquals(
                60,
                players.load("Mira").runs().stream()
                        .map(PracticeRun::at)
                        .distinct()
                        .count());
    }

    @Test
    void theSchemaTakesWhatIsWrittenAndRefusesWhatTheReaderRefuses() throws Exception {
        JsonSchema schema;
        try (InputStream in =
                Objects.requireNonNull(PlayerJson.class.getResourceAsStream("/handspan/player-1.schema.json"))) {
            schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(MAPPER.readTree(in));
        }
        ObjectNode sound = PlayerJson.tree(new Player("Mira", List.of(run(1), emptyRun())));
        assertEquals(Set.of(), schema.validate(MAPPER.readTree(JsonText.bytes(sound))));
        List<ObjectNode> wrong = new ArrayList<>();
        for (String key : List.of("at", "room", "tuning", "ask", "help", "asked", "reached", "hits", "notes")) {
            ObjectNode tree = sound.deepCopy();
            ((ObjectNode) tree.path("runs").get(0)).remove(key);
            wrong.add(tree);
        }
        for (String key : List.of("meanCents", "rmsCents", "meanMm", "rmsMm", "medianSeconds")) {
            ObjectNode tree = sound.deepCopy();
            ((ObjectNode) tree.path("runs").get(0).path("accuracy")).remove(key);
            wrong.add(tree);
        }
        ObjectNode shout = sound.deepCopy();
        ((ObjectNode) shout.path("runs").get(0)).put("ask", "shout");
        wrong.add(shout);
        ObjectNode below = sound.deepCopy();
        ((ObjectNode) below.path("runs").get(0).path("accuracy")).put("rmsCents", -1);
        wrong.add(below);
        ObjectNode never = sound.deepCopy();
        ((ObjectNode) never.path("runs").get(0).path("notes").get(0)).put("asked", 0);
        wrong.add(never);
        for (ObjectNode tree : wrong) {
            assertFalse(schema.validate(tree).isEmpty(), tree.toString());
            assertThrows(
                    ProfileException.class,
                    () -> PlayerJson.form("Mira").read(JsonText.bytes(tree), Path.of("Mira.json")),
                    tree.toString());
        }
    }
}
