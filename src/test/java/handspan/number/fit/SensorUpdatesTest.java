package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SensorUpdatesTest {
    /** Scatter of a real laser ranger over an hour, mm (a measured figure). */
    private static final double TRUE_MM = 2.15;

    /** On the mean of all draws, relative. */
    private static final double TOLERANCE = 0.04;

    private static final int DRAWS = 8;
    private static final int DEEP_DRAWS = 40;

    private static int[] lines(int count) {
        return IntStream.range(0, count).toArray();
    }

    /** A sensor that measures every {@code period} lines, printed in every line. */
    private static double[] repeated(Random random, int count, double period, double noiseMm, double stepMm) {
        double phase = period * random.nextDouble();
        double[] readings = new double[count];
        long shown = Long.MIN_VALUE;
        double value = 0;
        for (int line = 0; line < count; line++) {
            long update = (long) Math.floor((line - phase) / period);
            if (update != shown) {
                shown = update;
                value = stepMm * Math.rint((230.3 + noiseMm * random.nextGaussian()) / stepMm);
            }
            readings[line] = value;
        }
        return readings;
    }

    private static double white(double[] readings, int[] lines) {
        int[] firsts = SensorUpdates.firsts(readings, lines, SensorUpdates.linesPerUpdate(readings, lines));
        return Noise.of(Arrays.stream(firsts).mapToDouble(i -> readings[i]).toArray(), 1)
                .white();
    }

    /**
     * White noise of 2.15 mm in steps of 1 mm: sqrt(2.15^2 + 1/12) = 2.169 mm (Sheppard), whatever the board prints.
     */
    @ParameterizedTest(name = "{0} lines to an update, {1} lines")
    @CsvSource({"2, 100", "2.5, 100", "3, 100", "1.5, 200", "1.6667, 200", "3.3, 150", "5, 200", "10, 400", "20, 1000"})
    void theFastPartIsThatOfTheSensorHoweverOftenTheBoardRepeatsIt(double period, int count) {
        assertFastPart(period, count, DRAWS);
    }

    @Tag("deep")
    @ParameterizedTest(name = "{0} lines to an update, {1} lines")
    @CsvSource({"2, 100", "2.5, 100", "3, 100", "1.5, 200", "1.6667, 200", "3.3, 150", "5, 200", "10, 400", "20, 1000"})
    void theFastPartIsThatOfTheSensorOnTheMeanOfManyDraws(double period, int count) {
        assertFastPart(period, count, DEEP_DRAWS);
    }

    private static void assertFastPart(double period, int count, int draws) {
        Random random = new Random(31);
        double sum = 0;
        for (int draw = 0; draw < draws; draw++) {
            sum += Math.pow(white(repeated(random, count, period, TRUE_MM, 1), lines(count)), 2);
        }
        double expected = Math.sqrt(TRUE_MM * TRUE_MM + 1.0 / 12);
        // sd of a mean square of m values, a relative sqrt(3 / m) for successive differences, halved by the root
        double chance = 3 * Math.sqrt(3 / (draws * count / period)) / 2;
        assertEquals(expected, Math.sqrt(sum / draws), (TOLERANCE + chance) * expected);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 2.5, 4})
    void missingLinesDoNotHideTheBeat(double period) {
        Random random = new Random(32);
        double[] all = repeated(random, 200, period, TRUE_MM, 1);
        int[] lines = IntStream.range(0, 200).filter(i -> i % 16 >= 2).toArray();
        double[] readings = Arrays.stream(lines).mapToDouble(i -> all[i]).toArray();
        assertEquals(period, SensorUpdates.linesPerUpdate(readings, lines), 0.05);
    }

    /** Near misses: each has many equal neighbours, and every line is a measurement of its own. */
    @ParameterizedTest(name = "{0} mm of noise in steps of {1} mm")
    @CsvSource({"0.5, 1", "0.3, 1", "0.15, 1", "2.15, 10", "4, 10", "0.02, 1"})
    void equalNeighboursOfAQuietCoarseSensorAreNoRepeats(double noiseMm, double stepMm) {
        assertNoRepeats(noiseMm, stepMm, 50);
    }

    @Tag("deep")
    @ParameterizedTest(name = "{0} mm of noise in steps of {1} mm")
    @CsvSource({"0.5, 1", "0.3, 1", "0.15, 1", "2.15, 10", "4, 10", "0.02, 1"})
    void equalNeighboursAreNoRepeatsInManyDraws(double noiseMm, double stepMm) {
        assertNoRepeats(noiseMm, stepMm, 1000);
    }

    private static void assertNoRepeats(double noiseMm, double stepMm, int draws) {
        Random random = new Random(33);
        for (int draw = 0; draw < draws; draw++) {
            double centreMm = 230 + stepMm * random.nextDouble();
            double[] readings = new double[100];
            Arrays.setAll(readings, i -> stepMm * Math.rint((centreMm + noiseMm * random.nextGaussian()) / stepMm));
            assertEquals(1, SensorUpdates.linesPerUpdate(readings, lines(100)), "draw " + draw);
        }
    }

    /** Half a millimetre of wander at 0.3 Hz crosses the steps of a noiseless sensor again and again. */
    @Test
    void aHandThatWandersAcrossTheStepsOfAQuietSensorIsNoRepeat() {
        Random random = new Random(34);
        for (int draw = 0; draw < 50; draw++) {
            double phase = 6 * random.nextDouble();
            double[] readings = new double[200];
            Arrays.setAll(
                    readings,
                    i -> Math.rint(230
                            + 1.5 * Math.sin(0.038 * i + phase)
                            + 0.7 * Math.sin(0.0171 * i)
                            + 0.05 * random.nextGaussian()));
            assertEquals(1, SensorUpdates.linesPerUpdate(readings, lines(200)), "draw " + draw);
        }
    }

    @Test
    void aSteadyRampInStepsIsADriftNotABeat() {
        double[] readings = new double[200];
        Arrays.setAll(readings, i -> Math.floor(200 + i / 5.0));
        assertEquals(1, SensorUpdates.linesPerUpdate(readings, lines(200)));
    }

    /** 20 steps up and 20 down in turn: as many changes each way, all five lines apart. */
    @Test
    void aSlowSwingThroughTheStepsOfAQuietSensorIsNotABeat() {
        double[] readings = new double[400];
        Arrays.setAll(readings, i -> 230 + Math.abs(Math.floorDiv(i, 5) % 40 - 20));
        assertEquals(1, SensorUpdates.linesPerUpdate(readings, lines(400)));
    }

    /** The near miss: even changes to and fro, but between two values only. */
    @Test
    void aWobbleAcrossOneStepIsNotABeat() {
        double[] readings = new double[200];
        Arrays.setAll(readings, i -> i % 20 < 10 ? 30 : 31);
        assertEquals(1, SensorUpdates.linesPerUpdate(readings, lines(200)));
    }

    /**
     * Over 100 lines a period half a line in 100 off is half a line off at the end: the middle of those that fit is
     * near.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1.532, 2, 2.5, 7})
    void thePeriodIsTheMiddleOfThoseThatFit(double period) {
        Random random = new Random(35);
        double sum = 0;
        for (int draw = 0; draw < 8; draw++) {
            sum += SensorUpdates.linesPerUpdate(repeated(random, 400, period, TRUE_MM, 1), lines(400));
        }
        assertEquals(period, sum / 8, 0.002 * period);
    }

    @Test
    void firstsKeepOneReadingAnUpdateThoughTwoUpdatesAreEqual() {
        double[] readings = {7, 7, 8, 8, 8, 8, 6, 6, 7, 7};
        int[] firsts = SensorUpdates.firsts(readings, lines(10), 2);
        assertEquals("[0, 2, 4, 6, 8]", Arrays.toString(firsts));
    }
}
