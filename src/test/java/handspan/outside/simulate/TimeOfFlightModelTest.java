package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.number.units.Nanos;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The static hour is held against a public one-hour recording of such a ranger (TimeOfFlightCalibration, MIT licence,
 * commit dd22d07): 200,244 readings at 55.6/s of a fixed target, sd 2.15 mm, mean of 5 1.04 mm, median of 5 1.29 mm,
 * one-pole low-pass a = 0.2 0.92 mm, autocorrelation 0.07 at lag 1 and 0.05 at lag 500, medians of 3 s 0.67 mm.
 */
class TimeOfFlightModelTest {
    private static final double RATE_PER_S = 55.6;
    private static final int HOUR = 200_244;
    private static final double SHARE_OF_SD = 0.06;

    private static double[] hour = new double[0];

    @BeforeAll
    static void simulateTheHour() {
        TimeOfFlightSettings settings = TimeOfFlightSettings.likeTheMeasuredHour(DistanceErrors.NONE);
        hour = read(new TimeOfFlightModel(settings, 3), stillAt(75), HOUR);
    }

    @Test
    void theStaticHourScattersLikeTheRecordedOne() {
        assertEquals(2.15, Series.sd(hour), 2.15 * 0.02);
        assertEquals(0.07, Series.autocorrelation(hour, 1), 0.02);
        assertEquals(0.05, Series.autocorrelation(hour, 500), 0.025);
    }

    @Test
    void smoothingTheStaticHourHelpsAsMuchAsOnTheRecordedOne() {
        double[] mean5 = new double[HOUR - 4];
        double[] median5 = new double[HOUR - 4];
        double[] onePole = new double[HOUR];
        onePole[0] = hour[0];
        for (int i = 1; i < HOUR; i++) {
            onePole[i] = onePole[i - 1] + 0.2 * (hour[i] - onePole[i - 1]);
        }
        for (int i = 0; i < HOUR - 4; i++) {
            mean5[i] = (hour[i] + hour[i + 1] + hour[i + 2] + hour[i + 3] + hour[i + 4]) / 5;
            median5[i] = Series.median(hour, i, i + 5);
        }
        assertEquals(1.04, Series.sd(mean5), 1.04 * SHARE_OF_SD);
        assertEquals(1.29, Series.sd(median5), 1.29 * SHARE_OF_SD);
        assertEquals(0.92, Series.sd(onePole), 0.92 * SHARE_OF_SD);
    }

    @Test
    void mediansOfThreeSecondsScatterFarMoreThanWhiteNoiseSays() {
        double[] medians = new double[HOUR / 167];
        for (int i = 0; i < medians.length; i++) {
            medians[i] = Series.median(hour, i * 167, (i + 1) * 167);
        }
        // 0.67 mm recorded; 0.21 mm is what white noise of 2.15 mm alone would give
        assertEquals(0.67, Series.sd(medians), 0.67 * 0.2);
    }

    @Test
    void withoutDriftTheNoiseIsWhiteAndHasTheStatedPrintedSize() {
        TimeOfFlightSettings usual = TimeOfFlightSettings.usual(DistanceErrors.NONE);
        double[] mm = read(new TimeOfFlightModel(usual, 4), stillAt(300), 40_000);
        assertEquals(2.15, Series.sd(mm), 0.03);
        // four standard errors of a white series of 40,000
        assertEquals(0, Series.autocorrelation(mm, 1), 4 / Math.sqrt(40_000));
        assertEquals(300, Series.mean(mm), 0.05);
        double[] far = read(new TimeOfFlightModel(usual.withNoise(2.15, 0.5, 0), 4), stillAt(800), 40_000);
        assertEquals(2.15 * 1.4, Series.sd(far), 0.04);
    }

    @Test
    void wholeMillimetresArePrintedOrTheSentinelWhenNothingIsInRange() {
        TimeOfFlightSettings settings = TimeOfFlightSettings.usual(DistanceErrors.NONE);
        TimeOfFlightModel model = new TimeOfFlightModel(settings, 5);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        assertEquals(8190, model.read(absent, Nanos.PER_SECOND, 0));
        assertEquals(8190, model.read(stillAt(1250), Nanos.PER_SECOND, 0));
        double mm = model.read(stillAt(1150), Nanos.PER_SECOND, 0);
        assertEquals(1150, mm, 15);
        assertEquals(Math.rint(mm), mm);
    }

    @Test
    void aReadingLagsTheHandByHalfTheMeasuringTime() {
        SimulatedHand hand = stillAt(100);
        hand.goTo(500, Nanos.ofSeconds(2), 0.8);
        TimeOfFlightSettings exact = new TimeOfFlightSettings(DistanceErrors.NONE, 0, 0, 0, 0, 33, 2, 8190);
        long middle = Nanos.ofSeconds(2.4);
        double printed = new TimeOfFlightModel(exact, 1).read(hand, middle, 0);
        // at the peak speed 1.875 D/T the hand covers 937.5 mm/s * 16.5 ms
        assertEquals(hand.trueMm(middle) - 937.5 * 0.0165, printed, 0.1);
    }

    @Test
    void lostReadingsHaveTheirShareAndComeInRunsOfOneOrTwo() {
        TimeOfFlightSettings settings =
                TimeOfFlightSettings.usual(DistanceErrors.NONE).withDropouts01(0.1);
        double[] mm = read(new TimeOfFlightModel(settings, 6), stillAt(200), 40_000);
        int lost = 0;
        int run = 0;
        int longest = 0;
        for (double value : mm) {
            run = value == TimeOfFlightSettings.USUAL_NO_READING ? run + 1 : 0;
            lost += run > 0 ? 1 : 0;
            longest = Math.max(longest, run);
        }
        assertEquals(0.1, lost / (double) mm.length, 0.006);
        assertEquals(2, longest);
    }

    @Test
    void steadyErrorsAreThoseOfTheSpecimen() {
        DistanceErrors errors = new DistanceErrors(0.02, -10, 5);
        TimeOfFlightSettings settings = new TimeOfFlightSettings(errors, 0, 0, 0, 0, 20, 1, 8190);
        // by hand: 1.02 * 300 - 10 + 5 sin(pi/2) = 301
        assertEquals(301, new TimeOfFlightModel(settings, 1).read(stillAt(300), Nanos.PER_SECOND, 0), 1e-9);
        // by hand: 1.02 * 100 - 10 + 5 sin(pi/6) = 94.5
        assertEquals(94.5, new TimeOfFlightModel(settings, 1).read(stillAt(100), Nanos.PER_SECOND, 0), 1e-9);
    }

    @Test
    void aProgramMayPrintAnotherNumberForNoReading() {
        TimeOfFlightSettings settings =
                TimeOfFlightSettings.usual(DistanceErrors.NONE).withNoReading(1204.1, 1);
        TimeOfFlightModel model = new TimeOfFlightModel(settings, 5);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        assertEquals(1204.1, model.read(absent, Nanos.PER_SECOND, 0));
        assertEquals(1204.1, model.read(absent, 2 * Nanos.PER_SECOND, 0));
        assertEquals(300, model.read(stillAt(300), 3 * Nanos.PER_SECOND, 0), 15);
    }

    static SimulatedHand stillAt(double mm) {
        SimulatedHand hand = new SimulatedHand(HandSettings.STILL, 1);
        hand.goTo(mm, 0, 0.5);
        return hand;
    }

    private static double[] read(TimeOfFlightModel model, SimulatedHand hand, int count) {
        double[] mm = new double[count];
        for (int i = 0; i < count; i++) {
            mm[i] = model.read(hand, Nanos.ofSeconds(1 + i / RATE_PER_S), 0);
        }
        return mm;
    }
}
