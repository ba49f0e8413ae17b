package handspan.show.chart;

import handspan.number.units.Nanos;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.NumberAxis;

/** What charts of the last ten seconds share: the span, its axis, and lines through a run. */
final class LastSeconds {
    /** How far back is shown, s. */
    static final double SPAN_S = 10;

    /** The same in ns. */
    static final long SPAN_NANOS = 10 * Nanos.PER_SECOND;

    /** Free room after the present, s, so that its mark is seen whole. */
    static final double ROOM_S = 0.15;

    /** Most values in ten seconds. */
    static final int MOST = 16_384;

    /** Values farther apart than this are not joined, s. */
    private static final double JOINED_S = 0.3;

    private LastSeconds() {}

    static NumberAxis axis(Theme theme) {
        return ChartSheet.numbers("time (s, 0 = now)", -SPAN_S, ROOM_S, theme);
    }

    /** From a value to its height. */
    interface Height {
        double px(double value);
    }

    /** A line through the values of one kind; it breaks where others lie between, and where nothing came for long. */
    static Path2D line(TimeRun run, int kind, StillChart.Pane pane, Height height) {
        Rectangle2D area = pane.area();
        double nowX = pane.x(0);
        double pxPerS = nowX - pane.x(-1);
        Path2D.Double line = new Path2D.Double();
        boolean drawing = false;
        double beforeS = 0;
        for (int i = 0; i < run.size(); i++) {
            double timeS = run.timeS(i);
            if (run.kind(i) != kind) {
                drawing = false;
            } else {
                double x = Math.max(area.getMinX(), nowX + pxPerS * timeS);
                double y = height.px(run.value(i));
                if (drawing && timeS - beforeS <= JOINED_S) {
                    line.lineTo(x, y);
                } else {
                    line.moveTo(x, y);
                }
                drawing = true;
                beforeS = timeS;
            }
        }
        return line;
    }
}
