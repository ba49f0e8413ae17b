package handspan.show.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * How far each note was missed: one row for a note, a mark for each time it was played, a bar for the spread of all its
 * time about its mean. One take and the hand behind it, or two takes, one above the other in a row.
 */
public final class PitchErrorChart {
    private static final double LEAST_CENTS = 30;
    private static final double NEAR_CENTS = 10;
    private static final double MIDDLE_CENTS = 25;
    private static final double APART = 0.17;
    private static final BasicStroke BAR = new BasicStroke(5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    private static final int BAR_ALPHA = 110;

    private final List<NoteErrors.Layer> layers;
    private final Theme theme;
    private final TreeMap<Long, String> rows = new TreeMap<>();

    private PitchErrorChart(List<NoteErrors.Layer> layers, Theme theme) {
        this.layers = List.copyOf(layers);
        this.theme = theme;
        layers.forEach(layer -> layer.notes().forEach(note -> rows.put(row(note), note.name())));
    }

    /**
     * Draws one or two layers.
     *
     * @param captions below the title
     */
    public static JFreeChart of(List<NoteErrors.Layer> layers, List<String> captions, Theme theme) {
        if (layers.isEmpty() || layers.size() > 2) {
            throw new IllegalArgumentException(layers.size() + " layers of notes (1 or 2)");
        }
        List<String> lines = new ArrayList<>(captions);
        lines.add(
                "A mark: one time a note was played, its mean. A bar: spread of all its time. Shaded: within 10 and 25"
                        + " cents.");
        return ChartSheet.of("How far each note was missed", lines, new PitchErrorChart(layers, theme).plot(), theme);
    }

    /** Notes of the same cent share a row. */
    private static long row(NoteErrors note) {
        return Math.round(100 * note.key());
    }

    private double height(NoteErrors note, int layer) {
        int at = rows.headMap(row(note)).size();
        return layers.size() == 1 ? at : at + (layer == 0 ? APART : -APART);
    }

    private XYPlot plot() {
        List<MarkedAxis.Mark> marks = new ArrayList<>();
        for (String name : rows.values()) {
            marks.add(new MarkedAxis.Mark(marks.size(), name, 0));
        }
        double widest = widest();
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers("cents off the note (flat to the left, sharp to the right)", -widest, widest, theme),
                ChartSheet.marked("note (name)", marks, -0.6, Math.max(1, marks.size()) - 0.4, theme),
                theme);
        plot.addDomainMarker(ChartSheet.band(-MIDDLE_CENTS, MIDDLE_CENTS, theme.band()), Layer.BACKGROUND);
        plot.addDomainMarker(ChartSheet.band(-NEAR_CENTS, NEAR_CENTS, theme.band()), Layer.BACKGROUND);
        plot.addDomainMarker(ChartSheet.line(0, theme.edge(), ChartSheet.DASHED), Layer.BACKGROUND);
        for (int layer = 0; layer < layers.size(); layer++) {
            add(plot, layer);
        }
        return plot;
    }

    private double widest() {
        double most = 0;
        for (NoteErrors.Layer layer : layers) {
            for (NoteErrors note : layer.notes()) {
                most = Math.max(most, Math.abs(note.meanCents()) + note.spreadCents());
                for (double visit : note.visitsCents()) {
                    most = Math.max(most, Math.abs(visit));
                }
            }
        }
        return Math.max(LEAST_CENTS, 1.08 * most);
    }

    private void add(XYPlot plot, int layer) {
        Color color = layer == 0 ? theme.line() : theme.mark();
        DefaultXYDataset data = new DefaultXYDataset();
        String name = layers.get(layer).name();
        data.addSeries(name, visits(layer));
        data.addSeries(name + ", spread", spreads(layer));
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setDrawSeriesLineAsPath(false);
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShapesVisible(0, true);
        renderer.setSeriesShape(0, layer == 0 ? dot() : diamond());
        renderer.setSeriesPaint(0, color);
        renderer.setSeriesPaint(1, new Color(color.getRed(), color.getGreen(), color.getBlue(), BAR_ALPHA));
        renderer.setSeriesStroke(1, BAR);
        renderer.setSeriesVisibleInLegend(1, false);
        plot.setDataset(layer, data);
        plot.setRenderer(layer, renderer);
    }

    private double[][] visits(int layer) {
        List<double[]> points = new ArrayList<>();
        for (NoteErrors note : layers.get(layer).notes()) {
            for (double visit : note.visitsCents()) {
                points.add(new double[] {visit, height(note, layer)});
            }
        }
        return columns(points);
    }

    /** From end to end of each bar, with a gap after it. */
    private double[][] spreads(int layer) {
        List<double[]> points = new ArrayList<>();
        for (NoteErrors note : layers.get(layer).notes()) {
            double y = height(note, layer);
            points.add(new double[] {note.meanCents() - note.spreadCents(), y});
            points.add(new double[] {note.meanCents() + note.spreadCents(), y});
            points.add(new double[] {note.meanCents(), Double.NaN});
        }
        return columns(points);
    }

    private static double[][] columns(List<double[]> points) {
        return new double[][] {
            points.stream().mapToDouble(point -> point[0]).toArray(),
            points.stream().mapToDouble(point -> point[1]).toArray()
        };
    }

    private static Shape dot() {
        return new Ellipse2D.Double(-3.5, -3.5, 7, 7);
    }

    private static Shape diamond() {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(0, -5);
        path.lineTo(5, 0);
        path.lineTo(0, 5);
        path.lineTo(-5, 0);
        path.closePath();
        return path;
    }
}
