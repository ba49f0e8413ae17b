package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InfraredSensorTest {
    private static final double VOLTS = 1e-6;

    /** V = Vref N / (2^bits - 1), worked out by hand. */
    @ParameterizedTest(name = "{2} of {0} at {1} V")
    @CsvSource({
        "COUNTS10, 5,   512,  2.502444",
        "COUNTS10, 5,   82,   0.400782",
        "COUNTS10, 3.3, 512,  1.651613",
        "COUNTS12, 3.3, 2048, 1.650403",
        "V,        5,   1.31, 1.31",
        "V,        3.3, 1.31, 1.31"
    })
    void countsBecomeVolts(Unit unit, double referenceVolts, double raw, double volts) {
        assertEquals(
                volts, InfraredSensor.of(unit, referenceVolts, NoReadings.NONE).physical(raw), VOLTS);
    }

    /** 0.25 V is 51.2 counts of ten bits at 5 V and 310.2 of twelve at 3.3 V. */
    @ParameterizedTest(name = "{2} of {0} at {1} V: {3}")
    @CsvSource({
        "COUNTS10, 5,   -1,    false",
        "COUNTS10, 5,   0,     false",
        "COUNTS10, 5,   51,    false",
        "COUNTS10, 5,   52,    true",
        "COUNTS10, 5,   1022,  true",
        "COUNTS10, 5,   1023,  false",
        "COUNTS12, 3.3, 310,   false",
        "COUNTS12, 3.3, 311,   true",
        "COUNTS12, 3.3, 4094,  true",
        "COUNTS12, 3.3, 4095,  false",
        "V,        5,   0.249, false",
        "V,        5,   0.25,  true",
        "V,        5,   4.99,  true",
        "V,        5,   5,     false",
        "V,        3.3, 3.29,  true",
        "V,        3.3, 3.3,   false"
    })
    void nothingInSightAndTheEndOfTheScaleAreNoReading(Unit unit, double referenceVolts, double raw, boolean reading) {
        assertEquals(
                reading,
                InfraredSensor.of(unit, referenceVolts, NoReadings.NONE).hasReading(raw));
    }

    /** Output at 80 cm and at 30 cm, least, usual and most (data sheets E4-A00201EN and OP13008EN, same figures). */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.40, 0.55})
    void aHandAtTheFarEndIsSeenByEveryPart(double volts) {
        assertTrue(InfraredSensor.of(Unit.V, 5, NoReadings.NONE).hasReading(volts));
    }

    @Test
    void unitsAndReferencesThatMakeNoSenseAreRefused() {
        for (Unit unit : new Unit[] {Unit.MM, Unit.CM, Unit.IN, Unit.US, Unit.NONE}) {
            assertThrows(
                    IllegalArgumentException.class, () -> InfraredSensor.of(unit, 5, NoReadings.NONE), unit.word());
        }
        for (double volts : new double[] {0, -5, Double.NaN}) {
            assertThrows(
                    IllegalArgumentException.class, () -> InfraredSensor.of(Unit.COUNTS10, volts, NoReadings.NONE));
        }
    }
}
