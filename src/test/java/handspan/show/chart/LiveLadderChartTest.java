package handspan.show.chart;

import static handspan.show.chart.Rehearsal.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.Command;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The room is 100 to 500 mm for A3 to A5. */
class LiveLadderChartTest {
    private static final double TOLERANCE_PX = 1;
    private static final double TOLERANCE_KEYS = 0.005;

    private final Tuning tuning = Samples.twoOctaves("minor-pentatonic", Direction.HIGH_FAR, Snap.FREE);
    private final Rehearsal rehearsal = new Rehearsal(tuning);
    private final LiveLadderChart chart = new LiveLadderChart(rehearsal.room(), tuning, Aside.atOnce());

    /** Both ends stand as lines in the picture; the hand must divide the way between them as it divides the zone. */
    @ParameterizedTest
    @CsvSource({"120, LIGHT", "237, DARK", "310, LIGHT", "463, DARK"})
    void theHandStandsWhereItIsBetweenTheEnds(double mm, Theme theme) {
        rehearsal.play(false);
        rehearsal.play(2, held(mm), held(250), chart);
        BufferedImage picture = Dots.picture(chart, theme);
        double near = Dots.column(picture, theme.edge(), 318, 80, 400);
        double far = Dots.column(picture, theme.edge(), 318, 860, 400);
        Point2D dot = Dots.middleOfDot(Dots.above(picture, 340), theme.live(), 5);
        assertEquals(near + (mm - 100) / 400 * (far - near), dot.getX(), TOLERANCE_PX);
    }

    /** 300 mm is half-way, A4, key 69; 350 mm five eighths of 24 keys above A3: 72, C5; by hand. */
    @Test
    void itSoundsWhatIsSentAndIsNamedAfterIt() {
        rehearsal.play(false);
        rehearsal.play(2, held(350), held(250), chart);
        LiveLadderChart.Seen seen = chart.seen();
        assertTrue(seen.hand() && seen.sounds());
        assertEquals(72, seen.key(), TOLERANCE_KEYS);
        assertTrue(chart.words().matches("C5 .[01] cents at 3(49\\.9|50\\.0|50\\.1) mm"), chart::words);
    }

    /** 350 mm is key 72, as above. */
    @Test
    void aHandIsSeenBeforeAnythingPlays() {
        rehearsal.tell(new Command.Watch());
        rehearsal.play(3, held(350), held(250), chart);
        assertTrue(chart.seen().hand());
        assertFalse(chart.seen().sounds());
        assertEquals(72, chart.seen().key(), TOLERANCE_KEYS);
        rehearsal.play(1, held(700), held(250), chart);
        assertEquals("no pitch hand", chart.words());
    }

    @Test
    void aHandThatIsNotHeardIsSeenAllTheSame() {
        rehearsal.play(true);
        rehearsal.play(2, held(300), held(250), chart);
        assertTrue(chart.seen().hand());
        assertFalse(chart.seen().sounds());
        assertEquals(69, chart.seen().key(), TOLERANCE_KEYS);
        assertTrue(chart.words().endsWith("mm, silent"), chart::words);
        rehearsal.play(1, t -> Double.NaN, held(250), chart);
        assertEquals("no pitch hand", chart.words());
    }

    /** In steps only notes of the scale sound: 310 mm is key 69.6, nearest to A4 of A, C, D, E, G. */
    @Test
    void snappingIsSeenAsAStepOffTheLine() {
        Tuning steps = tuning.withSnap(Snap.STEPS);
        Rehearsal inSteps = new Rehearsal(steps);
        LiveLadderChart ladder = new LiveLadderChart(inSteps.room(), steps, Aside.atOnce());
        inSteps.play(true);
        inSteps.play(2, held(310), held(250), ladder);
        assertEquals(69, ladder.seen().key(), 1e-9);
    }

    @Test
    void anotherTuningBringsItsOwnLadder() {
        rehearsal.play(false);
        rehearsal.play(1, held(300), held(250), chart);
        long before = chart.edition();
        rehearsal.tell(new Command.Tune(tuning.shifted(-12, 0)));
        rehearsal.play(1, held(300), held(250), chart);
        assertTrue(chart.edition() > before);
        assertEquals(57, chart.seen().key(), TOLERANCE_KEYS);
    }

    @Test
    void aHandAtRestAsksForNoNewPictures() {
        rehearsal.play(1, t -> Double.NaN, t -> Double.NaN, chart);
        long before = chart.version();
        rehearsal.play(1, t -> Double.NaN, t -> Double.NaN, chart);
        assertEquals(before, chart.version());
    }
}
