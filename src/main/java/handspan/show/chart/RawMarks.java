package handspan.show.chart;

import java.awt.geom.Path2D;

/** Readings as marks on a chart, each sort as one path, which is drawn sooner than many. */
final class RawMarks {
    private static final double DOT_PX = 3.4;
    private static final double CROSS_PX = 3.5;

    private RawMarks() {}

    /** What was taken, each as a small square. */
    static Path2D dots(TimeRun run, StillChart.Pane pane, LastSeconds.Height height) {
        Path2D.Double dots = new Path2D.Double();
        double nowX = pane.x(0);
        double pxPerS = nowX - pane.x(-1);
        for (int i = 0; i < run.size(); i++) {
            if (run.kind(i) == RawTrail.TAKEN) {
                double x = nowX + pxPerS * run.timeS(i) - DOT_PX / 2;
                double y = height.px(run.value(i)) - DOT_PX / 2;
                dots.moveTo(x, y);
                dots.lineTo(x + DOT_PX, y);
                dots.lineTo(x + DOT_PX, y + DOT_PX);
                dots.lineTo(x, y + DOT_PX);
                dots.closePath();
            }
        }
        return dots;
    }

    /** What was not taken, each as a cross in the row of its kind. */
    static Path2D crosses(TimeRun run, StillChart.Pane pane) {
        Path2D.Double crosses = new Path2D.Double();
        double nowX = pane.x(0);
        double pxPerS = nowX - pane.x(-1);
        double lastX = Double.NEGATIVE_INFINITY;
        int lastKind = -1;
        for (int i = 0; i < run.size(); i++) {
            double x = nowX + pxPerS * run.timeS(i);
            boolean apart = run.kind(i) != lastKind || x - lastX >= CROSS_PX;
            if (run.kind(i) != RawTrail.TAKEN && apart) {
                double y = pane.y(run.kind(i));
                crosses.moveTo(x - CROSS_PX, y - CROSS_PX);
                crosses.lineTo(x + CROSS_PX, y + CROSS_PX);
                crosses.moveTo(x - CROSS_PX, y + CROSS_PX);
                crosses.lineTo(x + CROSS_PX, y - CROSS_PX);
                lastX = x;
                lastKind = run.kind(i);
            }
        }
        return crosses;
    }
}
