package handspan.show.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * Names beside points. A name that would touch another or leave the plot is left out, that of lower rank first. Each
 * name that is drawn becomes an entity of the chart, with its hint as tool tip.
 */
final class PlacedNames extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1;

    /** From the point to its name, px. */
    private static final double AWAY_PX = 6;

    /** Least gap between two names, px. */
    private static final double GAP_PX = 3;

    private final ArrayList<Name> names;
    private final boolean leftOfPoint;
    private final Font font;
    private final Color color;

    /**
     * A name.
     *
     * @param x of its point
     * @param y of its point
     * @param text what is written
     * @param hint what is said about it when pointed at
     * @param rank 0 = the last to be left out
     */
    record Name(double x, double y, String text, String hint, int rank) implements Serializable {}

    /**
     * Names for a run of points.
     *
     * @param leftOfPoint whether they stand to the upper left (where a rising line leaves room) or the upper right
     */
    PlacedNames(List<Name> names, boolean leftOfPoint, Font font, Color color) {
        this.names = new ArrayList<>(names);
        this.names.sort(Comparator.comparingInt(Name::rank).thenComparingDouble(Name::y));
        this.leftOfPoint = leftOfPoint;
        this.font = font;
        this.color = color;
    }

    @Override
    public void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D dataArea,
            ValueAxis domainAxis,
            ValueAxis rangeAxis,
            int rendererIndex,
            PlotRenderingInfo info) {
        g2.setFont(font);
        g2.setPaint(color);
        FontMetrics metrics = g2.getFontMetrics();
        List<Rectangle2D> placed = new ArrayList<>();
        for (Name name : names) {
            double x = domainAxis.valueToJava2D(name.x, dataArea, plot.getDomainAxisEdge());
            double y = rangeAxis.valueToJava2D(name.y, dataArea, plot.getRangeAxisEdge());
            Rectangle2D box = box(metrics, name.text, x, y);
            if (dataArea.contains(box) && placed.stream().noneMatch(other -> other.intersects(grown(box)))) {
                placed.add(box);
                g2.drawString(name.text, (float) box.getX(), (float) (box.getY() + metrics.getAscent()));
                if (info != null) {
                    addEntity(info, box, rendererIndex, name.hint, null);
                }
            }
        }
    }

    private Rectangle2D box(FontMetrics metrics, String text, double x, double y) {
        double width = metrics.stringWidth(text);
        double height = metrics.getAscent() + metrics.getDescent();
        double left = leftOfPoint ? x - AWAY_PX - width : x + AWAY_PX;
        return new Rectangle2D.Double(left, y - height, width, height);
    }

    private static Rectangle2D grown(Rectangle2D box) {
        return new Rectangle2D.Double(box.getX() - GAP_PX, box.getY(), box.getWidth() + 2 * GAP_PX, box.getHeight());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PlacedNames that
                && names.equals(that.names)
                && leftOfPoint == that.leftOfPoint
                && font.equals(that.font)
                && color.equals(that.color)
                && super.equals(other);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + names.hashCode();
    }
}
