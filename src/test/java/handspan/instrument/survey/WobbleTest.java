package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Even swings and what makes them. */
class WobbleTest {
    private static final double HZ_WITHIN = 0.03;

    /** A swing of a true frequency, sampled when the lines come: the alias is made by sampling, not by a formula. */
    private static ChannelReport sampled(String spec, double ratePerS, double sourceHz, double amplitude, long seed) {
        Scene scene = new Scene(spec, ratePerS, 1, seed);
        for (int line = 0; line < 10 * ratePerS; line++) {
            double swing = amplitude * Math.sin(2 * Math.PI * sourceHz * scene.seconds());
            scene.print(Math.rint(500 + swing + 0.7 * scene.gauss()));
        }
        return scene.report();
    }

    /** 9 counts at 2 Hz at about 20 lines a second were measured on a real light cell: 100 = 5 * 19.6 + 2. */
    @ParameterizedTest(name = "{1} Hz at {0} lines/s: {2} Hz")
    @CsvSource({
        "49,   100, 2,    100 Hz flicker seen at 49.0 lines a second as a wobble of 2.0 Hz, average over 20 ms",
        "19.6, 100, 2,    100 Hz flicker seen at 19.6 lines a second as a wobble of 2.0 Hz, average over 20 ms",
        "50,   120, 20,   120 Hz flicker seen at 50.0 lines a second as a wobble of 20.0 Hz, average over 16.7 ms",
        "55,   100, 10,   100 or 120 Hz flicker seen at 55.0 lines a second as a wobble of 10.0 Hz, average over 50 ms",
        "47,   50,  3,    50 Hz flicker seen at 47.0 lines a second as a wobble of 3.0 Hz, average over 20 ms",
        "250,  120, 120,  120 Hz flicker seen at 250.0 lines a second as a wobble of 120.0 Hz, average over 16.7 ms"
    })
    void mainsFlickerIsNamedWithTheTimeThatAveragesItAway(
            double ratePerS, double sourceHz, double seenHz, String reason, String remedy) {
        ChannelReport report = sampled("1:photoresistor", ratePerS, sourceHz, 9, 1);
        Wobble wobble = report.findings().wobble().orElseThrow();
        assertEquals(seenHz, wobble.frequencyHz(), HZ_WITHIN);
        assertEquals(9, wobble.amplitude(), 0.3);
        assertTrue(report.reason().contains(reason), report.reason());
        assertTrue(report.remedy().contains(remedy), report.remedy());
        assertEquals(Verdict.USABLE, report.verdict());
    }

    @Test
    void aSwingThatNoMainsExplainsHasAnUnknownCause() {
        ChannelReport report = sampled("1:photoresistor", 49, 3.3, 9, 1);
        assertTrue(report.reason().contains("a wobble of 3.3 Hz and"), report.reason());
        assertTrue(report.reason().contains("cause unknown"), report.reason());
        assertEquals(List.of(), report.findings().wobble().orElseThrow().flickers());
    }

    /** Lamps do not swing a distance. */
    @Test
    void aDistanceThatSwingsIsNotBlamedOnTheMains() {
        ChannelReport report = sampled("1:distance:mm", 49, 100, 3, 1);
        assertTrue(report.reason().contains("a wobble of 2.0 Hz and "), report.reason());
        assertTrue(report.reason().contains("cause unknown"), report.reason());
    }

    @Test
    void aSwingTooSmallToHearIsFoundButNotComplainedAbout() {
        ChannelReport report = sampled("1:photoresistor", 49, 100, 2, 1);
        assertEquals(2, report.findings().wobble().orElseThrow().amplitude(), 0.3);
        assertEquals(Verdict.GOOD, report.verdict());
        assertFalse(report.reason().contains("wobble"), report.reason());
    }

    /** At the stated level of one in a thousand, one in 15 comes by chance in one run of 67 (binomial). */
    @Test
    void whiteNoiseHasNoPeak() {
        assertEquals(0, alarms(15));
    }

    /** At the stated level of one in a thousand, two in 100 come by chance in one run of 200 (Poisson). */
    @Tag("deep")
    @Test
    void whiteNoiseHasNoPeakButForTheStatedShare() {
        int alarms = alarms(100);
        assertTrue(alarms <= 1, alarms + " alarms of 100 at " + Wobble.FALSE_ALARM01);
    }

    private static int alarms(long seeds) {
        int alarms = 0;
        for (long seed = 1; seed <= seeds; seed++) {
            Scene scene = new Scene("1:photoresistor", 49, 1, seed).hold(500, 3, 5);
            alarms += scene.report().findings().wobble().isPresent() ? 1 : 0;
        }
        return alarms;
    }
}
