package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChannelSpecTest {
    @ParameterizedTest
    @CsvSource({
        "1:distance,           1,         DISTANCE,      MM,       1:distance:mm",
        "1:distance:cm,        1,         DISTANCE,      CM,       1:distance:cm",
        "Left Side:echo,       Left Side, ECHO,          US,       Left Side:echo:us",
        "2:echo:in,            2,         ECHO,          IN,       2:echo:in",
        "3:infrared,           3,         INFRARED,      COUNTS10, 3:infrared:counts10",
        "ir:infrared:V,        ir,        INFRARED,      V,        ir:infrared:V",
        "light:photoresistor,  light,     PHOTORESISTOR, COUNTS10, light:photoresistor:counts10",
        "' l :photoresistor:V', l,        PHOTORESISTOR, V,        l:photoresistor:V",
        "3:unscaled,           3,         UNSCALED,      NONE,     3:unscaled:none"
    })
    void theWrittenFormIsRead(String text, String channel, SensorKind kind, Unit unit, String written) {
        ChannelSpec spec = ChannelSpec.parse(text);
        assertEquals(new ChannelSpec(channel, kind, unit), spec);
        assertEquals(written, spec.text());
        assertEquals(spec, ChannelSpec.parse(spec.text()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "1",
                "distance",
                ":distance",
                " :distance:mm",
                "1:",
                "1:radar",
                "1:Distance",
                "1:distance:",
                "1:distance:MM",
                "1:distance:us",
                "1:echo:mm",
                "1:infrared:mm",
                "1:photoresistor:mm",
                "1:unscaled:mm",
                "1:distance:mm:x",
                "1:distance:furlong"
            })
    void anythingElseIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> ChannelSpec.parse(text));
    }

    @Test
    void aRefusalSaysWhatIsAllowed() {
        assertTrue(refusal("1:radar").contains("'radar' (distance, echo, infrared, photoresistor, unscaled)"));
        assertTrue(refusal("1:distance:parsec").contains("'parsec' (mm, cm, in, us, counts10, counts12, V, none)"));
        assertTrue(refusal("1:echo:mm").contains("unit mm does not go with echo (usual: us)"));
        assertTrue(refusal("1").contains("1:distance:mm"));
    }

    private static String refusal(String text) {
        return assertThrows(IllegalArgumentException.class, () -> ChannelSpec.parse(text))
                .toString();
    }

    @Test
    void everyKindIsAllowedItsUsualUnit() {
        for (SensorKind kind : SensorKind.values()) {
            assertTrue(kind.allows(kind.usualUnit()), kind.word());
            assertEquals(kind, SensorKind.parse(kind.word()));
        }
        for (Unit unit : Unit.values()) {
            assertEquals(unit, Unit.parse(unit.word()));
        }
    }
}
