package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteadyValueTest {
    private static final int COUNT = 150;

    private static final int HOLDS = 2000;

    /** Two standard deviations of a normal value hold 95.0 % within 1.96 (GUM, JCGM 100:2008, table G.1). */
    private static final double COVERAGE_FACTOR = 1.960;

    /** Share of holds that the stated 95 % interval must take in: 2000 holds scatter by 0.5 % about it. */
    private static final double LEAST_SHARE = 0.93;

    private static final double MOST_SHARE = 0.98;

    /** Noise of 2.15 mm in steps that are fine, about as large as it, and twice its size. */
    @ParameterizedTest(name = "{0} mm steps")
    @ValueSource(doubles = {0.001, 0.5, 1, 2, 3, 5})
    void theStatedIntervalHoldsTheTruth(double stepMm) {
        Random random = new Random(21);
        int inside = 0;
        for (int hold = 0; hold < HOLDS; hold++) {
            double truth = 200 + 50 * random.nextDouble();
            double[] readings = new double[COUNT];
            Arrays.setAll(readings, i -> stepMm * Math.rint((truth + 2.15 * random.nextGaussian()) / stepMm));
            SteadyValue value = SteadyValue.of(readings);
            inside += Math.abs(value.value() - truth) <= COVERAGE_FACTOR * value.standardUncertainty() ? 1 : 0;
        }
        double share = inside / (double) HOLDS;
        assertTrue(share >= LEAST_SHARE && share <= MOST_SHARE, "holds " + share);
    }

    /** Noise far under the step: repeating does not help, and the step's own sqrt(q^2 / 12) must stay. */
    @Test
    void noiseThatDoesNotReachTheNextStepLeavesTheStepUncertain() {
        double[] readings = new double[COUNT];
        Arrays.fill(readings, 230);
        readings[70] = 240;
        SteadyValue value = SteadyValue.of(readings);
        assertEquals(230, value.value(), 1e-9);
        assertEquals(10 / Math.sqrt(12), value.standardUncertainty(), 0.1);
    }

    /**
     * Every fifth of 150 readings a step of 10 higher: variance 16.107, less 100 / 12 of the step itself 7.774, so 10 /
     * sqrt(12) exp(-2 pi^2 0.07774) = 0.622 can't be seen; with 4.013 / sqrt(150) of the mean that is 0.703.
     */
    @Test
    void noiseThatReachesTheNextStepNowAndThenLeavesPartOfItUncertain() {
        double[] readings = new double[COUNT];
        Arrays.setAll(readings, i -> i % 5 == 0 ? 240 : 230);
        SteadyValue value = SteadyValue.of(readings);
        assertEquals(232, value.value(), 1e-9);
        assertEquals(0.703, value.standardUncertainty(), 0.001);
    }

    /** sqrt(pi / 2) s / sqrt(n) for the median of normal values (textbook result, from memory). */
    @Test
    void fineReadingsGiveTheirMedianAndItsUncertainty() {
        Random random = new Random(22);
        double[] readings = new double[COUNT];
        Arrays.setAll(readings, i -> Math.rint(20 * (310 + random.nextGaussian())) / 20);
        SteadyValue value = SteadyValue.of(readings);
        assertEquals(Robust.median(Noise.keptOf(readings, Robust.smallestStep(readings))), value.value(), 1e-12);
        assertEquals(
                1.2533 * value.noise().deviation() / Math.sqrt(value.effectiveCount()),
                value.standardUncertainty(),
                1e-4);
    }

    @Test
    void coarseReadingsGiveTheMeanOfTwoSteps() {
        double[] readings = new double[COUNT];
        Arrays.setAll(readings, i -> i % 3 == 0 ? 203 : 200);
        SteadyValue value = SteadyValue.of(readings);
        assertEquals(201, value.value(), 1e-12);
    }

    @Test
    void aSlowDriftMakesTheStatedUncertaintyLarger() {
        Random random = new Random(23);
        double[] white = new double[300];
        Arrays.setAll(white, i -> 200 + random.nextGaussian());
        double[] drifting = white.clone();
        Arrays.setAll(drifting, i -> white[i] + Math.sin(2 * Math.PI * i / 300));
        double alone = SteadyValue.of(white).standardUncertainty();
        double with = SteadyValue.of(drifting).standardUncertainty();
        assertEquals(1.2533 / Math.sqrt(300), alone, 0.3 * alone);
        assertTrue(with > 3 * alone, "white alone " + alone + ", with drift " + with);
    }

    @Test
    void aGhostDoesNotMoveTheValue() {
        Random random = new Random(24);
        double[] readings = new double[COUNT];
        Arrays.setAll(readings, i -> Math.rint(260 + 2 * random.nextGaussian()));
        double before = SteadyValue.of(readings).value();
        readings[30] = 410;
        readings[31] = 410;
        assertEquals(before, SteadyValue.of(readings).value(), 0.1);
    }
}
