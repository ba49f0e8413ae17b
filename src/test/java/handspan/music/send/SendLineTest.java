package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SendLineTest {
    /** Of a double near 127. */
    private static final double ROUNDING = 1e-12;

    private static SendLine line(SendValue value) {
        return SendLine.byDefault(value, value.isOfChannel() ? "2" : "", "Moth");
    }

    /** By hand: two points and the line through them. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 0, 127, 0.25, 63.5",
        "0, 0.5, 0, 127, 0.5, 127",
        "0, 0.5, 0, 127, 0.75, 190.5",
        "-60, -6, 0, 1, -33, 0.5",
        "0, 1, 1, 0, 0.25, 0.75",
        "69, 81, 440, 880, 75, 660"
    })
    void scalingIsTheStraightLineThroughTwoPoints(
            double fromLow, double fromHigh, double toLow, double toHigh, double value, double sent) {
        assertEquals(sent, new Scaling(fromLow, fromHigh, toLow, toHigh, false).of(value), ROUNDING);
    }

    @Test
    void clippingKeepsWhatIsSentWithinItsRangeWhicheverWayRound() {
        Scaling up = new Scaling(0, 1, 0, 127, true);
        assertEquals(127, up.of(1.5), 0);
        assertEquals(0, up.of(-0.5), 0);
        Scaling down = new Scaling(0, 1, 127, 0, true);
        assertEquals(0, down.of(1.5), 0);
        assertEquals(127, down.of(-0.5), 0);
        assertEquals(1.5, Scaling.NONE.of(1.5), 0);
    }

    @Test
    void aRangeOfNothingCanNotBeStretched() {
        assertThrows(IllegalArgumentException.class, () -> new Scaling(1, 1, 0, 1, false));
        assertThrows(IllegalArgumentException.class, () -> new Scaling(0, Double.NaN, 0, 1, false));
        assertThrows(IllegalArgumentException.class, () -> new Scaling(0, 1, 0, 1e10, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ff", "b", "F", ",f", "f "})
    void typesThatOneNumberCanNotHaveAreRefused(String types) {
        assertThrows(IllegalArgumentException.class, () -> line(SendValue.PITCH).typed(types));
    }

    @Test
    void typesThatNotEveryReceiverKnowsAreTold() {
        assertEquals("", line(SendValue.NOTE).typed("is").typesBeyondCore());
        assertEquals("hd", line(SendValue.NOTE).typed("hd").typesBeyondCore());
        assertEquals("T", line(SendValue.HAND).typed("T").typesBeyondCore());
    }

    @Test
    void aChannelGoesWithValuesOfAChannelAlone() {
        assertEquals("raw:2", line(SendValue.RAW).name());
        assertEquals("/Moth/raw/2", line(SendValue.RAW).address());
        assertThrows(IllegalArgumentException.class, () -> SendLine.byDefault(SendValue.RAW, "Moth"));
        assertThrows(IllegalArgumentException.class, () -> SendLine.byDefault(SendValue.PITCH, "2", "Moth"));
    }

    @Test
    void twoNumbersOfDifferentKindAreNotScaledAlike() {
        Scaling scaling = new Scaling(0, 1, 0, 2, false);
        assertThrows(IllegalArgumentException.class, () -> line(SendValue.NOTE).with(scaling));
        assertThrows(
                IllegalArgumentException.class, () -> line(SendValue.DEGREE).with(scaling));
        assertThrows(IllegalArgumentException.class, () -> line(SendValue.STATE).with(scaling));
        line(SendValue.STATE).typed("i").with(scaling);
        line(SendValue.PLACE).with(scaling);
    }

    @Test
    void aNumberStandsWhereTheBracesWere() {
        NumberedAddress address = NumberedAddress.parse("/keys/{key}/level");
        assertEquals("/keys/69/level", address.with(69));
        assertEquals("/k-3", NumberedAddress.parse("/k{octave}").with(-3));
        assertEquals("/plain", NumberedAddress.parse("/plain").with(5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/a/{pitch}",
                "/a/{key}/{key}",
                "/a/{key}/{degree}",
                "/a/{",
                "/a/}",
                "{key}",
                "/a {key}",
                "/{key}/"
            })
    void otherBracesAreRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> NumberedAddress.parse(text));
    }

    @Test
    void aPlanNamesTheChannelsItSendsOnce() {
        SendPlan plan = new SendPlan(
                List.of(
                        SendLine.byDefault(SendValue.RAW, "2", "Moth"),
                        SendLine.byDefault(SendValue.PHYSICAL, "2", "Moth"),
                        SendLine.byDefault(SendValue.RAW, "light", "Moth"),
                        SendLine.byDefault(SendValue.RAW, "3", "Moth").turned(false)),
                List.of());
        assertEquals(List.of("2", "light"), plan.channels());
    }

    @Test
    void timeTagsNeedABundleToTravelIn() {
        Packing late = Packing.USUAL.after(20);
        assertTrue(late.isTimed());
        assertThrows(IllegalArgumentException.class, () -> new Packing(false, 20));
        assertFalse(late.bundled(false).isTimed(), "separate messages are acted on at once");
        assertThrows(IllegalArgumentException.class, () -> Packing.USUAL.after(-1));
        assertThrows(IllegalArgumentException.class, () -> Packing.USUAL.after(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Packing.USUAL.after(10_001));
    }
}
