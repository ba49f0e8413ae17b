package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EchoSensorTest {
    /** Models of dry air differ by 600 parts in a million. */
    private static final double MODELS = 6e-4;

    private static final double EXACT = 1e-12;

    /** Dry, as the reference columns are. */
    private static EchoSensor dry(Unit unit, double temperatureC) {
        return new EchoSensor(unit, new Air(temperatureC, 0), NoReadings.NONE);
    }

    /**
     * Echo time in microseconds; distance in cm at 343.2 m/s (20 C, ISO 9613-1:1993, from memory), at 25 C and at 0 C
     * by 331.3 sqrt(1 + T / 273.15): half the way that sound runs, worked out apart from this code.
     */
    @ParameterizedTest(name = "{0} microseconds")
    @CsvSource(textBlock = """
                    116,  1.990560,  2.007549,  1.921540
                    290,  4.976400,  5.018873,  4.803850
                    580,  9.952800,  10.037747, 9.607700
                    1000, 17.160000, 17.306460, 16.565000
                    1450, 24.882000, 25.094367, 24.019250
                    2900, 49.764000, 50.188734, 48.038500
                    """)
    void echoTimeIsDistanceByTheSpeedOfSound(double us, double cmAt20, double cmAt25, double cmAt0) {
        assertEquals(10 * cmAt20, dry(Unit.US, 20).physical(us), MODELS * 10 * cmAt20);
        assertEquals(10 * cmAt25, dry(Unit.US, 25).physical(us), MODELS * 10 * cmAt25);
        assertEquals(10 * cmAt0, dry(Unit.US, 0).physical(us), MODELS * 10 * cmAt0);
    }

    /** us / 58 = cm and us / 148 = inch, from the data sheet of the common echo module: whatever the air. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 31})
    void theBoardsOwnRuleIsUndone(double temperatureC) {
        for (double us = 130; us < 20_000; us += 111) {
            double mm = dry(Unit.US, temperatureC).physical(us);
            assertEquals(mm, dry(Unit.CM, temperatureC).physical(us / 58), EXACT * mm);
            assertEquals(mm, dry(Unit.IN, temperatureC).physical(us / 148), EXACT * mm);
        }
    }

    /** Ten degrees more are 1.7 % more: 7 mm at 40 cm. */
    @Test
    void aWarmerRoomMovesTheSameEchoOutward() {
        double us = new EchoSensor(Unit.US, Air.at(20), NoReadings.NONE).raw(400);
        assertEquals(407, new EchoSensor(Unit.US, Air.at(30), NoReadings.NONE).physical(us), 0.8);
    }

    /** 2 to 400 cm by the data sheet; 38 ms is its time-out; -1 and 0 are what board programs print for it. */
    @Test
    void whatTheDataSheetRulesOutIsNoReading() {
        EchoSensor us = dry(Unit.US, 20);
        for (double raw : new double[] {0, -1, 38_000, 46_600, 65_535, 100}) {
            assertFalse(us.hasReading(raw), raw + " us");
        }
        EchoSensor cm = dry(Unit.CM, 20);
        for (double raw : new double[] {0, -1, 1.9, 410, 801.35, 1204.1}) {
            assertFalse(cm.hasReading(raw), raw + " cm");
        }
        assertTrue(us.hasReading(1450));
        assertTrue(cm.hasReading(25));
    }

    @Test
    void theReachEndsAtTwoCentimetresAndFourMetres() {
        EchoSensor us = new EchoSensor(Unit.US, Air.USUAL, NoReadings.NONE);
        assertTrue(us.hasReading(us.raw(20.01)));
        assertFalse(us.hasReading(us.raw(19.99)));
        assertTrue(us.hasReading(us.raw(3999.9)));
        assertFalse(us.hasReading(us.raw(4000.1)));
    }

    @Test
    void anEchoIsNeverPrintedInMillimetresOrCounts() {
        for (Unit unit : new Unit[] {Unit.MM, Unit.COUNTS10, Unit.V, Unit.NONE}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new EchoSensor(unit, Air.USUAL, NoReadings.NONE),
                    unit.word());
        }
    }
}
