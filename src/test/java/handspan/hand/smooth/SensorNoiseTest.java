package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SensorNoiseTest {
    /** An echo sensor before a flat target (measured on a real one): 1.25, 1.7 and 3.5 mm at 20, 30 and 40 cm. */
    private static final SensorNoise ECHO = new SensorNoise(List.of(
            new SensorNoise.Point(400, 3.5), new SensorNoise.Point(200, 1.25), new SensorNoise.Point(300, 1.7)));

    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"200, 1.25", "250, 1.475", "300, 1.7", "350, 2.6", "400, 3.5", "100, 1.25", "900, 3.5"})
    void betweenPlacesItRunsStraightAndBeyondThemItStays(double mm, double noiseMm) {
        assertEquals(noiseMm, ECHO.at(mm), 1e-12);
    }

    @Test
    void theWorstIsThatOfAPlaceAndTimesCountsForAll() {
        assertEquals(3.5, ECHO.worstMm(), 0);
        assertEquals(1.75, ECHO.times(0.5).worstMm(), 1e-12);
    }

    @Test
    void twoHoldsAtOnePlaceAreNoTrouble() {
        SensorNoise twice = new SensorNoise(List.of(new SensorNoise.Point(200, 1), new SensorNoise.Point(200, 2)));
        assertEquals(1, twice.at(100), 0);
        assertEquals(2, twice.at(300), 0);
    }

    @Test
    void whatIsNoNoiseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SensorNoise(List.of()));
        assertThrows(IllegalArgumentException.class, () -> SensorNoise.even(-1));
        assertThrows(IllegalArgumentException.class, () -> SensorNoise.even(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Quickness(2.1));
        assertThrows(IllegalArgumentException.class, () -> new Quickness(Double.NaN));
        assertEquals(2, new Quickness(1.5).plus(1).steps(), 0);
    }
}
