package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.OscSender;
import handspan.Program;
import handspan.Pty;
import handspan.Waits;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program plays a board on a pseudo-terminal before which hardly anything moves; orders come from the library
 * JavaOSC, and what they do is heard in what the program sends.
 */
@Timeout(120)
@EnabledOnOs(OS.LINUX)
class RemoteTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String NAME = "/handspan/Willowreach/";

    /** The board prints 250 and 251 mm by turns, since a sensor that never changes has stopped: 6 cents, smoothed. */
    private static final double STILL_CENTS = 15;

    /** Pitch is sent as a float of 32 bits, 24 of them digits: 2^-24 of 1 is a ten-thousandth of a cent. */
    private static final double STEP_CENTS = 0.01;

    private static final double AUDIBLE01 = 0.001;

    @TempDir
    Path folder;

    private Pty board;
    private Datagrams heard;
    private Thread pump;
    private Program play;
    private OscSender sender;

    @BeforeEach
    void aBoardIsPlayed() throws IOException {
        board = new Pty();
        heard = new Datagrams();
        pump = new Thread(() -> {
            try {
                for (int i = 0; true; i++) {
                    board.write(i % 2 == 0 ? "250,700\n" : "251,701\n");
                    Thread.sleep(20);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        pump.start();
        play = Program.start(
                folder,
                "play",
                board.port(),
                "--room",
                "saltmill-hall",
                "--profiles",
                "profiles",
                "--go",
                "--json",
                "--remote",
                "0",
                "--send",
                "udp:127.0.0.1:" + heard.port());
        Waits.until(() -> event("remoteOpen").isPresent(), this::words);
        assertEquals(NAME, event("remoteOpen").get().get("prefix").asText());
        sender = new OscSender(event("remoteOpen").get().get("port").asInt());
        await("sound", datagram -> datagram.gain01() > AUDIBLE01);
    }

    @AfterEach
    void allEnds() throws Exception {
        pump.interrupt();
        pump.join();
        sender.close();
        play.close();
        heard.close();
        board.close();
    }

    private java.util.Optional<JsonNode> event(String name) {
        return play.out()
                .lines()
                .filter(line -> line.contains("\"event\":\"" + name + "\""))
                .map(line -> {
                    try {
                        return MAPPER.readTree(line);
                    } catch (IOException e) {
                        return MAPPER.createObjectNode(); // not written to its end yet
                    }
                })
                .filter(node -> node.has("event"))
                .reduce((first, last) -> last);
    }

    private Datagram last() {
        List<Datagram> all = heard.all();
        return all.get(all.size() - 1);
    }

    private String words() {
        String all = play.words();
        return all.substring(Math.max(0, all.length() - 2_000));
    }

    private void await(String what, Predicate<Datagram> happened) {
        Waits.until(() -> !heard.all().isEmpty() && happened.test(last()), () -> what + ": " + words());
    }

    private static double hz(Datagram datagram) {
        return ((Number) datagram.argument("/pitch")).doubleValue();
    }

    private void awaitHz(double hz) {
        await(hz + " Hz", datagram -> Math.abs(1200 * Math.log(hz(datagram) / hz) / Math.log(2)) < STILL_CENTS);
    }

    /** Address and type tags, each with zero bytes up to a multiple of 4, without arguments. */
    private static byte[] head(String address, String tags) {
        String head = "";
        for (String text : List.of(address, "," + tags)) {
            head += text + "\0".repeat(4 - text.length() % 4);
        }
        return head.getBytes(StandardCharsets.US_ASCII);
    }

    private List<ReceivedMessage> ask() throws IOException {
        DatagramSocket socket = sender.answers();
        socket.setSoTimeout(5_000);
        sender.sendBytes(head(NAME + "state", ""));
        byte[] bytes = new byte[2_000];
        DatagramPacket answer = new DatagramPacket(bytes, bytes.length);
        socket.receive(answer);
        assertEquals(InetAddress.getLoopbackAddress(), answer.getAddress());
        return new OscPacketReader()
                .read(ByteBuffer.wrap(bytes, 0, answer.getLength()), 0)
                .messages();
    }

    private static String told(List<ReceivedMessage> answer) {
        return answer.stream()
                .map(message -> message.address().replace(NAME + "now/", "") + message.arguments())
                .collect(Collectors.joining(" "));
    }

    /** Twelve semitones double a frequency; a cent is the 1200th root of 2 (A. J. Ellis, 1885). */
    @Test
    void soundClosesOpensAndGoesWhereItIsTold() throws Exception {
        double hz = hz(last());
        assertEquals("state[playing] mute[0] tuning[first, 1] transpose[0] trim[0.0] room[saltmill-hall]", told(ask()));

        sender.send(NAME + "mute", 1);
        await("silence", datagram -> datagram.gain01() == 0 && !datagram.hasHand());
        assertTrue(told(ask()).startsWith("state[muted] mute[1]"));
        // the library sends no patterns
        sender.sendBytes(head("/handspan/*/m?te", "F"));
        await("sound again", datagram -> datagram.gain01() > AUDIBLE01 && datagram.hasHand());

        sender.send(NAME + "transpose", 12);
        awaitHz(2 * hz);
        sender.send(NAME + "transpose", -12f);
        awaitHz(hz / 2);
        sender.sendBundle(OscSender.message(NAME + "transpose", 0), OscSender.message(NAME + "trim", -50f));
        awaitHz(hz * Math.pow(2, -50 / 1200.0));

        sender.send(NAME + "tuning", "hymn");
        sender.send(NAME + "trim", 0f);
        // C major from C4 to C5 in steps: the white keys, semitones from A4 = 440 Hz (ISO 16)
        await(
                "a white key",
                datagram -> List.of(-9, -7, -5, -4, -2, 0, 2, 3).stream()
                        .anyMatch(key ->
                                Math.abs(1200 * Math.log(hz(datagram) / 440) / Math.log(2) - 100 * key) < STEP_CENTS));
        assertEquals("state[playing] mute[0] tuning[hymn, 2] transpose[0] trim[0.0] room[saltmill-hall]", told(ask()));
        sender.send(NAME + "tuning", 1);
        awaitHz(hz);
    }

    @Test
    void whatIsWrongIsToldAndWritesItselfDownAndPlayingGoesOn() throws Exception {
        double hz = hz(last());
        sender.send(NAME + "transpose", 49);
        sender.send(NAME + "trim", Float.NaN);
        sender.send(NAME + "tempo", 120);
        sender.sendBytes(HexFormat.of().parseHex("2f78"));
        sender.sendBytes(new byte[2_000]);
        Waits.until(() -> play.out().contains("tooLong"), this::words);
        sender.send(NAME + "transpose", 12);
        awaitHz(2 * hz);
        play.type("q");
        assertEquals(0, play.await());
        JsonNode counters = event("result").get().get("remote");
        assertEquals(
                "{\"packets\":6,\"obeyed\":1,\"answered\":0,\"refused\":2,\"unknown\":1,\"malformed\":1,\"tooLong\":1,"
                        + "\"tooFast\":0}",
                counters.toString());
        assertTrue(play.words().contains("trim takes cents"), play.words());
    }

    @Test
    void keysAndOrdersTurnTheSameKnobs() throws Exception {
        double hz = hz(last());
        sender.send(NAME + "transpose", 11);
        awaitHz(hz * Math.pow(2, 11 / 12.0));
        play.type("+");
        awaitHz(2 * hz);
        play.type("m");
        await("silence", datagram -> datagram.gain01() == 0);
        assertTrue(told(ask()).startsWith("state[muted] mute[1] tuning[first, 1] transpose[12]"));
        sender.send(NAME + "mute", 0);
        await("sound again", datagram -> datagram.gain01() > AUDIBLE01);
    }

    @Test
    void itListensOnThisMachineAloneAndAFloodDoesNotDisturbWhatIsPlayed() throws Exception {
        List<OpenSockets.Socket> receiving = OpenSockets.of(play.pid()).stream()
                .filter(OpenSockets.Socket::receives)
                .toList();
        assertEquals(1, receiving.size(), "" + receiving);
        assertTrue(receiving.get(0).isOnLoopback(), "" + receiving);
        double hz = hz(last());
        int before = heard.all().size();
        byte[] cutOff = head(NAME + "mute", "i");
        for (int i = 0; i < 20_000; i++) {
            sender.sendBytes(cutOff);
        }
        Waits.until(() -> heard.all().size() > before + 100, this::words);
        List<Datagram> all = heard.all();
        assertTrue(
                all.subList(before, all.size()).stream()
                        .allMatch(datagram -> datagram.gain01() > AUDIBLE01
                                && Math.abs(1200 * Math.log(hz(datagram) / hz) / Math.log(2)) < STILL_CENTS),
                "not one frame was another");
    }
}
