package handspan.number.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * What a fit leaves over.
 *
 * @param residuals measured less fitted y, in the unit of y, in the order of the points
 * @param sumOfSquares of the residuals, each divided by its standard uncertainty where those were given (chi-square);
 *     else in the square of the unit of y
 * @param freedom points less parameters, 0 or more
 * @param uncertaintiesKnown whether standard uncertainties of y were given
 */
public record Misfit(List<Double> residuals, double sumOfSquares, int freedom, boolean uncertaintiesKnown) {
    /** Checks that something can be made of it. */
    public Misfit {
        residuals = List.copyOf(residuals);
        if (!(sumOfSquares >= 0) || freedom < 0 || (freedom == 0 && !uncertaintiesKnown)) {
            throw new IllegalArgumentException("sum of squares " + sumOfSquares + ", degrees of freedom " + freedom
                    + " (not under 0; at least 1 where no uncertainties are known)");
        }
    }

    static Misfit of(Points points, DoubleUnaryOperator fitted, int parameters) {
        List<Double> residuals = new ArrayList<>(points.count());
        double sum = 0;
        for (int i = 0; i < points.count(); i++) {
            double residual = points.y(i) - fitted.applyAsDouble(points.x(i));
            double weighted = residual / points.u(i);
            residuals.add(residual);
            sum += weighted * weighted;
        }
        return new Misfit(residuals, sum, points.count() - parameters, points.uncertaintiesKnown());
    }

    /**
     * Root of the sum of squares per degree of freedom. Where uncertainties were given it is near 1 if they are honest
     * (its square is the reduced chi-square); else it is the residual standard deviation, in the unit of y.
     *
     * @return empty without a degree of freedom
     */
    public OptionalDouble scatter() {
        return freedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sumOfSquares / freedom));
    }

    /**
     * What the uncertainties that follow from the weights alone must be multiplied by: 1 where uncertainties of y were
     * given, which stand whatever the scatter; else the scatter (JCGM 100:2008 (GUM), H.3.2).
     */
    double scale() {
        return uncertaintiesKnown ? 1 : scatter().orElseThrow();
    }
}
