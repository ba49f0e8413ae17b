package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SimulatedInstrumentsTest {
    private static final long SEED = 20;

    @Test
    void theCatalogueListsTheInstrumentsInTheirOrder() {
        List<String> names = SimulatedInstruments.catalogue().stream()
                .map(CatalogueEntry::name)
                .toList();
        assertEquals(
                "hall attic echo echo-cm two-flight noisy still infrared light-only"
                        + " fold flicker drift sleeve clutter blackout bursts crosstalk",
                String.join(" ", names));
    }

    @Test
    void anUnknownNameIsRefusedWithTheKnownOnes() {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, () -> SimulatedInstruments.create("halle", 1))
                        .getMessage());
        assertTrue(message.contains("halle") && message.contains("hall, attic, echo, echo-cm"), message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "hall; 50; \\d{1,4},\\d{1,4}",
                "attic; 50; \\d{1,4},\\d{1,4}",
                "echo; 18; us:\\d{3,5} light:\\d{1,4}",
                "echo-cm; 16; Distance: \\d{1,3} cm",
                "two-flight; 30; D:\\d{1,4} L:\\d{1,4}",
                "noisy; 50; \\d{1,4},\\d{1,4}",
                "still; 50; \\d{1,4}\\.\\d,\\d{1,4}\\.\\d",
                "infrared; 40; \\d{1,4},\\d{1,4}",
                "light-only; 50; ldr: \\d{1,4}",
                "fold; 40; \\d{1,4},\\d{1,4}",
                "flicker; 49; \\d{1,4},\\d{1,4}",
                "drift; 50; \\d{1,4},\\d{1,4}",
                "sleeve; 50; \\d{1,4},\\d{1,4}",
                "clutter; 50; \\d{1,4},\\d{1,4}",
                "blackout; 50; \\d{1,4},\\d{1,4}",
                "bursts; 100; \\d{1,4},\\d{1,4}",
                "crosstalk; 15; echo1:\\d{3,5} echo2:\\d{3,5}"
            })
    void everyInstrumentPrintsItsShapeAtItsRate(String name, double linesPerS, String shape) {
        SimulatedInstrument instrument = SimulatedInstruments.create(name, SEED);
        int banner = instrument.board().settings().banner().size();
        String[] lines = perform(instrument, 30).split("\r\n", -1);
        assertEquals(30 * linesPerS, lines.length, 0.02 * 30 * linesPerS);
        for (int i = banner; i < lines.length - 1; i++) {
            assertTrue(lines[i].matches(shape), lines[i]);
        }
        assertEquals(name, instrument.name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hall", "echo", "two-flight", "noisy", "infrared", "sleeve", "clutter", "crosstalk"})
    void theSameSeedAndCuesGiveTheSameBytesAndAnotherSeedOthers(String name) {
        String first = perform(SimulatedInstruments.create(name, SEED), 20);
        assertArrayEquals(bytes(first), bytes(perform(SimulatedInstruments.create(name, SEED), 20)));
        assertFalse(Arrays.equals(bytes(first), bytes(perform(SimulatedInstruments.create(name, SEED + 1), 20))));
    }

    @ParameterizedTest
    @CsvSource({"hall, 1", "two-flight, 1", "noisy, 1", "echo, 5.827", "echo-cm, 0.1"})
    void printedDistancesStayWithinTheStatedErrorsOfTheTrueHand(String name, double rawPerMm) {
        // scale within 2 %, offset within 10 mm, non-linearity within 5 mm, air within 5 degrees of 20 (0.9 %);
        // 5.827 microseconds to the mm: 2/343.2 m/s (ISO 9613-1); whole centimetres cut off another cm and us/58 is 0.5
        // % off
        boolean echo = name.startsWith("echo");
        for (long seed = 0; seed < 20; seed++) {
            SimulatedInstrument instrument = SimulatedInstruments.create(name, seed);
            for (double mm : new double[] {100, 300, 500}) {
                double heldMm = meanOfHold(instrument, mm) / rawPerMm;
                double allowedMm = mm * (echo ? 0.035 : 0.02) + 10 + 5 + 2 + (name.equals("echo-cm") ? 10 : 0);
                assertEquals(mm, heldMm, allowedMm, name + " seed " + seed);
            }
        }
    }

    @Test
    void theStillInstrumentPrintsTheTruthInTenthsOfAMillimetre() {
        SimulatedInstrument still = SimulatedInstruments.create("still", SEED);
        still.player().playPassage(still.player().improvise(20), 0);
        for (int i = 0; i < 500; i++) {
            long time = still.board().nextLineNanos();
            String line = new String(still.board().nextLine(), StandardCharsets.ISO_8859_1);
            double printed = Double.parseDouble(line.substring(0, line.indexOf(',')));
            double mm = still.player().hand(PlayerHand.PITCH).trueMm(time);
            assertEquals(mm <= TimeOfFlightModel.RANGE_MM ? mm : 8190, printed, 0.0500001);
        }
    }

    @Test
    void theSameInstrumentStandsInHallAndAttic() {
        double spread = 0;
        for (long seed = 0; seed < 10; seed++) {
            double hall = meanOfHold(SimulatedInstruments.create("hall", seed), 300);
            double attic = meanOfHold(SimulatedInstruments.create("attic", seed), 300);
            // what is left is drift and the wander of two hands over 20 s
            assertEquals(hall, attic, 3);
            spread = Math.max(spread, Math.abs(hall - 300));
        }
        assertTrue(spread > 4, "specimens differ, at most by " + spread + " mm");
    }

    @Test
    void theAtticIsDarkerThanTheHall() {
        for (long seed = 0; seed < 10; seed++) {
            double hall = openLight(SimulatedInstruments.create("hall", seed));
            double attic = openLight(SimulatedInstruments.create("attic", seed));
            assertTrue(hall > attic + 150 && hall < 1000 && attic > 100, hall + " " + attic);
        }
    }

    @Test
    void neighbouringSeedsDrawSpecimensEvenlyFromTheStatedLimits() {
        double[] scale = new double[1000];
        double[] offset = new double[1000];
        for (int seed = 0; seed < 1000; seed++) {
            DistanceErrors errors = DistanceErrors.seeded(seed);
            scale[seed] = errors.scale();
            offset[seed] = errors.offsetMm();
        }
        // an even spread of +-a has mean 0 and sd a/sqrt 3; four standard errors of 1000 draws
        assertEquals(0, Series.mean(scale), 4 * 0.02 / Math.sqrt(3000));
        assertEquals(0.02 / Math.sqrt(3), Series.sd(scale), 0.02 * 0.04);
        assertEquals(10 / Math.sqrt(3), Series.sd(offset), 10 * 0.04);
        assertTrue(Arrays.stream(scale).allMatch(v -> Math.abs(v) <= 0.02));
    }

    @Test
    void everyRoomHasItsOwnTemperature() {
        double[] celsius = new double[200];
        for (int seed = 0; seed < celsius.length; seed++) {
            celsius[seed] = SimulatedInstruments.create("echo", seed).airCelsius();
        }
        assertTrue(Arrays.stream(celsius).allMatch(v -> v >= 15 && v <= 25));
        assertEquals(5 / Math.sqrt(3), Series.sd(celsius), 0.4);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Some cues, a passage, and everything the board printed meanwhile. */
    private static String perform(SimulatedInstrument instrument, double seconds) {
        SimulatedPlayer player = instrument.player();
        player.react(Cue.of(Cue.Kind.NEAR, PlayerHand.PITCH), Nanos.ofSeconds(2));
        player.react(Cue.of(Cue.Kind.MID, PlayerHand.LEVEL), Nanos.ofSeconds(3));
        player.react(Cue.of(Cue.Kind.REST, PlayerHand.PITCH), Nanos.ofSeconds(6));
        player.playPassage(player.improvise(20), Nanos.ofSeconds(9));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        while (instrument.board().nextLineNanos() < Nanos.ofSeconds(seconds)) {
            out.writeBytes(instrument.board().nextLine());
        }
        return out.toString(StandardCharsets.ISO_8859_1);
    }

    /** Mean of the first number over 20 s of a hold, without lost readings. */
    private static double meanOfHold(SimulatedInstrument instrument, double mm) {
        SimulatedBoard board = instrument.board();
        long arrived = instrument.player().react(Cue.at(Cue.Kind.RULER, PlayerHand.PITCH, mm), board.nextLineNanos());
        double[] raw = firstNumbers(board, arrived, arrived + Nanos.ofSeconds(20));
        return Series.mean(Arrays.stream(raw)
                .filter(v -> v > 0 && v != 8190 && v != 38_000)
                .toArray());
    }

    private static double[] firstNumbers(SimulatedBoard board, long fromNanos, long toNanos) {
        double[] raw = new double[2000];
        int count = 0;
        while (board.nextLineNanos() < toNanos) {
            long time = board.nextLineNanos();
            String line = new String(board.nextLine(), StandardCharsets.ISO_8859_1);
            if (time > fromNanos) {
                raw[count++] = Double.parseDouble(line.replaceFirst("\\D*(\\d+)[\\s\\S]*", "$1"));
            }
        }
        return Arrays.copyOf(raw, count);
    }

    /** The second number of a line while both hands are away. */
    private static double openLight(SimulatedInstrument instrument) {
        String line = new String(instrument.board().nextLine(), StandardCharsets.ISO_8859_1);
        return Double.parseDouble(line.trim().split(",", -1)[1]);
    }
}
