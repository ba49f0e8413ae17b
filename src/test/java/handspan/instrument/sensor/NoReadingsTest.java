package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoReadingsTest {
    /** A number that each kind takes for a measurement, until it is in the list; its neighbour by 1 % stays one. */
    @ParameterizedTest
    @CsvSource({
        "1:distance:mm, 255",
        "1:distance:cm, 204.1",
        "1:echo:us, 12040",
        "1:infrared:counts10, 300",
        "1:photoresistor:counts12, 4000",
        "1:unscaled, -7"
    })
    void aListedNumberIsNoReadingForAnyKind(String spec, double value) {
        ChannelSpec plain = ChannelSpec.parse(spec);
        ChannelSpec listed = plain.with(new NoReadings(List.of(1e6, value)));
        assertTrue(Sensor.of(plain, Air.USUAL, 5).hasReading(value));
        Sensor sensor = Sensor.of(listed, Air.USUAL, 5);
        assertFalse(sensor.hasReading(value));
        assertFalse(sensor.hasReading(1.0009 * value));
        assertTrue(sensor.hasReading(1.01 * value));
        assertEquals(spec, plain.text().replace(":none", ""));
    }

    @Test
    void theListIsShortAndFinite() {
        assertThrows(IllegalArgumentException.class, () -> new NoReadings(Collections.nCopies(17, 1.0)));
        assertThrows(IllegalArgumentException.class, () -> new NoReadings(List.of(Double.NaN)));
        assertTrue(new NoReadings(List.of(0.0)).hold(0));
        assertFalse(new NoReadings(List.of(0.0)).hold(1e-9));
    }

    @Test
    void anInstrumentListsThemForItsOwnChannelsOnly() {
        Instrument instrument = new Instrument(
                "reed", 1, 9600, null, ChannelSpec.parse("1:distance:mm"), ChannelSpec.parse("light:photoresistor"), 5);
        NoReadings listed = new NoReadings(List.of(1023.0));
        assertEquals(
                List.of(NoReadings.NONE, listed),
                instrument.withNoReadings("light", listed).channels().stream()
                        .map(ChannelSpec::noReadings)
                        .toList());
        String refusal = assertThrows(IllegalArgumentException.class, () -> instrument.withNoReadings("2", listed))
                .getMessage();
        assertEquals("channel '2' is no hand of this instrument (pitch: 1, level: light)", refusal);
    }
}
