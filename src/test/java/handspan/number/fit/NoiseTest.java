package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoiseTest {
    /** Scatter of a real laser ranger over an hour, mm (a measured figure). */
    private static final double TRUE_MM = 2.15;

    /** Three seconds at 50 a second, odd so that the median is one of the values. */
    private static final int COUNT = 151;

    private static final int DRAWS = 400;

    /** On the mean of all draws; the loss of the rejected tails included. */
    private static final double RELATIVE_TOLERANCE = 0.03;

    private static final double EXACT = 1e-12;

    /** Steps of q add q^2 / 12 to the variance (W. F. Sheppard 1898, from memory). */
    @ParameterizedTest(name = "{0} mm steps")
    @ValueSource(doubles = {0.01, 1, 3, 5})
    void theDeviationIsTheTrueOneWhateverTheStepsOfTheSensor(double stepMm) {
        Random random = new Random(11);
        double sum = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            sum += Noise.of(readings(random, stepMm, COUNT)).deviation();
        }
        double expected = Math.sqrt(TRUE_MM * TRUE_MM + stepMm * stepMm / 12);
        assertEquals(expected, sum / DRAWS, RELATIVE_TOLERANCE * expected);
    }

    /** Why the median absolute deviation alone is no measure here: it is a whole number of steps itself. */
    @Test
    void onWholeMillimetresTheMedianDeviationJumpsWhereTheNoiseDoesNot() {
        Random random = new Random(12);
        TreeMap<Double, Integer> deviations = new TreeMap<>();
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] readings = readings(random, 1, COUNT);
            deviations.merge(Robust.medianAbsoluteDeviation(readings, Robust.median(readings)), 1, Integer::sum);
            // sd of a sample sd is 1 / sqrt(2 n) = 5.8 %: four of those
            assertEquals(TRUE_MM, Noise.of(readings).deviation(), 0.24 * TRUE_MM);
        }
        assertEquals("[1.0, 2.0]", deviations.keySet().toString());
    }

    @Test
    void inThreeMillimetreStepsTheMedianDeviationIsOftenZeroAndTheNoiseIsSeenAllTheSame() {
        Random random = new Random(13);
        int zero = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] readings = readings(random, 3, COUNT);
            if (Robust.medianAbsoluteDeviation(readings, Robust.median(readings)) == 0) {
                zero++;
                assertEquals(2.32, Noise.of(readings).deviation(), 0.25 * 2.32);
            }
        }
        assertEquals(DRAWS / 2.0, zero, DRAWS / 4.0);
    }

    /** Even spread over one step q: sqrt(q^2 / 12), the standard deviation of a uniform distribution. */
    @Test
    void theDeviationIsNeverUnderThatOfASingleStep() {
        double[] readings = new double[150];
        Arrays.fill(readings, 200);
        readings[40] = 203;
        Noise noise = Noise.of(readings);
        assertEquals(3 / Math.sqrt(12), noise.deviation(), EXACT);
        assertEquals(3, noise.step(), EXACT);
    }

    @Test
    void equalReadingsHaveNoNoise() {
        double[] readings = new double[20];
        Arrays.fill(readings, 231.5);
        assertEquals(new Noise(0, 0, 0, 231.5, 231.5, 20, 0), Noise.of(readings));
    }

    @ParameterizedTest(name = "{0} mm away")
    @ValueSource(doubles = {14, 40, 150, -190})
    void wildReadingsAreCountedAndLeftOut(double awayMm) {
        double[] readings = readings(new Random(14), 1, 200);
        Noise clean = Noise.of(readings);
        for (int i = 10; i < 200; i += 20) {
            readings[i] = 220 + awayMm;
        }
        Noise noise = Noise.of(readings);
        assertEquals(clean.rejected() + 10, noise.rejected(), 1);
        assertEquals(200, noise.kept() + noise.rejected());
        assertEquals(clean.deviation(), noise.deviation(), 0.05 * TRUE_MM);
        assertEquals(clean.mean(), noise.mean(), 0.05 * TRUE_MM);
    }

    /** A ramp of 0.02 mm a reading adds 0.02 / sqrt 2 to a difference, 3 mm to the whole. */
    @Test
    void theFastPartIsDeafToDrift() {
        Random random = new Random(15);
        double[] readings = new double[3000];
        Arrays.setAll(readings, i -> 200 + 0.02 * i + random.nextGaussian());
        Noise noise = Noise.of(readings);
        assertEquals(1, noise.white(), RELATIVE_TOLERANCE);
        assertEquals(Math.sqrt(1 + 60 * 60 / 12.0), noise.deviation(), RELATIVE_TOLERANCE * 17);
    }

    /** A sine of amplitude 3 mm has an rms of 3 / sqrt 2 = 2.121 mm; the fast part beside it keeps its 1 mm. */
    @Test
    void theSlowPartIsTheWanderApartFromTheFastPart() {
        Random random = new Random(16);
        double[] readings = new double[3000];
        Arrays.setAll(readings, i -> 200 + 3 * Math.sin(2 * Math.PI * i / 1000) + random.nextGaussian());
        Noise noise = Noise.of(readings);
        assertEquals(1, noise.white(), RELATIVE_TOLERANCE);
        assertEquals(2.121, noise.slow(), 0.06);
    }

    /** One test in twenty may say so by chance: 400 draws scatter by 4.4 about 20. */
    @Test
    void noiseAloneHasNoSlowPart() {
        Random random = new Random(17);
        int seen = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            seen += Noise.of(readings(random, 0.001, COUNT)).slow() > 0 ? 1 : 0;
        }
        assertEquals(20, seen, 15);
    }

    @Test
    void theFloorOfTheStepIsNoSlowPart() {
        double[] readings = new double[100];
        Arrays.fill(readings, 200);
        readings[50] = 203;
        assertEquals(0, Noise.of(readings).slow(), EXACT);
    }

    /** Certified means and standard deviations, for the sets in which no value lies beyond the rejection. */
    @Test
    void meanAndDeviationAreTheCertifiedOnes() {
        for (NistSeries series :
                new NistSeries[] {NistSeries.LOTTERY, NistSeries.NUM_ACC_1, NistSeries.NUM_ACC_2, NistSeries.NUM_ACC_3
                }) {
            Noise noise = Noise.of(series.array());
            assertEquals(0, noise.rejected(), series.name());
            assertEquals(series.mean(), noise.mean(), 1e-14 * series.mean(), series.name());
            // nine figures; eight for NumAcc3, whose values carry no more in a double
            assertEquals(series.deviation(), noise.deviation(), 1e-8 * series.deviation(), series.name());
        }
    }

    @Test
    void oneReadingHasNoNoise() {
        assertThrows(IllegalArgumentException.class, () -> Noise.of(new double[] {200}));
    }

    private static double[] readings(Random random, double stepMm, int count) {
        double centreMm = 220 + stepMm * random.nextDouble();
        double[] readings = new double[count];
        Arrays.setAll(readings, i -> stepMm * Math.rint((centreMm + TRUE_MM * random.nextGaussian()) / stepMm));
        return readings;
    }

    /** Whole centimetres, all alike but for one ghost of an echo: no step of 310 mm, and no noise of half of that. */
    @Test
    void aGhostAmongEqualReadingsIsNoStepWhereTheStepIsKnown() {
        double[] readings = new double[36];
        java.util.Arrays.fill(readings, 90);
        readings[11] = 400;
        Noise noise = Noise.of(readings, 10);
        assertEquals(10, noise.step(), 1e-12);
        assertEquals(1, noise.rejected());
        assertEquals(10 / Math.sqrt(12), noise.deviation(), 1e-12);
        assertEquals(90, noise.median(), 1e-12);
    }

    @Test
    void equalReadingsOfASensorWithAKnownStepAreUncertainByThatStep() {
        double[] readings = new double[36];
        java.util.Arrays.fill(readings, 90);
        // a half-width of 5 spread evenly is 5/sqrt(3) = 2.887: JCGM 100:2008, 4.3.7
        assertEquals(2.887, SteadyValue.of(readings, 10).standardUncertainty(), 0.05);
        assertEquals(0, SteadyValue.of(readings, 0).standardUncertainty(), 1e-12);
    }
}
