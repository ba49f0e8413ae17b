package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.hand.smooth.Quickness;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.budget.FeelBudget;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

class SteadyQuickChartTest {
    private static final double TOLERANCE_CENTS = 1e-6;

    private static JFreeChart chart(Tuning tuning) {
        RoomProfile room = Samples.granary(tuning);
        return SteadyQuickChart.of(room, tuning, FeelBudget.of(room.room(), tuning), Theme.LIGHT);
    }

    /** Without smoothing the noise itself: 2.1 mm at two octaves over 400 mm, 12.6 cents; by hand. */
    @Test
    void theLineBeginsAtTheNoiseAndFalls() {
        JFreeChart chart = chart(Tuning.usual());
        XYDataset data = chart.getXYPlot().getDataset();
        assertEquals(12.6, data.getYValue(0, 0), TOLERANCE_CENTS);
        for (int i = 1; i < data.getItemCount(0); i++) {
            assertTrue(data.getYValue(0, i) < data.getYValue(0, i - 1));
        }
    }

    @Test
    void theTuningStandsOnTheLine() {
        JFreeChart chart = chart(Tuning.usual().with(new Quickness(1)));
        XYDataset data = chart.getXYPlot().getDataset();
        double here = data.getXValue(1, 0);
        assertTrue(here > 0 && here <= 30, here + " ms");
        // between two points of a curve that is nearly straight there
        assertEquals(data.getYValue(1, 0), Parts.at(data, SteadyQuickChart.TRADE, here), 0.2);
        assertTrue(Parts.captions(chart).contains("1.0 steps quicker"), Parts.captions(chart));
    }

    @Test
    void targetAndLongestLagAreWritten() {
        assertEquals(
                List.of("aimed at: 5 cents", "longest: 60 ms"),
                Parts.labels(chart(Tuning.usual()).getXYPlot()).stream()
                        .sorted()
                        .toList());
    }
}
