package handspan.show.chart;

import static handspan.show.chart.Rehearsal.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.Command;
import handspan.music.tuning.Tuning;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The level hand plays over 100 to 300 mm: -60 dB at a place of 0.03, -6 dB at the far end, straight between. */
class LiveLevelChartTest {
    private static final double TOLERANCE_DB = 0.05;
    private static final double TOLERANCE_PX = 1;

    private final Rehearsal rehearsal = new Rehearsal(Tuning.usual());
    private final LiveLevelChart chart = new LiveLevelChart(rehearsal.room());

    /** By hand: 220 mm is a place of 0.6, so -60 + 54 (0.6 - 0.03) / 0.97 = -28.27 dB. */
    @Test
    void theHandIsOnTheCurveAndSoIsWhatIsSent() {
        rehearsal.play(false);
        rehearsal.play(2, held(300), held(220), chart);
        assertEquals(-28.27, chart.seen().curveDb(), TOLERANCE_DB);
        assertEquals(-28.27, chart.seen().sentDb(), TOLERANCE_DB);
        assertTrue(chart.words().endsWith("mm, sent \u221228.3 dB"), chart::words);
    }

    /** Floor and ceiling stand as lines in the picture; -28.27 dB divides the way between -60 and -6. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void theDotStandsBetweenFloorAndCeiling(Theme theme) {
        rehearsal.play(false);
        rehearsal.play(2, held(300), held(220), chart);
        BufferedImage picture = Dots.picture(chart, theme);
        double ceiling = Dots.line(picture, theme.mark(), 200, 650, 64, 110);
        double floor = Dots.line(picture, theme.edge(), 200, 650, 240, 300);
        double dot = Dots.middleOfDot(picture, theme.live(), 5).getY();
        assertEquals(floor + (60 - 28.27) / 54 * (ceiling - floor), dot, TOLERANCE_PX);
    }

    @Test
    void aClosedSoundLeavesTheHandOnTheCurve() {
        rehearsal.play(true);
        rehearsal.play(2, held(300), held(220), chart);
        assertFalse(chart.seen().sounds());
        assertEquals(-28.27, chart.seen().curveDb(), TOLERANCE_DB);
        assertTrue(chart.words().endsWith(", silent"), chart::words);
        rehearsal.play(1, held(300), t -> Double.NaN, chart);
        assertEquals("no level hand, silent", chart.words());
    }

    @Test
    void theHandIsOnTheCurveBeforeAnythingPlays() {
        rehearsal.tell(new Command.Watch());
        rehearsal.play(3, held(300), held(220), chart);
        assertEquals(-28.27, chart.seen().curveDb(), TOLERANCE_DB);
        assertFalse(chart.seen().sounds());
    }

    @Test
    void aRoomWithoutALevelHandShowsWhatIsSent() {
        LiveLevelChart alone = new LiveLevelChart(Samples.attic(Tuning.usual()));
        rehearsal.play(true);
        rehearsal.play(1, held(300), held(220), alone);
        assertEquals("silent", alone.words());
        assertTrue(Dots.picture(alone, Theme.DARK).getWidth() > 0);
    }
}
