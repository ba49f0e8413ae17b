package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

class LevelCurveChartTest {
    /** Between two points of a curve that is straight there. */
    private static final double TOLERANCE_DB = 1e-6;

    private static final double TOLERANCE_GAIN_DB = 1e-9;

    private static double levelDb(JFreeChart chart, double x) {
        return Parts.at(chart.getXYPlot().getDataset(), LevelCurveChart.LEVEL, x);
    }

    // -60 to -6 dB over 80..380 mm with the knee at 3 % (89 mm): half-way from knee to far end -33 dB; by hand
    @Test
    void theLevelIsEvenInDbFromKneeToEnd() {
        JFreeChart chart = LevelCurveChart.of(Samples.granary(Tuning.usual()), Theme.LIGHT);
        assertEquals(-60, levelDb(chart, 89), TOLERANCE_DB);
        assertEquals(-33, levelDb(chart, (89 + 380) / 2.0), TOLERANCE_DB);
        assertEquals(-6, levelDb(chart, 380), TOLERANCE_DB);
        assertEquals("distance of the level hand (mm), play zone 80 to 380", xLabel(chart));
    }

    // below the knee linear in gain: half of it is 20 lg 2 = 6.0206 dB less (ISO 80000-3, level of a field quantity)
    @Test
    void belowTheKneeItRunsToSilence() {
        JFreeChart chart = LevelCurveChart.of(Samples.granary(Tuning.usual()), Theme.LIGHT);
        assertEquals(-66.0206, levelDb(chart, 84.5), 1e-4);
        XYDataset data = chart.getXYPlot().getDataset();
        assertTrue(Double.isNaN(data.getYValue(data.indexOf(LevelCurveChart.LEVEL), 0)));
        assertTrue(chart.getXYPlot().getRangeAxis().getLowerBound() < -60);
    }

    @Test
    void aLightHandIsDrawnByPlaceAndLoudWhenCovered() {
        JFreeChart chart = LevelCurveChart.of(Samples.boathouse(Tuning.usual()), Theme.DARK);
        assertEquals("place of the level hand (0 = covered, 1 = open)", xLabel(chart));
        assertEquals(-9, levelDb(chart, 0), TOLERANCE_DB);
        assertEquals(-54, levelDb(chart, 0.94), TOLERANCE_DB);
        assertTrue(Parts.captions(chart).contains("loud when covered"));
    }

    @Test
    void aRoomWithoutLevelHandSaysSo() {
        JFreeChart chart = LevelCurveChart.of(Samples.attic(Tuning.usual()), Theme.LIGHT);
        assertTrue(Parts.captions(chart).contains("This room has no level hand: the ceiling plays."));
        assertEquals(-6, levelDb(chart, 1), TOLERANCE_DB);
    }

    // 10^(-6/20) = 0.501187 (ISO 80000-3:2006, level of a field quantity)
    @Test
    void floorCeilingAndKneeAreWritten() {
        JFreeChart chart = LevelCurveChart.of(Samples.granary(Tuning.usual()), Theme.LIGHT);
        assertEquals(
                List.of(
                        "ceiling -6 dB (gain 0.501), never passed",
                        "floor -60 dB",
                        "knee at 3.0 % of the zone: from here down to silence"),
                Parts.labels(chart.getXYPlot()).stream().sorted().toList());
    }

    @Test
    void withoutKneeThereIsNoWordOfIt() {
        JFreeChart chart = LevelCurveChart.of(
                Samples.granary(Tuning.usual()).with(new LevelCurve(-60, -6, 0, true, 1)), Theme.LIGHT);
        assertFalse(Parts.labels(chart.getXYPlot()).stream().anyMatch(label -> label.startsWith("knee")));
        // a twentieth of the way up from -60 to -6 dB; at the quiet end itself level is silence
        assertEquals(-57.3, levelDb(chart, 95), TOLERANCE_DB);
    }

    // decibels of gains: ISO 80000-3:2006; -20 dB = 0.1, -40 dB = 0.01, -60 dB = 0.001, 20 lg 0.5 = -6.0206 dB
    @Test
    void gainsStandAtTheirDecibels() {
        assertEquals(-20, mark("0.1"), TOLERANCE_GAIN_DB);
        assertEquals(-40, mark("0.01"), TOLERANCE_GAIN_DB);
        assertEquals(-60, mark("0.001"), TOLERANCE_GAIN_DB);
        assertEquals(-6.0206, mark("0.5"), 1e-5);
        assertEquals(0, mark("1"), TOLERANCE_GAIN_DB);
    }

    private static double mark(String text) {
        return Marks.gains().stream()
                .filter(mark -> mark.text().equals(text))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static String xLabel(JFreeChart chart) {
        return chart.getXYPlot().getDomainAxis().getLabel();
    }
}
