package handspan.show.chart;

import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.DefaultXYDataset;
import org.jspecify.annotations.Nullable;

/**
 * What stays of a chart of raw readings: a plot for values and, below it, a row for each way of not being taken.
 *
 * @param unit of the readings; empty where it is not known
 * @param ends of the play zone in the board's own numbers; null where there is none
 * @param low end of the axis of values
 * @param high end of it
 * @param theme of the chart
 */
record RawSheet(String unit, @Nullable RawEnds ends, double low, double high, Theme theme) {
    private static final int VALUES_SHARE = 10;
    private static final int ROWS_SHARE = 4;
    private static final double GAP_PX = 6;

    private static final List<MarkedAxis.Mark> ROWS = List.of(
            new MarkedAxis.Mark(RawTrail.HELD_BACK, "held back", 0),
            new MarkedAxis.Mark(RawTrail.NO_READING, "no reading", 0),
            new MarkedAxis.Mark(RawTrail.REJECTED, "rejected", 0));

    JFreeChart chart(String title) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(LastSeconds.axis(theme));
        both.setGap(GAP_PX);
        both.add(values(), VALUES_SHARE);
        both.add(rows(), ROWS_SHARE);
        return ChartSheet.of(title, List.of(), both, theme);
    }

    private XYPlot values() {
        XYPlot plot = ChartSheet.plot(
                null,
                ChartSheet.numbers("reading (" + (unit.isEmpty() ? "as printed" : unit) + ")", low, high, theme),
                theme);
        XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(true, true);
        dots.setSeriesPaint(0, theme.line());
        dots.setSeriesStroke(0, ChartSheet.THIN);
        dots.setLegendShape(0, new java.awt.geom.Ellipse2D.Double(-3, -3, 6, 6));
        plot.setDataset(nothing("taken"));
        plot.setRenderer(dots);
        if (ends != null) {
            plot.addRangeMarker(ChartSheet.band(ends.near(), ends.far(), theme.band()), Layer.BACKGROUND);
            end(plot, "near end ", ends.near(), ends.near() > ends.far());
            end(plot, "far end ", ends.far(), ends.far() > ends.near());
        }
        return plot;
    }

    private void end(XYPlot plot, String word, double at, boolean upper) {
        var line = ChartSheet.line(at, theme.edge(), ChartSheet.DASHED);
        // written inside of the band at the left, where the oldest readings are
        ChartSheet.label(
                line,
                word + Marks.figure(at) + (unit.isEmpty() ? "" : " " + unit),
                upper ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.TOP_LEFT,
                upper ? TextAnchor.TOP_LEFT : TextAnchor.BOTTOM_LEFT,
                theme);
        plot.addRangeMarker(line, Layer.BACKGROUND);
    }

    private XYPlot rows() {
        MarkedAxis kinds = ChartSheet.marked("", ROWS, RawTrail.HELD_BACK - 0.6, RawTrail.REJECTED + 0.6, theme);
        kinds.setInverted(true);
        XYPlot plot = ChartSheet.plot(null, kinds, theme);
        XYLineAndShapeRenderer crosses = new XYLineAndShapeRenderer(false, true);
        crosses.setSeriesShape(0, ShapeUtils.createDiagonalCross(4f, 0.5f));
        crosses.setSeriesPaint(0, theme.mark());
        plot.setDataset(nothing("not taken"));
        plot.setRenderer(crosses);
        return plot;
    }

    private static DefaultXYDataset nothing(String series) {
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(series, new double[2][0]);
        return data;
    }
}
