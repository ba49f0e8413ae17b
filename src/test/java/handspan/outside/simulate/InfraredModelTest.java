package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the data sheet of the 10-80 cm part, E4-A00201EN (part GP2Y0A21YK0F). */
class InfraredModelTest {
    /** A figure can be read to 0.02 V; model and check read two of them. */
    private static final double READING_VOLTS = 0.04;

    private static final double STEP_VOLTS = 5.0 / 1023;
    private static final double CYCLE_MS = 38.3;

    @ParameterizedTest
    @CsvSource({"50, 3.08", "70, 2.978", "100, 2.327", "150, 1.641", "250, 1.080", "400, 0.733", "800, 0.396"})
    void theCurveMeetsTheMarkedPointsOfTheDataSheet(double mm, double volts) {
        // Fig. 2, output over inverse distance, white paper; the model is made from the other drawing
        assertEquals(volts, InfraredCurve.volts(mm), READING_VOLTS);
    }

    @Test
    void theOutputRisesToItsPeakAt60MillimetresAndFallsFromThereOn() {
        for (double mm = 1; mm < 59; mm += 0.5) {
            assertTrue(InfraredCurve.volts(mm + 0.5) > InfraredCurve.volts(mm), "at " + mm);
        }
        for (double mm = 60; mm < 1500; mm += 0.5) {
            assertTrue(InfraredCurve.volts(mm + 0.5) < InfraredCurve.volts(mm), "at " + mm);
        }
        // 3.14 V: peak of the other drawing
        assertEquals(3.14, InfraredCurve.volts(59.6), READING_VOLTS);
    }

    @Test
    void halfWayBetweenPointsTheCurveIsNearAStraightLineOverInverseDistance() {
        // published straight-line form of another specimen, V = 20.99/d + 0.19 with d in cm, valid 0.4..2.8 V: 15 %
        for (double mm = 80; mm <= 800; mm += 10) {
            double published = 209.9 / mm + 0.19;
            assertEquals(published, InfraredCurve.volts(mm), 0.15 * published, "at " + mm);
        }
    }

    @ParameterizedTest
    @CsvSource({"100.8, 1, 471", "201.1, 1, 267", "401.7, 1, 150", "100.8, 0.9, 424", "401.7, 1.1, 165"})
    void countsAreOfTenBitsAtFiveVolts(double mm, double scale, double counts) {
        // by hand: N = 1023 V / 5 of the drawn 2.304, 1.306 and 0.735 V, times the specimen's factor
        InfraredSettings part = new InfraredSettings(scale, 0, 0, 0, CYCLE_MS);
        assertEquals(counts, read(new InfraredModel(part, 1), mm, 1, 0.1)[0]);
    }

    @Test
    void aVoltageInTheFoldIsTwoDistances() {
        // drawn vertices: 1.942 V = 397 counts at 31.5 mm; 2.304 V at 100.8 mm and 1.644 V at 152.1 mm lie about it
        double near = read(new InfraredModel(InfraredSettings.ideal(), 1), 31.5, 1, 0.1)[0];
        assertEquals(397, near);
        assertTrue(read(new InfraredModel(InfraredSettings.ideal(), 1), 100.8, 1, 0.1)[0] > near);
        assertTrue(read(new InfraredModel(InfraredSettings.ideal(), 1), 152.1, 1, 0.1)[0] < near);
    }

    @ParameterizedTest
    @CsvSource({"200, 0.8, 0.00556", "300, 2.1, 0.00267", "400, 5.0, 0.00156"})
    void noiseHasTheMeasuredSizeInMillimetres(double mm, double sdMm, double voltsPerMm) {
        // slopes: 283 V mm / (d + 25.6 mm)^2, the reciprocal law nearest to the data sheet's points
        InfraredModel model = new InfraredModel(new InfraredSettings(1, 0, 1, 0, CYCLE_MS), 8);
        double[] counts = read(model, mm, 20_000, CYCLE_MS / 1000);
        assertEquals(sdMm, Series.sd(counts) * STEP_VOLTS / voltsPerMm, 0.15 * sdMm);
    }

    @Test
    void aBoardThatPrintsFasterRepeatsEachValueForACycle() {
        InfraredModel model = new InfraredModel(new InfraredSettings(1, 0, 5, 0, CYCLE_MS), 8);
        double[] counts = read(model, 200, 12_000, 0.005);
        int changes = 0;
        int run = 1;
        for (int i = 1; i < counts.length; i++) {
            boolean same = counts[i] == counts[i - 1];
            assertTrue(same || i < 9 || run >= 7, "a run of " + run);
            run = same ? run + 1 : 1;
            changes += same ? 0 : 1;
        }
        // 60 s hold 1566 cycles; now and then two neighbouring values are equal by chance
        assertTrue(changes <= 1567 && changes > 0.9 * 1566, changes + " changes");
    }

    @Test
    void aJumpShowsInFullAfterOneCycleAndTheRestOfAnother() {
        double[] fullMs = new double[400];
        for (int seed = 0; seed < fullMs.length; seed++) {
            InfraredModel model = new InfraredModel(InfraredSettings.ideal(), seed);
            SimulatedHand hand = TimeOfFlightModelTest.stillAt(300);
            long jump = Nanos.ofSeconds(2);
            hand.goTo(150, jump, 0.001);
            double full = Math.rint(1023 * InfraredCurve.volts(150) / 5);
            double ms = -5;
            while (model.read(hand, jump + Nanos.ofMs(ms), 0) < full - 1) {
                ms += 0.5;
            }
            fullMs[seed] = ms;
        }
        // the mean is taken of eight moments, the first a sixteenth of a cycle after its start
        double least = CYCLE_MS * 15 / 16;
        assertTrue(Arrays.stream(fullMs).allMatch(ms -> ms > least && ms < least + CYCLE_MS + 1));
        // cycles stand anywhere: half of one more on average; four standard errors of 38.3/sqrt 12 over 400; steps of
        // 0.5
        assertEquals(least + 0.5 * CYCLE_MS + 0.25, Series.mean(fullMs), 4 * CYCLE_MS / Math.sqrt(12 * 400));
    }

    @Test
    void supplySpikesAlwaysReadTooNear() {
        InfraredModel model = new InfraredModel(InfraredSettings.ideal().withFaults(0, 0.02), 3);
        double[] counts = read(model, 300, 50_000, 0.025);
        double quiet = Math.rint(1023 * InfraredCurve.volts(300) / 5);
        assertTrue(Arrays.stream(counts).allMatch(v -> v == quiet || v > quiet + 15));
        double spikes = Arrays.stream(counts).filter(v -> v > quiet).count();
        // four standard errors of a share
        assertEquals(0.02, spikes / counts.length, 4 * Math.sqrt(0.02 * 0.98 / 50_000));
    }

    @Test
    void anEmptyViewReadsLessThanAnyPartAtTheFarEnd() {
        // 0.25 V at 80 cm is the least of the data sheet: 51 counts
        InfraredSettings part = new InfraredSettings(1.1, 0, 1, 0, CYCLE_MS);
        InfraredModel strongest = new InfraredModel(part, 4);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        for (int i = 0; i < 1000; i++) {
            assertTrue(strongest.read(absent, Nanos.ofSeconds(1 + 0.04 * i), 0) < 51);
        }
        assertTrue(read(new InfraredModel(part, 5), 1100, 1, 0.1)[0] < 51);
        assertTrue(read(new InfraredModel(part, 6), 800, 1, 0.1)[0] > 51);
    }

    @Test
    void specimensStayWithinTheLimitsOfTheDataSheet() {
        double least = 2;
        double most = 0;
        for (long seed = 0; seed < 1000; seed++) {
            double scale = InfraredSettings.seeded(seed).voltageScale();
            least = Math.min(least, scale);
            most = Math.max(most, scale);
        }
        assertTrue(least < 0.91 && most > 1.09, least + " to " + most);
        for (double scale : new double[] {least, most}) {
            double far = scale * InfraredCurve.volts(800);
            double difference = scale * InfraredCurve.volts(100) - far;
            assertTrue(far > 0.25 && far < 0.55, far + " V at 80 cm");
            assertTrue(difference > 1.65 && difference < 2.15, difference + " V from 10 to 80 cm");
        }
    }

    private static double[] read(InfraredModel model, double mm, int count, double seconds) {
        SimulatedHand hand = TimeOfFlightModelTest.stillAt(mm);
        double[] counts = new double[count];
        for (int i = 0; i < count; i++) {
            counts[i] = model.read(hand, Nanos.ofSeconds(1 + i * seconds), 0);
        }
        return counts;
    }
}
