package handspan.show.chart;

import java.awt.geom.Ellipse2D;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.DefaultXYDataset;
import org.jspecify.annotations.Nullable;

/**
 * What stays of a chart of a hold's noise: each reading about the value that was captured.
 *
 * @param run what is shown; null before the first hold
 * @param unit of the sensor
 * @param theme of the chart
 */
record NoiseSheet(@Nullable HoldRun run, String unit, Theme theme) {
    /** Standard deviations shown to either side. */
    private static final double SHOWN_SIGMA = 4;

    /** A wandering hand needs more: so many of its readings are seen. */
    private static final double SEEN01 = 0.9;

    private static final double ROOM = 1.05;

    /**
     * Half of what is shown about the value, physical unit: wide enough for a sensor whose step hides its noise, and
     * for a hand that wanders by more than the noise.
     */
    static double halfWidth(@Nullable HoldRun run) {
        if (run == null) {
            return 1;
        }
        double[] off = new double[run.readings().size()];
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.abs(run.readings().value(i) - run.hold().physical());
        }
        Arrays.sort(off);
        double wander = off.length == 0 ? 0 : ROOM * off[(int) (SEEN01 * (off.length - 1))];
        double noise = Math.max(SHOWN_SIGMA * run.hold().noise(), 2 * run.hold().step());
        return Math.max(Math.max(noise, wander), 1e-6);
    }

    JFreeChart chart(String name, List<String> captions) {
        double half = halfWidth(run);
        double lengthS = run == null ? 3 : Math.max(0.1, run.lengthS());
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers(
                        "time since the hold began (s); spread at the right",
                        0,
                        lengthS / (1 - NoiseSpread.SHARE01),
                        theme),
                ChartSheet.numbers("reading less value (" + unit + ")", -half, half, theme),
                theme);
        plot.setDataset(data());
        plot.setRenderer(dots());
        if (run != null) {
            double noise = run.hold().noise();
            plot.addRangeMarker(ChartSheet.band(-noise, noise, theme.band()), Layer.BACKGROUND);
            plot.addRangeMarker(ChartSheet.line(noise, theme.edge(), ChartSheet.DASHED), Layer.FOREGROUND);
            plot.addRangeMarker(ChartSheet.line(-noise, theme.edge(), ChartSheet.DASHED), Layer.FOREGROUND);
        }
        return ChartSheet.of(name, captions, plot, theme);
    }

    private DefaultXYDataset data() {
        int size = run == null ? 0 : run.readings().size();
        double[][] points = new double[2][size];
        for (int i = 0; run != null && i < size; i++) {
            points[0][i] = run.readings().timeS(i) - run.readings().timeS(0);
            points[1][i] = run.readings().value(i) - run.hold().physical();
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("readings of the hold", points);
        data.addSeries("noise, one standard deviation", new double[2][0]);
        data.addSeries("spread of Gaussian noise of that size", new double[2][0]);
        return data;
    }

    private XYLineAndShapeRenderer dots() {
        XYLineAndShapeRenderer dots = ChartSheet.lines();
        dots.setSeriesShapesVisible(0, true);
        dots.setSeriesShape(0, new Ellipse2D.Double(-2, -2, 4, 4));
        dots.setSeriesPaint(0, theme.line());
        dots.setSeriesStroke(0, ChartSheet.THIN);
        dots.setSeriesPaint(1, theme.edge());
        dots.setSeriesStroke(1, ChartSheet.DASHED);
        dots.setSeriesPaint(2, theme.mark());
        dots.setSeriesStroke(2, ChartSheet.STRONG);
        return dots;
    }
}
