package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two levels in turn, and what only looks like them. */
class BeatingTest {
    private static Scene between(String spec, double a, double b, double deviation, double step, int everyLines) {
        Scene scene = new Scene(spec, 20, step, 91);
        for (int line = 0; line < 400; line++) {
            double level = line / everyLines % 2 == 0 ? a : b;
            scene.print(step * Math.rint((level + deviation * scene.gauss()) / step));
        }
        return scene;
    }

    /** 1 mm of echo is 5.8 us there and back, by the speed of sound at 20 degrees (344 m/s): 1744 and 1977 us. */
    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void twoEchoSensorsThatHearEachOtherAreToldToPingInTurn(int everyLines) {
        ChannelReport report =
                between("1:echo:us", 1744, 1977, 10, 1, everyLines).report();
        assertEquals(Verdict.POOR, report.verdict());
        assertTrue(report.reason().contains("goes to and fro between 300 mm and 340 mm"), report.reason());
        assertTrue(report.reason().contains("two echo sensors do that hear each other"), report.reason());
        assertTrue(report.remedy().contains("ping in turn, 30 to 50 ms apart"), report.remedy());
        assertEquals(0.5, report.findings().beating().orElseThrow().high01(), 0.05);
    }

    @Test
    void aCoarseSensorBetweenTwoOfItsStepsDoesNotBeat() {
        ChannelReport report = between("1:echo:cm", 30, 31, 0, 1, 1).report();
        assertTrue(report.findings().beating().isEmpty());
        assertFalse(report.reason().contains("to and fro"), report.reason());
    }

    @Test
    void aHandHeldAtTwoPlacesOneAfterTheOtherDoesNotBeat() {
        ChannelReport report = new Scene("1:echo:us", 20, 1)
                .hold(1744, 10, 8)
                .move(1744, 1977, 10, 1)
                .hold(1977, 10, 8)
                .report();
        assertTrue(report.findings().beating().isEmpty());
        assertFalse(report.reason().contains("to and fro"), report.reason());
    }

    @Test
    void noiseAsWideAsTwoLevelsDoesNotBeat() {
        ChannelReport report =
                new Scene("1:distance:mm", 50, 1).hold(300, 12, 20).report();
        assertTrue(report.findings().beating().isEmpty());
    }
}
