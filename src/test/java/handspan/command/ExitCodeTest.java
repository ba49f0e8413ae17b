package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * 0 done; 1 no, time-out, cancel; 2 usage, unknown sim, scale, channel; 3 instrument or network; 4 file, unknown room;
 * 5 internal.
 */
class ExitCodeTest {
    @TempDir
    static Path folder;

    private static String rooms;
    private static Path passage;

    @BeforeAll
    static void aRoomIsThere() {
        rooms = folder.resolve("rooms").toString();
        Cli made = Cli.run("calibrate", "sim:hall", "--room", "hall", "--profiles", rooms, "--fast");
        assertEquals(0, made.exitCode(), made.err());
        passage = folder.resolve("passage.take");
        Cli taken = Cli.run("record", "sim:hall", "--out", passage.toString(), "--seconds", "6", "--fast");
        assertEquals(0, taken.exitCode(), taken.err());
    }

    private static void assertExit(int code, String words, String... args) {
        Cli cli = Cli.run(args);
        assertEquals(code, cli.exitCode(), cli.out() + cli.err());
        assertTrue((cli.out() + cli.err()).contains(words), "'" + words + "' is not in: " + cli.out() + cli.err());
        assertFalse(cli.err().contains("\tat "), "a stack trace: " + cli.err());
    }

    @Test
    void doneIs0() {
        assertExit(0, "minor-pentatonic", "scales");
        assertExit(0, "this zone holds", "advise", "--room", "hall", "--profiles", rooms);
        assertExit(0, "good", "survey", "sim:hall", "--fast");
        assertExit(0, "hall", "rooms", "list", "--profiles", rooms);
        assertExit(0, "VERB", "--help");
        assertExit(
                0,
                "room: not checked",
                "check",
                "sim:hall",
                "--no-holds",
                "--room",
                "hall",
                "--profiles",
                rooms,
                "--fast");
        assertExit(0, "fits", "check", "sim:hall", "--room", "hall", "--profiles", rooms, "--fast");
    }

    @Test
    void aNoIs1() {
        assertExit(
                1,
                "calibrate again",
                "check",
                "sim:hall",
                "--by-mark",
                "--seed",
                "2",
                "--room",
                "hall",
                "--profiles",
                rooms,
                "--fast");
        assertExit(
                1,
                "not finished within 3 s",
                "calibrate",
                "sim:hall",
                "--room",
                "x",
                "--profiles",
                rooms,
                "--timeout",
                "3",
                "--fast");
        assertExit(
                1, "light only", "check", "sim:hall", "--seed", "2", "--room", "hall", "--profiles", rooms, "--fast");
        assertExit(1, "no hand was held still", "survey", "sim:hall", "--seconds", "0.5", "--fast");
    }

    @Test
    void aWrongCommandLineIs2() throws IOException {
        assertExit(2, "Unmatched argument", "flatten");
        assertExit(2, "Unknown option", "scales", "--loud");
        assertExit(2, "Missing required option", "tune");
        assertExit(2, "'sim:nowhere' is not known: choose one of hall", "watch", "sim:nowhere", "--seconds", "1");
        assertExit(2, "'sim:nowhere' is not known", "calibrate", "sim:nowhere", "--room", "y", "--profiles", rooms);
        assertExit(
                2, "scale 'purple' is not known", "tune", "--room", "hall", "--scale", "purple", "--profiles", rooms);
        assertExit(2, "channel '7' is not in the lines", "survey", "sim:hall", "--pitch", "7:distance", "--fast");
        assertExit(2, "unit V does not go with distance", "survey", "sim:hall", "--pitch", "1:distance:V", "--fast");
        assertExit(2, "only a recording begins anywhere", "survey", "sim:hall", "--begin", "5", "--fast");
        assertExit(2, "'soon' is no place in a recording", "survey", "sim:hall", "--begin", "soon", "--fast");
        assertExit(2, "'-1' is no place in a recording", "survey", "sim:hall", "--begin", "-1", "--fast");
        assertExit(2, "--level without --pitch", "survey", "sim:hall", "--level", "2:photoresistor", "--fast");
        assertExit(
                2, "belong together", "calibrate", "sim:hall", "--room", "y", "--near-mm", "100", "--profiles", rooms);
        assertExit(2, "is not a way out", "send", "--room", "hall", "--add", "pigeon:loft:1", "--profiles", rooms);
        assertExit(
                2, "tuning 'third' is not in room", "map", "--room", "hall", "--tuning", "third", "--profiles", rooms);
        assertExit(3, "no screen can be opened", "window", "--profiles", rooms);
        String pdf = folder.resolve("strip.pdf").toString();
        assertExit(2, "paper 'a5' (a4, letter)", strip("hall", "a5", pdf));
        assertExit(2, "'--paper=PAPER'", "strip", "--room", "hall", "--out", pdf, "--profiles", rooms);
        assertExit(2, "hand 'foot' (pitch, level)", strip("hall", "a4", pdf, "--hand", "foot"));
        assertExit(2, "tuning 'third' is not in room", strip("hall", "a4", pdf, "--tuning", "third"));
        assertExit(2, "without a ruler", strip("hall", "a4", pdf, "--hand", "level"));
        String report = folder.resolve("report.pdf").toString();
        assertExit(2, "paper 'a5' (a4, letter)", report("hall", report, "--paper", "a5"));
        assertExit(2, "tuning 'third' is not in room", report("hall", report, "--tuning", "third"));
        assertExit(
                2,
                "a name that ends in .pdf or .html",
                report("hall", folder.resolve("report.txt").toString()));
        assertExit(2, "aim of 0.0 mm", "advise", "--room", "hall", "--aim", "0", "--profiles", rooms);
        assertExit(2, "above 0, under 1", "advise", "--room", "hall", "--miss", "1", "--profiles", rooms);
        assertExit(2, "tuning 'third' is not", "advise", "--room", "hall", "--tuning", "third", "--profiles", rooms);
        assertExit(2, "no reading", "map", "--room", "hall", "--raw", "8190", "--profiles", rooms);
        assertExit(2, "'9x' is not a number in 0..65535", "hear", "9x");
        assertExit(2, "--remote-at without --remote", play("--remote-at", "0.0.0.0"));
        assertExit(2, "--remote with --fast", play("--remote", "0", "--fast"));
        assertExit(2, "orders come as datagrams", play("--remote", "tcp:9001"));
        assertExit(2, "is no address of this machine", play("--remote", "0", "--remote-at", "203.0.113.9"));
        assertExit(2, "0 sources for one room", "play", "--room", "hall", "--profiles", rooms);
        assertExit(2, "1 sources for 2 rooms", play("--room", "hall"));
        assertExit(2, "both send /Willowreach/pitch", play("sim:hall", "--room", "hall"));
        assertExit(2, "1 times --as for 2 rooms", play("sim:hall", "--room", "hall", "--as", "Wren"));
        assertExit(2, "--remote with --fast", two("--remote", "0", "--fast"));
        assertExit(2, "--remote-at without --remote", two("--remote-at", "0.0.0.0"));
        assertExit(2, "--listen with several rooms", two("--listen"));
        assertExit(2, "is in none of these rooms", two("--tuning", "third"));
        assertExit(
                2,
                "with several rooms name a folder",
                two("--record", Files.createTempFile(folder, "x", ".take").toString()));
        assertExit(
                2,
                "for two rooms",
                "play",
                "/dev/ttyHANDSPAN9",
                "/dev/ttyHANDSPAN9",
                "--room",
                "hall",
                "--room",
                "hall",
                "--as",
                "Wren",
                "--as",
                "Rook",
                "--profiles",
                rooms);
        assertExit(2, "--fast with --claim", two("--claim", "--fast"));
        assertExit(
                2, "nobody waves in a recording", "play", "take:x", "--claim", "--room", "hall", "--profiles", rooms);
        assertExit(2, "rooms list", "rooms");
        assertExit(2, "'--version=N'", "rooms", "restore", "--room", "hall", "--profiles", rooms);
        assertExit(
                2,
                "one of both",
                "rooms",
                "compare",
                "--with",
                "x",
                "--version",
                "1",
                "--room",
                "hall",
                "--profiles",
                rooms);
    }

    private static String[] play(String... more) {
        List<String> args = new ArrayList<>(List.of("play", "sim:hall", "--room", "hall", "--profiles", rooms));
        args.addAll(List.of(more));
        return args.toArray(new String[0]);
    }

    private static String[] practice(String... more) {
        List<String> args = new ArrayList<>(List.of("practice", "sim:hall", "--room", "hall", "--profiles", rooms));
        args.addAll(List.of(more));
        return args.toArray(new String[0]);
    }

    private static String[] two(String... more) {
        List<String> args =
                new ArrayList<>(List.of(play("sim:hall", "--room", "hall", "--as", "Wren", "--as", "Rook")));
        args.addAll(List.of(more));
        return args.toArray(new String[0]);
    }

    @Test
    void practiceEndsWithItsCodes() throws IOException {
        assertExit(0, "3 of 3 notes hit", practice("--notes", "3", "--fast"));
        assertExit(2, "0 notes to find (1..1200)", practice("--notes", "0"));
        assertExit(2, "note C9 is not in tuning 'first' (A3 A#3 ", practice("--notes", "A3,C9"));
        assertExit(2, "note 'H4' (C-1..G9)", practice("--notes", "H4"));
        assertExit(2, "note 2 of the course is the same as the one before", practice("--notes", "A4,A4"));
        assertExit(2, "asking by 'smell' (name, sound, both)", practice("--ask", "smell"));
        assertExit(2, "time of 1.0 s for a note (2..600)", practice("--timeout", "1"));
        assertExit(2, "tuning 'third' is not in room", practice("--tuning", "third"));
        assertExit(2, "--save-aim with help", practice("--save-aim"));
        assertExit(2, "a recording can't look for notes", "practice", "take:x", "--room", "hall", "--profiles", rooms);
        assertExit(4, "cellar", "practice", "sim:hall", "--room", "cellar", "--profiles", rooms);
        assertExit(4, "player name '../x' cannot be a file name", practice("--player", "../x"));
        assertExit(4, "player 'Nobody' has no run yet", "progress", "--player", "Nobody", "--profiles", rooms);
        assertExit(2, "'--player=NAME'", "progress");
    }

    @Test
    void aPortThatIsTakenIs3() throws IOException {
        try (DatagramSocket taken = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
            assertExit(3, "close what listens there", "hear", String.valueOf(taken.getLocalPort()));
            assertExit(3, "remote control: udp port", play("--remote", String.valueOf(taken.getLocalPort())));
        }
    }

    @Test
    void anInstrumentThatIsNotThereIs3() throws IOException {
        assertExit(
                3,
                "is not there",
                "play",
                "sim:hall",
                "/dev/ttyHANDSPAN9",
                "--room",
                "hall",
                "--room",
                "hall",
                "--as",
                "Wren",
                "--as",
                "Rook",
                "--seconds",
                "1.5",
                "--profiles",
                rooms);
        assertExit(
                3,
                "no board to be claimed",
                "play",
                "/dev/ttyHANDSPAN9",
                "--claim",
                "--room",
                "hall",
                "--profiles",
                rooms);
        Path file = Files.writeString(folder.resolve("log.txt"), "1,2\n");
        assertExit(3, "is not there: plug the board in", "watch", "/dev/ttyHANDSPAN9", "--seconds", "1");
        assertExit(3, "sensors: not checked", "check", "/dev/ttyHANDSPAN9", "--room", "hall", "--profiles", rooms);
        assertExit(3, "is a folder, not a port", "play", folder.toString(), "--room", "hall", "--profiles", rooms);
        assertExit(
                3, "is a file, not a port: to replay", "play", file.toString(), "--room", "hall", "--profiles", rooms);
    }

    @Test
    void aFileThatIsNotThereOrDamagedIs4() throws IOException {
        assertExit(4, "cellar", "play", "sim:hall", "--room", "cellar", "--profiles", rooms);
        String nowhere = folder.resolve("nowhere").resolve("x.png").toString();
        assertExit(4, "its folder is there", "advise", "--room", "hall", "--chart", nowhere, "--profiles", rooms);
        assertExit(4, "cellar", "advise", "--room", "cellar", "--profiles", rooms);
        assertExit(4, "nowhere.take", taken("take:" + folder.resolve("nowhere.take")));
        assertExit(4, "cellar", "report", "take:" + passage, "--room", "cellar", "--profiles", rooms);
        assertExit(4, "its folder is there", taken("take:" + passage, "--out", nowhere));
        assertExit(4, "nowhere.take", "survey", "take:" + folder.resolve("nowhere.take"));
        assertExit(4, "give --replace", "calibrate", "sim:hall", "--room", "hall", "--profiles", rooms, "--fast");
        Path damaged = folder.resolve("damaged");
        Files.createDirectories(damaged);
        Files.writeString(damaged.resolve("attic.json"), "{\"format\": \"handspan-room/1\",\n oops");
        assertExit(4, "line 2", "rooms", "show", "--room", "attic", "--profiles", damaged.toString());
        assertExit(4, "cellar", "rooms", "history", "--room", "cellar", "--profiles", rooms);
        assertExit(4, "cellar", "rooms", "compare", "--room", "hall", "--with", "cellar", "--profiles", rooms);
        assertExit(4, "version 99", "rooms", "compare", "--room", "hall", "--version", "99", "--profiles", rooms);
        assertExit(4, "version 99", "rooms", "restore", "--room", "hall", "--version", "99", "--profiles", rooms);
        assertExit(4, "cannot be a file name", "rooms", "show", "--room", "../x", "--profiles", rooms);
        assertExit(4, "nothing but capitals", "calibrate", "sim:hall", "--room", "HALL", "--profiles", rooms);
        assertExit(4, "for a device", "calibrate", "sim:hall", "--room", "con", "--profiles", rooms, "--fast");
        assertExit(
                4, "line 2", "calibrate", "sim:hall", "--room", "attic", "--replace", "--profiles", damaged.toString());
        Path log = Files.writeString(folder.resolve("plain.txt"), "1,2\n3,4\n5,6\n");
        assertExit(4, "--rate", "survey", "take:" + log);
        assertExit(
                4, "cellar", strip("cellar", "a4", folder.resolve("strip.pdf").toString()));
        String noFolder = folder.resolve("noFolder").resolve("strip.pdf").toString();
        assertExit(4, "there is no folder", strip("hall", "a4", noFolder));
    }

    @Test
    void aReportOfNoRoomOrInNoFolderIs4() throws IOException {
        assertExit(4, "cellar", report("cellar", folder.resolve("cellar.pdf").toString()));
        for (String end : List.of("pdf", "html")) {
            Path nowhere = folder.resolve("noFolder").resolve("report." + end);
            assertExit(4, "there is no folder", report("hall", nowhere.toString()));
            Path isFolder = Files.createDirectories(folder.resolve("a-folder." + end));
            assertExit(4, "it is a folder", report("hall", isFolder.toString()));
        }
        assertFalse(Files.exists(folder.resolve("cellar.pdf")));
    }

    /** A file of before stays as it was where the new one fails, and takes the place of it whole where it does not. */
    @Test
    void aReportReplacesTheOneBeforeAndLeavesNothingBeside() throws IOException {
        Path place = Files.createDirectories(folder.resolve("reports"));
        Path html = Files.writeString(place.resolve("hall.html"), "before");
        assertExit(2, "tuning 'third'", report("hall", html.toString(), "--tuning", "third"));
        assertEquals("before", Files.readString(html));
        assertExit(0, "report of room 'hall'", report("hall", html.toString()));
        assertTrue(Files.readString(html).endsWith("</html>\n"));
        try (var files = Files.list(place)) {
            assertEquals(List.of(html), files.toList());
        }
    }

    private static String[] report(String room, String file, String... more) {
        List<String> args = new ArrayList<>(List.of("report", "--room", room, "--out", file, "--profiles", rooms));
        args.addAll(List.of(more));
        return args.toArray(new String[0]);
    }

    private static String[] taken(String... more) {
        List<String> args = new ArrayList<>(List.of("report", "--room", "hall", "--profiles", rooms));
        args.addAll(List.of(more));
        return args.toArray(new String[0]);
    }

    @Test
    void reportsOfRecordingsEndWithTheirOwnCodes() throws IOException {
        assertExit(0, "notes a minute", taken("take:" + passage));
        assertExit(0, "no difference beyond chance", taken("take:" + passage, "take:" + passage));
        Path silent = Files.writeString(folder.resolve("silent.txt"), "8190 870\n".repeat(300));
        assertExit(1, "no note was heard", taken("take:" + silent, "--rate", "50"));
        assertExit(2, "is no recording (take:FILE)", taken("sim:hall"));
        assertExit(2, "3 rooms", taken("take:" + passage, "--room", "b", "--room", "c"));
        assertExit(2, "tuning 'waltz' is not in room 'hall'", taken("take:" + passage, "--tuning", "waltz"));
        assertExit(2, "x.txt", taken("take:" + passage, "--out", "x.txt"));
        assertExit(2, "takes one --room and --out", taken());
    }

    private static String[] strip(String room, String paper, String pdf, String... more) {
        List<String> args =
                new ArrayList<>(List.of("strip", "--room", room, "--paper", paper, "--out", pdf, "--profiles", rooms));
        args.addAll(List.of(more));
        return args.toArray(new String[0]);
    }

    @Test
    void aMistakeInTheProgramIs5() {
        PrintStream broken = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8) {
            @Override
            public void println(String line) {
                throw new IllegalStateException("made to fail");
            }
        };
        int code = Handspan.run(
                List.of("scales"),
                new ByteArrayInputStream(new byte[0]),
                broken,
                new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
        assertEquals(5, code);
    }

    @Test
    void withJsonAFailureIsAnObjectToo() {
        Cli cli = Cli.run("rooms", "show", "--room", "cellar", "--profiles", rooms, "--json");
        assertEquals(4, cli.exitCode());
        assertEquals(4, cli.last().get("exitCode").asInt());
        assertTrue(cli.last().get("error").asText().contains("cellar"));
    }
}
