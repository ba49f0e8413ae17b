package handspan.show.chart;

import handspan.number.units.Figures;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.Range;

/**
 * Raw readings of a stretch of time, with the play zone as a band. What was not taken has no honest height (a board
 * prints 8190 for "nothing seen"), so it stands as a cross in a row of its own below and does not stretch the axis.
 */
public final class RawReadingsChart {
    private static final double ROOM01 = 0.09;
    private static final int VALUES_SHARE = 17;
    private static final int ROW_SHARE = 1;
    private static final double GAP_PX = 4;

    /** More readings than this are drawn as smaller dots. */
    private static final int MANY = 800;

    private RawReadingsChart() {}

    /** Draws a trace. */
    public static JFreeChart of(RawTrace trace, Theme theme) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(timeAxis(trace, theme));
        both.setGap(GAP_PX);
        both.add(values(trace, theme), VALUES_SHARE);
        both.add(row(trace, theme), ROW_SHARE);
        String title = "Raw readings of channel " + trace.channel();
        return ChartSheet.of(title, List.of(caption(trace)), both, theme);
    }

    private static XYPlot values(RawTrace trace, Theme theme) {
        XYPlot plot = ChartSheet.plot(null, valueAxis(trace, theme), theme);
        plot.setDataset(RawSeries.taken(trace));
        plot.setRenderer(dots(trace, theme));
        if (trace.zoneNear().isPresent()) {
            zone(plot, trace, theme);
        }
        if (trace.takenCount() == 0) {
            plot.getRangeAxis().setTickLabelsVisible(trace.zoneNear().isPresent());
            plot.addAnnotation(nothing(trace, plot.getRangeAxis().getRange().getCentralValue(), theme));
        }
        return plot;
    }

    private static XYTextAnnotation nothing(RawTrace trace, double middle, Theme theme) {
        XYTextAnnotation words =
                new XYTextAnnotation("no reading was taken", trace.timesS()[0] + trace.lengthS() / 2, middle);
        words.setFont(theme.labelFont());
        words.setPaint(theme.text());
        return words;
    }

    private static XYPlot row(RawTrace trace, Theme theme) {
        NumberAxis height = ChartSheet.numbers("", 0, 1, theme);
        height.setVisible(false);
        XYPlot plot = ChartSheet.plot(null, height, theme);
        plot.setRangeGridlinesVisible(false);
        plot.setDataset(RawSeries.notTaken(trace));
        plot.setRenderer(crosses(theme));
        return plot;
    }

    private static String caption(RawTrace trace) {
        int count = trace.timesS().length;
        return Figures.count(count) + " readings in " + Figures.text(trace.lengthS(), 1) + " s: "
                + Figures.count(trace.takenCount()) + " taken, " + Figures.count(count - trace.takenCount())
                + " not taken";
    }

    private static NumberAxis timeAxis(RawTrace trace, Theme theme) {
        double[] timesS = trace.timesS();
        double room = trace.lengthS() > 0 ? 0.01 * trace.lengthS() : 0.5;
        return ChartSheet.numbers("time (s)", timesS[0] - room, timesS[timesS.length - 1] + room, theme);
    }

    private static NumberAxis valueAxis(RawTrace trace, Theme theme) {
        Range range = range(trace);
        double span = range.getLength() > 0 ? range.getLength() : Math.max(1, 0.01 * Math.abs(range.getUpperBound()));
        return ChartSheet.numbers(
                "channel " + trace.channel() + " (" + trace.unit() + ")",
                range.getLowerBound() - ROOM01 * span,
                range.getUpperBound() + ROOM01 * span,
                theme);
    }

    /** What the axis has to show: taken values and the zone. */
    private static Range range(RawTrace trace) {
        Range range = null;
        for (int i = 0; i < trace.values().length; i++) {
            range = trace.taken()[i] ? Range.expandToInclude(range, trace.values()[i]) : range;
        }
        if (trace.zoneNear().isPresent()) {
            range = Range.expandToInclude(range, trace.zoneNear().getAsDouble());
            range = Range.expandToInclude(range, trace.zoneFar().getAsDouble());
        }
        return range == null ? new Range(0, 1) : range;
    }

    private static XYLineAndShapeRenderer dots(RawTrace trace, Theme theme) {
        XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(true, true);
        double size = trace.timesS().length > MANY ? 2 : 3.6;
        dots.setSeriesShape(0, new Ellipse2D.Double(-size / 2, -size / 2, size, size));
        dots.setSeriesPaint(0, theme.line());
        dots.setSeriesStroke(0, ChartSheet.THIN);
        dots.setLegendShape(0, new Ellipse2D.Double(-3, -3, 6, 6));
        return dots;
    }

    private static XYLineAndShapeRenderer crosses(Theme theme) {
        XYLineAndShapeRenderer crosses = new XYLineAndShapeRenderer(false, true);
        crosses.setSeriesShape(0, ShapeUtils.createDiagonalCross(4f, 0.5f));
        crosses.setSeriesPaint(0, theme.mark());
        return crosses;
    }

    private static void zone(XYPlot plot, RawTrace trace, Theme theme) {
        double near = trace.zoneNear().orElseThrow();
        double far = trace.zoneFar().orElseThrow();
        IntervalMarker band = ChartSheet.band(near, far, theme.band());
        plot.addRangeMarker(band, Layer.BACKGROUND);
        for (double end : new double[] {near, far}) {
            var line = ChartSheet.line(end, theme.edge(), ChartSheet.DASHED);
            boolean upper = end == Math.max(near, far);
            String words = (end == near ? "near end " : "far end ") + figure(end) + " " + trace.unit();
            // written outside of the band, where readings are fewer
            ChartSheet.label(
                    line,
                    words,
                    upper ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.BOTTOM_RIGHT,
                    upper ? TextAnchor.BOTTOM_RIGHT : TextAnchor.TOP_RIGHT,
                    theme);
            plot.addRangeMarker(line, Layer.FOREGROUND);
        }
    }

    /** A value with as many decimals as its size asks for. */
    private static String figure(double value) {
        return Figures.text(value, Math.abs(value) < 10 ? 2 : Math.abs(value) < 100 ? 1 : 0);
    }
}
