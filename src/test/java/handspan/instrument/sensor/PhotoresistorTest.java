package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoresistorTest {
    private static final double RELATIVE_TOLERANCE = 1e-9;

    private static final double EXACT = 1e-12;

    /**
     * Unit, fixed resistor in ohm, count, resistance with the photoresistor on top and with it to ground: R = Rf (Vref
     * - V) / V and R = Rf V / (Vref - V) with V = Vref N / (2^bits - 1), worked out apart from this code to ten
     * figures.
     */
    @ParameterizedTest(name = "{2} of {0}")
    @CsvSource({
        "COUNTS10, 10000, 512,  9980.46875,  10019.56947",
        "COUNTS10, 10000, 100,  92300,       1083.423619",
        "COUNTS10, 10000, 900,  1366.666667, 73170.73171",
        "COUNTS12, 9900,  2048, 9895.166016, 9904.836346"
    })
    void theValueIsTheLogOfTheRatioOfResistances(Unit unit, double fixedOhm, double count, double top, double ground) {
        double ratio = Math.exp(Photoresistor.of(unit, 5, NoReadings.NONE).physical(count));
        assertEquals(ground, fixedOhm * ratio, RELATIVE_TOLERANCE * ground);
        assertEquals(top, fixedOhm / ratio, RELATIVE_TOLERANCE * top);
    }

    /**
     * Light in lux, resistance by R = R10 (E / 10)^-gamma with R10 = 50 kilohm and gamma = 0.7 (law as in makers' data
     * sheets), voltage over it to ground with 10 kilohm to 5 V, count of ten bits: worked out apart from this code.
     */
    @ParameterizedTest(name = "{0} lux")
    @CsvSource({
        "0.1,   1255943.22, 4.96050376,  1015",
        "1,     250593.617, 4.80813037,  984",
        "50,    16206.566,  3.0920812,   633",
        "100,   9976.31157, 2.49703544,  511",
        "1000,  1990.53585, 0.830044577, 170",
        "10000, 397.164117, 0.190996368, 39"
    })
    void theValueIsLinearInTheLogOfLight(double lux, double ohm, double volts, int count) {
        Photoresistor inVolts = Photoresistor.of(Unit.V, 5, NoReadings.NONE);
        assertEquals(ohm, 10_000 * Math.exp(inVolts.physical(volts)), 1e-6 * ohm);
        double at10Lux = Math.log(5);
        assertEquals(at10Lux - 0.7 * Math.log(lux / 10), inVolts.physical(volts), 1e-6);
        // a count of rounding either way
        Photoresistor inCounts = Photoresistor.of(Unit.COUNTS10, 5, NoReadings.NONE);
        assertEquals(count, inCounts.raw(inVolts.physical(volts)), 0.5001);
    }

    @Test
    void theEndsOfTheScaleAreClippedAndStayFinite() {
        Photoresistor ten = Photoresistor.of(Unit.COUNTS10, 5, NoReadings.NONE);
        Photoresistor twelve = Photoresistor.of(Unit.COUNTS12, 5, NoReadings.NONE);
        Photoresistor volts = Photoresistor.of(Unit.V, 3.3, NoReadings.NONE);
        assertTrue(ten.isClipped(0) && ten.isClipped(1023) && !ten.isClipped(1) && !ten.isClipped(1022));
        assertTrue(twelve.isClipped(0) && twelve.isClipped(4095) && !twelve.isClipped(1) && !twelve.isClipped(4094));
        assertTrue(volts.isClipped(0) && volts.isClipped(3.3) && !volts.isClipped(0.01) && !volts.isClipped(3.29));
        // half a count stands for the end: ln(0.5 / 1022.5)
        assertEquals(-7.6231, ten.physical(0), 1e-4);
        assertEquals(7.6231, ten.physical(1023), 1e-4);
        assertEquals(-9.0105, twelve.physical(0), 1e-4);
    }

    @Test
    void beyondTheScaleThereIsNoReading() {
        Photoresistor ten = Photoresistor.of(Unit.COUNTS10, 5, NoReadings.NONE);
        assertTrue(ten.hasReading(0) && ten.hasReading(1023));
        assertFalse(ten.hasReading(-1) || ten.hasReading(1024));
        assertTrue(Photoresistor.of(Unit.COUNTS12, 5, NoReadings.NONE).hasReading(1024));
        assertTrue(Photoresistor.of(Unit.V, 3.3, NoReadings.NONE).hasReading(3.3));
        assertFalse(Photoresistor.of(Unit.V, 3.3, NoReadings.NONE).hasReading(3.31));
    }

    @Test
    void aHigherNumberIsAlwaysAHigherValue() {
        Photoresistor ten = Photoresistor.of(Unit.COUNTS10, 5, NoReadings.NONE);
        for (int count = 1; count < 1024; count++) {
            assertTrue(ten.physical(count) > ten.physical(count - 1), "count " + count);
        }
        assertEquals(0, ten.physical(511.5), EXACT);
    }

    @Test
    void unitsAndReferencesThatMakeNoSenseAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Photoresistor.of(Unit.MM, 5, NoReadings.NONE));
        assertThrows(IllegalArgumentException.class, () -> Photoresistor.of(Unit.NONE, 5, NoReadings.NONE));
        assertThrows(IllegalArgumentException.class, () -> Photoresistor.of(Unit.V, 0, NoReadings.NONE));
        assertThrows(IllegalArgumentException.class, () -> Photoresistor.of(Unit.V, Double.NaN, NoReadings.NONE));
    }
}
