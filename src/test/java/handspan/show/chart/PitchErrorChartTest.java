package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class PitchErrorChartTest {
    private static XYPlot plot(NoteErrors.Layer... layers) {
        return PitchErrorChart.of(List.of(layers), List.of(), Theme.LIGHT).getXYPlot();
    }

    @Test
    void eachTimeANoteWasPlayedIsAMarkInItsRow() {
        XYPlot plot = plot(Samples.errors("A", 0));
        assertEquals(6, plot.getDataset(0).getItemCount(0));
        // lowest note in the lowest row
        assertEquals(0, plot.getDataset(0).getYValue(0, 0), 0);
        assertEquals(-12, plot.getDataset(0).getXValue(0, 0), 0);
    }

    @Test
    void twoLayersShareTheRowsOfTheirNotes() {
        XYPlot plot = plot(Samples.errors("A", 0), Samples.errors("B", 30));
        assertEquals(0, plot.getDataset(0).getYValue(0, 0), 0.2);
        assertEquals(0, plot.getDataset(1).getYValue(0, 0), 0.2);
        assertTrue(plot.getDataset(0).getYValue(0, 0) > plot.getDataset(1).getYValue(0, 0));
    }

    @Test
    void theAxisHoldsAllMarksAndBarsAndZeroInItsMiddle() {
        XYPlot plot = plot(Samples.errors("A", 0), Samples.errors("B", 80));
        double widest = plot.getDomainAxis().getUpperBound();
        assertEquals(-widest, plot.getDomainAxis().getLowerBound(), 0);
        assertTrue(widest >= 80 + 24, "widest " + widest);
    }

    @Test
    void threeLayersAreTooMany() {
        NoteErrors.Layer layer = Samples.errors("A", 0);
        assertThrows(IllegalArgumentException.class, () -> plot(layer, layer, layer));
    }
}
