package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sensor slower than its lines, and quiet sensors that only look so. */
class RepeatsTest {
    private static final double PERIOD_WITHIN = 0.02;

    /** New values every so many lines, rounded to a step: how often each comes is known by construction. */
    private static Scene slow(double linesPerValue, double ratePerS, double deviation, long seed) {
        Scene scene = new Scene("1:distance:mm", ratePerS, 1, seed);
        double value = 300;
        long last = -1;
        for (int line = 0; line < 20 * ratePerS; line++) {
            long update = (long) Math.floor(line / linesPerValue);
            value = update == last ? value : Math.rint(300 + deviation * scene.gauss());
            last = update;
            scene.print(value);
        }
        return scene;
    }

    /** 12.5 = 50/4; 26.1 a second is the 38.3 ms cycle of an infrared part (data sheet) at 40 lines a second. */
    @ParameterizedTest(name = "{0} lines to a value at {1}/s")
    @CsvSource({"4, 50, 12.5", "2, 50, 25", "3, 90, 30", "1.532, 40, 26.11", "2.5, 50, 20", "7, 100, 14.29"})
    void aSlowerSensorIsLearnedWithItsOwnRate(double lines, double ratePerS, double newPerS) {
        for (long seed = 1; seed <= 2; seed++) {
            ChannelReport report = slow(lines, ratePerS, 2.15, seed).report();
            Repeats repeats = report.findings().repeats();
            assertEquals(lines, repeats.linesPerValue(), PERIOD_WITHIN, "seed " + seed);
            assertEquals(newPerS, repeats.newPerS(ratePerS), PERIOD_WITHIN * newPerS);
        }
    }

    @Test
    void itIsSaidInWordsAndCountsForVibrato() {
        ChannelReport report = slow(4, 50, 2.15, 1).report();
        assertTrue(
                report.reason()
                        .contains("each value comes 4 times: the sensor gives 12.5 a second; 12.5 readings a"
                                + " second: vibrato will be lost"),
                report.reason());
        assertEquals(Verdict.USABLE, report.verdict());
    }

    /**
     * rms of successive differences over the lines is too small by the square root of 4; over distinct updates it is
     * right.
     */
    @Test
    void noiseIsTakenOverTheSensorsOwnValues() {
        ChannelReport report = slow(4, 50, 2.15, 2).report();
        // 250 values: a white part scatters by 5 %
        assertEquals(2.15, report.findings().noise().white(), 0.15 * 2.15);
        assertEquals(2.15, report.noise(), 0.15 * 2.15);
    }

    /** Noise under half a step: two in three readings equal their neighbour, at any line. */
    @ParameterizedTest
    @CsvSource({"0.3", "0.4", "0.5", "1", "2.15"})
    void equalNeighboursOfAQuietSensorAreNoRepeats(double deviation) {
        assertNoRepeats(deviation, 1);
    }

    @Tag("deep")
    @ParameterizedTest
    @CsvSource({"0.3", "0.4", "0.5", "1", "2.15"})
    void equalNeighboursOfAQuietSensorAreNoRepeatsWhateverTheSeed(double deviation) {
        assertNoRepeats(deviation, 20);
    }

    private static void assertNoRepeats(double deviation, long seeds) {
        for (long seed = 1; seed <= seeds; seed++) {
            ChannelReport report = slow(1, 50, deviation, seed).report();
            assertEquals(1, report.findings().repeats().linesPerValue(), "seed " + seed);
            assertFalse(report.reason().contains("each value comes"), report.reason());
        }
    }

    /** Exactly even changes, but all one way: a tenth of a millimetre in every 10 lines. */
    @Test
    void aDriftThroughTheStepsOfAQuietSensorIsNoRepeat() {
        Scene scene = new Scene("1:distance:mm", 100, 1);
        for (int line = 0; line < 1000; line++) {
            scene.print(300 + Math.floorDiv(line, 10) / 10.0);
        }
        assertTrue(scene.report().heldCount() > 300, "enough of it is held");
        assertEquals(1, scene.report().findings().repeats().linesPerValue());
    }

    /** A swing of 2 Hz across one step of a coarse sensor: even changes to and fro between two values. */
    @Test
    void aWobbleAcrossOneStepIsNoRepeat() {
        Scene scene = new Scene("1:distance:cm", 50, 1);
        for (int line = 0; line < 1000; line++) {
            scene.print(line % 20 < 10 ? 30 : 31);
        }
        assertEquals(1, scene.report().findings().repeats().linesPerValue());
    }
}
