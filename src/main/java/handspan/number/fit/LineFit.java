package handspan.number.fit;

import org.hipparchus.stat.descriptive.moment.Mean;

/**
 * The straight line with the least sum of weighted squares, and what it is worth. Kept by its centre, where height and
 * slope are uncorrelated. Not for points with wild ones among them: {@link TheilSen}.
 *
 * <p>Source: ISO/TS 28037:2010, Determination and use of straight-line calibration functions, clause 6 (known unequal
 * uncertainties of y), and JCGM 100:2008 (GUM), H.3 (uncertainties taken from the scatter about the line).
 *
 * @param centreX weighted mean of x
 * @param centre height of the line there
 * @param slope in the unit of y per unit of x
 * @param misfit what the line leaves over
 */
public record LineFit(double centreX, Estimate centre, Estimate slope, Misfit misfit) {
    /**
     * Fits points whose y are known with given standard uncertainties. Those of the line follow from them, whatever the
     * scatter; a scatter far from 1 says that they or the straight line are wrong.
     *
     * @param x exactly known, at least two different
     * @param y as many
     * @param u standard uncertainty of each y, above 0
     */
    public static LineFit of(double[] x, double[] y, double[] u) {
        return through(Points.withUncertainties(x, y, u));
    }

    /**
     * Fits points that all count alike. The uncertainty of y is taken from the scatter about the line.
     *
     * @param x exactly known, at least three, at least two different
     * @param y as many
     */
    public static LineFit equalWeights(double[] x, double[] y) {
        return through(Points.alike(x, y));
    }

    private static LineFit through(Points points) {
        int least = points.uncertaintiesKnown() ? 2 : 3;
        if (points.count() < least || points.differentX() < 2) {
            throw new IllegalArgumentException(points.count() + " points, " + points.differentX()
                    + " different x, for a line (at least " + least + " points, 2 different x): measure more points");
        }
        double[] weights = points.weights();
        double centreX = new Mean().evaluate(points.x(), weights);
        double centreY = new Mean().evaluate(points.y(), weights);
        double weight = 0;
        double square = 0;
        double product = 0;
        for (int i = 0; i < points.count(); i++) {
            double away = points.x(i) - centreX;
            weight += weights[i];
            square += weights[i] * away * away;
            product += weights[i] * away * (points.y(i) - centreY);
        }
        double slope = product / square;
        Misfit misfit = Misfit.of(points, x -> centreY + slope * (x - centreX), 2);
        double scale = misfit.scale();
        return new LineFit(
                centreX,
                new Estimate(centreY, scale / Math.sqrt(weight)),
                new Estimate(slope, scale / Math.sqrt(square)),
                misfit);
    }

    /** The line where x is 0. */
    public Estimate intercept() {
        return at(0);
    }

    /** Covariance of intercept and slope. */
    public double covariance() {
        return -centreX * slope.standardUncertainty() * slope.standardUncertainty();
    }

    /** Correlation of intercept and slope, -1..1; 0 for a line without uncertainty. */
    public double correlation() {
        double below = intercept().standardUncertainty() * slope.standardUncertainty();
        return below == 0 ? 0 : covariance() / below;
    }

    /**
     * The line at x, with the uncertainty of the line alone (not that of a new reading there). Source: JCGM 100:2008
     * (GUM), H.3.4.
     */
    public Estimate at(double x) {
        double away = x - centreX;
        return new Estimate(
                centre.value() + slope.value() * away,
                Math.hypot(centre.standardUncertainty(), away * slope.standardUncertainty()));
    }

    /**
     * Where the line has a value that was measured. Source: ISO/TS 28037:2010, inverse evaluation: {@code u^2(x) =
     * (u^2(y) + u^2(line at x)) / slope^2}.
     *
     * @param y measured, with its own standard uncertainty
     */
    public Estimate inverse(Estimate y) {
        if (slope.value() == 0) {
            throw new IllegalStateException("a level line has no inverse");
        }
        double x = centreX + (y.value() - centre.value()) / slope.value();
        double u = Math.hypot(y.standardUncertainty(), at(x).standardUncertainty());
        return new Estimate(x, u / Math.abs(slope.value()));
    }
}
