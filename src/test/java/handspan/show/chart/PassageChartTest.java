package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

class PassageChartTest {
    private static final double TOLERANCE_CENTS = 1e-9;

    private static final Tuning PENTATONIC = Samples.twoOctaves("minor-pentatonic", Direction.HIGH_FAR, Snap.STEPS);

    @Test
    void theDataAreThePassageWithGapsWhereNothingSounded() {
        PassageTrace trace = Samples.passage();
        List<XYPlot> plots = Parts.plots(PassageChart.of(trace, PENTATONIC, Theme.LIGHT));
        XYDataset pitch = plots.get(0).getDataset();
        XYDataset level = plots.get(1).getDataset();
        int sent = pitch.indexOf(PassageChart.SENT);
        int meant = pitch.indexOf(PassageChart.MEANT);
        int gaps = 0;
        for (int i = 0; i < trace.timesS().length; i++) {
            assertEquals(trace.timesS()[i], pitch.getXValue(sent, i));
            assertEquals(trace.trueKeys()[i], pitch.getYValue(meant, i));
            assertEquals(trace.sounding()[i] ? trace.sentKeys()[i] : Double.NaN, pitch.getYValue(sent, i));
            assertEquals(trace.sounding()[i] ? trace.levelDb()[i] : Double.NaN, level.getYValue(0, i));
            gaps += trace.sounding()[i] ? 0 : 1;
        }
        assertTrue(gaps > 100);
    }

    @Test
    void bothPlotsShareOneTime() {
        JFreeChart chart = PassageChart.of(Samples.passage(), PENTATONIC, Theme.LIGHT);
        List<XYPlot> plots = Parts.plots(chart);
        assertEquals("time (s)", chart.getXYPlot().getDomainAxis().getLabel());
        assertEquals(chart.getXYPlot().getDomainAxis(), plots.get(0).getDomainAxisForDataset(0));
        assertEquals(chart.getXYPlot().getDomainAxis(), plots.get(1).getDomainAxisForDataset(0));
    }

    // A minor pentatonic: A C D E G
    @Test
    void theLinesAcrossAreTheNotesOfTheScale() {
        JFreeChart chart = PassageChart.of(Samples.passage(), PENTATONIC, Theme.LIGHT);
        var graphics = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
        var axis = (MarkedAxis) Parts.plots(chart).get(0).getRangeAxis();
        List<String> names = axis
                .refreshTicks(graphics, new AxisState(), new Rectangle2D.Double(0, 0, 1000, 400), RectangleEdge.LEFT)
                .stream()
                .map(tick -> tick.getText())
                .toList();
        assertTrue(names.containsAll(List.of("A3", "C4", "D4", "E4", "G4", "A4", "C5", "D5", "E5")), names::toString);
        assertEquals(9, names.size());
    }

    // differences of 3 and 4 cents: sqrt((9 + 16) / 2) = 3.5355; the silent and the handless moment do not count
    @Test
    void theDifferenceIsRootMeanSquareWhereBothAreThere() {
        PassageTrace trace = new PassageTrace(
                new double[] {0, 1, 2, 3},
                new double[] {60, 61, 62, Double.NaN},
                new double[] {60.03, 60.96, 99, 64},
                new double[] {-20, -20, Double.NEGATIVE_INFINITY, -20},
                new boolean[] {true, true, false, true});
        assertEquals(Math.sqrt(12.5), trace.rmsCents(), TOLERANCE_CENTS);
        String words = Parts.captions(PassageChart.of(trace, PENTATONIC, Theme.LIGHT));
        assertTrue(words.contains("differ by 3.5 cents rms"), words);
    }

    @Test
    void aSilentPassageIsDrawnAllTheSame() {
        PassageTrace silent = new PassageTrace(
                new double[] {0, 1},
                new double[] {Double.NaN, Double.NaN},
                new double[2],
                new double[] {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY},
                new boolean[2]);
        JFreeChart chart = PassageChart.of(silent, PENTATONIC, Theme.DARK);
        Parts.draw(chart, 1200, 700);
        assertTrue(Parts.captions(chart).contains("nothing sounded under a hand"));
    }

    @Test
    void aPassageThatIsNoneIsRefused() {
        double[] one = {1};
        boolean[] on = {true};
        assertThrows(IllegalArgumentException.class, () -> new PassageTrace(one, one, one, one, new boolean[2]));
        assertThrows(
                IllegalArgumentException.class, () -> new PassageTrace(one, one, new double[] {Double.NaN}, one, on));
        assertThrows(
                IllegalArgumentException.class, () -> new PassageTrace(one, one, one, new double[] {Double.NaN}, on));
    }
}
