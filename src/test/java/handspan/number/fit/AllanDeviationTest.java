package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AllanDeviationTest {
    /** Readings of a laser ranger come every 18 ms. */
    private static final double INTERVAL_S = 0.018;

    /** Published to seven figures. */
    private static final double SEVEN_FIGURES = 5e-7;

    /** NIST SP 1065 (W. J. Riley 2008), 12.4, nine-point set of NBS Monograph 140, annex 8.E. */
    private static final double[] NINE = {892, 809, 823, 798, 671, 644, 883, 903, 677};

    /** NIST SP 1065, table 30, overlapping Allan deviation. */
    @ParameterizedTest(name = "means of {0}")
    @CsvSource({"1, 91.22945", "2, 85.95287"})
    void theNinePointSetHasItsPublishedDeviations(int readings, double deviation) {
        AllanDeviation.Point point = AllanDeviation.of(NINE, 1).at(readings);
        assertEquals(deviation, point.deviation(), SEVEN_FIGURES * deviation);
        // the plain definition: half the mean square of differences of neighbouring means
        double squares = 0;
        int count = NINE.length - 2 * readings + 1;
        for (int i = 0; i < count; i++) {
            double first = Arrays.stream(NINE, i, i + readings).average().orElseThrow();
            double second = Arrays.stream(NINE, i + readings, i + 2 * readings)
                    .average()
                    .orElseThrow();
            squares += (second - first) * (second - first);
        }
        assertEquals(Math.sqrt(squares / count / 2), point.deviation(), 1e-10);
        assertEquals(count, point.count());
    }

    /**
     * NIST SP 1065, 12.4, table 31, overlapping Allan deviation of the 1000-point set, which is made by {@code n(i+1) =
     * 16807 n(i) mod 2147483647} from 1234567890, divided by 2147483647.
     */
    @ParameterizedTest(name = "means of {0}")
    @CsvSource({"1, 2.922319e-01", "10, 9.159953e-02", "100, 3.241343e-02"})
    void theThousandPointSetHasItsPublishedDeviations(int readings, double deviation) {
        double[] values = new double[1000];
        long n = 1234567890;
        for (int i = 0; i < values.length; i++) {
            values[i] = n / 2147483647.0;
            n = 16807 * n % 2147483647L;
        }
        AllanDeviation.Point point = AllanDeviation.of(values, 0.5).at(readings);
        assertEquals(deviation, point.deviation(), SEVEN_FIGURES * deviation);
        assertEquals(0.5 * readings, point.tauS(), 1e-12);
    }

    /** Independent values: the mean of m scatters by sigma / sqrt(m). Chance of the estimate: about sqrt(m / n). */
    @Test
    void whiteNoiseFallsWithTheRootOfTheCount() {
        AllanDeviation white = AllanDeviation.of(noise(41, 40_000, 2.15), INTERVAL_S);
        for (AllanDeviation.Point point : white.octaves()) {
            if (point.readings() <= 256) {
                double expected = 2.15 / Math.sqrt(point.readings());
                double chance = Math.sqrt(point.readings() / 40_000.0);
                assertEquals(expected, point.deviation(), 3 * chance * expected, point.toString());
            }
        }
        assertEquals(2.15, white.white(), 0.03);
        assertTrue(white.driftOver(3) < 0.07, "of 0.167 mm that white noise leaves in 3 s");
    }

    /** A steady drift of D a second: means that follow one another differ by D tau. */
    @Test
    void aSteadyDriftGrowsWithTimeByTheRootOfTwo() {
        double[] ramp = new double[1000];
        Arrays.setAll(ramp, i -> 400 + 0.25 * INTERVAL_S * i);
        AllanDeviation drift = AllanDeviation.of(ramp, INTERVAL_S);
        for (AllanDeviation.Point point : drift.octaves()) {
            double expected = 0.25 * point.tauS() / Math.sqrt(2);
            assertEquals(expected, point.deviation(), 1e-9, point.toString());
        }
        assertEquals(9, drift.octaves().size()); // 1, 2, 4 ... 256, as 512 needs 1024
        assertEquals(1, drift.floor().readings());
    }

    /** Drift of 0.05 mm a second under white noise of 2.15 mm: 0.05 x 9 / sqrt(2) = 0.318 mm from 9 s to the next. */
    @Test
    void theDriftIsFoundUnderWhiteNoise() {
        double[] values = noise(42, 40_000, 2.15);
        for (int i = 0; i < values.length; i++) {
            values[i] += 0.05 * INTERVAL_S * i;
        }
        AllanDeviation both = AllanDeviation.of(values, INTERVAL_S);
        assertEquals(0.318, both.driftOver(9), 0.03);
        assertEquals(2.15, both.white(), 0.03);
        // where the fall of one meets the rise of the other: 2.15 sqrt(0.018 / t) = 0.05 t / sqrt(2) at t = 4 s
        assertEquals(4, both.floor().tauS(), 2.5);
    }

    /**
     * Steps of q summed up: neighbouring means of m differ by a sum of steps with weights 1/m, 2/m ... 1 ... 2/m, 1/m,
     * so that the variance is {@code q^2 (2 m^2 + 1) / (6 m)} (sum of squares; by hand).
     */
    @Test
    void aRandomWalkGrowsWithTheRootOfTime() {
        double[] walk = noise(43, 100_000, 1);
        for (int i = 1; i < walk.length; i++) {
            walk[i] += walk[i - 1];
        }
        AllanDeviation allan = AllanDeviation.of(walk, 1);
        for (int m : new int[] {1, 2, 8, 64, 256}) {
            double expected = Math.sqrt((2.0 * m * m + 1) / (6.0 * m));
            assertEquals(expected, allan.at(m).deviation(), 3 * Math.sqrt(m / 100_000.0) * expected, "m = " + m);
        }
    }

    @Test
    void whatTheSeriesCanNotTellIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> AllanDeviation.of(new double[] {1, 2}, 1));
        assertThrows(IllegalArgumentException.class, () -> AllanDeviation.of(NINE, 0));
        assertThrows(IllegalArgumentException.class, () -> AllanDeviation.of(new double[] {1, Double.NaN, 2}, 1));
        AllanDeviation nine = AllanDeviation.of(NINE, 1);
        assertThrows(IllegalArgumentException.class, () -> nine.at(5));
        assertThrows(IllegalArgumentException.class, () -> nine.at(0));
        assertThrows(IllegalArgumentException.class, () -> nine.driftOver(5));
    }

    private static double[] noise(long seed, int count, double deviation) {
        Random random = new Random(seed);
        double[] values = new double[count];
        Arrays.setAll(values, i -> deviation * random.nextGaussian());
        return values;
    }
}
