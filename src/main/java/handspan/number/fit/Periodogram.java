package handspan.number.fit;

import java.util.Arrays;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.special.Gamma;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.util.FastMath;
import org.hipparchus.util.SinCos;

/**
 * Finds a wobble in readings, evenly spaced or not: how much of their scatter a sine of each frequency explains. Of
 * even readings a frequency above half their rate shows as a lower one as well; the band searched decides which is
 * meant.
 *
 * <p>Source: N. R. Lomb, Astrophys. Space Sci. 39 (1976) 447-462; J. D. Scargle, Astrophys. J. 263 (1982) 835-853, with
 * the mean taken off and divided by the variance of the readings (the classic normalised form).
 */
public final class Periodogram {
    /** Frequencies tried per {@code 1 / span}: a peak of that width loses at most 2 % of its height between them. */
    private static final int PER_WIDTH = 8;

    /** Readings times frequencies, about ten seconds of work. */
    private static final double MOST_WORK = 2e8;

    /**
     * A peak.
     *
     * @param frequencyHz where the power is greatest
     * @param amplitude of the sine there, half of peak to peak, in the unit of the readings
     * @param power normalised: 1 on average for white noise
     * @param falseAlarm01 chance that white noise alone shows such a peak anywhere in the band searched
     */
    public record Peak(double frequencyHz, double amplitude, double power, double falseAlarm01) {}

    private final double[] timesS;
    private final double[] centred;
    private final double variance;

    private Periodogram(double[] timesS, double[] values) {
        if (Arrays.stream(timesS).distinct().count() < 4) {
            throw new IllegalArgumentException(
                    timesS.length + " readings (at least 4 at different times): record for longer");
        }
        this.timesS = timesS;
        double mean = StatUtils.mean(values);
        centred = Arrays.stream(values).map(value -> value - mean).toArray();
        variance = StatUtils.variance(values);
    }

    /**
     * Of readings at any times.
     *
     * @param timesS in any order, at least 4 different
     * @param values as many
     */
    public static Periodogram of(double[] timesS, double[] values) {
        Points points = Points.alike(timesS, values);
        return new Periodogram(points.x(), points.y());
    }

    /**
     * Of evenly spaced readings.
     *
     * @param values at least 4
     * @param intervalS from one to the next, above 0
     */
    public static Periodogram ofEven(double[] values, double intervalS) {
        if (!(intervalS > 0)) {
            throw new IllegalArgumentException("readings every " + intervalS + " s (above 0)");
        }
        double[] timesS = new double[values.length];
        Arrays.setAll(timesS, i -> i * intervalS);
        return of(timesS, values);
    }

    /**
     * Normalised power: half the drop in the sum of squares when a sine is taken out, over the variance.
     *
     * @param frequencyHz above 0
     * @return 0..(n-1)/2; 0 for readings that are all equal
     */
    public double power(double frequencyHz) {
        return variance == 0 ? 0 : sine(frequencyHz).explained() / (2 * variance);
    }

    /**
     * Amplitude of the sine that fits best.
     *
     * @param frequencyHz above 0
     * @return half of peak to peak, in the unit of the readings
     */
    public double amplitude(double frequencyHz) {
        return sine(frequencyHz).amplitude();
    }

    /**
     * The strongest wobble in a band.
     *
     * @param lowHz above 0; below {@code 1 / span} a drift counts as a wobble
     * @param highHz above that
     */
    public Peak strongest(double lowHz, double highHz) {
        double spanS = StatUtils.max(timesS) - StatUtils.min(timesS);
        double tried = Math.ceil((highHz - lowHz) * spanS * PER_WIDTH) + 1;
        if (!(lowHz > 0 && highHz > lowHz) || tried * timesS.length > MOST_WORK) {
            throw new IllegalArgumentException("band " + lowHz + ".." + highHz + " Hz for " + timesS.length
                    + " readings over " + spanS + " s (above 0, rising): take a narrower band or fewer readings");
        }
        double stepHz = (highHz - lowHz) / (tried - 1);
        double bestHz = lowHz;
        double best = power(lowHz);
        for (int i = 1; i < tried; i++) {
            double frequencyHz = Math.min(highHz, lowHz + i * stepHz);
            double power = power(frequencyHz);
            if (power > best) {
                bestHz = frequencyHz;
                best = power;
            }
        }
        double peakHz = refined(bestHz, Math.max(lowHz, bestHz - stepHz), Math.min(highHz, bestHz + stepHz));
        double power = power(peakHz);
        return new Peak(peakHz, amplitude(peakHz), power, falseAlarm(power, highHz - lowHz));
    }

    private double refined(double bestHz, double lowHz, double highHz) {
        UnivariateFunction power = this::power;
        return new BrentOptimizer(1e-10, 1e-14)
                .optimize(
                        new UnivariateObjectiveFunction(power),
                        GoalType.MAXIMIZE,
                        new SearchInterval(lowHz, highHz, bestHz),
                        new MaxEval(200))
                .getPoint();
    }

    /**
     * About the chance that white noise reaches a power anywhere in a band, a little high for uneven times: {@code 1 -
     * (1 - p) exp(-tau)} with the share of the scatter explained {@code Z = 2 power / (n-1)}, {@code p =
     * (1-Z)^((n-3)/2)} at one frequency, {@code tau = g W (1-Z)^((n-4)/2) sqrt((n-1) Z / 2)}, {@code W} the width of
     * the band times {@code sqrt(4 pi var(t))}, {@code g = sqrt(2/(n-1)) Gamma((n-1)/2) / Gamma((n-2)/2)}. Source: R.
     * V. Baluev, Assessing the statistical significance of periodogram peaks, MNRAS 385 (2008) 1279-1285, equations
     * (5), (6) and table 1.
     */
    double falseAlarm(double power, double widthHz) {
        double freedom = timesS.length - 1.0;
        double share = Math.min(1, 2 * power / freedom);
        double single = Math.pow(1 - share, (freedom - 2) / 2);
        double width = widthHz * Math.sqrt(4 * Math.PI * StatUtils.populationVariance(timesS));
        double gamma =
                Math.sqrt(2 / freedom) * Math.exp(Gamma.logGamma(freedom / 2) - Gamma.logGamma((freedom - 1) / 2));
        double tau = gamma * width * Math.pow(1 - share, (freedom - 3) / 2) * Math.sqrt(0.5 * freedom * share);
        return -Math.expm1(-tau) + single * Math.exp(-tau);
    }

    private record Sine(double explained, double amplitude) {}

    /** Scargle 1982, equations (10) and (11): the shift of time that makes sine and cosine independent is an angle. */
    private Sine sine(double frequencyHz) {
        if (!(frequencyHz > 0)) {
            throw new IllegalArgumentException("frequency " + frequencyHz + " Hz (above 0)");
        }
        double sinSquare = 0;
        double both = 0;
        double sinValue = 0;
        double cosValue = 0;
        for (int i = 0; i < timesS.length; i++) {
            SinCos angle = FastMath.sinCos(2 * Math.PI * frequencyHz * (timesS[i] - timesS[0]));
            sinSquare += angle.sin() * angle.sin();
            both += angle.sin() * angle.cos();
            sinValue += centred[i] * angle.sin();
            cosValue += centred[i] * angle.cos();
        }
        double cosSquare = timesS.length - sinSquare;
        SinCos shift = FastMath.sinCos(0.5 * Math.atan2(2 * both, cosSquare - sinSquare));
        double turned = 2 * shift.sin() * shift.cos() * both;
        double cosBelow = shift.cos() * shift.cos() * cosSquare + turned + shift.sin() * shift.sin() * sinSquare;
        double alongCos = shift.cos() * cosValue + shift.sin() * sinValue;
        double alongSin = shift.cos() * sinValue - shift.sin() * cosValue;
        double cosPart = ratio(alongCos, cosBelow);
        double sinPart = ratio(alongSin, timesS.length - cosBelow);
        return new Sine(cosPart * alongCos + sinPart * alongSin, Math.hypot(cosPart, sinPart));
    }

    /** At half the rate of even readings one of the two is 0 at every reading, and says nothing. */
    private double ratio(double along, double below) {
        return below < 1e-9 * timesS.length ? 0 : along / below;
    }
}
