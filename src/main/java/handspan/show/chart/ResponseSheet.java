package handspan.show.chart;

import handspan.instrument.sensor.Sensor;
import handspan.number.fit.MonotoneCurve;
import handspan.number.units.Figures;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.Range;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * A response as a chart: the curve with its holds, and below it the residuals where a fit was made.
 *
 * @param hand whose
 * @param role of it
 * @param sensor of it
 * @param holds that the response was made from
 * @param theme of the chart
 */
record ResponseSheet(HandSetup hand, HandRole role, Sensor sensor, List<Hold> holds, Theme theme) {
    /** Series of the curve. */
    static final String CURVE = "response of this room";

    /** Series of the holds. */
    static final String HOLDS = "holds";

    /** Series of the residuals. */
    static final String RESIDUALS = "fitted less ruler";

    /** Series of the fit's uncertainty, upper and lower. */
    static final String UNCERTAIN = "fit, two standard uncertainties";

    private static final String UNCERTAIN_BELOW = "the same below";
    private static final int CURVE_SHARE = 5;
    private static final int RESIDUAL_SHARE = 4;
    private static final double GAP_PX = 10;
    private static final double COVERAGE = 2;
    private static final double BEYOND01 = 0.07;
    private static final double ROOM01 = 0.08;

    /** A residual smaller than this needs no height of its own, mm. */
    private static final double LEAST_RESIDUAL_MM = 0.5;

    private static final int STEPS = 200;

    /** Holds of a hand that its response may be made from, in their order. */
    static List<Hold> holds(Room room, HandRole role) {
        return room.holds().stream()
                .filter(hold -> hold.hand() == role && isShown(hold))
                .toList();
    }

    private static boolean isShown(Hold hold) {
        return switch (hold.kind()) {
            case NEAR, FAR, MID, RULER, NOTE, OPEN, COVERED -> true;
            case REST, AIM -> false;
        };
    }

    /** What the axis counts travel in. */
    private Across across() {
        return Across.of(hand);
    }

    /** Where a distance is on the axis. */
    double x(double mm) {
        return across() == Across.MM ? mm : hand.zone().place(mm);
    }

    /** Where a hold was: by ruler, else as the response has it. */
    private double holdMm(Hold hold) {
        return hold.mm().orElse(hand.response().mm(hold.physical()));
    }

    private String caption() {
        FitQuality fit = hand.fit();
        if (fit == null) {
            return Figures.count(holds.size())
                    + " holds, and the curve goes through them: nothing is left to compare it" + " with";
        }
        MonotoneCurve.Point worst = fit.worst();
        return fit.method() + " through " + Figures.count(fit.residuals().size()) + " holds: residuals "
                + Figures.text(fit.rmsMm(), 2) + " mm rms, the largest " + Figures.text(worst.y(), 2) + " mm at "
                + Figures.text(worst.x(), 0) + " mm; left out, a hold is foretold to "
                + Figures.text(fit.leftOutMm(), 2) + " mm rms";
    }

    JFreeChart chart(String name) {
        double beyond = BEYOND01 * hand.zone().lengthMm();
        Range range = new Range(x(hand.zone().nearMm() - beyond), x(hand.zone().farMm() + beyond));
        for (Hold hold : holds) {
            range = Range.expandToInclude(range, x(holdMm(hold)));
        }
        var axis = ChartSheet.numbers(
                across().label(role.word() + " hand"), range.getLowerBound(), range.getUpperBound(), theme);
        XYPlot curve = curve();
        FitQuality fit = hand.fit();
        if (fit == null || across() == Across.PLACE) {
            curve.setDomainAxis(axis);
            return ChartSheet.of(name, List.of(caption()), curve, theme);
        }
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(axis);
        both.setGap(GAP_PX);
        both.add(curve, CURVE_SHARE);
        both.add(residuals(fit), RESIDUAL_SHARE);
        return ChartSheet.of(name, List.of(caption()), both, theme);
    }

    private XYPlot curve() {
        double[][] line = new double[2][STEPS + 1];
        double[][] points = new double[2][holds.size()];
        Range heights = null;
        for (int i = 0; i <= STEPS; i++) {
            double mm = hand.zone().mm(i / (double) STEPS);
            line[0][i] = x(mm);
            line[1][i] = hand.response().physical(mm);
            heights = Range.expandToInclude(heights, line[1][i]);
        }
        for (int i = 0; i < holds.size(); i++) {
            points[0][i] = x(holdMm(holds.get(i)));
            points[1][i] = holds.get(i).physical();
            heights = Range.expandToInclude(heights, points[1][i]);
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(CURVE, line);
        data.addSeries(HOLDS, points);
        Range roomy = Range.expand(heights, ROOM01, ROOM01);
        XYPlot plot = ChartSheet.plot(
                null,
                ChartSheet.numbers(
                        "sensor (" + sensor.physicalUnit() + ")", roomy.getLowerBound(), roomy.getUpperBound(), theme),
                theme);
        plot.setDataset(data);
        plot.setRenderer(renderer(1));
        plot.addDomainMarker(
                ChartSheet.band(x(hand.zone().nearMm()), x(hand.zone().farMm()), theme.band()), Layer.BACKGROUND);
        return plot;
    }

    /** A line, and points from a series on. */
    private XYLineAndShapeRenderer renderer(int points) {
        XYLineAndShapeRenderer renderer = ChartSheet.lines();
        renderer.setSeriesPaint(0, theme.line());
        renderer.setSeriesStroke(0, ChartSheet.STRONG);
        renderer.setSeriesPaint(points, theme.mark());
        renderer.setSeriesLinesVisible(points, false);
        renderer.setSeriesShapesVisible(points, true);
        renderer.setSeriesShape(points, new Ellipse2D.Double(-4, -4, 8, 8));
        return renderer;
    }

    private XYPlot residuals(FitQuality fit) {
        double[][] above = new double[2][fit.uncertainty().size()];
        double[][] below = new double[2][fit.uncertainty().size()];
        double[][] points = new double[2][fit.residuals().size()];
        double most = LEAST_RESIDUAL_MM;
        for (int i = 0; i < above[0].length; i++) {
            above[0][i] = fit.uncertainty().get(i).x();
            below[0][i] = above[0][i];
            above[1][i] = COVERAGE * fit.uncertainty().get(i).y();
            below[1][i] = -above[1][i];
            most = Math.max(most, above[1][i]);
        }
        for (int i = 0; i < points[0].length; i++) {
            points[0][i] = fit.residuals().get(i).x();
            points[1][i] = fit.residuals().get(i).y();
            most = Math.max(most, Math.abs(points[1][i]));
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(UNCERTAIN, above);
        data.addSeries(UNCERTAIN_BELOW, below);
        data.addSeries(RESIDUALS, points);
        most *= 1 + 2 * ROOM01;
        XYPlot plot = ChartSheet.plot(null, ChartSheet.numbers("off by (mm)", -most, most, theme), theme);
        plot.setDataset(data);
        XYLineAndShapeRenderer renderer = renderer(2);
        for (int series = 0; series < 2; series++) {
            renderer.setSeriesPaint(series, theme.edge());
            renderer.setSeriesStroke(series, ChartSheet.DASHED);
        }
        renderer.setSeriesVisibleInLegend(1, false);
        plot.setRenderer(renderer);
        plot.addRangeMarker(ChartSheet.line(0, theme.quietText(), ChartSheet.THIN), Layer.BACKGROUND);
        return plot;
    }
}
