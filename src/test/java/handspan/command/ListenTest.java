package handspan.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.HeardWav;
import handspan.Program;
import handspan.Waits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What the listening tone does on the command line. */
class ListenTest {
    private static final double CEILING_DB = -12;
    private static final double CLICK_LIMIT_DB = -88;

    /** Above the sixth harmonic of A4, the highest note of the room. */
    private static final double ABOVE_HZ = 5000;

    @TempDir
    Path folder;

    private static Cli play(String source, String... more) {
        List<String> words = new ArrayList<>(List.of(
                "play",
                source,
                "--room",
                "saltmill-hall",
                "--profiles",
                "profiles",
                "--json",
                "--send",
                "udp:127.0.0.1:9"));
        words.addAll(List.of(more));
        return Cli.run(words.toArray(new String[0]));
    }

    private static List<JsonNode> troubles(Cli cli, String target) {
        return cli.objects().stream()
                .filter(node -> node.path("event").asText().equals("tone"))
                .filter(node -> node.path("target").asText().startsWith(target))
                .toList();
    }

    private static int count(String text, String part) {
        return (text.length() - text.replace(part, "").length()) / part.length();
    }

    @Test
    void whatIsPlayedIsInTheFileAndTheFileInTheResult() throws IOException {
        Path file = folder.resolve("sounds/evening.wav");
        Cli cli = play("sim:hall", "--seconds", "5", "--fast", "--wav", file.toString());
        assertEquals(0, cli.exitCode(), cli.err());
        JsonNode wav = cli.last().path("wav");
        HeardWav heard = HeardWav.read(file);
        assertEquals(file.toString(), wav.path("file").asText());
        assertEquals(heard.seconds(), wav.path("seconds").asDouble(), 1e-9);
        assertEquals(0, wav.path("dropped").asInt(-1));
        assertEquals("", wav.path("trouble").asText("?"));
        assertTrue(heard.seconds() > 4.9 && heard.seconds() < 5.5, heard.seconds() + " s");
        assertTrue(heard.peakDb() > -40 && heard.peakDb() < CEILING_DB, heard.peakDb() + " dBFS");
        assertEquals(1, count(cli.err(), "caution: turn monitors or headphones low"), cli.err());
        assertTrue(cli.err().contains(" s of sound are in " + file), cli.err());
    }

    @Test
    void withoutTheToneNothingIsSaidOfIt() {
        Cli cli = play("sim:hall", "--seconds", "1", "--fast");
        assertFalse(cli.last().has("wav"), cli.out());
        assertFalse(cli.err().contains("caution"), cli.err());
    }

    /** Byte for byte, and an older file is written over. */
    @Test
    void aTakeSoundsTheSameEachTime() throws IOException {
        Path take = folder.resolve("x.take");
        Path first = folder.resolve("first.wav");
        Path second = folder.resolve("second.wav");
        play("sim:hall", "--seconds", "5", "--fast", "--record", take.toString(), "--wav", first.toString());
        Files.write(second, new byte[5_000_000]);
        play("take:" + take, "--go", "--fast", "--wav", first.toString());
        play("take:" + take, "--go", "--fast", "--wav", second.toString());
        assertTrue(HeardWav.read(first).peakDb() > -40);
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertRefused(2, "--listen with --fast", play("sim:hall", "--seconds", "1", "--fast", "--listen"));
        String same = folder.resolve("same").toString();
        assertRefused(
                2,
                "each a file of its own",
                play("sim:hall", "--seconds", "1", "--fast", "--wav", same, "--record", same));
        assertRefused(4, "can't be written", play("sim:hall", "--seconds", "1", "--fast", "--wav", folder.toString()));
    }

    private static void assertRefused(int exitCode, String words, Cli cli) {
        assertEquals(exitCode, cli.exitCode(), cli.err());
        assertTrue(cli.err().contains(words), cli.err());
    }

    /** In its first second a simulated board is not yet heard, so that no machine makes a noise by this test. */
    @Test
    void withoutASoundDeviceThatIsSaidOnceAndPlayingGoesOn() {
        boolean device = AudioSystem.isLineSupported(
                new DataLine.Info(SourceDataLine.class, new AudioFormat(48_000, 16, 1, true, false)));
        Cli cli = play("sim:hall", "--seconds", "0.9", "--listen");
        assertEquals(0, cli.exitCode(), cli.err());
        if (!device) {
            assertEquals(1, troubles(cli, "listen").size(), cli.out());
            assertEquals(1, count(cli.err(), "no sound device for the tone"), cli.err());
        }
        assertTrue(cli.last().path("frames").asInt() > 0, cli.out());
    }

    /** A device that takes no byte (Linux, full(4)). */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aFullDiskIsSaidOnceAndPlayingGoesOn() {
        Cli cli = play("sim:hall", "--seconds", "2.5", "--wav", "/dev/full");
        assertEquals(0, cli.exitCode(), cli.err());
        assertEquals(1, troubles(cli, "wav:").size(), cli.out());
        assertEquals(1, count(cli.err(), "0.00 s are in /dev/full; playing goes on"), cli.err());
        List<JsonNode> objects = cli.objects();
        int saidAt = objects.indexOf(troubles(cli, "wav:").get(0));
        assertTrue(
                objects.subList(saidAt, objects.size()).stream()
                        .anyMatch(node -> node.path("state").asText().equals("playing")),
                "a hand plays after that: " + cli.out());
        assertTrue(cli.last().path("wav").path("trouble").asText().contains("stopped"), cli.out());
        assertTrue(cli.last().path("wav").path("dropped").asInt() > 0, cli.out());
    }

    /** Ended by a signal, the file is whole and its tone has faded; killed, it is whole but for the last second. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aFileOfAProgramThatIsEndedIsWhole() throws Exception {
        Path ended = folder.resolve("ended.wav");
        Path killed = folder.resolve("killed.wav");
        try (Program first = start(ended);
                Program second = start(killed)) {
            Waits.until(() -> sounds(ended), first::words);
            Waits.until(() -> sounds(killed), second::words);
            first.signal("TERM");
            assertEquals(143, first.await(), first.words());
            second.signal("KILL");
            assertEquals(137, second.await(), second.words());
        }
        HeardWav heard = HeardWav.read(ended);
        assertEquals(0, heard.at(heard.count() - 1));
        assertTrue(heard.clickDb(ABOVE_HZ) < CLICK_LIMIT_DB, heard.clickDb(ABOVE_HZ) + " dBFS");
        assertEquals(44 + 2L * heard.count(), Files.size(ended));
        assertTrue(HeardWav.read(killed).seconds() > 0.5);
    }

    private Program start(Path file) throws IOException {
        return Program.start(
                folder,
                "play",
                "sim:hall",
                "--room",
                "saltmill-hall",
                "--profiles",
                "profiles",
                "--go",
                "--wav",
                file.toString(),
                "--send",
                "udp:127.0.0.1:9");
    }

    private static boolean sounds(Path file) {
        try {
            return Files.exists(file)
                    && Files.size(file) > 44
                    && HeardWav.read(file).peakDb() > -60;
        } catch (IOException e) {
            // its header is just being written
            return false;
        }
    }
}
