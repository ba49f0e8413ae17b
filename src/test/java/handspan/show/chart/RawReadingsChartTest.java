package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

class RawReadingsChartTest {
    private static XYPlot values(RawTrace trace) {
        return Parts.plots(RawReadingsChart.of(trace, Theme.LIGHT)).get(0);
    }

    private static XYPlot row(RawTrace trace) {
        return Parts.plots(RawReadingsChart.of(trace, Theme.LIGHT)).get(1);
    }

    private static RawTrace trace(double[] timesS, double[] values, boolean... taken) {
        return new RawTrace("1", "mm", timesS, values, taken, OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Test
    void theDataAreTheReadings() {
        RawTrace trace = Samples.raw();
        List<Double> shown = new ArrayList<>();
        XYDataset data = values(trace).getDataset();
        for (int i = 0; i < data.getItemCount(0); i++) {
            if (!Double.isNaN(data.getYValue(0, i))) {
                shown.add(data.getXValue(0, i));
                shown.add(data.getYValue(0, i));
            }
        }
        List<Double> expected = new ArrayList<>();
        for (int i : IntStream.range(0, 1000).filter(i -> trace.taken()[i]).toArray()) {
            expected.add(trace.timesS()[i]);
            expected.add(trace.values()[i]);
        }
        assertEquals(expected, shown);
    }

    @Test
    void whatWasNotTakenStandsInItsOwnRow() {
        RawTrace trace = Samples.raw();
        double[] expectedS = IntStream.range(0, 1000)
                .filter(i -> !trace.taken()[i])
                .mapToDouble(i -> trace.timesS()[i])
                .toArray();
        XYDataset data = row(trace).getDataset();
        double[] shownS = IntStream.range(0, data.getItemCount(0))
                .mapToDouble(i -> data.getXValue(0, i))
                .toArray();
        assertArrayEquals(expectedS, shownS);
    }

    @Test
    void noReadingDoesNotStretchTheAxis() {
        RawTrace trace = Samples.raw();
        var range = values(trace).getRangeAxis().getRange();
        // readings and zone lie from 100 to 500 mm; a board's 8190 for "nothing seen" does not count
        assertTrue(range.getUpperBound() > 500 && range.getUpperBound() < 560, range::toString);
        assertTrue(range.getLowerBound() < 100 && range.getLowerBound() > 40, range::toString);
    }

    @Test
    void theLineBreaksWhereTheBoardFellSilent() {
        RawTrace trace = trace(
                new double[] {0, 0.02, 0.04, 0.06, 3, 3.02},
                new double[] {200, 201, 202, 203, 300, 301},
                true,
                true,
                true,
                true,
                true,
                true);
        XYDataset data = values(trace).getDataset();
        assertEquals(7, data.getItemCount(0));
        assertTrue(Double.isNaN(data.getYValue(0, 4)));
        assertEquals(300, data.getYValue(0, 5));
    }

    @Test
    void theZoneIsWrittenWithItsUnit() {
        List<String> labels = Parts.labels(values(Samples.raw()));
        assertTrue(labels.containsAll(List.of("near end 100 mm", "far end 500 mm")), labels::toString);
    }

    @Test
    void theCaptionCounts() {
        RawTrace trace =
                trace(new double[] {0, 1, 2, 3}, new double[] {100, 8190, 120, 8190}, true, false, true, false);
        String words = Parts.captions(RawReadingsChart.of(trace, Theme.DARK));
        assertTrue(words.contains("4 readings in 3.0 s: 2 taken, 2 not taken"), words);
    }

    @Test
    void oneReadingIsEnoughForAPicture() {
        JFreeChart chart = RawReadingsChart.of(trace(new double[] {5}, new double[] {0}, true), Theme.LIGHT);
        Parts.draw(chart, 1200, 700);
        assertTrue(Parts.plots(chart).get(0).getRangeAxis().getRange().contains(0));
        assertTrue(chart.getXYPlot().getDomainAxis().getRange().contains(5));
    }

    @Test
    void aTraceThatIsNoneIsRefused() {
        double[] two = {0, 1};
        assertThrows(IllegalArgumentException.class, () -> trace(two, two, true));
        assertThrows(IllegalArgumentException.class, () -> trace(new double[0], new double[0]));
        assertThrows(IllegalArgumentException.class, () -> trace(new double[] {1, 0}, two, true, true));
        assertThrows(IllegalArgumentException.class, () -> trace(two, new double[] {1, Double.NaN}, true, true));
        assertThrows(
                IllegalArgumentException.class,
                () -> new RawTrace("1", "mm", two, two, new boolean[2], OptionalDouble.of(1), OptionalDouble.empty()));
    }
}
