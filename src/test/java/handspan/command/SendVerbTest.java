package handspan.command;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.outside.osc.OscReceiver;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A patch that exists already, fitted by the command line. */
@Timeout(60)
class SendVerbTest {
    private static final String ROOM = "saltmill-hall";

    /** Gain of -6 dB, the ceiling of the room: 10^(-6/20). */
    private static final double CEILING = 0.501_187;

    /** Of a gain sent as a 32-bit float. */
    private static final double FLOAT_STEP = 1e-6;

    private final List<ReceivedMessage> received = Collections.synchronizedList(new ArrayList<>());

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

    private static JsonNode line(JsonNode result, String address) {
        return StreamSupport.stream(result.get("lines").spliterator(), false)
                .filter(line -> line.get("address").asText().equals(address))
                .findFirst()
                .orElseThrow(() -> new AssertionError(address + " in " + result));
    }

    private List<ReceivedMessage> at(String address) {
        synchronized (received) {
            return received.stream().filter(m -> m.address().equals(address)).toList();
        }
    }

    @Test
    void aLineIsFittedToAPatchAndKept() {
        done("send --address level=/fader/{key} --types level=i --scale level=0..0.5,0..127 --clip level --often"
                + " level=change,60 --dead-band level=1 --off note");
        JsonNode kept = done("send");
        assertFalse(kept.get("saved").asBoolean());
        JsonNode level = line(kept, "/fader/{key}");
        assertEquals("i", level.get("types").asText());
        assertEquals("[0.0,0.5]", level.get("from").toString());
        assertEquals("[0.0,127.0]", level.get("to").toString());
        assertTrue(level.get("clip").asBoolean());
        assertTrue(level.get("onChange").asBoolean());
        assertEquals(60, level.get("mostPerS").asDouble());
        assertEquals(1, level.get("deadBand").asDouble());
        assertFalse(line(kept, "/Willowreach/note").get("on").asBoolean());
        JsonNode back = done("send --usual level --no-clip level --address level=/Willowreach/level --on note");
        assertFalse(line(back, "/Willowreach/level").has("from"));
        assertTrue(line(back, "/Willowreach/note").get("on").asBoolean());
    }

    @Test
    void valuesThatAreNotAmongTheLinesAreAddedAndRemoved() {
        int usual = done("send").get("lines").size();
        JsonNode more = done("send --on db --on raw:2 --second level=/other/level --types /other/level=d");
        assertEquals(usual + 3, more.get("lines").size());
        assertEquals("2", line(more, "/Willowreach/raw/2").get("channel").asText());
        assertEquals("d", line(more, "/other/level").get("types").asText());
        assertEquals("f", line(more, "/Willowreach/level").get("types").asText());
        assertEquals(
                usual,
                done("send --remove-line raw:2 --remove-line db --remove-line /other/level")
                        .get("lines")
                        .size());
    }

    @Test
    void typesBeyondTheCoreAreTold() {
        assertTrue(run("send --types hand=T").err().contains("not core Open Sound Control 1.0"));
        assertFalse(run("send --types hand=i").err().contains("not core"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "send --types level",
                "send --types level=x",
                "send --types colour=f",
                "send --scale level=0..1",
                "send --scale level=1..1,0..2",
                "send --scale note=0..1,0..2",
                "send --often level=never",
                "send --often level=2000",
                "send --dead-band level=-1",
                "send --address level=level",
                "send --address level=/a/{colour}",
                "send --remove-line raw:2",
                "send --on raw",
                "send --second level",
                "send --latency -5",
                "send --latency soon",
                "send --separate --latency 5",
                "send --separate --bundled",
                "send --midi-channel 17",
                "send --midi-bend 0",
                "send --midi-level velocity",
                "send --add sctp:here:9000",
                "send --add udp:127.0.0.1"
            })
    void whatDoesNotFitIsRefusedAndNothingIsSaved(String line) throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve(ROOM + ".json"));
        Cli cli = run(line);
        assertEquals(2, cli.exitCode(), cli.err());
        assertFalse(cli.err().isBlank());
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(folder.resolve(ROOM + ".json")));
    }

    @Test
    void aPatchThatHearsGetsA4ThatSwellsUnderTheCeilingAndDiesAway() throws IOException {
        try (OscReceiver receiver = OscReceiver.open(0, System::nanoTime, received::add)) {
            JsonNode targets = done("send --remove udp:127.0.0.1:9000 --add udp:127.0.0.1:" + receiver.port()
                            + " --try")
                    .get("tried");
            assertEquals("", targets.get(0).get("trouble").asText());
            assertEquals(receiver.status().packets(), targets.get(0).get("sent").asLong());
        }
        List<ReceivedMessage> levels = at("/Willowreach/level");
        double loudest = levels.stream()
                .mapToDouble(level -> (Float) requireNonNull(level.arguments().get(0)))
                .max()
                .orElse(0);
        assertEquals(CEILING, loudest, FLOAT_STEP);
        at("/Willowreach/pitch")
                .forEach(pitch -> assertEquals(440f, pitch.arguments().get(0)));
        for (ReceivedMessage last : levels.subList(levels.size() - 5, levels.size())) {
            assertEquals(0f, last.arguments().get(0));
        }
        assertEquals(
                0,
                at("/Willowreach/hand")
                        .get(at("/Willowreach/hand").size() - 1)
                        .arguments()
                        .get(0));
    }

    @Test
    void aPatchThatIsNotThereIsToldAndTheExitCodeSaysSo() throws IOException {
        int nobody;
        try (DatagramSocket free = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
            nobody = free.getLocalPort();
        }
        Cli cli = run("send --remove udp:127.0.0.1:9000 --add udp:127.0.0.1:" + nobody + " --try");
        assertEquals(3, cli.exitCode());
        assertTrue(cli.last().get("tried").get(0).get("trouble").asText().contains("nobody listens"));
    }

    /** The board of the simulated hall prints whole millimetres and 10-bit counts; zone and sensor are the room's. */
    @Test
    void rawAndPhysicalValuesOfChannelsGoOutAsTheBoardPrintsThem() throws IOException {
        try (OscReceiver receiver = OscReceiver.open(0, System::nanoTime, received::add)) {
            done("send --on raw:1 --on physical:1 --on raw:2 --types raw:2=i --scale raw:1=0..1000,0..100");
            done("play sim:hall --seconds 2 --send udp:127.0.0.1:" + receiver.port());
        }
        List<ReceivedMessage> mm = at("/Willowreach/physical/1");
        List<ReceivedMessage> tenth = at("/Willowreach/raw/1");
        assertTrue(mm.size() > 50, "got " + mm.size());
        float first = (Float) requireNonNull(mm.get(mm.size() - 1).arguments().get(0));
        assertEquals(Math.rint(first), first, 0f, "whole mm");
        assertTrue(first > 20 && first < 2000, "mm " + first);
        assertTrue(tenth.stream().allMatch(message -> message.arguments().get(0) instanceof Float));
        at("/Willowreach/raw/2").forEach(message -> {
            int counts = (Integer) requireNonNull(message.arguments().get(0));
            assertTrue(counts >= 0 && counts <= 1023, "counts " + counts);
        });
        assertFalse(at("/Willowreach/raw/2").isEmpty());
    }

    @Test
    void aChannelThatIsNotInTheLinesIsSaidAndPlayingDoesNotBegin() {
        done("send --on raw:7");
        Cli cli = run("play sim:hall --seconds 1 --send udp:127.0.0.1:9");
        assertEquals(2, cli.exitCode());
        assertTrue((cli.out() + cli.err()).contains("channel '7'"), cli.out() + cli.err());
    }
}
