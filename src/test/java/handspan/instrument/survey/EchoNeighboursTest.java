package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.outside.simulate.SimulatedInstrument;
import handspan.outside.simulate.SimulatedInstruments;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Echo instruments side by side, simulated from data sheets or made up here. */
class EchoNeighboursTest {
    private static final double SECONDS = 60;

    /** There and back at 344 m/s, the speed of sound at 20 degrees: 5.8 microseconds a mm. */
    private static final double US_PER_MM = 2000 / 344.0;

    private static final Pattern NUMBER = Pattern.compile("(?:echo1|us):(\\d+)");

    /** What is said in a minute, from when on, in seconds. */
    private record Told(double atS, String words) {}

    private static Optional<Told> told(List<List<double[]>> instruments) {
        List<String> names = List.of("Wren", "Rook", "Finch").subList(0, instruments.size());
        EchoNeighbours neighbours = new EchoNeighbours(names);
        int[] at = new int[instruments.size()];
        for (int second = 1; second <= SECONDS; second++) {
            for (int i = 0; i < at.length; i++) {
                List<double[]> own = instruments.get(i);
                for (; at[i] < own.size() && own.get(at[i])[0] < second; at[i]++) {
                    neighbours.onReading(i, own.get(at[i])[1], Math.round(own.get(at[i])[0] * 1e9));
                }
            }
            Optional<String> hint = neighbours.hint(second * 1_000_000_000L);
            if (hint.isPresent()) {
                return Optional.of(new Told(second, hint.get()));
            }
        }
        return Optional.empty();
    }

    private static List<double[]> simulated(String name, long seed) {
        SimulatedInstrument instrument = SimulatedInstruments.create(name, seed);
        instrument.player().playPassage(instrument.player().improvise(400), 0);
        List<double[]> readings = new ArrayList<>();
        double seconds = 0;
        while (seconds < SECONDS) {
            seconds = instrument.board().nextLineNanos() / 1e9;
            Matcher number = NUMBER.matcher(new String(instrument.board().nextLine(), StandardCharsets.ISO_8859_1));
            if (number.find()) {
                double mm = Double.parseDouble(number.group(1)) / US_PER_MM;
                readings.add(new double[] {seconds, mm < 4000 ? mm : Double.NaN});
            }
        }
        return readings;
    }

    /** A hand that slides 300 mm to and fro in 6 s, 18 readings a second, a share of them astray by 60 to 150 mm. */
    private static List<double[]> sliding(double astray01, double fromS, double toS, long seed) {
        Random random = new Random(seed);
        List<double[]> readings = new ArrayList<>();
        for (int line = 0; fromS + line / 18.0 < toS; line++) {
            double seconds = fromS + line / 18.0;
            double mm = 250 + 150 * Math.sin(2 * Math.PI * seconds / 6) + 2 * random.nextGaussian();
            double off = random.nextDouble() < astray01 ? -60 - 90 * random.nextDouble() : 0;
            readings.add(new double[] {seconds, mm + off});
        }
        return readings;
    }

    @Test
    void twoThatHearEachOtherAreToldWithinTwentySeconds() {
        Told told = told(List.of(simulated("crosstalk", 1), simulated("crosstalk", 2)))
                .orElseThrow();
        assertTrue(told.atS() <= 20, told.toString());
        assertTrue(told.words().contains("Wren") && told.words().contains("Rook"), told.words());
        assertTrue(told.words().contains("ping in turn, 30 to 50 ms apart"), told.words());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 11, 21, 31, 41, 51})
    void quietNeighboursGetNoWord(long seed) {
        assertEquals(
                Optional.empty(),
                told(List.of(simulated("echo", seed), simulated("echo", seed + 1), simulated("echo", seed + 2))));
    }

    @Test
    void oneThatIsAstrayBesideQuietNeighboursIsItsOwnFault() {
        assertEquals(
                Optional.empty(), told(List.of(simulated("crosstalk", 3), simulated("echo", 4), simulated("echo", 5))));
    }

    @Test
    void oneThatPlaysAloneIsNotToldOfNeighbours() {
        assertEquals(Optional.empty(), told(List.of(simulated("crosstalk", 6), List.of())));
    }

    @Test
    void handsThatSlideFarAreNotAstray() {
        assertEquals(Optional.empty(), told(List.of(sliding(0, 0, 60, 7), sliding(0, 0, 60, 8))));
    }

    @Test
    void underTheLimitNothingIsSaidAndAboveItIs() {
        assertEquals(Optional.empty(), told(List.of(sliding(0.05, 0, 60, 9), sliding(0.05, 0, 60, 10))));
        assertTrue(
                told(List.of(sliding(0.25, 0, 60, 9), sliding(0.25, 0, 60, 10))).isPresent());
    }

    @Test
    void whoWasAsMuchAstrayBeforeTheOtherCameDoesNotHearIt() {
        assertEquals(Optional.empty(), told(List.of(sliding(0.25, 0, 60, 9), sliding(0.25, 20, 60, 10))));
        assertTrue(
                told(List.of(Stretch.of(sliding(0, 0, 20, 11), sliding(0.25, 20, 60, 12)), sliding(0.25, 20, 60, 13)))
                        .isPresent());
    }

    /** One stretch after the other. */
    private static final class Stretch {
        private Stretch() {}

        static List<double[]> of(List<double[]> first, List<double[]> second) {
            List<double[]> both = new ArrayList<>(first);
            both.addAll(second);
            return both;
        }
    }

    @Test
    void whatIsAstrayIsCountedByHand() {
        double[] mm = new double[100];
        java.util.Arrays.fill(mm, 300);
        // ten single ones and one run of two among 100: 12 %
        for (int i = 5; i < 100; i += 10) {
            mm[i] = 380;
        }
        mm[50] = 200;
        mm[51] = 210;
        assertEquals(0.12, EchoNeighbours.astray01(mm), 1e-9);
    }
}
