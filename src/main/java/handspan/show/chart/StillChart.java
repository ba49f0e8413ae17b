package handspan.show.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * What of a live chart stays: a chart drawn once as an image, with the places of its axes, so that what moves can be
 * drawn over it at little cost.
 */
final class StillChart {
    private final BufferedImage image;
    private final int widthPx;
    private final int heightPx;
    private final List<Pane> panes;

    /** A plot with two axes, in the units of the drawing. */
    record Pane(XYPlot plot, ValueAxis across, ValueAxis up, Rectangle2D area) {
        double x(double value) {
            return across.valueToJava2D(value, area, RectangleEdge.BOTTOM);
        }

        double y(double value) {
            return up.valueToJava2D(value, area, RectangleEdge.LEFT);
        }

        /** The same held to the plot. */
        double heldX(double value) {
            return Math.max(area.getMinX(), Math.min(area.getMaxX(), x(value)));
        }

        /** The same held to the plot. */
        double heldY(double value) {
            return Math.max(area.getMinY(), Math.min(area.getMaxY(), y(value)));
        }
    }

    private StillChart(BufferedImage image, int widthPx, int heightPx, List<Pane> panes) {
        this.image = image;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.panes = panes;
    }

    /** Draws a chart for a graphics of that scale. */
    static StillChart of(JFreeChart chart, int widthPx, int heightPx, double scale) {
        BufferedImage image = new BufferedImage(
                Math.max(1, (int) Math.ceil(widthPx * scale)),
                Math.max(1, (int) Math.ceil(heightPx * scale)),
                BufferedImage.TYPE_INT_RGB);
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        Graphics2D g2 = image.createGraphics();
        // a part of a px at the edges is not the chart's
        g2.setPaint(chart.getBackgroundPaint());
        g2.fillRect(0, 0, image.getWidth(), image.getHeight());
        g2.scale(scale, scale);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        chart.draw(g2, new Rectangle2D.Double(0, 0, widthPx, heightPx), info);
        g2.dispose();
        return new StillChart(image, widthPx, heightPx, panes(chart.getXYPlot(), info));
    }

    private static List<Pane> panes(XYPlot plot, ChartRenderingInfo info) {
        List<Pane> panes = new ArrayList<>();
        if (plot instanceof CombinedDomainXYPlot both) {
            for (int i = 0; i < both.getSubplots().size(); i++) {
                XYPlot part = both.getSubplots().get(i);
                Rectangle2D area = info.getPlotInfo().getSubplotInfo(i).getDataArea();
                panes.add(new Pane(part, both.getDomainAxis(), part.getRangeAxis(), area));
            }
        } else {
            Rectangle2D area = info.getPlotInfo().getDataArea();
            panes.add(new Pane(plot, plot.getDomainAxis(), plot.getRangeAxis(), area));
        }
        return panes;
    }

    boolean fits(int width, int height, double scale) {
        return widthPx == width
                && heightPx == height
                && image.getWidth() == Math.max(1, (int) Math.ceil(width * scale))
                && image.getHeight() == Math.max(1, (int) Math.ceil(height * scale));
    }

    /** The only plot, or one of several from above. */
    Pane pane(int index) {
        return panes.get(index);
    }

    /** How many plots. */
    int panes() {
        return panes.size();
    }

    /** Puts it on a graphics, dot on dot. */
    void drawOn(Graphics2D g2) {
        AffineTransform before = g2.getTransform();
        double scale = scale(g2);
        g2.scale(1 / scale, 1 / scale);
        g2.drawImage(image, 0, 0, null);
        g2.setTransform(before);
    }

    /** How many dots a unit of the graphics has. */
    static double scale(Graphics2D g2) {
        double scale = g2.getTransform().getScaleX();
        return scale > 0 ? scale : 1;
    }
}
