package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Things in the beam that are no hand, each with what looks like it and is not. */
class ClutterTest {
    private static Scene ranger() {
        return new Scene("1:distance:mm", 50, 1);
    }

    private static void assertClear(Scene scene) {
        ChannelReport report = scene.report();
        assertTrue(report.findings().clutter().isEmpty(), report.reason());
        assertEquals(Verdict.GOOD, report.verdict(), report.reason());
    }

    @Test
    void aStandThatIsSeenBeforeTheHandComesIsNamedWithItsPlace() {
        ChannelReport report =
                ranger().hold(700, 2, 1).move(700, 300, 2, 0.5).hold(300, 2, 8).report();
        assertTrue(report.reason().contains("something at 700 mm is seen without the hand"), report.reason());
        assertTrue(report.remedy().startsWith("clear the beam"), report.remedy());
        assertEquals(Verdict.USABLE, report.verdict());
    }

    @Test
    void aStandThatIsSeenAfterTheHandWentIsNamedToo() {
        ChannelReport report =
                ranger().hold(300, 2, 8).move(300, 700, 2, 0.5).hold(700, 2, 1).report();
        assertTrue(report.reason().contains("something at 700 mm"), report.reason());
    }

    @Test
    void aRestOfNothingButSentinelsIsHealthy() {
        assertClear(ranger().hold(8190, 0, 2).move(1200, 300, 2, 0.8).hold(300, 2, 8));
    }

    @Test
    void aHandHeldElsewhereBeforeIsNoClutter() {
        assertClear(ranger().hold(450, 2, 2).move(450, 300, 2, 0.5).hold(300, 2, 8));
    }

    @Test
    void somebodyWhoWalksThroughTheBeamIsCounted() {
        Scene scene = ranger().hold(400, 2, 6);
        ChannelReport report = scene.hold(180, 2, 1.2)
                .hold(400, 2, 4)
                .hold(180, 2, 1.2)
                .hold(400, 2, 4)
                .report();
        assertEquals(2, report.findings().clutter().orElseThrow().passes());
        assertTrue(report.reason().contains("sprang into the beam at 180 mm for 1.2 s, 2 times"), report.reason());
    }

    @Test
    void aHandThatMovesAwayAndComesBackDidNotWalkPast() {
        assertClear(ranger().hold(400, 2, 6)
                .move(400, 180, 2, 0.6)
                .move(180, 400, 2, 0.6)
                .hold(400, 2, 4));
    }

    @Test
    void oneOrTwoWildReadingsAreSpikes() {
        Scene scene = ranger().hold(400, 2, 6).print(180).print(180);
        assertFalse(scene.hold(400, 2, 4).report().reason().contains("sprang"));
    }

    @Test
    void whatIsHeldBeyondAHandsReachIsDoubted() {
        String reason = ranger().hold(700, 2, 10).report().reason();
        assertTrue(reason.contains("beyond a hand's reach of 600 mm"), reason);
        assertClear(ranger().hold(590, 2, 10));
    }
}
