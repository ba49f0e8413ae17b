package handspan.show.chart;

import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.budget.FeelBudget;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * What steadiness costs in a room: the wobble of a still hand in cents against the time over which it is smoothed, with
 * where a tuning stands on that line.
 */
public final class SteadyQuickChart {
    /** Series of what can be had. */
    static final String TRADE = "what this room's noise allows";

    /** Series of the tuning's place on it. */
    static final String HERE = "this tuning";

    /** The line runs to so many times the longest lag. */
    private static final double TRADE_TIMES = 4;

    /** Free room above the most wobble. */
    private static final double HEAD_ROOM = 1.08;

    /** A wobble that needs no room of its own, cents. */
    private static final double LEAST_TOP_CENTS = 8;

    private SteadyQuickChart() {}

    /** Draws the trade of a tuning in a room. */
    public static JFreeChart of(RoomProfile profile, Tuning tuning, FeelBudget feel, Theme theme) {
        SmoothSettings settings = feel.settings();
        double mostMs = TRADE_TIMES * Math.max(SmoothSettings.LONGEST_LAG_MS, settings.longestLagMs());
        List<SmoothSettings.Trade> trades = settings.trades(mostMs);
        double top = HEAD_ROOM * Math.max(LEAST_TOP_CENTS, trades.get(0).jitterMm() * feel.centsPerMm());
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers("smoothing of a still hand (ms)", 0, mostMs, theme),
                ChartSheet.numbers("wobble of a still hand (cents rms)", 0, top, theme),
                theme);
        plot.setDataset(data(trades, feel));
        plot.setRenderer(renderer(theme));
        plot.addDomainMarker(ChartSheet.band(0, settings.longestLagMs(), theme.band()), Layer.BACKGROUND);
        plot.addDomainMarker(longest(settings.longestLagMs(), theme), Layer.FOREGROUND);
        plot.addRangeMarker(target(feel.targetCents(), theme), Layer.FOREGROUND);
        return ChartSheet.of(title(profile), List.of(caption(tuning, feel)), plot, theme);
    }

    /** The sheet of a trade that is not known yet. */
    static JFreeChart empty(RoomProfile profile, Theme theme) {
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers(
                        "smoothing of a still hand (ms)", 0, TRADE_TIMES * SmoothSettings.LONGEST_LAG_MS, theme),
                ChartSheet.numbers("wobble of a still hand (cents rms)", 0, LEAST_TOP_CENTS, theme),
                theme);
        return ChartSheet.of(title(profile), List.of(), plot, theme);
    }

    private static String title(RoomProfile profile) {
        return "How steady against how quick in " + profile.room().name();
    }

    private static String caption(Tuning tuning, FeelBudget feel) {
        double steps = tuning.quickness().steps();
        String wanted = steps == 0
                ? "as computed"
                : Figures.text(Math.abs(steps), 1) + (steps > 0 ? " steps quicker" : " steps steadier");
        return "Tuning '" + tuning.name() + "', quickness " + wanted + ": "
                + Figures.text(feel.jitterCents(), 1) + " cents rms over "
                + Figures.text(feel.settings().stillLagMs(), 0)
                + " ms while the hand is still. A moving hand is followed without this lag.";
    }

    private static DefaultXYDataset data(List<SmoothSettings.Trade> trades, FeelBudget feel) {
        double[][] line = new double[2][trades.size()];
        for (int i = 0; i < trades.size(); i++) {
            line[0][i] = trades.get(i).lagMs();
            line[1][i] = trades.get(i).jitterMm() * feel.centsPerMm();
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(TRADE, line);
        data.addSeries(HERE, new double[][] {{feel.settings().stillLagMs()}, {feel.jitterCents()}});
        return data;
    }

    private static XYLineAndShapeRenderer renderer(Theme theme) {
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setSeriesPaint(0, theme.line());
        renderer.setSeriesStroke(0, ChartSheet.STRONG);
        renderer.setSeriesPaint(1, theme.mark());
        renderer.setSeriesLinesVisible(1, false);
        renderer.setSeriesShapesVisible(1, true);
        renderer.setSeriesShape(1, new java.awt.geom.Ellipse2D.Double(-6, -6, 12, 12));
        return renderer;
    }

    private static ValueMarker longest(double longestMs, Theme theme) {
        ValueMarker line = ChartSheet.line(longestMs, theme.edge(), ChartSheet.DASHED);
        ChartSheet.label(
                line,
                "longest: " + Marks.figure(longestMs) + " ms",
                RectangleAnchor.TOP_RIGHT,
                TextAnchor.TOP_LEFT,
                theme);
        return line;
    }

    private static ValueMarker target(double cents, Theme theme) {
        ValueMarker line = ChartSheet.line(cents, theme.mark(), ChartSheet.DASHED);
        ChartSheet.label(
                line,
                "aimed at: " + Marks.figure(cents) + " cents",
                RectangleAnchor.TOP_RIGHT,
                TextAnchor.BOTTOM_RIGHT,
                theme);
        return line;
    }
}
