package handspan.show.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * An upright axis with ticks where its marks are rather than at round numbers: note names, or a second unit that is not
 * linear in the first. Where marks would crowd, those of lower rank are left out.
 */
final class MarkedAxis extends NumberAxis {
    private static final long serialVersionUID = 1;

    /** Least free height between two labels, px. */
    private static final double GAP_PX = 1;

    private final ArrayList<Mark> marks;

    /**
     * A tick.
     *
     * @param value where, in the axis's own values
     * @param text its label
     * @param rank 0 = the last to be left out
     */
    record Mark(double value, String text, int rank) implements Serializable {}

    MarkedAxis(String label, List<Mark> marks) {
        super(label);
        this.marks = new ArrayList<>(marks);
        this.marks.sort(Comparator.comparingInt(Mark::rank).thenComparingDouble(Mark::value));
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        double apartPx = g2.getFontMetrics(getTickLabelFont()).getHeight() + GAP_PX;
        TextAnchor anchor = edge.equals(RectangleEdge.RIGHT) ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT;
        List<NumberTick> ticks = new ArrayList<>();
        List<Double> takenPx = new ArrayList<>();
        for (Mark mark : marks) {
            double px = valueToJava2D(mark.value, dataArea, edge);
            if (getRange().contains(mark.value)
                    && takenPx.stream().allMatch(taken -> Math.abs(taken - px) >= apartPx)) {
                takenPx.add(px);
                ticks.add(new NumberTick(mark.value, mark.text, anchor, anchor, 0));
            }
        }
        return ticks;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MarkedAxis that && marks.equals(that.marks) && super.equals(other);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + marks.hashCode();
    }
}
