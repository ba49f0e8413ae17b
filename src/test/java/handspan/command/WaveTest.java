package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The search for the hands on simulated instruments: the truth is what their catalogue says. */
class WaveTest {
    @ParameterizedTest
    @CsvSource({
        "hall, 1:distance:mm, 2:photoresistor:counts10",
        "attic, 1:distance:mm, 2:photoresistor:counts10",
        "echo, us:echo:us, light:photoresistor:counts10",
        "two-flight, D:distance:mm, L:distance:mm",
        "infrared, 1:infrared:counts10, 2:photoresistor:counts10"
    })
    void theHandsAreFoundOnSimulatedInstruments(String sim, String pitch, String level) {
        Cli run = Cli.run("watch", "sim:" + sim, "--wave", "--fast", "--json");
        assertEquals(0, run.exitCode(), run.err());
        JsonNode result = run.last();
        assertEquals(pitch, result.at("/proposal/pitch").asText());
        assertEquals(level, result.at("/proposal/level").asText());
        assertEquals(
                List.of("away", "pitch", "level"),
                run.objects().stream()
                        .filter(object -> object.path("event").asText().equals("step"))
                        .map(object -> object.path("step").asText())
                        .toList());
    }
}
