package handspan.show.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * How the readings of a hold are spread, as bars from the right edge of a plot, against the bell of noise of that size.
 *
 * @param run with readings and some noise
 * @param pane whose height is the reading less the value
 * @param half of what is shown about the value
 */
record NoiseSpread(HoldRun run, StillChart.Pane pane, double half) {
    /** Share of the plot's width that it takes, at the right. */
    static final double SHARE01 = 0.22;

    private static final int BELL_POINTS = 96;
    private static final int BAR_ALPHA = 150;

    void draw(Graphics2D g2, Theme theme) {
        double stretch = run.stretch();
        double sigma = run.hold().noise();
        // readings that Gaussian noise would put into the middle stretch
        double most = run.readings().size() * stretch / (sigma * Math.sqrt(2 * Math.PI));
        int last = (int) Math.floor((half - run.start()) / stretch) - 1;
        int first = (int) Math.ceil((-half - run.start()) / stretch);
        for (int i = first; i <= last; i++) {
            most = Math.max(most, run.count(i));
        }
        double pxPerCount = 0.95 * SHARE01 * pane.area().getWidth() / most;
        double right = pane.area().getMaxX();
        var line = theme.line();
        g2.setPaint(new Color(line.getRed(), line.getGreen(), line.getBlue(), BAR_ALPHA));
        for (int i = first; i <= last; i++) {
            double upper = pane.y(run.start() + (i + 1) * stretch);
            double lower = pane.y(run.start() + i * stretch);
            double width = run.count(i) * pxPerCount;
            g2.fill(new Rectangle2D.Double(right - width, upper + 0.5, width, lower - upper - 1));
        }
        g2.setPaint(theme.mark());
        g2.setStroke(ChartSheet.STRONG);
        g2.draw(bell(sigma, run.readings().size() * stretch * pxPerCount));
    }

    /** The normal density, {@code exp(-x^2 / (2 s^2)) / (s sqrt(2 pi))}, drawn leftward from the right edge. */
    private Path2D bell(double sigma, double scalePx) {
        Path2D.Double bell = new Path2D.Double();
        for (int i = 0; i <= BELL_POINTS; i++) {
            double off = -half + 2 * half * i / BELL_POINTS;
            double density = Math.exp(-off * off / (2 * sigma * sigma)) / (sigma * Math.sqrt(2 * Math.PI));
            double x = pane.area().getMaxX() - scalePx * density;
            if (i == 0) {
                bell.moveTo(x, pane.y(off));
            } else {
                bell.lineTo(x, pane.y(off));
            }
        }
        return bell;
    }
}
