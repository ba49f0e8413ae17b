package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.OscSender;
import handspan.Program;
import handspan.Waits;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Timeout(60)
class HearVerbTest {
    private static final Pattern PORT =
            Pattern.compile("(?:udp|tcp|tcp-slip) port (\\d+) at 127\\.0\\.0\\.1, from this machine only");

    @TempDir
    Path folder;

    /** The verb in a thread of its own, and what it has printed. */
    private static final class Hearing {
        private final ByteArrayOutputStream out = new ByteArrayOutputStream();
        private final ByteArrayOutputStream err = new ByteArrayOutputStream();
        private final CompletableFuture<Integer> exit;

        Hearing(String... options) {
            this(List.of("hear", "0"), options);
        }

        Hearing(List<String> where, String... options) {
            List<String> args = new java.util.ArrayList<>(where);
            args.addAll(List.of(options));
            exit = CompletableFuture.supplyAsync(() -> Handspan.run(
                    args,
                    new ByteArrayInputStream(new byte[0]),
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8)));
        }

        int port() {
            Waits.until(() -> PORT.matcher(words()).find(), this::words);
            Matcher matcher = PORT.matcher(words());
            assertTrue(matcher.find());
            return Integer.parseInt(matcher.group(1));
        }

        String words() {
            return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
        }

        Cli end() throws Exception {
            return new Cli(
                    exit.get(30, TimeUnit.SECONDS),
                    out.toString(StandardCharsets.UTF_8),
                    err.toString(StandardCharsets.UTF_8));
        }
    }

    /**
     * OpenSound Control Specification 1.0, page of examples (M. Wright, 2002), "OSC Message Examples", and datagrams of
     * the tests of the library python-osc (public domain).
     */
    @Test
    void packetsOfOthersAreHeardRight() throws Exception {
        Hearing hearing = new Hearing("--count", "5");
        try (OscSender sender = new OscSender(hearing.port())) {
            for (String hex : List.of(
                    "2f6f7363696c6c61746f722f342f6672657175656e6379002c66000043dc0000",
                    "2f53594e430000002c66000000000000",
                    "2f53594e430000002c6600003f000000",
                    "2362756e646c65000000000000000001",
                    "2362756e646c65000000000000000001000000142f4c464f5f526174650000002c6600003e8ccccd",
                    "2f6200002c6200000000000301020300")) {
                sender.sendBytes(HexFormat.of().parseHex(hex));
            }
        }
        Cli cli = hearing.end();
        assertEquals(0, cli.exitCode());
        List<String> lines = cli.out()
                .lines()
                .map(line -> line.replaceFirst("^\\d+\\.\\d{3}  127\\.0\\.0\\.1:\\d+  ", "> "))
                .toList();
        assertEquals(
                List.of(
                        "> /oscillator/4/frequency ,f 440.0",
                        "> /SYNC ,f 0.0",
                        "> /SYNC ,f 0.5",
                        "> bundle, at once, empty",
                        "> bundle, at once, 1 part",
                        ">     /LFO_Rate ,f 0.275",
                        "> /b ,b blob of 3 bytes: 01 02 03",
                        "6 packets, 5 messages, all shown"),
                lines.subList(1, lines.size()));
    }

    @Test
    void onlyTheAddressesAskedForAreShownAndTheOthersAreCounted() throws Exception {
        Hearing hearing = new Hearing("--only", "/moth/{pitch,le*el,level}", "--count", "2", "--json");
        try (OscSender sender = new OscSender(hearing.port())) {
            sender.send("/moth/state", "away");
            sender.sendBundle(OscSender.message("/moth/place", 1f), OscSender.message("/moth/pitch", 440.1f));
            sender.send("/attic/level", 0.5f);
            sender.send("/moth/level", Float.NaN);
        }
        Cli cli = hearing.end();
        List<JsonNode> heard = cli.objects().stream()
                .filter(object -> object.get("event").asText().equals("message"))
                .toList();
        assertEquals(2, heard.size());
        assertEquals("/moth/pitch", heard.get(0).get("address").asText());
        assertEquals(1, heard.get(0).get("depth").asInt());
        assertEquals("440.1", heard.get(0).get("arguments").get(0).asText(), "as short as a float of 32 bits may be");
        assertEquals("NaN", heard.get(1).get("arguments").get(0).asText());
        assertEquals(5, cli.last().get("messages").asInt());
        assertEquals(2, cli.last().get("shown").asInt());
    }

    @Test
    void amongChosenAddressesBundlesAreToldOnlyWhereTheyAreDated() throws Exception {
        Hearing hearing = new Hearing("--only", "/b", "--count", "2");
        try (OscSender sender = new OscSender(hearing.port())) {
            sender.sendBytes(HexFormat.of().parseHex("2362756e646c65000000000000000001000000082f6200002c000000"));
            // RFC 5905, Figure 4
            sender.sendBytes(HexFormat.of().parseHex("2362756e646c650083aa7e8080000000000000082f6200002c000000"));
        }
        assertEquals(
                List.of("/b ,", "bundle, at 1970-01-01T00:00:00.500Z, 1 part", "/b ,"),
                hearing.end()
                        .out()
                        .lines()
                        .filter(line -> line.contains("127.0.0.1:"))
                        .map(line -> line.replaceFirst("^\\S+ +\\S+ +", ""))
                        .toList());
    }

    @Test
    void itsJsonIsAContract() throws Exception {
        Hearing hearing = new Hearing("--count", "2", "--json");
        try (OscSender sender = new OscSender(hearing.port())) {
            sender.sendBytes("hello\n".getBytes(StandardCharsets.US_ASCII));
            sender.send("/moth/note", 57, -3.5f, "a", true);
            // dated 1970-01-01T00:00:00.5Z (RFC 5905, Figure 4)
            sender.sendBytes(HexFormat.of().parseHex("2362756e646c650083aa7e8080000000000000082f6200002c000000"));
        }
        Cli cli = hearing.end();
        JsonNode broken = cli.objects().get(1);
        assertEquals("length 6 bytes is not a multiple of 4", broken.get("rule").asText());
        assertEquals("68 65 6c 6c 6f 0a", broken.get("hex").asText());
        assertEquals(
                "[57,-3.5,\"a\",true]", cli.objects().get(2).get("arguments").toString());
        assertEquals(
                "1970-01-01T00:00:00.500Z", cli.objects().get(3).get("timeTag").asText());
        Path made = Path.of("target", "golden", "hear.txt");
        Files.createDirectories(made.getParent());
        Files.writeString(made, cli.shape());
        assertEquals(
                new String(
                        HearVerbTest.class
                                .getResourceAsStream("/golden/hear.txt")
                                .readAllBytes(),
                        StandardCharsets.UTF_8),
                cli.shape());
    }

    /**
     * A length of 32 bits before each packet (OSC 1.0, "OSC Packets"); END = C0 before and after, DB DC for C0 within
     * (RFC 1055). The packet is {@code /b ,i 192}: its last byte is C0.
     */
    @ParameterizedTest
    @CsvSource({
        "tcp, 0000000c 2f620000 2c690000 000000c0",
        "tcp-slip, c0 2f620000 2c690000 000000dbdc c0",
    })
    void packetsOnAStreamAreHeardToo(String protocol, String hex) throws Exception {
        Hearing hearing = new Hearing(List.of("hear", protocol + ":0"), "--count", "2");
        byte[] bytes = HexFormat.of().parseHex(hex.replace(" ", ""));
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), hearing.port())) {
            socket.getOutputStream().write(bytes);
            socket.getOutputStream().write(bytes);
            Cli cli = hearing.end();
            assertEquals(0, cli.exitCode(), cli.err());
            assertEquals(
                    2,
                    cli.out()
                            .lines()
                            .filter(line -> line.endsWith("  /b ,i 192"))
                            .count(),
                    cli.out());
        }
    }

    @Test
    void nothingHeardIsANo() {
        Cli cli = Cli.run("hear", "0", "--seconds", "0.1");
        assertEquals(1, cli.exitCode());
        assertTrue(cli.out().contains("nothing came in 0."), cli.out());
    }

    @Test
    void aWrongCommandLineIsToldInWords() {
        for (String line : List.of(
                "hear 65536; 0..65535",
                "hear 9x; is not a number",
                "hear pigeon:9000; is not a way in (udp",
                "hear 0 --only moth; it starts with /",
                "hear 0 --only /a[b; '[' without ']'",
                "hear 0 --at 203.0.113.9; is no address of this machine",
                "hear 0 --at nowhere0; is no address of this machine",
                "hear 0 --at 127.0.0.1 --from-network; one of both",
                "hear 0 --seconds 0; above 0 s",
                "hear 0 --count 0; 1 message or more")) {
            Cli cli = Cli.run(line.substring(0, line.indexOf(';')).split(" ", -1));
            assertEquals(2, cli.exitCode(), line + cli.err());
            assertTrue(cli.err().contains(line.substring(line.indexOf(';') + 2)), cli.err());
        }
    }

    @Test
    void anyBytesAtAllAreExplainedAndABurstIsCountedToThePacket() throws Exception {
        Hearing hearing = new Hearing("--only", "/last", "--count", "1", "--json");
        Random random = new Random(9);
        int sent = 0;
        try (OscSender sender = new OscSender(hearing.port())) {
            for (; sent < 4_000; sent++) {
                byte[] bytes = new byte[random.nextInt(64)];
                random.nextBytes(bytes);
                sender.sendBytes(bytes);
            }
            Waits.until(() -> {
                try {
                    // sent until it comes through: a burst may have been more than there is room for
                    sender.send("/last");
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                }
                return hearing.exit.isDone();
            });
        }
        Cli cli = hearing.end();
        assertEquals(0, cli.exitCode(), cli.err());
        JsonNode result = cli.last();
        assertTrue(result.get("malformed").asInt() > 1_000, "" + result);
        assertTrue(result.get("packets").asInt() > 1_000, "" + result);
        assertTrue(result.get("packets").asInt()
                >= result.get("malformed").asInt() + result.get("missed").asInt());
    }

    /** 143 = 128 + 15 (POSIX: SIGTERM 15). */
    @Test
    @EnabledOnOs(OS.LINUX)
    void toldToEndItStillSaysWhatItHasHeardAndItHeardThisMachineOnly() throws Exception {
        try (Program hear = Program.start(folder, "hear", "0", "--json")) {
            Waits.until(() -> hear.out().contains("listening"), hear::words);
            List<OpenSockets.Socket> sockets = OpenSockets.of(hear.pid());
            assertEquals(1, sockets.size(), "" + sockets);
            assertTrue(sockets.get(0).receives() && sockets.get(0).isOnLoopback(), "" + sockets);
            int port = Integer.parseInt(hear.out().replaceAll("(?s).*\"port\":(\\d+).*", "$1"));
            try (OscSender sender = new OscSender(port)) {
                sender.send("/moth/pitch", 440f);
            }
            Waits.until(() -> hear.out().contains("/moth/pitch"), hear::words);
            hear.signal("TERM");
            assertEquals(143, hear.await());
            assertTrue(
                    hear.out().contains("\"event\":\"result\"") && hear.out().contains("\"messages\":1"), hear.out());
        }
    }
}
