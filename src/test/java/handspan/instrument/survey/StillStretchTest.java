package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Which part of a survey counts as the hand held still. */
class StillStretchTest {
    @Test
    void aHandOnItsWayBeforeAndAfterIsLeftOut() {
        ChannelReport report = new Scene("1:distance:mm", 50, 1)
                .move(600, 250, 2, 4)
                .hold(250, 2, 8)
                .move(250, 500, 2, 4)
                .report();
        assertEquals(800, report.count());
        assertEquals(400, report.heldCount(), 50);
        assertEquals(250, report.centre(), 1);
        assertEquals(2, report.noise(), 0.15 * 2);
    }

    @Test
    void theSameHandInCentimetresIsFoundTheSame() {
        ChannelReport report = new Scene("1:distance:cm", 50, 0.1)
                .move(60, 25, 0.2, 4)
                .hold(25, 0.2, 8)
                .move(25, 50, 0.2, 4)
                .report();
        assertEquals(400, report.heldCount(), 50);
        assertEquals(0.2, report.noise(), 0.15 * 0.2);
        assertEquals(2, report.noiseMm(), 0.15 * 2);
    }

    @Test
    void theLongestOfSeveralHoldsCounts() {
        ChannelReport report = new Scene("1:distance:mm", 50, 1)
                .hold(400, 5, 4)
                .move(400, 200, 2, 2)
                .hold(200, 1, 9)
                .move(200, 300, 2, 2)
                .hold(300, 6, 4)
                .report();
        assertEquals(200, report.centre(), 1);
        assertEquals(1, report.noise(), 0.15);
    }

    @Test
    void restPrintsSentinelsAndTheHoldBetweenIsFound() {
        Scene scene = new Scene("1:distance:mm", 50, 1).hold(8190, 0, 10);
        scene.hold(300, 2, 6).hold(8190, 0, 10);
        ChannelReport report = scene.report();
        assertEquals(300, report.heldCount(), 30);
        assertEquals(0, report.dropouts01(), 0.1);
        assertEquals(300, report.centre(), 1);
    }

    @Test
    void aHandThatNeverCameIsSaidToBeMissing() {
        ChannelReport report =
                new Scene("1:distance:mm", 50, 1).hold(8190, 0, 20).report();
        // rest prints sentinels and nothing else: healthy, if it is one
        assertEquals(Verdict.USABLE, report.verdict());
        assertTrue(report.reason().contains("nothing but 8190 (no reading), as a healthy rest is"), report.reason());
        assertEquals(0, report.heldCount());
        assertTrue(report.reason().startsWith("no hand was held still"), report.reason());
        assertTrue(Double.isNaN(report.noiseMm()));
        assertEquals(50, report.ratePerS(), 0.1);
    }

    @Test
    void aHandThatNeverStoodStillIsSaidToBeMissing() {
        ChannelReport report = new Scene("1:distance:mm", 50, 1)
                .move(600, 100, 2, 5)
                .move(100, 600, 2, 5)
                .report();
        assertTrue(report.reason().startsWith("no hand was held still"), report.reason());
    }

    @Test
    void nothingAtAllIsNoHandEither() {
        Scene scene = new Scene("1:distance:mm", 50, 1);
        assertEquals(0, scene.report().count());
        assertEquals(Verdict.POOR, scene.report().verdict());
        scene.print(300);
        assertEquals(Verdict.POOR, scene.report().verdict());
    }

    @Test
    void aHandSeenInLessThanHalfOfTheReadingsIsNotHeld() {
        assertEquals(
                0,
                new Scene("1:distance:mm", 50, 1)
                        .losing(0.8)
                        .hold(300, 1, 20)
                        .report()
                        .heldCount());
    }

    @Test
    void aSeriesStopsAtItsLimitInsteadOfGrowingForEver() {
        Series series = new Series();
        for (int i = 0; i < Series.MOST + 10; i++) {
            series.add(i, i, i % 2 == 0);
        }
        assertEquals(Series.MOST, series.size());
        assertEquals(1999, series.value(1999));
        assertEquals(5, series.readings(0, 10).length);
        assertTrue(series.isValid(4) && !series.isValid(5));
    }
}
