package handspan.show.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.text.TextUtils;

/** Puts a chart on a page of a {@link VectorPdf}, as vectors, its words as text. */
public final class ChartOnPage {
    /**
     * How wide a chart takes its place to be, whatever its width in mm: its letters, of 12 units and more, then have 7
     * points and more on 170 mm.
     */
    private static final double WIDTH_UNITS = 820;

    private ChartOnPage() {}

    /**
     * Draws.
     *
     * @param page in mm
     * @param placeMm where it goes
     * @param chart what is drawn
     */
    public static void draw(Graphics2D page, Rectangle2D placeMm, JFreeChart chart) {
        double mmPerUnit = placeMm.getWidth() / WIDTH_UNITS;
        Graphics2D graphics = (Graphics2D) page.create();
        // else labels that run upwards come as shapes
        boolean before = TextUtils.isUseDrawRotatedStringWorkaround();
        TextUtils.setUseDrawRotatedStringWorkaround(false);
        try {
            graphics.translate(placeMm.getX(), placeMm.getY());
            graphics.scale(mmPerUnit, mmPerUnit);
            chart.draw(graphics, new Rectangle2D.Double(0, 0, WIDTH_UNITS, placeMm.getHeight() / mmPerUnit));
        } finally {
            TextUtils.setUseDrawRotatedStringWorkaround(before);
            graphics.dispose();
        }
    }
}
