package handspan.show.chart;

import handspan.instrument.sensor.Sensor;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.Range;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * What a room keeps of the holds of its pitch hand: the noise of one reading at each, and between them the noise that
 * the smoothing reckons with. {@link #response} draws what the same holds say of the sensor.
 */
public final class HoldsChart {
    /** Series of the holds. */
    static final String HOLDS = "holds";

    /** Series of what the smoothing reckons with. */
    static final String RECKONED = "noise that is reckoned with";

    private static final double BEYOND01 = 0.07;
    private static final double HEAD_ROOM = 1.25;
    private static final int STEPS = 100;

    /** Of the small difference that a slope is taken over, shares of the value. */
    private static final double SMALL = 1e-4;

    private final Room room;
    private final HandSetup hand;
    private final Theme theme;
    private final List<Hold> holds;

    private HoldsChart(Room room, Theme theme) {
        this.room = room;
        this.hand = room.pitch();
        this.theme = theme;
        this.holds = holds(room);
    }

    /** The holds of the pitch hand that are drawn; empty where the room keeps none. */
    public static List<Hold> holds(Room room) {
        return ResponseSheet.holds(room, HandRole.PITCH);
    }

    /** Draws the noise at the holds of a room. */
    static JFreeChart noise(Room room, Theme theme) {
        HoldsChart chart = new HoldsChart(room, theme);
        return ChartSheet.of("Noise of the holds in " + room.name(), List.of(chart.caption()), chart.plot(), theme);
    }

    /** Draws what the sensor says against where the hand is, with what is left of each hold where a fit was made. */
    static JFreeChart response(Room room, Theme theme) {
        HandSetup hand = room.pitch();
        Sensor sensor = room.sensor(hand);
        return new ResponseSheet(hand, HandRole.PITCH, sensor, holds(room), theme)
                .chart("Response of the pitch hand in " + room.name());
    }

    /** Fast noise of a reading at a hold, mm: that of the sensor over how fast its value runs with the distance. */
    static double noiseMm(Response response, Hold hold) {
        double step = SMALL * Math.max(1, Math.abs(hold.physical()));
        double slope = (response.mm(hold.physical() + step) - response.mm(hold.physical() - step)) / (2 * step);
        return hold.noise() * Math.abs(slope);
    }

    private String caption() {
        return Figures.count(holds.size()) + (holds.size() == 1 ? " hold" : " holds")
                + ", fast scatter of one reading at "
                + Figures.text(room.ratePerS(), 1) + " readings a second, before any smoothing; at most "
                + Figures.text(hand.noiseMm(), 2) + " mm";
    }

    private double x(double mm) {
        return Across.of(hand) == Across.MM ? mm : hand.zone().place(mm);
    }

    private double holdMm(Hold hold) {
        return hold.mm().orElse(hand.response().mm(hold.physical()));
    }

    private XYPlot plot() {
        double beyond = BEYOND01 * hand.zone().lengthMm();
        Range across = new Range(x(hand.zone().nearMm() - beyond), x(hand.zone().farMm() + beyond));
        double top = hand.noiseMm();
        for (Hold hold : holds) {
            across = Range.expandToInclude(across, x(holdMm(hold)));
            top = Math.max(top, noiseMm(hand.response(), hold));
        }
        XYPlot plot = ChartSheet.plot(
                ChartSheet.numbers(
                        Across.of(hand).label("pitch hand"), across.getLowerBound(), across.getUpperBound(), theme),
                ChartSheet.numbers("noise (mm rms)", 0, top > 0 ? HEAD_ROOM * top : 1, theme),
                theme);
        plot.setDataset(data());
        plot.setRenderer(renderer());
        plot.addDomainMarker(
                ChartSheet.band(x(hand.zone().nearMm()), x(hand.zone().farMm()), theme.band()), Layer.BACKGROUND);
        return plot;
    }

    private DefaultXYDataset data() {
        double[][] points = new double[2][holds.size()];
        for (int i = 0; i < holds.size(); i++) {
            points[0][i] = x(holdMm(holds.get(i)));
            points[1][i] = noiseMm(hand.response(), holds.get(i));
        }
        double[][] line = new double[2][STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double mm = hand.zone().mm(i / (double) STEPS);
            line[0][i] = x(mm);
            line[1][i] = hand.noise().at(mm);
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(RECKONED, line);
        data.addSeries(HOLDS, points);
        return data;
    }

    private XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setSeriesPaint(0, theme.line());
        renderer.setSeriesStroke(0, ChartSheet.STRONG);
        renderer.setSeriesPaint(1, theme.mark());
        renderer.setSeriesLinesVisible(1, false);
        renderer.setSeriesShapesVisible(1, true);
        renderer.setSeriesShape(1, new Ellipse2D.Double(-5, -5, 10, 10));
        return renderer;
    }
}
