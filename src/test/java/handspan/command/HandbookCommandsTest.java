package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.show.report.HandbookTopic;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Every command that the handbook shows is run, page by page in its order, each page in an empty folder of its own, and
 * ends with 0 or with the exit code that the page states. These stand in for what a test has not:
 *
 * <ul>
 *   <li>the boards at {@code /dev/ttyACM0} and {@code /dev/ttyACM1} are {@code sim:hall};
 *   <li>files, takes and the rooms lie in the page's folder;
 *   <li>what can run faster than the clock does ({@code --fast}), unless it takes orders from the network, is listened
 *       to or claimed;
 *   <li>what would run until it is stopped ends after some seconds ({@code --seconds});
 *   <li>a port to listen at is one that is free, and where a verb hears, something is sent there;
 *   <li>the sound patch at port 9000 is a receiver of the test's own;
 *   <li>{@code demo} and {@code window} are only parsed: {@code DemoTest} and {@code EveningWindowTest} run them.
 * </ul>
 */
class HandbookCommandsTest {
    private static final Set<String> BOARDS = Set.of("/dev/ttyACM0", "/dev/ttyACM1");
    private static final Set<String> PARSED_ONLY = Set.of("demo", "window");
    private static final Pattern STATED = Pattern.compile(" +# ends with exit code (\\d+)$");
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

    /** Seconds of a simulated hour cost next to nothing; those of the clock do. */
    private static final String SIMULATED_S = "3";

    private static final String REAL_S = "0.4";

    /** OSC 1.0: address, type tag and a float of 0.5, each filled up to four bytes. */
    private static final byte[] LEVEL = "/moth/level\0,f\0\0?\0\0\0".getBytes(StandardCharsets.US_ASCII);

    @TempDir
    Path folder;

    private DatagramSocket patch;

    @BeforeEach
    void aSoundPatchIsThere() throws IOException {
        patch = new DatagramSocket(0, InetAddress.getLoopbackAddress());
    }

    @AfterEach
    void itIsGone() {
        patch.close();
    }

    /** Runs {@code hear} while messages come to its port. */
    private Cli heard(List<String> args) {
        int port = Integer.parseInt(args.get(1));
        Thread sender = new Thread(() -> {
            InetSocketAddress there = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
            while (!Thread.currentThread().isInterrupted()) {
                try {
                    patch.send(new DatagramPacket(LEVEL, LEVEL.length, there));
                    Thread.sleep(20);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                } catch (InterruptedException e) {
                    return;
                }
            }
        });
        sender.start();
        try {
            return Cli.run(args.toArray(new String[0]));
        } finally {
            sender.interrupt();
        }
    }

    static Stream<String> pages() {
        return HandbookPages.handbook().topics().stream().map(HandbookTopic::name);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyCommandOfAPageEndsAsItSays(String page) throws IOException {
        for (String line : HandbookPages.commands(HandbookPages.page(page))) {
            Matcher stated = STATED.matcher(line);
            int expected = stated.find() ? Integer.parseInt(stated.group(1)) : Exit.DONE;
            String command = STATED.matcher(line).replaceFirst("");
            List<String> args = args(command);
            CommandSpec verb = verb(args);
            if (PARSED_ONLY.contains(verb.name())) {
                HandbookPages.program().parseArgs(args.toArray(new String[0]));
                continue;
            }
            List<String> standing = standIn(args, verb);
            Cli cli = verb.name().equals("hear") ? heard(standing) : Cli.run(standing.toArray(new String[0]));
            assertEquals(expected, cli.exitCode(), () -> line + "\nran as " + standing + "\n" + cli.out() + cli.err());
        }
    }

    @Test
    void theHandbookShowsCommandsAndEveryVerbAmongThem() {
        List<String> shown = HandbookPages.handbook().topics().stream()
                .flatMap(topic -> HandbookPages.commands(topic.markdown()).stream())
                .toList();
        for (String verb : HandbookPages.verbs().keySet()) {
            boolean group = HandbookPages.verbs().keySet().stream().anyMatch(other -> other.startsWith(verb + " "));
            assertTrue(
                    group || shown.stream().anyMatch(line -> (line + " ").startsWith("handspan " + verb + " ")),
                    "no command with " + verb);
        }
    }

    private static List<String> args(String line) {
        List<String> args = new ArrayList<>();
        Matcher word = WORD.matcher(line.substring("handspan ".length()));
        while (word.find()) {
            args.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        return args;
    }

    private static CommandSpec verb(List<String> args) {
        CommandLine at = HandbookPages.program();
        for (String arg : args) {
            CommandLine below = at.getSubcommands().get(arg);
            if (below == null) {
                break;
            }
            at = below;
            if (at.getCommandName().equals("help")) {
                break;
            }
        }
        return at.getCommandSpec();
    }

    private List<String> standIn(List<String> args, CommandSpec verb) throws IOException {
        List<String> standing = new ArrayList<>();
        Optional<ArgSpec> asks = Optional.empty();
        for (String arg : args) {
            standing.add(standIn(arg, asks));
            asks = Optional.<ArgSpec>ofNullable(verb.findOption(arg))
                    .filter(option -> ((OptionSpec) option).arity().max() > 0);
        }
        boolean byTheClock = args.contains("--remote") || args.contains("--listen") || args.contains("--claim");
        if (verb.findOption("--fast") != null && !byTheClock) {
            standing.add("--fast");
        }
        boolean endless = !verb.name().equals("survey")
                && !args.contains("--wave")
                && args.stream().noneMatch(arg -> arg.startsWith("take:"));
        if (verb.findOption("--seconds") != null && endless && !args.contains("--seconds")) {
            boolean real = byTheClock || verb.name().equals("hear");
            standing.addAll(List.of("--seconds", real ? REAL_S : SIMULATED_S));
        }
        if (verb.name().equals("calibrate") && !args.contains("--from")) {
            standing.addAll(List.of("--send", patchAddress()));
        }
        if (verb.findOption("--profiles") != null) {
            standing.addAll(List.of("--profiles", folder.resolve("rooms").toString()));
        }
        return standing;
    }

    private String standIn(String arg, Optional<ArgSpec> asks) throws IOException {
        String label = asks.map(ArgSpec::paramLabel).orElse("");
        if (BOARDS.contains(arg)) {
            return "sim:hall";
        } else if (arg.startsWith("take:")) {
            return "take:" + folder.resolve(arg.substring("take:".length()));
        } else if (label.equals("FILE") || label.equals("DIR")) {
            return folder.resolve(arg).toString();
        }
        if (arg.equals("udp:127.0.0.1:9000")) {
            return patchAddress();
        }
        boolean port = label.equals("PORT") || (asks.isEmpty() && arg.equals("9000"));
        return port ? "" + freePort() : arg;
    }

    private String patchAddress() {
        return "udp:127.0.0.1:" + patch.getLocalPort();
    }

    private static int freePort() throws IOException {
        try (DatagramSocket socket = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
