package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SensorTest {
    private static final double RELATIVE_TOLERANCE = 1e-9;

    static Stream<ChannelSpec> everyKindInEveryUnit() {
        return Stream.of(SensorKind.values())
                .flatMap(kind ->
                        Stream.of(Unit.values()).filter(kind::allows).map(unit -> new ChannelSpec("1", kind, unit)));
    }

    @Test
    void thereAreThirteenWaysToPrint() {
        assertEquals(13, everyKindInEveryUnit().count());
    }

    @ParameterizedTest
    @MethodSource("everyKindInEveryUnit")
    void theNumberOfAPhysicalValueIsTheNumberItCameFrom(ChannelSpec spec) {
        Sensor sensor = Sensor.of(spec, Air.at(23), 3.3);
        int readings = 0;
        for (double raw = 0.01; raw < 70_000; raw *= 1.01) {
            if (sensor.hasReading(raw) && !(sensor instanceof Photoresistor light && light.isClipped(raw))) {
                double physical = sensor.physical(raw);
                assertTrue(Double.isFinite(physical), raw + " is " + physical);
                assertEquals(raw, sensor.raw(physical), RELATIVE_TOLERANCE * raw);
                readings++;
            }
        }
        assertTrue(readings > 100, readings + " readings");
    }

    @ParameterizedTest
    @MethodSource("everyKindInEveryUnit")
    void aLengthIsInMillimetresAndRunsWithTheNumber(ChannelSpec spec) {
        Sensor sensor = Sensor.of(spec, Air.USUAL, 5);
        assertEquals(spec.kind().isLength(), sensor.isLength());
        assertEquals(spec.kind().isLength(), "mm".equals(sensor.physicalUnit()));
        assertTrue(sensor.physical(3) > sensor.physical(2));
        assertTrue(!sensor.physicalUnit().isBlank());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e308, -1, 0, 8190, 1e308})
    void anUnscaledNumberIsItself(double raw) {
        Sensor sensor = Sensor.of(ChannelSpec.parse("1:unscaled"), Air.USUAL, 5);
        assertTrue(sensor.hasReading(raw));
        assertEquals(raw, sensor.physical(raw));
    }

    /**
     * Half of it is lag: 33 ms of a laser ranger (data sheet, from memory), an echo from 51 cm at 340 m/s, the cycle of
     * an infrared part (data sheet E4-A00201EN), and twice the 20 to 30 ms of a photoresistor at 10 lux (makers' data
     * sheets).
     */
    @ParameterizedTest
    @CsvSource({"1:distance, 33", "1:echo, 3", "1:infrared, 38.3", "1:photoresistor, 50", "1:unscaled, 0"})
    void everyKindTakesItsTimeToLook(String spec, double ms) {
        assertEquals(ms, Sensor.of(ChannelSpec.parse(spec), Air.USUAL, 5).measuringMs());
    }

    @Test
    void theAirIsThatOfTheRoom() {
        ChannelSpec echo = ChannelSpec.parse("1:echo:us");
        double cold = Sensor.of(echo, Air.at(0), 5).physical(2000);
        double warm = Sensor.of(echo, Air.at(30), 5).physical(2000);
        // 350.3 and 331.6 m/s at 50 % (table of the speed of sound, Engineering ToolBox)
        assertEquals(350.3 / 331.6, warm / cold, 3e-4);
    }

    @Test
    void theReferenceIsThatOfTheConverter() {
        Sensor light = Sensor.of(ChannelSpec.parse("1:photoresistor:V"), Air.USUAL, 3.3);
        assertEquals(0, light.physical(1.65), 1e-12);
    }
}
