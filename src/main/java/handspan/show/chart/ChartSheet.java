package handspan.show.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.LengthAdjustmentType;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jspecify.annotations.Nullable;

/** What every chart has in common: title, captions, axes, markers, legend in a theme's dress. */
final class ChartSheet {
    /** A line that is to be looked at. */
    static final Stroke STRONG = new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    /** A line behind another. */
    static final Stroke BROAD = new BasicStroke(4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    /** A line that only connects. */
    static final Stroke THIN = new BasicStroke(1f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    /** A limit, or what lies beyond the ends. */
    static final Stroke DASHED = dashed(1.8f, 7, 5);

    /** A limit of lesser weight. */
    static final Stroke DOTTED = dashed(1.4f, 2, 4);

    private static final RectangleInsets PADDING = new RectangleInsets(10, 12, 8, 14);

    /** Free room round a number at an axis: keeps them few enough to be read at a glance. */
    private static final RectangleInsets TICK_ROOM = new RectangleInsets(5, 7, 5, 7);

    private static final double LOW_ROWS = 1.1;

    private ChartSheet() {}

    private static Stroke dashed(float width, float on, float off) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {on, off}, 0);
    }

    /** A chart of a plot. */
    static JFreeChart of(String title, List<String> captions, Plot plot, Theme theme) {
        JFreeChart chart = new JFreeChart(title, theme.titleFont(), plot, false);
        chart.setBackgroundPaint(theme.background());
        chart.setPadding(PADDING);
        chart.setAntiAlias(true);
        chart.setTextAntiAlias(true);
        dress(chart.getTitle(), theme.text());
        for (String caption : captions) {
            TextTitle line = new TextTitle(caption, theme.labelFont());
            dress(line, theme.quietText());
            line.setPadding(0, 2, 3, 0);
            chart.addSubtitle(line);
        }
        chart.addLegend(legend(plot, theme));
        return chart;
    }

    private static void dress(TextTitle line, Color color) {
        line.setPaint(color);
        line.setHorizontalAlignment(HorizontalAlignment.LEFT);
        line.setTextAlignment(HorizontalAlignment.LEFT);
        line.setPadding(0, 2, 5, 0);
        line.setExpandToFitSpace(true);
    }

    private static LegendTitle legend(Plot plot, Theme theme) {
        LegendTitle legend = new LegendTitle(plot);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setFrame(BlockBorder.NONE);
        legend.setBackgroundPaint(theme.background());
        legend.setItemFont(theme.labelFont());
        legend.setItemPaint(theme.text());
        legend.setItemLabelPadding(new RectangleInsets(2, 5, 2, 18));
        legend.setPadding(6, 0, 0, 0);
        return legend;
    }

    /** An axis of plain numbers, with a decimal point whatever the machine's locale. */
    static NumberAxis numbers(String label, double low, double high, Theme theme) {
        NumberAxis axis = new NumberAxis(label);
        axis.setNumberFormatOverride(new DecimalFormat("0.#########", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        axis.setRange(low, high);
        dress(axis, theme);
        return axis;
    }

    /** An axis of marks. */
    static MarkedAxis marked(String label, List<MarkedAxis.Mark> marks, double low, double high, Theme theme) {
        MarkedAxis axis = new MarkedAxis(label, marks);
        axis.setRange(low, high);
        dress(axis, theme);
        return axis;
    }

    private static void dress(ValueAxis axis, Theme theme) {
        axis.setLabelFont(theme.labelFont());
        axis.setLabelPaint(theme.text());
        axis.setTickLabelFont(theme.smallFont());
        axis.setTickLabelPaint(theme.quietText());
        axis.setTickLabelInsets(TICK_ROOM);
        axis.setTickMarkPaint(theme.grid());
        axis.setAxisLinePaint(theme.grid());
    }

    /** An empty plot; without an x of its own where several share one. */
    static XYPlot plot(@Nullable ValueAxis x, ValueAxis y, Theme theme) {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(x);
        plot.setRangeAxis(y);
        plot.setBackgroundPaint(theme.plot());
        plot.setOutlinePaint(theme.grid());
        plot.setDomainGridlinePaint(theme.grid());
        plot.setRangeGridlinePaint(theme.grid());
        plot.setDomainGridlineStroke(THIN);
        plot.setRangeGridlineStroke(THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        return plot;
    }

    /**
     * Makes a plot fit for a low picture: its axes at the sides say their units alone, since the title says the rest,
     * and rows below another part are no lower than their words.
     */
    static void low(XYPlot plot) {
        if (plot instanceof CombinedDomainXYPlot both) {
            List<XYPlot> parts = both.getSubplots();
            parts.forEach(ChartSheet::low);
            XYPlot last = parts.get(parts.size() - 1);
            if (last.getRangeAxis() instanceof MarkedAxis) {
                last.setWeight((int) Math.round(LOW_ROWS * parts.get(0).getWeight()));
            }
            return;
        }
        for (int i = 0; i < plot.getRangeAxisCount(); i++) {
            ValueAxis axis = plot.getRangeAxis(i);
            String label = axis.getLabel() == null ? "" : axis.getLabel();
            int from = label.indexOf('(');
            if (from >= 0 && label.endsWith(")")) {
                axis.setLabel(label.substring(from + 1, label.length() - 1));
            }
        }
    }

    /** A renderer of lines, with a sample in the legend that is long enough to show dashes. */
    static XYLineAndShapeRenderer lines() {
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        lines.setDrawSeriesLineAsPath(true);
        lines.setLegendLine(new Line2D.Double(-15, 0, 15, 0));
        return lines;
    }

    /** A shaded stretch, in either order of its ends. */
    static IntervalMarker band(double one, double other, Color color) {
        IntervalMarker band = new IntervalMarker(Math.min(one, other), Math.max(one, other), color);
        band.setAlpha(1);
        return band;
    }

    /** A line across the plot. */
    static ValueMarker line(double at, Color color, Stroke stroke) {
        ValueMarker line = new ValueMarker(at, color, stroke);
        line.setAlpha(1);
        return line;
    }

    /** Writes on a marker: its text hangs from a corner or side of it. */
    static void label(Marker marker, String text, RectangleAnchor where, TextAnchor hangingBy, Theme theme) {
        marker.setLabel(text);
        marker.setLabelFont(theme.smallFont());
        marker.setLabelPaint(theme.text());
        marker.setLabelBackgroundColor(theme.plot());
        marker.setLabelAnchor(where);
        marker.setLabelTextAnchor(hangingBy);
        marker.setLabelOffset(new RectangleInsets(4, 5, 4, 5));
        marker.setLabelOffsetType(LengthAdjustmentType.EXPAND);
    }
}
