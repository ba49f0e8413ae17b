package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Program;
import handspan.SimulatedBoard;
import handspan.SimulatedBoard.Ping;
import handspan.Waits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a hand over an echo module to a datagram: the project's own board program runs on a simulated microcontroller,
 * whose serial port this program opens as any other; it is told nothing of it. {@code .ci/firmware} builds the board
 * and runs this with {@code -Dhandspan.board=FOLDER}. Each step builds on the one before.
 */
@EnabledIfSystemProperty(named = "handspan.board", matches = ".+")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Timeout(90)
class BoardProgramTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final double NEAR_MM = 100;
    private static final double FAR_MM = 450;
    private static final double OPEN_LUX = 300;
    private static final double COVERED_LUX = 20;
    private static final double MID_LUX = 70;

    /** A3 and A5 in equal temperament with A4 = 440 Hz (ISO 16). */
    private static final double LOW_HZ = 220;

    private static final double HIGH_HZ = 880;

    /** Standard deviation of each echo. */
    private static final double NOISE_MM = 0.3;

    /**
     * 1200 cents * 2 octaves / 350 mm is 6.86 cents a mm. An end held for 2 s is known to 0.3 mm / sqrt(40) = 0.05 mm,
     * a place of 1 s to 0.07: 0.6 cents together; half a microsecond is 0.09 mm, and evened out by the noise. Four
     * times that.
     */
    private static final double TOLERANCE_CENTS = 2.5;

    /** The light's noise in the holds and the curve's own rounding; 1 dB is the least step that is heard. */
    private static final double TOLERANCE_DB = 1;

    /** Half a microsecond a count, two counts; and each edge of the simulated pin is up to 0.25 early or late. */
    private static final double TOLERANCE_US = 1;

    private static final long ARRIVED_MS = 1_300;
    private static final long LISTENED_MS = 1_000;
    private static final Pattern LINE =
            Pattern.compile("\\d+\tt=(\\d+)ms light=(\\d+\\.\\d\\d) echo=(\\d+\\.[05])us ir=(\\d+)");

    @TempDir
    static Path folder;

    private static SimulatedBoard board;

    @BeforeAll
    static void boardStarts() throws IOException {
        board = SimulatedBoard.start(Path.of(System.getProperty("handspan.board")), folder);
        board.order("noise " + NOISE_MM);
        board.order("flicker 0.2 100");
        board.order("lux " + OPEN_LUX);
    }

    @AfterAll
    static void boardEnds() {
        board.close();
        System.err.println(board.words().strip());
    }

    private static Program program(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--json"));
        return Program.start(folder, all.toArray(new String[0]));
    }

    private static List<JsonNode> events(Program program, String event) {
        List<JsonNode> events = new ArrayList<>();
        String out = program.out();
        for (String line : out.substring(0, out.lastIndexOf('\n') + 1).lines().toList()) {
            try {
                JsonNode node = MAPPER.readTree(line);
                if (node.path("event").asText().equals(event)) {
                    events.add(node);
                }
            } catch (IOException e) {
                throw new IllegalStateException(line, e);
            }
        }
        return events;
    }

    private static JsonNode result(Program program) throws InterruptedException {
        assertEquals(0, program.await(), program.words());
        return events(program, "result").get(0);
    }

    /** The first readings after a connect are left out by choice: "settling". */
    private static void assertNothingRejected(JsonNode result) {
        List<String> reasons = new ArrayList<>();
        result.path("rejections").fieldNames().forEachRemaining(reasons::add);
        assertEquals(List.of("settling"), reasons);
    }

    @Test
    @Order(1)
    void itsLinesAreUnderstoodWithoutAWordAlsoWhileNoHandIsThere() throws Exception {
        board.order("away");
        try (Program watch = program("watch", board.port(), "--seconds", "3")) {
            JsonNode result = result(watch);
            assertEquals("echo:echo:us", result.at("/proposal/pitch").asText());
            assertEquals(
                    "light:photoresistor:counts10", result.at("/proposal/level").asText());
            assertEquals(
                    "milliseconds in channel t",
                    result.at("/arrivals/boardTime").asText());
            assertNothingRejected(result);
            assertEquals(20, result.path("ratePerS").asDouble(), 1, "lines a second");
        }
    }

    @Test
    @Order(2)
    void aRoomIsCalibratedOverIt() throws Exception {
        try (Program calibrate =
                program("calibrate", board.port(), "--room", "bench", "--profiles", folder.toString())) {
            Map<String, String> holds = Map.of(
                    "rest", "away",
                    "near", "hand " + NEAR_MM + " 0.7",
                    "far", "hand " + FAR_MM + " 0.7",
                    "open", "lux " + OPEN_LUX + " 0.7",
                    "covered", "lux " + COVERED_LUX + " 0.7",
                    "mid", "lux " + MID_LUX + " 0.7");
            for (int step = 0; step < holds.size(); step++) {
                int asked = step;
                Waits.until(() -> events(calibrate, "step").size() > asked, calibrate::words);
                String kind = events(calibrate, "step").get(step).path("step").asText();
                board.order(holds.getOrDefault(kind, "unknown step " + kind));
            }
            Waits.until(() -> !events(calibrate, "result").isEmpty(), calibrate::words);
            assertTrue(result(calibrate).path("saved").asBoolean(), calibrate.words());
            assertTrue(events(calibrate, "refused").isEmpty(), calibrate.words());
        }
        Cli tuned = Cli.line(
                "tune --room bench --scale chromatic --key A --low A3 --high A5 --direction high-far --curve even"
                        + " --snap free",
                folder);
        assertEquals(0, tuned.exitCode(), tuned.err());
        assertEquals(
                0,
                Cli.line("level --room bench --floor -60 --ceiling -6", folder).exitCode());
    }

    @Test
    @Order(3)
    void whatIsPlayedStandsWhereTheHandStands() throws Exception {
        Path take = folder.resolve("played.take");
        Map<Double, Double> centsOff = new TreeMap<>();
        List<Double> levelsDb = new ArrayList<>();
        JsonNode result;
        List<Ping> pings;
        board.order("lux " + OPEN_LUX);
        try (Datagrams heard = new Datagrams();
                Program play = program(
                        "play",
                        board.port(),
                        "--room",
                        "bench",
                        "--profiles",
                        folder.toString(),
                        "--go",
                        "--send",
                        "udp:127.0.0.1:" + heard.port(),
                        "--record",
                        take.toString())) {
            Waits.until(() -> !heard.all().isEmpty(), play::words);
            for (double mm : new double[] {130, 187.5, 275, 362.5, 420}) {
                board.order("hand " + mm + " 0.5");
                List<Datagram> still = heardAfterArrival(heard);
                long withHand = still.stream().filter(Datagram::hasHand).count();
                assertTrue(withHand > 0.8 * still.size() && withHand > 100, withHand + " with a hand at " + mm + " mm");
                centsOff.put(mm, 1200 * log2(pitchHz(still) / expectedHz(mm)));
            }
            for (double lux : new double[] {OPEN_LUX, MID_LUX}) {
                board.order("lux " + lux + " 0.7");
                List<Datagram> still = heardAfterArrival(heard);
                levelsDb.add(still.stream()
                        .mapToDouble(datagram -> 20 * Math.log10(datagram.gain01()))
                        .average()
                        .orElseThrow());
            }
            board.order("away");
            Waits.until(() -> !last(heard).hasHand(), play::words);
            play.type("q");
            result = result(play);
            pings = board.pings();
        }
        report(centsOff, levelsDb);
        centsOff.forEach((mm, cents) -> assertEquals(0, cents, TOLERANCE_CENTS, "cents off at " + mm + " mm"));
        // linear in dB from -60 at a place of 0.03 to -6 at the end, which the README calls floor and ceiling: the
        // light
        // of the mid hold is half-way
        assertEquals(-6, levelsDb.get(0), TOLERANCE_DB, "dB in the open");
        assertEquals(
                -60 + 54 * (0.5 - 0.03) / 0.97, levelsDb.get(1), TOLERANCE_DB, "dB with the light of the mid hold");
        assertNothingRejected(result);
        assertEveryPingArrived(Files.readAllLines(take), pings);
    }

    /** Frequency is exponential in place: fLow (fHigh / fLow)^u, u = (d - near) / (far - near). */
    private static double expectedHz(double mm) {
        return LOW_HZ * Math.pow(HIGH_HZ / LOW_HZ, (mm - NEAR_MM) / (FAR_MM - NEAR_MM));
    }

    private static double log2(double ratio) {
        return Math.log(ratio) / Math.log(2);
    }

    private static List<Datagram> heardAfterArrival(Datagrams heard) throws InterruptedException {
        TimeUnit.MILLISECONDS.sleep(ARRIVED_MS);
        int from = heard.all().size();
        TimeUnit.MILLISECONDS.sleep(LISTENED_MS);
        List<Datagram> all = heard.all();
        return all.subList(from, all.size());
    }

    private static Datagram last(Datagrams heard) {
        List<Datagram> all = heard.all();
        return all.get(all.size() - 1);
    }

    private static double pitchHz(List<Datagram> still) {
        return Math.exp(still.stream()
                .mapToDouble(datagram -> Math.log(((Number) datagram.argument("/pitch")).doubleValue()))
                .average()
                .orElseThrow());
    }

    /** Each ping from the first line on is in the recording, once, with the time that the echo line was high. */
    private static void assertEveryPingArrived(List<String> take, List<Ping> pings) {
        List<String> lines = take.stream().filter(line -> line.contains("\tt=")).toList();
        int first = -1;
        double worstUs = 0;
        int echoes = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher line = LINE.matcher(lines.get(i));
            assertTrue(line.matches(), lines.get(i));
            long ms = Long.parseLong(line.group(1));
            double echoUs = Double.parseDouble(line.group(3));
            first = first < 0 ? (int) (ms / 50) : first;
            assertEquals((first + i) * 50L, ms, "a line for each ping, 50 ms apart");
            Ping ping = pings.stream()
                    .filter(one -> Math.abs(one.sentMs() - ms) < 1)
                    .findFirst()
                    .orElse(null);
            if (ping == null) {
                assertTrue(i >= lines.size() - 1, "no ping at " + ms + " ms");
            } else if (ping.distanceMm() == 0) {
                assertEquals(0, echoUs, "nothing there at " + ms + " ms");
            } else {
                worstUs = Math.max(worstUs, Math.abs(echoUs - ping.echoUs()));
                echoes++;
            }
        }
        assertTrue(worstUs <= TOLERANCE_US, worstUs + " us");
        assertTrue(echoes > 200, echoes + " echoes");
        System.err.printf(
                Locale.ROOT,
                "%d lines, none missing; %d echoes, each within %.2f us of what the pin had%n",
                lines.size(),
                echoes,
                worstUs);
    }

    private static void report(Map<Double, Double> centsOff, List<Double> levelsDb) {
        centsOff.forEach((mm, cents) -> System.err.printf(Locale.ROOT, "%.1f mm: %+.2f cents%n", mm, cents));
        System.err.printf(Locale.ROOT, "level %.2f dB open, %.2f dB half-way%n", levelsDb.get(0), levelsDb.get(1));
    }
}
