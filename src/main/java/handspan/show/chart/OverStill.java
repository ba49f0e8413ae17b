package handspan.show.chart;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;

/** A live chart of a part that stays, drawn when it has to be, and a part that moves, drawn each time. */
abstract class OverStill implements LiveChart {
    /** From the picture's edge to words at its head, as far as charts stand off, px. */
    private static final int HEAD_X = 14;

    private static final int HEAD_Y = 12;
    private static final double DOT_PX = 13;
    private static final double AWAY_PX = 12;
    private static final int BOX_ALPHA = 225;

    /** A lower picture needs its height for the data: first the legend goes, then what is said below the title. */
    private static final int LEGEND_FROM_PX = 330;

    private static final int CAPTIONS_FROM_PX = 250;
    private static final RectangleInsets LOW_PADDING = new RectangleInsets(4, 12, 2, 14);

    private @Nullable StillChart still;
    private @Nullable Theme stillTheme;
    private long stillEdition = -1;

    /** A number that rises whenever the part that stays has to be drawn anew. */
    abstract long edition();

    /** The part that stays. */
    abstract JFreeChart still(Theme theme);

    /** Words beside the heading; those of {@link #words} where the picture does not write them elsewhere. */
    String headWords() {
        return words();
    }

    /** Draws the part that moves. */
    abstract void moving(Graphics2D g2, StillChart chart, Theme theme);

    @Override
    public final void draw(Graphics2D g2, int widthPx, int heightPx, Theme theme) {
        if (widthPx < 1 || heightPx < 1) {
            return;
        }
        StillChart under = under(widthPx, heightPx, StillChart.scale(g2), theme);
        under.drawOn(g2);
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        moving(g2, under, theme);
        head(g2, widthPx, theme);
    }

    /** The part that stays as it is drawn at a size. */
    final StillChart under(int widthPx, int heightPx, double scale, Theme theme) {
        StillChart kept = still;
        if (kept == null || stillTheme != theme || stillEdition != edition() || !kept.fits(widthPx, heightPx, scale)) {
            JFreeChart chart = still(theme);
            fit(chart, heightPx);
            kept = StillChart.of(chart, widthPx, heightPx, scale);
            still = kept;
            stillTheme = theme;
            stillEdition = edition();
        }
        return kept;
    }

    /** Leaves out of a low picture what the data need the height of. */
    private static void fit(JFreeChart chart, int heightPx) {
        if (heightPx < LEGEND_FROM_PX) {
            chart.removeLegend();
            ChartSheet.low(chart.getXYPlot());
        }
        if (heightPx < CAPTIONS_FROM_PX) {
            chart.clearSubtitles();
            chart.setPadding(LOW_PADDING);
        }
    }

    /** What is shown, in words beside the heading where there is room. */
    private void head(Graphics2D g2, int widthPx, Theme theme) {
        int headingPx = g2.getFontMetrics(theme.titleFont()).stringWidth(name());
        g2.setFont(theme.labelFont());
        FontMetrics metrics = g2.getFontMetrics();
        int wordsPx = metrics.stringWidth(headWords());
        if (headingPx + wordsPx + 4 * HEAD_X <= widthPx) {
            g2.setPaint(theme.text());
            g2.drawString(headWords(), widthPx - HEAD_X - wordsPx, HEAD_Y + metrics.getAscent());
        }
    }

    /** A live hand: a line up from the foot, and a dot, filled where it sounds. */
    static void hand(Graphics2D g2, StillChart.Pane pane, double x, double y, boolean sounds, Theme theme) {
        g2.setStroke(ChartSheet.STRONG);
        g2.setPaint(theme.live());
        g2.draw(new Line2D.Double(
                x, pane.area().getMaxY(), x, Math.min(pane.area().getMaxY(), y + DOT_PX / 2)));
        Shape dot = new Ellipse2D.Double(x - DOT_PX / 2, y - DOT_PX / 2, DOT_PX, DOT_PX);
        g2.setPaint(sounds ? theme.live() : theme.plot());
        g2.fill(dot);
        g2.setPaint(sounds ? theme.text() : theme.live());
        g2.draw(dot);
    }

    /** Words in a box beside a point: below it on the side asked for, above it on the other where that has no room. */
    static void beside(
            Graphics2D g2, StillChart.Pane pane, double x, double y, boolean left, String words, Theme theme) {
        beside(g2, pane, x, y, left, words, theme, theme.live());
    }

    /** The same with a frame of another colour. */
    static void beside(
            Graphics2D g2,
            StillChart.Pane pane,
            double x,
            double y,
            boolean left,
            String words,
            Theme theme,
            Color frame) {
        g2.setFont(theme.labelFont());
        FontMetrics metrics = g2.getFontMetrics();
        double width = metrics.stringWidth(words) + 10;
        double height = metrics.getHeight() + 4;
        Rectangle2D area = pane.area();
        boolean toLeft = left ? x - AWAY_PX - width > area.getMinX() : x + AWAY_PX + width > area.getMaxX();
        double boxX = toLeft ? x - AWAY_PX - width : x + AWAY_PX;
        double beside = toLeft == left ? y + AWAY_PX / 2 : y - AWAY_PX / 2 - height;
        double boxY = Math.max(area.getMinY() + 2, Math.min(area.getMaxY() - height - 2, beside));
        Color ground = theme.plot();
        Shape box = new RoundRectangle2D.Double(boxX, boxY, width, height, 6, 6);
        g2.setPaint(new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), BOX_ALPHA));
        g2.fill(box);
        g2.setStroke(ChartSheet.THIN);
        g2.setPaint(frame);
        g2.draw(box);
        g2.setPaint(theme.text());
        g2.drawString(words, (float) (boxX + 5), (float) (boxY + 2 + metrics.getAscent()));
    }
}
