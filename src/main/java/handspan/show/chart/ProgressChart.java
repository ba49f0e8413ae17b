package handspan.show.chart;

import handspan.music.practice.Accuracy;
import handspan.music.practice.PracticeRun;
import handspan.number.units.Figures;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * How a player's practice goes on, run by run: how far off the notes, and after what time. Runs of the same kind as the
 * last one are joined; others, which can't be compared with it, are dots alone.
 */
public final class ProgressChart {
    /** Series of runs that can be compared with the last one. */
    static final String ALIKE = "runs like the last one";

    /** Series of the others. */
    static final String OTHERS = "other runs";

    private static final double GAP_PX = 18;
    private static final double HEAD_ROOM = 1.15;
    private static final double LEAST_TOP_CENTS = 20;
    private static final double LEAST_TOP_S = 2;
    private static final Ellipse2D DOT = new Ellipse2D.Double(-4.5, -4.5, 9, 9);

    private final List<PracticeRun> runs;
    private final Theme theme;

    private ProgressChart(List<PracticeRun> runs, Theme theme) {
        this.runs = List.copyOf(runs);
        this.theme = theme;
    }

    /**
     * Draws the runs of a player.
     *
     * @param player what the player is called
     * @param runs oldest first, at least one
     */
    public static JFreeChart of(String player, List<PracticeRun> runs, Theme theme) {
        return new ProgressChart(runs, theme).draw(player);
    }

    private JFreeChart draw(String player) {
        NumberAxis number = ChartSheet.numbers("run (counted from the oldest)", 0.5, runs.size() + 0.5, theme);
        number.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(number);
        both.setGap(GAP_PX);
        both.add(plot("off (cents rms)", LEAST_TOP_CENTS, Accuracy::rmsCents, true), 2);
        both.add(plot("time (s)", LEAST_TOP_S, Accuracy::medianSeconds, false), 1);
        return ChartSheet.of("How the practice of " + player + " goes on", List.of(caption()), both, theme);
    }

    private String caption() {
        PracticeRun last = runs.get(runs.size() - 1);
        return "Joined: runs like the last one (room " + last.room() + ", tuning '" + last.tuning() + "', asked by "
                + last.asking().word() + ", " + (last.help() ? "with" : "without") + " help), which hit "
                + Figures.text(100 * last.tally().hit01(), 0) + " % of "
                + last.tally().asked() + " notes";
    }

    private XYPlot plot(String label, double leastTop, ToDoubleFunction<Accuracy> figure, boolean inLegend) {
        PracticeRun last = runs.get(runs.size() - 1);
        double[][] alike = line(figure, true, last);
        double[][] others = line(figure, false, last);
        double top = leastTop;
        for (double[][] series : List.of(alike, others)) {
            for (double value : series[1]) {
                top = Math.max(top, HEAD_ROOM * value);
            }
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(ALIKE, alike);
        data.addSeries(OTHERS, others);
        XYPlot plot = ChartSheet.plot(null, ChartSheet.numbers(label, 0, top, theme), theme);
        plot.setDataset(data);
        plot.setRenderer(renderer(inLegend));
        return plot;
    }

    private double[][] line(ToDoubleFunction<Accuracy> figure, boolean wantsAlike, PracticeRun last) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            PracticeRun run = runs.get(i);
            if (run.isLike(last) == wantsAlike && run.tally().accuracy().isPresent()) {
                points.add(new double[] {
                    i + 1.0, figure.applyAsDouble(run.tally().accuracy().get())
                });
            }
        }
        return new double[][] {
            points.stream().mapToDouble(point -> point[0]).toArray(),
            points.stream().mapToDouble(point -> point[1]).toArray()
        };
    }

    private XYLineAndShapeRenderer renderer(boolean inLegend) {
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setSeriesVisibleInLegend(0, inLegend);
        renderer.setSeriesVisibleInLegend(1, inLegend);
        renderer.setSeriesPaint(0, theme.line());
        renderer.setSeriesStroke(0, ChartSheet.STRONG);
        renderer.setSeriesShapesVisible(0, true);
        renderer.setSeriesShape(0, DOT);
        renderer.setSeriesPaint(1, theme.edge());
        renderer.setSeriesLinesVisible(1, false);
        renderer.setSeriesShapesVisible(1, true);
        renderer.setSeriesShape(1, DOT);
        return renderer;
    }
}
