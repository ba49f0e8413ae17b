package handspan.outside.osc.remote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.outside.osc.packet.OscPart;
import handspan.outside.osc.packet.ReceivedMessage;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RemoteAddressesTest {
    private final RemoteAddresses addresses = new RemoteAddresses("Moth");

    private RemoteAddresses.Asked read(String address, String typeTags, @Nullable Object... arguments) {
        return addresses.read(new ReceivedMessage(0, address, typeTags, Arrays.asList(arguments)));
    }

    static Stream<Arguments> orders() {
        return Stream.of(
                Arguments.of("mute", "i", 1, new RemoteOrder.Mute(true)),
                Arguments.of("mute", "i", 0, new RemoteOrder.Mute(false)),
                Arguments.of("mute", "T", true, new RemoteOrder.Mute(true)),
                Arguments.of("mute", "F", false, new RemoteOrder.Mute(false)),
                Arguments.of("mute", "f", 1f, new RemoteOrder.Mute(true)),
                Arguments.of("mute", "f", -0f, new RemoteOrder.Mute(false)),
                Arguments.of("tuning", "s", "hymn", new RemoteOrder.TuningByName("hymn")),
                Arguments.of("tuning", "i", 2, new RemoteOrder.TuningByNumber(2)),
                Arguments.of("tuning", "f", 2f, new RemoteOrder.TuningByNumber(2)),
                Arguments.of("transpose", "i", -5, new RemoteOrder.Transpose(-5)),
                Arguments.of("transpose", "h", 5L, new RemoteOrder.Transpose(5)),
                Arguments.of("trim", "f", -12.5f, new RemoteOrder.Trim(-12.5)),
                Arguments.of("trim", "i", 12, new RemoteOrder.Trim(12)),
                Arguments.of("light", "I", OscPart.Impulse.IMPULSE, new RemoteOrder.RetakeLight()),
                Arguments.of("state", "I", OscPart.Impulse.IMPULSE, new RemoteOrder.Tell()));
    }

    @ParameterizedTest
    @MethodSource("orders")
    void eachWordTakesItsArguments(String word, String tags, Object argument, RemoteOrder order) {
        assertEquals(
                new RemoteAddresses.Asked(List.of(order), List.of()), read("/handspan/Moth/" + word, tags, argument));
    }

    @Test
    void lightAndStateNeedNoArgument() {
        assertEquals(
                List.of(new RemoteOrder.RetakeLight()),
                read("/handspan/Moth/light", "").orders());
        assertEquals(
                List.of(new RemoteOrder.Tell()),
                read("/handspan/Moth/state", "").orders());
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                Arguments.of("mute", "i", 2),
                Arguments.of("mute", "f", 0.5f),
                Arguments.of("mute", "f", Float.NaN),
                Arguments.of("mute", "s", "1"),
                Arguments.of("mute", "m", 1),
                Arguments.of("mute", "I", OscPart.Impulse.IMPULSE),
                Arguments.of("mute", "N", null),
                Arguments.of("tuning", "i", 0),
                Arguments.of("tuning", "f", 1.5f),
                Arguments.of("tuning", "T", true),
                Arguments.of("tuning", "d", Double.POSITIVE_INFINITY),
                Arguments.of("transpose", "i", 97),
                Arguments.of("transpose", "i", Integer.MIN_VALUE),
                Arguments.of("transpose", "h", Long.MAX_VALUE),
                Arguments.of("transpose", "f", 2.5f),
                Arguments.of("transpose", "f", Float.NaN),
                Arguments.of("trim", "f", Float.NaN),
                Arguments.of("trim", "f", Float.NEGATIVE_INFINITY),
                Arguments.of("trim", "f", 200.1f),
                Arguments.of("trim", "b", new byte[4]),
                Arguments.of("trim", "t", 1L),
                Arguments.of("trim", "[f]", List.of(1f)),
                Arguments.of("light", "i", 1),
                Arguments.of("state", "s", "playing"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void whatIsOfTheWrongKindOrOutOfRangeIsRefusedWithWhatIsTaken(String word, String tags, @Nullable Object argument) {
        List<@Nullable Object> arguments = Collections.singletonList(argument);
        RemoteAddresses.Asked asked = addresses.read(new ReceivedMessage(0, "/handspan/Moth/" + word, tags, arguments));
        assertEquals(List.of(), asked.orders());
        assertEquals(1, asked.refusals().size());
        assertTrue(
                asked.refusals().get(0).startsWith(word + " takes "),
                asked.refusals().get(0));
    }

    @Test
    void oneArgumentTooFewOrTooManyIsRefused() {
        assertEquals(1, read("/handspan/Moth/mute", "").refusals().size());
        assertEquals(1, read("/handspan/Moth/mute", "ii", 1, 1).refusals().size());
    }

    @ParameterizedTest
    @CsvSource({
        "/handspan/Moth",
        "/handspan/Moth/",
        "/handspan/Moth/Mute",
        "/handspan/Moth/now/mute",
        "/handspan/Attic/mute",
        "/Moth/mute",
        "/handspan/*",
        "/handspan/*/*/*",
    })
    void otherAddressesMeanNothing(String address) {
        assertFalse(read(address, "i", 1).isKnown());
    }

    /** OSC 1.0, "OSC Message Dispatching and Pattern Matching". */
    @Test
    void patternsMeanEveryAddressThatTheyMatch() {
        assertEquals(
                List.of(new RemoteOrder.Mute(true)),
                read("/handspan/*/mute", "i", 1).orders());
        assertEquals(
                List.of(new RemoteOrder.Transpose(3), new RemoteOrder.Trim(3)),
                read("/handspan/M?th/tr*", "i", 3).orders());
        RemoteAddresses.Asked all = read("/handspan/{Moth,Attic}/[a-z]*", "i", 1);
        assertEquals(
                List.of(
                        new RemoteOrder.Mute(true),
                        new RemoteOrder.TuningByNumber(1),
                        new RemoteOrder.Transpose(1),
                        new RemoteOrder.Trim(1)),
                all.orders());
        assertEquals(2, all.refusals().size(), "light and state take nothing");
        assertTrue(read("/handspan/[Moth/mute", "i", 1).orders().isEmpty());
    }

    @Test
    void namesAreWrittenAsTheyAreInWhatIsSent() {
        assertEquals("/handspan/Test_reed/", new RemoteAddresses("Test reed").prefix());
    }
}
