package handspan.show.chart;

import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Snapper;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Zone;
import handspan.room.budget.NoteChance;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Where the notes lie: hand distance in mm (place, where a sensor has no true mm) against pitch. Height is the key
 * number that sounds, transposition and trim included, so that an octave is as high everywhere; note names stand to the
 * left, Hz to the right.
 */
public final class PitchLadderChart {
    /** Series of what sounds over the zone. */
    static final String SOUNDS = "pitch that sounds";

    /** Series of what sounds beyond the ends of the zone. */
    static final String BEYOND = "beyond the ends: the end's pitch stays";

    /** Series of the scale's notes. */
    static final String NOTES = "notes of the scale, at their places";

    /** Steps in which the curve is drawn; even, so that the middle of the zone is among them. */
    static final int STEPS = 800;

    /** What is shown beyond each end, share of the zone. */
    private static final double BEYOND01 = 0.07;

    /** Free height below and above, share of the range, and the least of it in key numbers. */
    private static final double ROOM01 = 0.06;

    private static final double LEAST_ROOM_KEYS = 1.2;

    /** More notes than this get smaller dots. */
    private static final int MANY = 30;

    private final Across across;
    private final Zone zone;
    private final Tuning tuning;
    private final PitchCurve curve;
    private final ScaleLadder ladder;
    private final List<NoteChance> chances;
    private final Theme theme;

    private PitchLadderChart(HandSetup hand, Tuning tuning, List<NoteChance> chances, Theme theme) {
        this.across = Across.of(hand);
        this.zone = across.zone(hand);
        this.tuning = tuning;
        this.curve = tuning.curve();
        this.ladder = tuning.ladder();
        this.chances = List.copyOf(chances);
        this.theme = theme;
    }

    /** Draws the ladder of a room under one of its tunings. */
    public static JFreeChart of(RoomProfile profile, Tuning tuning, Theme theme) {
        return of(profile, tuning, List.of(), theme);
    }

    /**
     * Draws the ladder with how likely each note is missed.
     *
     * @param chances of the tuning's notes; empty where they are not known
     */
    public static JFreeChart of(RoomProfile profile, Tuning tuning, List<NoteChance> chances, Theme theme) {
        PitchLadderChart map = new PitchLadderChart(profile.room().pitch(), tuning, chances, theme);
        String title = "Where the notes lie in " + profile.room().name();
        return ChartSheet.of(title, map.words().captions(), map.plot(), theme);
    }

    private LadderWords words() {
        return new LadderWords(tuning, across, zone, chances.isEmpty());
    }

    private XYPlot plot() {
        double beyond = BEYOND01 * zone.lengthMm();
        double from = zone.nearMm() - beyond;
        double roomKeys = Math.max(LEAST_ROOM_KEYS, ROOM01 * curve.span());
        double low = curve.lowKey() + tuning.shiftKeys() - roomKeys;
        double high = curve.highKey() + tuning.shiftKeys() + roomKeys;
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers(
                        across.label("pitch hand"),
                        across == Across.MM ? Math.max(0, from) : from,
                        zone.farMm() + beyond,
                        theme),
                ChartSheet.marked("pitch (note name)", Marks.keys(tuning.spelling(), low, high), low, high, theme),
                theme);
        plot.setRangeAxis(
                1, ChartSheet.marked("pitch (Hz)", Marks.hz(tuning.reference(), low, high), low, high, theme));
        plot.setDataset(
                0,
                data(plot.getDomainAxis().getLowerBound(), plot.getDomainAxis().getUpperBound()));
        plot.setRenderer(0, renderer());
        bands(plot);
        plot.addAnnotation(new PlacedNames(
                words().names(), tuning.direction() == Direction.HIGH_FAR, theme.smallFont(), theme.text()));
        HeldEnds.mark(
                plot,
                zone,
                across,
                tuning.direction() == Direction.HIGH_FAR,
                theme,
                chances.isEmpty() ? Layer.BACKGROUND : Layer.FOREGROUND,
                chances.isEmpty() ? 0 : ChanceBands.ROW_PX);
        return plot;
    }

    /** Cells that could be told by their chances, else every other one shaded. */
    private void bands(XYPlot plot) {
        if (!chances.isEmpty()) {
            ChanceBands bands = new ChanceBands(chances.stream().map(this::cell).toList(), theme);
            plot.getRenderer().addAnnotation(bands, Layer.BACKGROUND);
            LegendItemCollection legend = plot.getLegendItems();
            legend.addAll(bands.legend());
            plot.setFixedLegendItems(legend);
            return;
        }
        for (int note = 0; note < ladder.size(); note += 2) {
            double from = at(Math.max(curve.lowKey(), ladder.lowerBoundary(note)));
            double to = at(Math.min(curve.highKey(), ladder.upperBoundary(note)));
            plot.addDomainMarker(ChartSheet.band(from, to, theme.band()), Layer.BACKGROUND);
        }
    }

    private ChanceBands.Cell cell(NoteChance chance) {
        double one = at(Math.max(curve.lowKey(), ladder.lowerBoundary(chance.note())));
        double other = at(Math.min(curve.highKey(), ladder.upperBoundary(chance.note())));
        return new ChanceBands.Cell(one, other, chance.miss01());
    }

    /** Travel of a key number before transposition and trim. */
    private double at(double key) {
        return zone.mm(curve.place01(key));
    }

    private double sounding(double place01) {
        double key = curve.key(place01);
        return Snapper.drawn(tuning.snapping(), ladder, key) + tuning.shiftKeys();
    }

    private DefaultXYDataset data(double fromMm, double toMm) {
        double[][] over = new double[2][STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double place01 = i / (double) STEPS;
            over[0][i] = zone.mm(place01);
            over[1][i] = sounding(place01);
        }
        double[][] notes = new double[2][ladder.size()];
        for (int note = 0; note < ladder.size(); note++) {
            notes[0][note] = at(ladder.key(note));
            notes[1][note] = ladder.key(note) + tuning.shiftKeys();
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(NOTES, notes);
        data.addSeries(SOUNDS, over);
        data.addSeries(BEYOND, new double[][] {
            {fromMm, zone.nearMm(), zone.nearMm(), zone.farMm(), toMm},
            {sounding(0), sounding(0), Double.NaN, sounding(1), sounding(1)}
        });
        return data;
    }

    private XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShapesVisible(0, true);
        double size = ladder.size() > MANY ? 5 : 8;
        renderer.setSeriesShape(0, new Ellipse2D.Double(-size / 2, -size / 2, size, size));
        renderer.setSeriesPaint(0, theme.mark());
        renderer.setSeriesPaint(1, theme.line());
        renderer.setSeriesStroke(1, ChartSheet.STRONG);
        renderer.setSeriesPaint(2, theme.line());
        renderer.setSeriesStroke(2, ChartSheet.DASHED);
        return renderer;
    }
}
