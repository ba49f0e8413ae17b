package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DistanceSensorTest {
    private static final double EXACT = 1e-12;

    /** One inch is 25.4 mm (international agreement of 1959). */
    @ParameterizedTest
    @CsvSource({"MM, 234, 234", "CM, 23.4, 234", "IN, 10, 254", "IN, 1, 25.4"})
    void lengthsBecomeMillimetres(Unit unit, double raw, double mm) {
        assertEquals(mm, new DistanceSensor(unit, NoReadings.NONE).physical(raw), EXACT * mm);
    }

    /** Each value that means "nothing there" beside its nearest neighbour that is a hand (common practice). */
    @ParameterizedTest(name = "{1} {0}: {2}")
    @CsvSource({
        "MM, 0, false",
        "MM, -1, false",
        "MM, 19, false",
        "MM, 19.99, false",
        "MM, 20, true",
        "MM, 255, true",
        "MM, 3999.9, true",
        "MM, 4000, false",
        "MM, 8190, false",
        "MM, 8191, false",
        "MM, 65535, false",
        "CM, 0, false",
        "CM, 1.9, false",
        "CM, 2, true",
        "CM, 254, true",
        "CM, 255, false",
        "CM, 255.1, true",
        "CM, 256, true",
        "CM, 400, false",
        "CM, 819, false",
        "IN, 0.78, false",
        "IN, 0.79, true",
        "IN, 157, true",
        "IN, 158, false"
    })
    void sentinelsAreNoReadingAndTheirNeighboursAre(Unit unit, double raw, boolean reading) {
        assertEquals(reading, new DistanceSensor(unit, NoReadings.NONE).hasReading(raw));
    }

    @Test
    void aLengthHasAUnitOfLength() {
        for (Unit unit : new Unit[] {Unit.US, Unit.COUNTS10, Unit.COUNTS12, Unit.V, Unit.NONE}) {
            assertThrows(IllegalArgumentException.class, () -> new DistanceSensor(unit, NoReadings.NONE), unit.word());
        }
    }
}
