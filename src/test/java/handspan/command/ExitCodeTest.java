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

    @BeforeAll
    static void aRoomIsThere() {
        rooms = folder.resolve("rooms").toString();
        Cli made = Cli.run("calibrate", "sim:hall", "--room", "hall", "--profiles", rooms, "--fast");
        assertEquals(0, made.exitCode(), made.err());
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
    void aWrongCommandLineIs2() {
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
        assertExit(2, "aim of 0.0 mm", "advise", "--room", "hall", "--aim", "0", "--profiles", rooms);
        assertExit(2, "above 0, under 1", "advise", "--room", "hall", "--miss", "1", "--profiles", rooms);
        assertExit(2, "tuning 'third' is not", "advise", "--room", "hall", "--tuning", "third", "--profiles", rooms);
        assertExit(2, "no reading", "map", "--room", "hall", "--raw", "8190", "--profiles", rooms);
        assertExit(2, "'9x' is not a number in 0..65535", "hear", "9x");
        assertExit(2, "--remote-at without --remote", play("--remote-at", "0.0.0.0"));
        assertExit(2, "--remote with --fast", play("--remote", "0", "--fast"));
        assertExit(2, "orders come as datagrams", play("--remote", "tcp:9001"));
        assertExit(2, "is no address of this machine", play("--remote", "0", "--remote-at", "203.0.113.9"));
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

    @Test
    void aPortThatIsTakenIs3() throws IOException {
        try (DatagramSocket taken = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
            assertExit(3, "close what listens there", "hear", String.valueOf(taken.getLocalPort()));
            assertExit(3, "remote control: udp port", play("--remote", String.valueOf(taken.getLocalPort())));
        }
    }

    @Test
    void anInstrumentThatIsNotThereIs3() throws IOException {
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
