package handspan.show.chart;

import static handspan.show.chart.Rehearsal.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.hand.smooth.Quickness;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

/** Charts of what a calibration has measured: response, noise of a hold, steadiness. */
class LiveMeasuredChartsTest {
    private static final double TOLERANCE_MM = 0.01;
    private static final double TOLERANCE_PX = 1;

    private final Tuning tuning = Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE);
    private final Rehearsal rehearsal = new Rehearsal(tuning);

    /** The parabola -12 + 0.9 x + 0.0002 x^2 is 280 mm at x = (sqrt(0.81 + 0.0008 * 292) - 0.9) / 0.0004; by hand. */
    @Test
    void theResponseIsTheRoomsOwnAndItsResidualsThoseOfTheFit() {
        var chart = new LiveResponseChart(Samples.bent(tuning).room(), HandRole.PITCH).still(Theme.LIGHT);
        XYDataset curve = Parts.plots(chart).get(0).getDataset();
        XYDataset below = Parts.plots(chart).get(1).getDataset();
        assertEquals(303.9185, Parts.at(curve, ResponseSheet.CURVE, 280), TOLERANCE_MM);
        int residuals = below.indexOf(ResponseSheet.RESIDUALS);
        assertEquals(7, below.getItemCount(residuals));
        assertEquals(280, below.getXValue(residuals, 3), TOLERANCE_MM);
        assertEquals(1.4, below.getYValue(residuals, 3), TOLERANCE_MM);
        // twice 0.55 mm
        assertEquals(1.1, Parts.at(below, ResponseSheet.UNCERTAIN, 280), TOLERANCE_MM);
        assertTrue(Parts.captions(chart).contains("the largest 1.40 mm at 280 mm"), Parts.captions(chart));
    }

    /** A hand at a hold's place stands on that hold: 340 mm, 0.9 mm less by the fit. */
    @Test
    void theHandStandsOnTheHoldThatWasTakenThere() {
        RoomProfile room = Samples.bent(tuning);
        LiveResponseChart chart = new LiveResponseChart(room.room(), HandRole.PITCH);
        BufferedImage empty = Dots.picture(chart, Theme.DARK);
        rehearsal.play(true);
        rehearsal.play(2, held(340), held(200), chart);
        double hand = Dots.middleOfDot(Dots.picture(chart, Theme.DARK), Theme.DARK.live(), 5)
                .getX();
        double hold = Dots.middleOfDot(empty.getSubimage(570, 60, 50, 160), Theme.DARK.mark(), 4)
                        .getX()
                + 570;
        assertEquals(hold, hand, TOLERANCE_PX);
        assertTrue(chart.words().matches("3(39\\.9|40\\.0|40\\.1) mm: sensor 36\\d\\.\\d\\d mm"), chart::words);
    }

    /** What the board printed during the hold is what the chart shows. */
    @Test
    void aHoldIsShownReadingByReading() {
        HoldNoiseChart chart = new HoldNoiseChart(
                HandRole.PITCH,
                "1",
                rehearsal.room().room().sensor(rehearsal.room().room().pitch()));
        assertEquals("no hold yet", chart.words());
        List<Double> printed = new ArrayList<>();
        Random chance = new Random(31);
        rehearsal.calibrate();
        rehearsal.play(3, t -> Double.NaN, t -> Double.NaN, chart);
        rehearsal.play(
                8,
                t -> {
                    printed.add(Math.rint(150 + 2.1 * chance.nextGaussian()));
                    return printed.get(printed.size() - 1);
                },
                t -> Double.NaN,
                chart);
        HoldRun run = chart.shown();
        assertNotNull(run);
        // two seconds at 50 a second, both ends included
        assertEquals(101, run.readings().size(), 1);
        List<Double> shown = new ArrayList<>();
        for (int i = 0; i < run.readings().size(); i++) {
            shown.add(run.readings().value(i));
        }
        assertTrue(java.util.Collections.indexOfSubList(printed, shown) >= 0, shown::toString);
        int counted = 0;
        for (int i = -40; i <= 40; i++) {
            counted += run.count(i);
        }
        assertEquals(run.readings().size(), counted);
        assertTrue(
                chart.words().matches("near: 1(49|50)\\.\\d . 0\\.\\d mm, noise [12]\\.\\d mm rms, .*"), chart::words);
    }

    /** The noise of 2.1 mm asks for less than the longest smoothing, so that the chosen point lies on the aim. */
    @Test
    void theChosenPointLiesOnTheAimAndFollowsTheControl() {
        LiveSteadyQuickChart chart = new LiveSteadyQuickChart(Samples.granary(tuning), tuning, Aside.atOnce());
        BufferedImage picture = Dots.picture(chart, Theme.LIGHT);
        double aim = Dots.line(picture, Theme.LIGHT.mark(), 450, 700, 200, 260);
        BufferedImage plot = Dots.above(picture, 340);
        assertEquals(aim, Dots.middleOfDot(plot, Theme.LIGHT.mark(), 6).getY(), TOLERANCE_PX);
        LiveSteadyQuickChart.Stops stops = chart.stops();
        assertNotNull(stops);
        assertEquals(5, stops.each().size());
        for (int i = 1; i < 5; i++) {
            assertTrue(
                    stops.each().get(i).jitterCents() > stops.each().get(i - 1).jitterCents());
            assertTrue(stops.each().get(i).settings().stillLagMs()
                    < stops.each().get(i - 1).settings().stillLagMs());
        }
        chart.use(tuning.with(new Quickness(1)));
        double quicker = Dots.middleOfDot(Dots.above(Dots.picture(chart, Theme.LIGHT), 340), Theme.LIGHT.mark(), 6)
                .getY();
        assertTrue(quicker < aim - 20, () -> quicker + " against " + aim);
    }
}
