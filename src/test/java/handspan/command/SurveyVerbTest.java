package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Surveys of simulated instruments with a known fault provoke the words for it, those without one none. The simulator's
 * laws are its own, from data sheets.
 */
class SurveyVerbTest {
    private static JsonNode survey(String name, long seed, int seconds) {
        return Cli.run(
                        "survey",
                        "sim:" + name,
                        "--fast",
                        "--json",
                        "--seed",
                        Long.toString(seed),
                        "--seconds",
                        Integer.toString(seconds))
                .last();
    }

    private static void assertSays(long seeds, String name, int seconds, int channel, String reason, String remedy) {
        for (long seed = 1; seed <= seeds; seed++) {
            JsonNode found = survey(name, seed, seconds).path("channels").path(channel);
            assertTrue(found.path("reason").asText().contains(reason), seed + ": " + found);
            assertTrue(found.path("remedy").asText().contains(remedy), seed + ": " + found);
            assertFalse(found.path("verdict").asText().equals("good"), found.toString());
        }
    }

    /** Name, seconds, channel, what is said and what helps. */
    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of("flicker", 10, 1, "100 Hz flicker seen at", "average over 20 ms"),
                Arguments.of("drift", 120, 0, "drifts by", "let the sensor warm up"),
                Arguments.of("sleeve", 10, 0, "of readings missing", "roll the sleeve up"),
                Arguments.of("clutter", 10, 0, "is seen without the hand", "clear the beam"),
                Arguments.of("crosstalk", 10, 0, "two echo sensors do that hear each other", "ping in turn"),
                Arguments.of(
                        "echo-cm",
                        10,
                        0,
                        "whole centimetres cost about 17 cents rms at 6 cents/mm",
                        "print the echo's microseconds"),
                Arguments.of(
                        "infrared",
                        10,
                        0,
                        "each value comes 1.53 times on average: the sensor gives 26.1 a second",
                        ""),
                Arguments.of("noisy", 10, 0, "of readings missing", "play nearer"),
                Arguments.of("echo", 10, 0, "18.0 readings a second: vibrato will be lost", ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void eachFaultIsNamed(String name, int seconds, int channel, String reason, String remedy) {
        assertNamed(1, name, seconds, channel, reason, remedy);
    }

    @Tag("deep")
    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void eachFaultIsNamedWhateverTheSeed(String name, int seconds, int channel, String reason, String remedy) {
        assertNamed(3, name, seconds, channel, reason, remedy);
    }

    private static void assertNamed(long seeds, String name, int seconds, int channel, String reason, String remedy) {
        // board clocks run 0.3 % off at most
        boolean rate = reason.matches(".*\\d+\\.\\d.*");
        assertSays(seeds, name, seconds, channel, rate ? reason.replaceAll("\\d+\\.\\d.*", "") : reason, remedy);
    }

    /** By hand: a cycle of 38.3 ms (data sheet of the 10-80 cm part) is 26.11 a second, 1.532 lines at 40 a second. */
    @Test
    void theInfraredPartIsSeenToBeSlowerThanItsLines() {
        for (long seed = 1; seed <= 2; seed++) {
            JsonNode infrared = survey("infrared", seed, 10).path("channels").path(0);
            double newPerS = infrared.path("ratePerS").asDouble()
                    / infrared.path("repeats").asDouble();
            assertEquals(1000 / 38.3, newPerS, 0.2, "seed " + seed);
        }
    }

    @Test
    void figuresOfTheFaultsAreInTheJson() {
        JsonNode flicker = survey("flicker", 1, 10).path("channels").path(1);
        // 100 - 2 * 49 Hz; mains 0.05 Hz and board clock 0.3 % off at most
        assertEquals(2, flicker.path("wobbleHz").asDouble(), 0.41);
        assertEquals(100, flicker.path("flickerHz").path(0).asDouble());
        JsonNode crosstalk = survey("crosstalk", 1, 10).path("channels").path(0);
        assertTrue(crosstalk.path("beatingHigh").asDouble()
                > crosstalk.path("beatingLow").asDouble());
        JsonNode clutter = survey("clutter", 1, 10).path("channels").path(0);
        // a stand at 700 mm; scale 2 %, offset 10 mm
        assertEquals(700, clutter.path("clutterAt").asDouble(), 25);
        JsonNode sleeve = survey("sleeve", 1, 10).path("channels").path(0);
        // runs of 1 to 8, all alike: of some forty the longest is hardly ever under 7
        assertEquals(7.5, sleeve.path("longestDropoutLines").asInt(), 0.5);
        assertEquals(8190, sleeve.path("sentinels").path(0).asInt());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hall", "still", "attic", "light-only"})
    void aHealthyInstrumentIsNotComplainedAbout(String name) {
        assertGood(name, 1);
    }

    @Tag("deep")
    @ParameterizedTest
    @ValueSource(strings = {"hall", "still", "attic", "light-only"})
    void aHealthyInstrumentIsNotComplainedAboutWhateverTheSeed(String name) {
        assertGood(name, 5);
    }

    private static void assertGood(String name, long seeds) {
        for (long seed = 1; seed <= seeds; seed++) {
            JsonNode result = survey(name, seed, 10);
            for (JsonNode channel : result.path("channels")) {
                assertEquals("good", channel.path("verdict").asText(), seed + ": " + channel);
                assertEquals("", channel.path("remedy").asText());
                assertEquals(1, channel.path("repeats").asDouble());
                assertTrue(channel.path("wobbleHz").isNull()
                        || channel.path("reason").asText().startsWith("noise"));
            }
            assertEquals(0, result.path("exitCode").asInt());
        }
    }

    @Test
    void aLongLookAtAHealthyInstrumentFindsNoDrift() {
        assertNoDrift(1, 60);
    }

    @Tag("deep")
    @Test
    void aLongerLookFindsNoDriftWhateverTheSeed() {
        assertNoDrift(5, 120);
    }

    private static void assertNoDrift(long seeds, int seconds) {
        for (long seed = 1; seed <= seeds; seed++) {
            String reason = survey("hall", seed, seconds)
                    .path("channels")
                    .path(0)
                    .path("reason")
                    .asText();
            assertFalse(reason.contains("drifts"), reason);
        }
    }
}
