package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that mean no reading: those known, those learned, and hands that only stand far away. */
class SentinelsTest {
    private static Scene handAmong(String spec, double centre, double deviation, double step, double sentinel) {
        Scene scene = new Scene(spec, 50, step);
        for (int i = 0; i < 10; i++) {
            scene.hold(centre, deviation, 1).print(sentinel);
        }
        return scene;
    }

    /** Numbers met on real boards (field list): 801.35 and 1204.10 cm, 8190, 8191, 65535, 0, -1; and 2000, 20 mm. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
        "1:distance:mm, 300, 8190",
        "1:distance:mm, 300, 8191",
        "1:distance:mm, 300, 65535",
        "1:distance:mm, 300, 0",
        "1:distance:mm, 300, -1",
        "1:distance:mm, 300, 20",
        "1:distance:mm, 300, 2000",
        "1:distance:cm, 30,  801.35",
        "1:echo:cm,     30,  1204.10",
        "1:echo:us,     1744, 38000",
        "1:unscaled,    300, 65535"
    })
    void aNumberThatComesAgainAndAgainBeyondTheHandIsNoReading(String spec, double centre, double sentinel) {
        ChannelReport report =
                handAmong(spec, centre, 0.005 * centre, centre / 300, sentinel).report();
        assertEquals(List.of(sentinel), report.findings().sentinels().values());
        assertEquals(10 / 510.0, report.findings().sentinels().share01(), 1e-9);
        assertEquals(0.005 * centre, report.noise(), 0.15 * 0.005 * centre);
        assertEquals(0, report.outliers(), 6);
    }

    @Test
    void aLearnedOneIsSaid() {
        String reason = handAmong("1:distance:mm", 300, 1.5, 1, 2000).report().reason();
        assertTrue(reason.contains("2000 taken as no reading"), reason);
        assertFalse(
                handAmong("1:distance:mm", 300, 1.5, 1, 8190).report().reason().contains("8190"));
    }

    @ParameterizedTest
    @CsvSource({"1:distance:mm, 1150, 0.2", "1:distance:mm, 900, 3", "1:distance:mm, 1500, 6", "1:distance:cm, 110, 0"})
    void somethingHeldFarAwayIsAReading(String spec, double centre, double deviation) {
        ChannelReport report =
                new Scene(spec, 50, 1).hold(centre, deviation, 10).report();
        assertEquals(List.of(), report.findings().sentinels().values());
        assertEquals(500, report.heldCount(), 25);
    }
}
