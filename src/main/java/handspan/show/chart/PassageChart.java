package handspan.show.chart;

import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.Range;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * A played passage: what the hand meant and what was sent, over the notes of the scale, with the level below on the
 * same time. The lag shows as the way from one line to the other, the wobble as roughness.
 */
public final class PassageChart {
    /** Series of what the hand meant. */
    static final String MEANT = "what the hand meant";

    /** Series of what was sent; gaps where nothing sounded. */
    static final String SENT = "what was sent";

    /** Series of the level. */
    static final String LEVEL = "level that was sent";

    private static final double LEAST_DB = -80;
    private static final double LEAST_SPAN_KEYS = 4;
    private static final int PITCH_SHARE = 3;
    private static final int LEVEL_SHARE = 1;
    private static final double GAP_PX = 18;

    private final PassageTrace trace;
    private final Tuning tuning;
    private final Theme theme;

    private PassageChart(PassageTrace trace, Tuning tuning, Theme theme) {
        this.trace = trace;
        this.tuning = tuning;
        this.theme = theme;
    }

    /**
     * Draws a passage.
     *
     * @param trace what happened
     * @param tuning whose notes stand in the background
     */
    public static JFreeChart of(PassageTrace trace, Tuning tuning, Theme theme) {
        return new PassageChart(trace, tuning, theme).draw();
    }

    private JFreeChart draw() {
        double[] timesS = trace.timesS();
        double fromS = timesS[0];
        double toS = timesS[timesS.length - 1];
        double roomS = toS > fromS ? 0.01 * (toS - fromS) : 0.5;
        CombinedDomainXYPlot both =
                new CombinedDomainXYPlot(ChartSheet.numbers("time (s)", fromS - roomS, toS + roomS, theme));
        both.setGap(GAP_PX);
        both.add(pitchPlot(), PITCH_SHARE);
        both.add(levelPlot(), LEVEL_SHARE);
        return ChartSheet.of("What the hand meant, and what was sent", List.of(caption()), both, theme);
    }

    private String caption() {
        String notes = "Lines across: the notes of " + tuning.scale().name() + " in tuning '" + tuning.name() + "'";
        return trace.comparedCount() == 0
                ? notes + "; nothing sounded under a hand"
                : notes + "; sent and meant differ by " + Figures.text(trace.rmsCents(), 1)
                        + " cents rms, lag included";
    }

    private XYPlot pitchPlot() {
        Range range = keys();
        double low = range.getLowerBound();
        double high = range.getUpperBound();
        XYPlot plot = ChartSheet.plot(
                null, ChartSheet.marked("pitch (note name)", Marks.notes(tuning), low, high, theme), theme);
        plot.setRangeAxis(
                1, ChartSheet.marked("pitch (Hz)", Marks.hz(tuning.reference(), low, high), low, high, theme));
        plot.setDataset(0, pitches());
        XYLineAndShapeRenderer lines = ChartSheet.lines();
        lines.setSeriesPaint(0, theme.line());
        lines.setSeriesStroke(0, ChartSheet.STRONG);
        lines.setSeriesPaint(1, theme.mark());
        lines.setSeriesStroke(1, ChartSheet.BROAD);
        plot.setRenderer(0, lines);
        return plot;
    }

    /** What the axis has to show. */
    private Range keys() {
        Range range = null;
        for (int i = 0; i < trace.timesS().length; i++) {
            if (!Double.isNaN(trace.trueKeys()[i])) {
                range = Range.expandToInclude(range, trace.trueKeys()[i]);
            }
            if (trace.sounding()[i]) {
                range = Range.expandToInclude(range, trace.sentKeys()[i]);
            }
        }
        double middle = range == null ? tuning.lowKey() + tuning.shiftKeys() : range.getCentralValue();
        double span = Math.max(LEAST_SPAN_KEYS, range == null ? 0 : 1.1 * range.getLength() + 1);
        return new Range(middle - span / 2, middle + span / 2);
    }

    private DefaultXYDataset pitches() {
        double[] sent = trace.sentKeys().clone();
        for (int i = 0; i < sent.length; i++) {
            sent[i] = trace.sounding()[i] ? sent[i] : Double.NaN;
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(SENT, new double[][] {trace.timesS(), sent});
        data.addSeries(MEANT, new double[][] {trace.timesS(), trace.trueKeys()});
        return data;
    }

    private XYPlot levelPlot() {
        double[] levels = trace.levelDb().clone();
        for (int i = 0; i < levels.length; i++) {
            levels[i] = Double.isInfinite(levels[i]) ? Double.NaN : levels[i];
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(LEVEL, new double[][] {trace.timesS(), levels});
        XYPlot plot = ChartSheet.plot(null, ChartSheet.numbers("level (dB)", LEAST_DB, 0, theme), theme);
        plot.setDataset(0, data);
        XYLineAndShapeRenderer line = ChartSheet.lines();
        line.setSeriesPaint(0, theme.edge());
        line.setSeriesStroke(0, ChartSheet.STRONG);
        plot.setRenderer(0, line);
        return plot;
    }
}
