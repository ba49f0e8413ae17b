package handspan.show.chart;

import java.awt.BasicStroke;
import java.awt.Rectangle;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import org.jfree.chart.LegendItem;

/**
 * A small sample of a class's colour and pattern for a legend: lines, as in the bands themselves, so that they stay
 * lines on paper.
 *
 * @param missClass which
 * @param theme of the chart
 */
record Swatch(MissClass missClass, Theme theme) {
    private static final int HALF_PX = 7;
    private static final int GROUND_ALPHA = 70;
    private static final int STRIPE_ALPHA = 200;
    private static final Stroke STRIPE = new BasicStroke(1f);

    /** The sample with its words. */
    LegendItem item(String words) {
        return new LegendItem(
                words,
                null,
                null,
                null,
                true,
                new Rectangle(-HALF_PX, -HALF_PX, 2 * HALF_PX, 2 * HALF_PX),
                true,
                ChanceBands.alpha(missClass.color(theme), GROUND_ALPHA),
                false,
                theme.grid(),
                STRIPE,
                missClass.stripePx() > 0,
                stripes(),
                STRIPE,
                ChanceBands.alpha(missClass.color(theme), STRIPE_ALPHA));
    }

    /** From side to side of the square, one of them through its middle, so that they lie evenly in it. */
    private Path2D stripes() {
        Path2D.Double path = new Path2D.Double();
        int step = Math.max(1, missClass.stripePx());
        int most = (2 * HALF_PX - 1) / step;
        for (int i = -most; i <= most; i++) {
            int from = Math.max(-HALF_PX, i * step - HALF_PX);
            int to = Math.min(HALF_PX, i * step + HALF_PX);
            path.moveTo(from, i * step - from);
            path.lineTo(to, i * step - to);
            if (missClass.crossed()) {
                path.moveTo(from, from - i * step);
                path.lineTo(to, to - i * step);
            }
        }
        return path;
    }
}
