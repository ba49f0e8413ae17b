package handspan.show.chart;

import handspan.room.Zone;
import java.awt.Color;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/** The ends of a zone as they were held, each a line within its uncertainty, written where the curve is not. */
final class HeldEnds {
    /** Standard uncertainties shown to each side: about 95 % (JCGM 100:2008, 6.3.3). */
    private static final double COVERAGE = 2;

    private static final int FAINT_ALPHA = 90;

    private HeldEnds() {}

    /**
     * Marks both ends on a plot.
     *
     * @param zone in what the plot counts
     * @param across what that is
     * @param rising whether the curve rises from left to right
     */
    static void mark(XYPlot plot, Zone zone, Across across, boolean rising, Theme theme) {
        mark(plot, zone, across, rising, theme, Layer.BACKGROUND, 0);
    }

    /**
     * Marks both ends where the foot of the plot is taken.
     *
     * @param layer of the lines and words
     * @param footPx height of what stands along the foot
     */
    static void mark(XYPlot plot, Zone zone, Across across, boolean rising, Theme theme, Layer layer, int footPx) {
        ValueMarker near = line(plot, zone.nearMm(), zone.nearUncertaintyMm(), theme, layer);
        near.setLabel(words("near hold ", zone.nearMm(), zone.nearUncertaintyMm(), across));
        near.setLabelAnchor(rising ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.BOTTOM_RIGHT);
        near.setLabelTextAnchor(rising ? TextAnchor.TOP_LEFT : TextAnchor.BOTTOM_LEFT);
        ValueMarker far = line(plot, zone.farMm(), zone.farUncertaintyMm(), theme, layer);
        (rising ? far : near).setLabelOffset(new RectangleInsets(4, 5, 4 + footPx, 5));
        far.setLabel(words("far hold ", zone.farMm(), zone.farUncertaintyMm(), across));
        far.setLabelAnchor(rising ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.TOP_LEFT);
        far.setLabelTextAnchor(rising ? TextAnchor.BOTTOM_RIGHT : TextAnchor.TOP_RIGHT);
    }

    private static String words(String end, double at, double uncertainty, Across across) {
        return end + across.figure(at) + " \u00b1 " + across.words(COVERAGE * uncertainty);
    }

    private static ValueMarker line(XYPlot plot, double at, double uncertainty, Theme theme, Layer layer) {
        double expanded = COVERAGE * uncertainty;
        Color edge = theme.edge();
        Color faint = new Color(edge.getRed(), edge.getGreen(), edge.getBlue(), FAINT_ALPHA);
        ValueMarker line = ChartSheet.line(at, edge, ChartSheet.DASHED);
        ChartSheet.label(line, "", RectangleAnchor.TOP_RIGHT, TextAnchor.TOP_LEFT, theme);
        plot.addDomainMarker(ChartSheet.band(at - expanded, at + expanded, faint), Layer.BACKGROUND);
        plot.addDomainMarker(line, layer);
        return line;
    }
}
