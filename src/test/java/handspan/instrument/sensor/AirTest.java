package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {
    /** Of the published table: half its last decimal. */
    private static final double PUBLISHED_M_PER_S = 0.051;

    /** Of the equation worked out elsewhere and printed to four decimals. */
    private static final double EQUATION_M_PER_S = 1e-3;

    /** Models of dry air differ by 600 parts in a million. */
    private static final double MODELS = 6e-4;

    /**
     * Temperature in C, relative humidity in %, published speed, speed by the equation. Sources: table of the speed of
     * sound in air against temperature and humidity, Engineering ToolBox; O. Cramer, J. Acoust. Soc. Am. 93 (1993)
     * 2510-2516, coefficients of p. 2514, at 101325 Pa and 314 ppm of carbon dioxide, worked out apart from this code.
     */
    @ParameterizedTest(name = "{0} C, {1} %")
    @CsvSource(textBlock = """
                     0, 10, 331.5, 331.4862
                     0, 20, 331.5, 331.5173
                     0, 30, 331.5, 331.5485
                     0, 40, 331.6, 331.5797
                     0, 50, 331.6, 331.6109
                     0, 60, 331.6, 331.6420
                     0, 70, 331.7, 331.6732
                     0, 80, 331.7, 331.7043
                     0, 90, 331.7, 331.7355
                    10, 10, 337.5, 337.5312
                    10, 20, 337.6, 337.5956
                    10, 30, 337.7, 337.6599
                    10, 40, 337.7, 337.7242
                    10, 50, 337.8, 337.7886
                    10, 60, 337.9, 337.8529
                    10, 70, 337.9, 337.9172
                    10, 80, 338.0, 337.9815
                    10, 90, 338.0, 338.0458
                    20, 10, 343.5, 343.4927
                    20, 20, 343.6, 343.6182
                    20, 30, 343.7, 343.7436
                    20, 40, 343.9, 343.8690
                    20, 50, 344.0, 343.9944
                    20, 60, 344.1, 344.1197
                    20, 70, 344.2, 344.2451
                    20, 80, 344.4, 344.3704
                    20, 90, 344.5, 344.4956
                    30, 10, 349.4, 349.3885
                    30, 20, 349.6, 349.6209
                    30, 30, 349.9, 349.8532
                    30, 40, 350.1, 350.0854
                    30, 50, 350.3, 350.3175
                    30, 60, 350.5, 350.5496
                    30, 70, 350.8, 350.7815
                    30, 80, 351.0, 351.0133
                    30, 90, 351.2, 351.2450
                    """)
    void moistAirHasItsPublishedSpeedOfSound(double temperatureC, double percent, double published, double equation) {
        double speed = new Air(temperatureC, percent / 100).speedOfSoundMPerS();
        assertEquals(published, speed, PUBLISHED_M_PER_S);
        assertEquals(equation, speed, EQUATION_M_PER_S);
    }

    /** Temperature, speed by the same equation without moisture, speed by ISO 9613-1:1993 (constants from memory). */
    @ParameterizedTest(name = "{0} C")
    @CsvSource(textBlock = """
                    0,  331.4550, 331.285885
                    5,  334.4749, 334.304222
                    10, 337.4669, 337.295551
                    15, 340.4310, 340.260583
                    20, 343.3672, 343.200000
                    25, 346.2755, 346.114454
                    30, 349.1560, 349.004572
                    """)
    void dryAirHasTheSpeedOfTheEquation(double temperatureC, double cramer, double iso) {
        double speed = new Air(temperatureC, 0).speedOfSoundMPerS();
        assertEquals(cramer, speed, EQUATION_M_PER_S);
        assertEquals(iso, speed, MODELS * iso);
    }

    @Test
    void airOfUnknownHumidityIsHalfMoist() {
        assertEquals(new Air(25, 0.5), Air.at(25));
        assertEquals(Air.at(20), Air.USUAL);
    }

    @Test
    void airOfNoRoomIsRefused() {
        assertEquals(-20, new Air(-20, 0).temperatureC());
        assertEquals(1, new Air(50, 1).humidity01());
        for (double temperatureC : new double[] {-20.1, 50.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> new Air(temperatureC, 0.5));
        }
        for (double humidity01 : new double[] {-0.01, 1.01, 50, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> new Air(20, humidity01));
        }
    }
}
