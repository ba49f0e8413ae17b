package handspan.show.chart;

import handspan.instrument.sensor.SensorKind;
import handspan.music.level.LevelCurve;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;
import org.jspecify.annotations.Nullable;

/**
 * How loud the level hand plays: its distance in mm, or its place where mm are none (a light sensor), against level in
 * dB below full, with gain to the right.
 */
public final class LevelCurveChart {
    /** Series of the level over the zone. */
    static final String LEVEL = "level that is sent";

    /** Series of the level beyond the ends of the zone. */
    static final String BEYOND = "beyond the ends";

    /** Steps in which the curve is drawn above the knee; even, so that its middle is among them. */
    static final int STEPS = 400;

    private static final int STEPS_BELOW_KNEE = 60;

    /** What is shown beyond each end, share of the zone. */
    private static final double BEYOND01 = 0.07;

    private static final double BELOW_FLOOR_DB = 20;
    private static final double ABOVE_CEILING_DB = 6;

    private final @Nullable HandSetup hand;
    private final LevelCurve curve;
    private final Theme theme;

    private LevelCurveChart(@Nullable HandSetup hand, LevelCurve curve, Theme theme) {
        this.hand = hand;
        this.curve = curve;
        this.theme = theme;
    }

    /** Draws a room's level curve. A room without a level hand gets the curve by place, and is told so. */
    public static JFreeChart of(RoomProfile profile, Theme theme) {
        LevelCurveChart chart = new LevelCurveChart(profile.room().level(), profile.level(), theme);
        String title = "How loud the level hand plays in " + profile.room().name();
        return ChartSheet.of(title, List.of(chart.caption()), chart.plot(), theme);
    }

    private String caption() {
        String from = "Even in dB from " + db(curve.floorDb()) + " to " + db(curve.ceilingDb()) + ", loud "
                + (isLight() ? "when " : "at the ") + (curve.loudFar() ? farWord() : nearWord())
                + (isLight() ? "" : " end") + ", rising by at most " + Figures.text(curve.riseDbPerMs(), 1)
                + " dB per ms";
        return hand == null ? from + ". This room has no level hand: the ceiling plays." : from;
    }

    private boolean isByPlace() {
        return hand == null || hand.scaledTravel();
    }

    private boolean isLight() {
        return hand != null && hand.channel().kind() == SensorKind.PHOTORESISTOR;
    }

    private String nearWord() {
        return isLight() ? "covered" : "near";
    }

    private String farWord() {
        return isLight() ? "open" : "far";
    }

    private double x(double place) {
        return isByPlace() || hand == null ? place : hand.zone().mm(place);
    }

    private String xLabel() {
        return isByPlace()
                ? "place of the level hand (0 = " + nearWord() + ", 1 = " + farWord() + ")"
                : "distance of the level hand (mm), play zone " + Figures.text(x(0), 0) + " to "
                        + Figures.text(x(1), 0);
    }

    private XYPlot plot() {
        double low = curve.floorDb() - BELOW_FLOOR_DB;
        double high = curve.ceilingDb() + ABOVE_CEILING_DB;
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers(xLabel(), x(-BEYOND01), x(1 + BEYOND01), theme),
                ChartSheet.numbers("level (dB, 0 = full)", low, high, theme),
                theme);
        plot.setRangeAxis(1, ChartSheet.marked("gain (amplitude, 1 = full)", Marks.gains(), low, high, theme));
        plot.setDataset(0, data());
        plot.setRenderer(0, renderer());
        ends(plot);
        limits(plot);
        return plot;
    }

    /** Level in dB; no height where it is silent. */
    private double levelDb(double place01) {
        double gain01 = curve.gain01(place01);
        return gain01 > 0 ? Decibels.of(gain01) : Double.NaN;
    }

    private List<Double> places() {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < STEPS_BELOW_KNEE && curve.knee01() > 0; i++) {
            places.add(curve.knee01() * i / STEPS_BELOW_KNEE);
        }
        for (int i = 0; i <= STEPS; i++) {
            places.add(curve.knee01() + (1 - curve.knee01()) * i / STEPS);
        }
        return places;
    }

    private DefaultXYDataset data() {
        List<Double> places = places();
        double[][] over = new double[2][places.size()];
        for (int i = 0; i < places.size(); i++) {
            double place01 = curve.loudFar() ? places.get(i) : 1 - places.get(places.size() - 1 - i);
            over[0][i] = x(place01);
            over[1][i] = levelDb(place01);
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(LEVEL, over);
        data.addSeries(BEYOND, new double[][] {
            {x(-BEYOND01), x(0), x(0), x(1), x(1 + BEYOND01)},
            {levelDb(0), levelDb(0), Double.NaN, levelDb(1), levelDb(1)}
        });
        return data;
    }

    private XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setSeriesPaint(0, theme.line());
        renderer.setSeriesStroke(0, ChartSheet.STRONG);
        renderer.setSeriesPaint(1, theme.line());
        renderer.setSeriesStroke(1, ChartSheet.DASHED);
        return renderer;
    }

    private void ends(XYPlot plot) {
        plot.addDomainMarker(ChartSheet.band(x(0), x(1), theme.band()), Layer.BACKGROUND);
        plot.addDomainMarker(ChartSheet.line(x(0), theme.quietText(), ChartSheet.DOTTED), Layer.BACKGROUND);
        plot.addDomainMarker(ChartSheet.line(x(1), theme.quietText(), ChartSheet.DOTTED), Layer.BACKGROUND);
    }

    /** Ceiling, floor and knee, each written where the curve is not. */
    private void limits(XYPlot plot) {
        ValueMarker ceiling = ChartSheet.line(curve.ceilingDb(), theme.mark(), ChartSheet.DASHED);
        ChartSheet.label(
                ceiling,
                "ceiling " + db(curve.ceilingDb()) + " (gain " + Figures.text(curve.ceilingGain01(), 3)
                        + "), never passed",
                curve.loudFar() ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.BOTTOM_RIGHT,
                curve.loudFar() ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT,
                theme);
        plot.addRangeMarker(ceiling, Layer.FOREGROUND);
        ValueMarker floor = ChartSheet.line(curve.floorDb(), theme.edge(), ChartSheet.DASHED);
        ChartSheet.label(floor, "floor " + db(curve.floorDb()), RectangleAnchor.TOP, TextAnchor.BOTTOM_CENTER, theme);
        plot.addRangeMarker(floor, Layer.FOREGROUND);
        if (curve.knee01() > 0) {
            plot.addDomainMarker(knee(), Layer.FOREGROUND);
        }
    }

    private ValueMarker knee() {
        boolean loudFar = curve.loudFar();
        ValueMarker knee =
                ChartSheet.line(x(loudFar ? curve.knee01() : 1 - curve.knee01()), theme.edge(), ChartSheet.DASHED);
        ChartSheet.label(
                knee,
                "knee at " + Figures.percent(curve.knee01()) + " of the zone: from here down to silence",
                loudFar ? RectangleAnchor.BOTTOM_RIGHT : RectangleAnchor.BOTTOM_LEFT,
                loudFar ? TextAnchor.BOTTOM_LEFT : TextAnchor.BOTTOM_RIGHT,
                theme);
        return knee;
    }

    private static String db(double db) {
        return Marks.figure(db) + " dB";
    }
}
