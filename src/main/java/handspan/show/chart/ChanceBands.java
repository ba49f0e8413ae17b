package handspan.show.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * The cells of notes as bands from side to side of a plot: faint ground and stripes by how often the note is missed, a
 * line at each boundary, and the chance in per cent along the foot where there is room. Lines, not a filled pattern, so
 * that they stay lines on paper.
 */
final class ChanceBands extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1;

    /** Of the ground, out of 255; every other cell is paler. */
    private static final int GROUND_ALPHA = 46;

    private static final int PALE_ALPHA = 22;
    private static final int STRIPE_ALPHA = 120;
    private static final BasicStroke STRIPE = new BasicStroke(1f);

    /** Height of the row of figures along the foot. */
    static final int ROW_PX = 17;

    private final ArrayList<Cell> cells;
    private final Theme theme;

    /**
     * A note's cell.
     *
     * @param from one boundary
     * @param to the other
     * @param miss01 chance that the note is missed
     */
    record Cell(double from, double to, double miss01) implements Serializable {
        /** Puts the ends in order. */
        Cell {
            if (from > to) {
                double swap = from;
                from = to;
                to = swap;
            }
        }

        MissClass missClass() {
            return MissClass.of(miss01);
        }

        String text() {
            return miss01 < 0.005 ? "<1" : Long.toString(Math.round(100 * miss01));
        }
    }

    ChanceBands(List<Cell> cells, Theme theme) {
        this.cells = new ArrayList<>(cells);
        this.cells.sort(Comparator.comparingDouble(Cell::from));
        this.theme = theme;
    }

    /** Legend of the classes that occur. */
    LegendItemCollection legend() {
        Set<MissClass> present = EnumSet.noneOf(MissClass.class);
        cells.forEach(cell -> present.add(cell.missClass()));
        LegendItemCollection items = new LegendItemCollection();
        for (MissClass each : present) {
            items.add(new Swatch(each, theme)
                    .item(
                            each == present.iterator().next() && each != MissClass.SELDOM
                                    ? "missed by " + each.words()
                                    : each.words()));
        }
        return items;
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
        Shape clip = g2.getClip();
        g2.setFont(theme.smallFont());
        FontMetrics metrics = g2.getFontMetrics();
        double writtenTo = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            double left = domainAxis.valueToJava2D(cell.from, dataArea, plot.getDomainAxisEdge());
            double right = domainAxis.valueToJava2D(cell.to, dataArea, plot.getDomainAxisEdge());
            Rectangle2D band = new Rectangle2D.Double(left, dataArea.getY(), right - left, dataArea.getHeight());
            g2.clip(dataArea);
            fill(g2, band, cell.missClass(), i % 2 == 0);
            g2.setClip(clip);
            g2.setPaint(theme.grid());
            g2.setStroke(STRIPE);
            g2.draw(new Line2D.Double(left, band.getMinY(), left, band.getMaxY()));
            String text = cell.text();
            double textLeft = band.getCenterX() - metrics.stringWidth(text) / 2.0;
            if (textLeft > writtenTo + 4 && metrics.stringWidth(text) < band.getWidth() + 2) {
                g2.setPaint(theme.text());
                g2.drawString(text, (float) textLeft, (float) (dataArea.getMaxY() - ROW_PX + metrics.getAscent()));
                writtenTo = textLeft + metrics.stringWidth(text);
            }
        }
    }

    private void fill(Graphics2D g2, Rectangle2D band, MissClass missClass, boolean strong) {
        Color color = missClass.color(theme);
        g2.setPaint(alpha(color, strong ? GROUND_ALPHA : PALE_ALPHA));
        g2.fill(band);
        if (missClass.stripePx() == 0) {
            return;
        }
        g2.clip(band);
        g2.setPaint(alpha(color, STRIPE_ALPHA));
        g2.setStroke(STRIPE);
        double height = band.getHeight();
        double first = Math.floor((band.getMinX() - height) / missClass.stripePx()) * missClass.stripePx();
        for (double x = first; x < band.getMaxX() + height; x += missClass.stripePx()) {
            g2.draw(new Line2D.Double(x, band.getMaxY(), x + height, band.getMinY()));
            if (missClass.crossed()) {
                g2.draw(new Line2D.Double(x, band.getMinY(), x + height, band.getMaxY()));
            }
        }
    }

    static Color alpha(Color color, int alpha) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ChanceBands that
                && cells.equals(that.cells)
                && theme == that.theme
                && super.equals(other);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + cells.hashCode();
    }
}
