package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import handspan.outside.simulate.DistanceErrors;
import handspan.outside.simulate.FaultySensor;
import handspan.outside.simulate.HandSettings;
import handspan.outside.simulate.SensorFaults;
import handspan.outside.simulate.SensorModel;
import handspan.outside.simulate.SimulatedHand;
import handspan.outside.simulate.TimeOfFlightModel;
import handspan.outside.simulate.TimeOfFlightSettings;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Simulated rangers, written from data sheets: one that stops measuring after ten seconds, and ones that never do,
 * before a hand that lies on a stand, for five minutes. Noise in mm, printed in steps.
 */
class FreezeWatchTest {
    private static final double STOPS_S = 10;

    private static SensorModel ranger(double noiseMm, double updateMs, boolean stops, long seed) {
        TimeOfFlightSettings settings = new TimeOfFlightSettings(
                DistanceErrors.NONE, noiseMm, 0, 0, 0, 20, 0, TimeOfFlightSettings.USUAL_NO_READING);
        SensorFaults faults = new SensorFaults(0, 2, 0, 0, 60, 0, updateMs, stops ? STOPS_S : Double.POSITIVE_INFINITY);
        return new FaultySensor(new TimeOfFlightModel(settings, seed), faults, seed, 0);
    }

    /** Seconds after which the watch says that the sensor is frozen; infinite when it never does. */
    private static double frozenAfter(
            FreezeWatch watch, SensorModel sensor, double ratePerS, double stepMm, double seconds, HandSettings hand) {
        SimulatedHand still = new SimulatedHand(hand, 5);
        still.goTo(253, -2 * Nanos.PER_SECOND, 1);
        for (int i = 1; i < seconds * ratePerS; i++) {
            long now = Math.round(i * Nanos.PER_SECOND / ratePerS);
            double mm = sensor.read(still, now, 0);
            watch.onReading(stepMm * Math.rint(mm / stepMm), now);
            if (watch.isFrozen()) {
                return Nanos.toSeconds(now);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    @ParameterizedTest(name = "noise {0} mm, steps of {1} mm, {2} lines/s, new value each {3} ms")
    @CsvSource({
        "2.15, 1, 50, 0, 1.7",
        "2.15, 1, 200, 20, 1.7",
        "2.15, 1, 20, 0, 2",
        "1.25, 1, 16, 0, 2.5",
        "3.5, 3, 18, 0, 3",
        "1.25, 2, 18, 0, 4"
    })
    void aSensorThatStopsIsNoticed(double noiseMm, double stepMm, double ratePerS, double updateMs, double withinS) {
        FreezeWatch watch = new FreezeWatch(ratePerS, noiseMm, stepMm);
        double after = frozenAfter(watch, ranger(noiseMm, updateMs, true, 3), ratePerS, stepMm, 60, HandSettings.STILL);
        // its last number may have stood for some readings before
        assertTrue(after > STOPS_S + 0.8 && after < STOPS_S + withinS, after + " s");
    }

    /** The last two look like a frozen sensor, and are let be. */
    @ParameterizedTest(name = "noise {0} mm, steps of {1} mm, {2} lines/s, new value each {3} ms")
    @CsvSource({
        "2.15, 1, 50, 0",
        "2.15, 1, 200, 20",
        "0.8, 1, 50, 0",
        "2.15, 1, 100, 100",
        "1.25, 2, 18, 0",
        "1.25, 10, 18, 0",
        "0, 1, 50, 0"
    })
    void aHandOnAStandIsNoFrozenSensor(double noiseMm, double stepMm, double ratePerS, double updateMs) {
        for (int seed = 1; seed <= 10; seed++) {
            FreezeWatch watch = new FreezeWatch(ratePerS, noiseMm, stepMm);
            double after = frozenAfter(
                    watch, ranger(noiseMm, updateMs, false, seed), ratePerS, stepMm, 300, HandSettings.STILL);
            assertFalse(after < 300, "seed " + seed + ": after " + after + " s");
        }
    }
}
