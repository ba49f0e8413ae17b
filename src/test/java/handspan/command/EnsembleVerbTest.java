package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.OscSender;
import handspan.Program;
import handspan.Waits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code play} with several rooms: simulated instruments, real datagrams. */
@Timeout(90)
class EnsembleVerbTest {
    private static final double AUDIBLE01 = 0.001;

    @TempDir
    Path folder;

    private static String[] words(Datagrams ears, String... more) throws IOException {
        List<String> words = new ArrayList<>(
                List.of(("play sim:hall sim:attic --room saltmill-hall --room fennel-attic --as Wren --as Rook --json"
                                + " --profiles profiles --send udp:127.0.0.1:" + ears.port())
                        .split(" ")));
        words.addAll(List.of(more));
        return words.toArray(new String[0]);
    }

    private static List<Datagram> of(Datagrams ears, String name) {
        return ears.all().stream()
                .filter(datagram -> datagram.messages().get(0).address().startsWith("/" + name + "/"))
                .toList();
    }

    private static boolean sounds(Datagrams ears, String name) {
        List<Datagram> own = of(ears, name);
        return !own.isEmpty() && own.get(own.size() - 1).gain01() > AUDIBLE01;
    }

    @Test
    void eachInstrumentSendsUnderItsOwnNameAndSpeaksInEventsOfItsOwn() throws IOException {
        try (Datagrams ears = new Datagrams()) {
            Cli cli = Cli.run(words(ears, "--seconds", "2.5"));
            assertEquals(0, cli.exitCode(), cli.err());
            Set<String> names = ears.all().stream()
                    .flatMap(datagram -> datagram.messages().stream())
                    .map(message -> message.address().split("/", -1)[1])
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of("Rook", "Wren"), names);
            List<JsonNode> objects = cli.objects();
            Set<String> told = objects.subList(0, objects.size() - 1).stream()
                    .map(object -> object.path("instrument").asText("none"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of("Rook", "Wren"), told);
            JsonNode instruments = cli.last().get("instruments");
            assertEquals(2, instruments.size());
            for (JsonNode instrument : instruments) {
                // 50 lines a second for 2.5 s; the first second may pass while all starts
                assertTrue(instrument.get("readings").asInt() > 50, instrument.toString());
                int sent = instrument.get("targets").get(0).get("sent").asInt();
                Waits.until(
                        () -> of(ears, instrument.get("instrument").asText()).size() == sent);
            }
        }
    }

    @Test
    void oneRoomCanBeCalledOtherwiseForATime() throws IOException {
        try (Datagrams ears = new Datagrams()) {
            Cli cli = Cli.run(
                    ("play sim:hall --room saltmill-hall --as Finch --seconds 1 --fast --json --profiles profiles"
                                    + " --send udp:127.0.0.1:" + ears.port())
                            .split(" "));
            assertEquals(0, cli.exitCode(), cli.err());
            assertEquals(
                    "Finch",
                    cli.last().get("instruments").get(0).get("instrument").asText());
            Waits.until(() -> !of(ears, "Finch").isEmpty());
            assertTrue(of(ears, "Willowreach").isEmpty());
        }
    }

    @Test
    void whatIsAFileForOneIsAFolderForSeveral() throws IOException {
        try (Datagrams ears = new Datagrams()) {
            Path takes = folder.resolve("takes");
            Path wavs = folder.resolve("wavs");
            Path midi = folder.resolve("midi");
            Cli cli = Cli.run(words(
                    ears,
                    "--seconds",
                    "2",
                    "--fast",
                    "--record",
                    takes.toString(),
                    "--wav",
                    wavs.toString(),
                    "--midi-file",
                    midi.toString()));
            assertEquals(0, cli.exitCode(), cli.err());
            assertEquals(List.of("1-Wren.take", "2-Rook.take"), names(takes));
            assertEquals(List.of("1-Wren.wav", "2-Rook.wav"), names(wavs));
            assertEquals(List.of("1-Wren.mid", "2-Rook.mid"), names(midi));
            // each take is that of its own instrument
            Cli again = Cli.run(
                    "play",
                    "take:" + takes.resolve("2-Rook.take"),
                    "--room",
                    "fennel-attic",
                    "--profiles",
                    "profiles",
                    "--fast",
                    "--go",
                    "--json");
            assertEquals(
                    cli.last().get("instruments").get(1).get("readings").asInt(),
                    again.last().get("readings").asInt());
        }
    }

    private static List<String> names(Path there) throws IOException {
        try (Stream<Path> files = Files.list(there)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aTuningThatOnlySomeHaveIsPlayedByThose() throws IOException {
        Files.createDirectories(folder.resolve("rooms"));
        for (String room : List.of("saltmill-hall", "fennel-attic")) {
            Files.copy(
                    Path.of("profiles", room + ".json"), folder.resolve("rooms").resolve(room + ".json"));
        }
        String rooms = folder.resolve("rooms").toString();
        assertEquals(
                0,
                Cli.run("tune", "--room", "fennel-attic", "--name", "rafters", "--key", "F", "--profiles", rooms)
                        .exitCode());
        try (Datagrams ears = new Datagrams()) {
            List<String> words =
                    new ArrayList<>(List.of(words(ears, "--seconds", "2", "--fast", "--tuning", "rafters")));
            words.set(words.indexOf("profiles"), rooms);
            Cli cli = Cli.run(words.toArray(new String[0]));
            assertEquals(0, cli.exitCode(), cli.err());
            Set<String> played = cli.objects().stream()
                    .filter(object -> object.path("event").asText().equals("frame"))
                    .map(object -> object.get("instrument").asText() + " "
                            + object.get("tuning").asText())
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of("Rook rafters", "Wren first"), played);
            assertTrue(cli.err().contains("Wren: has no tuning 'rafters'"), cli.err());
        }
    }

    @ParameterizedTest
    @CsvSource({"crosstalk, 1", "echo, 0"})
    void echoInstrumentsThatHearEachOtherAreToldAndQuietOnesAreNot(String simulation, int hints) {
        String rooms = folder.resolve("echoes").toString();
        Cli made = Cli.run("calibrate", "sim:" + simulation, "--room", "echo", "--profiles", rooms, "--fast");
        assertEquals(0, made.exitCode(), made.err());
        Cli cli = Cli.run(("play sim:S sim:S --room echo --room echo --as Wren --as Rook --seconds 40 --fast --json"
                        + " --profiles " + rooms)
                .replace("sim:S", "sim:" + simulation)
                .split(" "));
        assertEquals(0, cli.exitCode(), cli.err());
        List<String> told = cli.objects().stream()
                .filter(object -> object.path("event").asText().equals("neighbours"))
                .map(object -> object.get("hint").asText())
                .toList();
        assertEquals(hints, told.size(), told::toString);
        told.forEach(hint -> assertTrue(hint.contains("Wren") && hint.contains("Rook"), hint));
    }

    /** The first room's player has the second board, the second room's the first. */
    @Test
    void wavingClaimsABoardWhicheverWayTheyArePluggedIn() throws IOException {
        String rooms = folder.resolve("claimed").toString();
        for (String simulation : List.of("two-flight", "still")) {
            Cli made = Cli.run("calibrate", "sim:" + simulation, "--room", simulation, "--profiles", rooms, "--fast");
            assertEquals(0, made.exitCode(), made.err());
        }
        try (Datagrams ears = new Datagrams()) {
            Cli cli = Cli.run(("play sim:still sim:two-flight --claim --room two-flight --room still --seconds 2 --json"
                            + " --profiles " + rooms + " --send udp:127.0.0.1:" + ears.port())
                    .split(" "));
            assertEquals(0, cli.exitCode(), cli.out() + cli.err());
            List<String> claimed = cli.objects().stream()
                    .filter(object -> object.path("event").asText().equals("claimed"))
                    .map(object -> object.get("instrument").asText() + " "
                            + object.get("source").asText() + " "
                            + object.get("byWave").asBoolean())
                    .toList();
            assertEquals(List.of("Larkspan sim:two-flight true", "Plumbline sim:still true"), claimed);
            assertTrue(sounds(ears, "Larkspan") || of(ears, "Larkspan").stream().anyMatch(Datagram::hasHand));
        }
    }

    @Test
    void anOrderFromOutsideReachesAllByAPatternAndOneByItsName() throws Exception {
        try (Datagrams ears = new Datagrams();
                Program program = Program.start(folder, words(ears, "--go", "--remote", "0"))) {
            Waits.until(() -> sounds(ears, "Wren") && sounds(ears, "Rook"), program::words);
            String opened = program.out()
                    .lines()
                    .filter(line -> line.contains("\"event\":\"remoteOpen\""))
                    .findFirst()
                    .orElseThrow();
            int port = Integer.parseInt(opened.replaceAll(".*\"port\":(\\d+).*", "$1"));
            try (OscSender outside = new OscSender(port)) {
                outside.sendBytes(OscSender.pattern("/handspan/*/mute", 1));
                Waits.until(() -> !sounds(ears, "Wren") && !sounds(ears, "Rook"), program::words);
                outside.send("/handspan/Rook/mute", 0);
                Waits.until(() -> sounds(ears, "Rook"), program::words);
                assertFalse(sounds(ears, "Wren"));
            }
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aNumberMutesOneAndASignalFadesAll() throws Exception {
        try (Datagrams ears = new Datagrams();
                Program program = Program.start(folder, words(ears, "--go"))) {
            Waits.until(() -> sounds(ears, "Wren") && sounds(ears, "Rook"), program::words);
            program.type("2 m");
            Waits.until(() -> !sounds(ears, "Rook"), program::words);
            int muted = of(ears, "Rook").size();
            Waits.until(() -> sounds(ears, "Wren"), program::words);
            program.type("2");
            Waits.until(() -> sounds(ears, "Rook"), program::words);
            assertTrue(of(ears, "Rook").size() > muted);
            program.type("m");
            Waits.until(() -> !sounds(ears, "Wren") && !sounds(ears, "Rook"), program::words);
            program.type("open");
            Waits.until(() -> sounds(ears, "Wren") && sounds(ears, "Rook"), program::words);
            program.signal("TERM");
            assertEquals(143, program.await(), program.words());
            for (String name : List.of("Wren", "Rook")) {
                List<Datagram> own = of(ears, name);
                own.subList(own.size() - 5, own.size())
                        .forEach(end -> assertTrue(end.gain01() == 0 && !end.hasHand(), name));
            }
        }
    }
}
