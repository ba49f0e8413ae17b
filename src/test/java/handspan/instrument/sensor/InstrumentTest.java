package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.LineShape;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstrumentTest {
    private static final ChannelSpec PITCH = ChannelSpec.parse("1:distance:mm");

    private static Instrument with(String name, int revision, int baud, double volts) {
        return new Instrument(name, revision, baud, null, PITCH, null, volts);
    }

    @Test
    void aLearnedShapeLeavesAllElse() {
        Instrument plain = with("Lantern", 3, 9600, 3.3);
        assertNull(plain.shape());
        LineShape shape = LineShape.numbers(',', 2);
        Instrument learned = plain.withShape(shape);
        assertEquals(new Instrument("Lantern", 3, 9600, shape, PITCH, null, 3.3), learned);
    }

    @Test
    void channelsAndTheirSensorsArePitchThenLevel() {
        ChannelSpec light = ChannelSpec.parse("2:photoresistor:V");
        Instrument two = new Instrument("Lantern", 1, 9600, null, PITCH, light, 3.3);
        assertEquals(List.of(PITCH, light), two.channels());
        assertEquals(List.of(PITCH), with("Lantern", 1, 9600, 3.3).channels());
        List<Sensor> sensors = two.sensors(Air.USUAL);
        assertEquals(234, sensors.get(0).physical(234), 0);
        // half of the reference: equal resistances
        assertEquals(0, sensors.get(1).physical(1.65), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"M, 1, 300, 0.1", "Moth & Reed, 99, 4000000, 10"})
    void theLimitsThemselvesAreTaken(String name, int revision, int baud, double volts) {
        assertEquals(name, with(name, revision, baud, volts).name());
    }

    @ParameterizedTest
    @CsvSource({
        "'',   1, 9600,    5,    name",
        "'  ', 1, 9600,    5,    name",
        "M,    0, 9600,    5,    revision 0",
        "M,    1, 299,     5,    299 baud",
        "M,    1, 4000001, 5,    4000001 baud",
        "M,    1, 9600,    0,    0.0 V",
        "M,    1, 9600,    10.1, 10.1 V",
        "M,    1, 9600,    NaN,  NaN V"
    })
    void whatLiesBeyondIsRefused(String name, int revision, int baud, double volts, String inMessage) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> with(name, revision, baud, volts));
        assertTrue(refusal.toString().contains(inMessage), refusal.toString());
    }
}
