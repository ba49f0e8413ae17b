package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a board prints under each fault, powered up at a time that is not 0. */
class TroubledInstrumentsTest {
    private static final long POWER_UP = Nanos.ofSeconds(5000);
    private static final long SEED = 20;

    private static SimulatedInstrument powered(String name, long seed) {
        return SimulatedInstruments.create(name, seed, POWER_UP);
    }

    /** Numbers of one channel from one time after power-up to another, seconds. */
    private static double[] numbers(SimulatedInstrument instrument, int channel, double from, double to) {
        SimulatedBoard board = instrument.board();
        double[] numbers = new double[(int) Math.ceil((to - from) * 60)];
        int count = 0;
        while (board.nextLineNanos() < POWER_UP + Nanos.ofSeconds(to)) {
            long time = board.nextLineNanos();
            String line = new String(board.nextLine(), StandardCharsets.ISO_8859_1);
            if (time >= POWER_UP + Nanos.ofSeconds(from)) {
                String[] fields = line.strip().split("[, ]", -1);
                numbers[count++] = Double.parseDouble(fields[channel].replaceFirst(".*:", ""));
            }
        }
        return Arrays.copyOf(numbers, count);
    }

    private static void hold(SimulatedInstrument instrument, PlayerHand hand, double mm) {
        instrument.player().react(Cue.at(Cue.Kind.RULER, hand, mm), POWER_UP);
    }

    private static double share01(double[] numbers, double value) {
        return Arrays.stream(numbers).filter(v -> v == value).count() / (double) numbers.length;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void lampsOnFiftyHertzWobbleTwiceASecondAtFortyNineLines(long seed) {
        double[] light = numbers(powered("flicker", seed), 1, 1, 41);
        double linesPerS = light.length / 40.0;
        double strongest = 0;
        double strongestHz = 0;
        for (double hz = 0.2; hz < 20; hz += 0.02) {
            double amplitude = Series.amplitude(light, linesPerS, hz);
            strongestHz = amplitude > strongest ? hz : strongestHz;
            strongest = Math.max(strongest, amplitude);
        }
        // sampling theorem: 100 - 2 * 49 Hz; mains 0.05 Hz and board clock 0.3 % off at most: 0.1 + 0.3 Hz
        assertEquals(2, strongestHz, 0.41);
        assertTrue(strongest > 9, "more than the 9 counts measured on a real one: " + strongest);
    }

    @Test
    void rangerAndLightDriftOverMinutes() {
        SimulatedInstrument drift = powered("drift", SEED);
        hold(drift, PlayerHand.PITCH, 300);
        double[] early = numbers(drift, 0, 5, 15);
        double[] late = numbers(drift, 0, 595, 605);
        // by hand: 8 (exp(-10/240) - exp(-600/240)) = 7.0 mm; wander and the ranger's own drift make another mm or two
        assertEquals(7, Series.mean(late) - Series.mean(early), 2.5);
        SimulatedInstrument light = powered("drift", SEED);
        double[] first = numbers(light, 1, 5, 15);
        double[] last = numbers(light, 1, 595, 605);
        // a quarter more light: by dN = N (1 - N/1023) gamma ln(1.25/1.0065), gamma 0.6..0.7
        double n = Series.mean(first);
        double gain = Series.mean(last) - n;
        assertEquals(n * (1 - n / 1023) * 0.65 * 0.2167, gain, 0.15 * gain);
    }

    @Test
    void aSleeveLosesThreeReadingsInTen() {
        SimulatedInstrument sleeve = powered("sleeve", SEED);
        hold(sleeve, PlayerHand.PITCH, 300);
        double[] mm = numbers(sleeve, 0, 3, 303);
        assertEquals(0.3, share01(mm, 8190), 0.02);
        int run = 0;
        int longest = 0;
        for (double value : mm) {
            run = value == 8190 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        assertEquals(8, longest);
    }

    @Test
    void withoutAHandTheClutterIsSeenAndSomebodyWalksPast() {
        double[] mm = numbers(powered("clutter", SEED), 0, 1, 301);
        double near = Arrays.stream(mm).filter(v -> v < 500).count();
        assertTrue(Arrays.stream(mm).allMatch(v -> v > 400 && v < 750));
        // 1.2 s of every 30 s
        assertEquals(0.04, near / mm.length, 0.002);
    }

    @Test
    void theLightFailsHalfAMinuteAfterPowerUpAndASpotlightFollows() {
        SimulatedInstrument blackout = powered("blackout", SEED);
        double[] lit = numbers(blackout, 1, 5, 29.9);
        double[] dark = numbers(blackout, 1, 31, 44.9);
        double[] spot = numbers(blackout, 1, 46, 60);
        assertTrue(Series.mean(dark) < 0.2 * Series.mean(lit), Series.mean(dark) + " of " + Series.mean(lit));
        assertTrue(Series.mean(spot) > Series.mean(lit) + 30, Series.mean(spot) + " after " + Series.mean(lit));
    }

    @Test
    void behindATimerLinesComeAtMultiplesOfSixteenMilliseconds() {
        SimulatedBoard board = powered("bursts", SEED).board();
        double waitedMs = 0;
        long last = 0;
        int bursts = 0;
        for (int i = 0; i < 2000; i++) {
            long arrival = board.nextArrivalNanos();
            assertEquals(0, arrival % Nanos.ofMs(16));
            assertTrue(arrival >= board.nextLineNanos() && arrival >= last);
            waitedMs += Nanos.toMs(arrival - board.nextLineNanos()) / 2000;
            bursts += arrival == last ? 0 : 1;
            last = arrival;
            assertTrue(board.nextLine().length > 0);
        }
        // half the timer on average; 10 ms of printing to 16 ms of waiting
        assertEquals(8, waitedMs, 0.3);
        assertEquals(1.6, 2000.0 / bursts, 0.02);
    }

    @Test
    void twoEchoSensorsShowTwoLevelsOfOneStillHand() {
        SimulatedInstrument both = powered("crosstalk", SEED);
        hold(both, PlayerHand.PITCH, 450);
        hold(both, PlayerHand.LEVEL, 150);
        double[] us = numbers(both, 0, 3, 303);
        // the other hand is heard at (150 + 212.1) / 2 = 181 mm, 1055 microseconds at 343.2 m/s, the own at 2622;
        // specimens are up to 4 % and 15 mm off
        double other = Arrays.stream(us).filter(v -> v > 850 && v < 1260).count() / (double) us.length;
        double own = Arrays.stream(us).filter(v -> v > 2430 && v < 2820).count() / (double) us.length;
        // 4.5 % of all pings are lost
        assertEquals(0.4 * 0.955, other, 0.03);
        assertEquals(0.6 * 0.955, own, 0.03);
        assertEquals(0.045, share01(us, 38_000), 0.012);
    }

    @Test
    void thePlayerOfTheFoldComesNearerThanThePeak() {
        SimulatedInstrument fold = powered("fold", SEED);
        assertTrue(fold.player().stage(PlayerHand.PITCH).nearMm() < 60);
        fold.player().react(Cue.of(Cue.Kind.NEAR, PlayerHand.PITCH), POWER_UP);
        double near = Series.median(numbers(fold, 0, 3, 8), 0, 150);
        fold.player().react(Cue.of(Cue.Kind.FAR, PlayerHand.PITCH), POWER_UP + Nanos.ofSeconds(8));
        double[] way = numbers(fold, 0, 8, 9.6);
        // on its way out the hand passes the peak, which is higher than both ends
        double peak = Arrays.stream(way).max().orElseThrow();
        assertTrue(peak > near + 60, near + " counts near, " + peak + " on the way");
        assertTrue(way[way.length - 1] < near);
    }

    @Test
    void thePlayerOfTheInfraredStaysBeyondThePeak() {
        SimulatedInstrument infrared = powered("infrared", SEED);
        infrared.player().react(Cue.of(Cue.Kind.NEAR, PlayerHand.PITCH), POWER_UP);
        double near = Series.median(numbers(infrared, 0, 3, 8), 0, 150);
        infrared.player().react(Cue.of(Cue.Kind.FAR, PlayerHand.PITCH), POWER_UP + Nanos.ofSeconds(8));
        double far = Series.median(numbers(infrared, 0, 11, 16), 0, 150);
        // data sheet E4-A00201EN: 2.33 V at 10 cm and 0.73 V at 40 cm, 477 and 150 counts; specimens within 10 % and
        // 0.11 V, which is 23 counts
        assertEquals(477, near, 0.1 * 477 + 33);
        assertEquals(150, far, 0.1 * 150 + 26);
        // both share the same shift
        assertEquals(477 - 150, near - far, 0.1 * (477 - 150) + 10);
    }

    @Test
    void pitchByLightRisesAsTheHandGoesAway() {
        SimulatedInstrument light = powered("light-only", SEED);
        double last = 0;
        double at = 0;
        for (double mm : new double[] {30, 60, 110, 180}) {
            light.player().react(Cue.at(Cue.Kind.RULER, PlayerHand.PITCH, mm), POWER_UP + Nanos.ofSeconds(at));
            double[] counts = numbers(light, 1, at + 2, at + 4);
            assertTrue(Series.mean(counts) > last + 10, mm + " mm: " + Series.mean(counts));
            last = Series.mean(counts);
            at += 4;
        }
    }
}
