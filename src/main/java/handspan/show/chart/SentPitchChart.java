package handspan.show.chart;

import handspan.live.session.Snapshot;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * The pitch that was sent in the last ten seconds over the notes of the scale, with gaps where nothing sounded. While
 * the player keeps the sound closed, a dotted line shows what the hand would play.
 */
public final class SentPitchChart extends OverStill {
    private static final double LEAST_ROOM_KEYS = 0.8;
    private static final double ROOM01 = 0.04;
    private static final double DOT_PX = 9;

    private final SentPitchTrail trail;
    private Tuning drawn;
    private long edition;

    /**
     * A chart of nothing yet.
     *
     * @param tuning that will play
     */
    public SentPitchChart(Tuning tuning) {
        trail = new SentPitchTrail(tuning);
        drawn = tuning;
    }

    /** Draws the notes of another tuning until one plays. */
    public void use(Tuning other) {
        trail.use(other);
        follow();
    }

    private void follow() {
        if (!trail.tuning().equals(drawn)) {
            drawn = trail.tuning();
            edition++;
        }
    }

    @Override
    public String name() {
        return "Pitch sent";
    }

    @Override
    public String about() {
        return "the pitch of the last 10 s, in note names and Hz; gaps where nothing sounded";
    }

    @Override
    public String words() {
        return trail.words();
    }

    @Override
    public long version() {
        return trail.version();
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        trail.onSnapshot(snapshot);
        follow();
    }

    /** What is shown, in Hz. */
    TimeRun run() {
        return trail.run();
    }

    @Override
    long edition() {
        return edition;
    }

    @Override
    JFreeChart still(Theme theme) {
        double room = Math.max(LEAST_ROOM_KEYS, ROOM01 * drawn.curve().span());
        double low = drawn.curve().lowKey() + drawn.shiftKeys() - room;
        double high = drawn.curve().highKey() + drawn.shiftKeys() + room;
        XYPlot plot = ChartSheet.plot(
                LastSeconds.axis(theme),
                ChartSheet.marked("pitch (note name)", Marks.notes(drawn), low, high, theme),
                theme);
        plot.setRangeAxis(1, ChartSheet.marked("pitch (Hz)", Marks.hz(drawn.reference(), low, high), low, high, theme));
        plot.setRangeGridlinesVisible(false);
        notes(plot, theme);
        legend(plot, theme);
        return ChartSheet.of(name(), List.of(), plot, theme);
    }

    /** A line for every note, that of the tonic stronger. */
    private void notes(XYPlot plot, Theme theme) {
        ScaleLadder ladder = drawn.ladder();
        for (int note = 0; note < ladder.size(); note++) {
            boolean tonic = ladder.degree(note) == 1;
            plot.addRangeMarker(
                    ChartSheet.line(
                            ladder.key(note) + drawn.shiftKeys(),
                            tonic ? theme.quietText() : theme.grid(),
                            ChartSheet.THIN),
                    Layer.BACKGROUND);
        }
    }

    private static void legend(XYPlot plot, Theme theme) {
        DefaultXYDataset nothing = new DefaultXYDataset();
        nothing.addSeries("what is sent", new double[2][0]);
        nothing.addSeries("what the hand would play, sound closed", new double[2][0]);
        XYLineAndShapeRenderer lines = ChartSheet.lines();
        lines.setSeriesPaint(0, theme.line());
        lines.setSeriesStroke(0, ChartSheet.STRONG);
        lines.setSeriesPaint(1, theme.quietText());
        lines.setSeriesStroke(1, ChartSheet.DOTTED);
        plot.setDataset(nothing);
        plot.setRenderer(lines);
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        StillChart.Pane pane = chart.pane(0);
        ReferencePitch reference = drawn.reference();
        double keyPx = pane.y(1) - pane.y(0);
        double zeroPx = pane.y(0);
        LastSeconds.Height height = hz -> zeroPx + keyPx * reference.key(hz);
        TimeRun run = trail.run();
        var clip = g2.getClip();
        g2.clip(pane.area());
        g2.setPaint(theme.quietText());
        g2.setStroke(ChartSheet.DOTTED);
        g2.draw(LastSeconds.line(run, SentPitchTrail.WAITS, pane, height));
        g2.setPaint(theme.line());
        g2.setStroke(ChartSheet.STRONG);
        g2.draw(LastSeconds.line(run, SentPitchTrail.SOUNDS, pane, height));
        int last = run.size() - 1;
        if (last >= 0 && run.kind(last) != SentPitchTrail.SILENT) {
            double x = pane.x(run.timeS(last));
            double y = height.px(run.value(last));
            g2.setPaint(theme.live());
            Ellipse2D dot = new Ellipse2D.Double(x - DOT_PX / 2, y - DOT_PX / 2, DOT_PX, DOT_PX);
            g2.setStroke(ChartSheet.STRONG);
            if (run.kind(last) == SentPitchTrail.SOUNDS) {
                g2.fill(dot);
            }
            g2.draw(dot);
        }
        g2.setClip(clip);
    }
}
