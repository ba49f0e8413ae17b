package handspan.music.passage;

import handspan.number.fit.Periodogram;
import handspan.number.fit.PolynomialFit;
import java.util.Arrays;
import java.util.Optional;

/**
 * Looks for vibrato in a note: the strongest sine of 4 to 8 Hz, held against the spectrum around it. Singers' vibrato
 * is about 6 Hz (E. Prame, Measurements of the vibrato rate of ten singers, J. Acoust. Soc. Am. 96 (1994) 1979-1984;
 * from memory); 4 to 8 Hz is common practice.
 *
 * <p>What a hand and its sensor do by themselves is stronger where it is slower, so that the chance for white noise
 * would promise too much. A straight line through the logarithms of the spectrum from 2 to 12 Hz, without the peak, is
 * the background (S. Vaughan, A simple test for periodic signals in red noise, Astron. Astrophys. 431 (2005) 391-403;
 * from memory). The ratio of peak and background has, over m ordinates, a chance of {@code (1 + ratio/m)^-m} to be as
 * great at one frequency: the F distribution with 2 and 2m degrees of freedom. A line through logarithms is worth
 * {@code (count - 2) / (pi^2/6)} ordinates, the variance of the logarithm of an exponential variable being pi^2/6.
 */
final class VibratoSearch {
    /** Lowest rate that is called vibrato. */
    static final double LOW_HZ = 4;

    /** Highest. */
    static final double HIGH_HZ = 8;

    /** Narrower ones are left to the trembling of the hand (this project's own choice). */
    static final double LEAST_CENTS = 5;

    /** Shorter notes hold too few turns. */
    static final double SHORTEST_S = 1;

    private static final double BACKGROUND_LOW_HZ = 2;
    private static final double BACKGROUND_HIGH_HZ = 12;
    private static final int LONGEST = (int) Math.round(60 / Sounding.STEP_S);

    /**
     * Mean of the logarithm, base 10, of an exponential variable of mean 1 is minus this (Euler's constant / ln 10).
     */
    private static final double LOG_BIAS = 0.25068;

    /** Variance of the natural logarithm of such a variable. */
    private static final double LOG_VARIANCE = Math.PI * Math.PI / 6;

    /** So many independent frequencies stand in the width of one ordinate when a peak is searched between them. */
    private static final double BETWEEN = 3;

    private static final double TINY = 1e-12;

    /** From sample to sample of the spectrum, s: every second one is plenty for 12 Hz. */
    private static final double STEP_S = 2 * Sounding.STEP_S;

    private final double[] cents;
    private final double spanS;

    private VibratoSearch(double[] cents) {
        double[] half = new double[cents.length / 2];
        Arrays.setAll(half, i -> cents[2 * i]);
        this.cents = straightened(half);
        this.spanS = half.length * STEP_S;
    }

    /** Whether a note is long enough to be searched. */
    static boolean isLongEnough(int samples) {
        return samples * Sounding.STEP_S >= SHORTEST_S;
    }

    /**
     * Searches.
     *
     * @param cents pitch of one note, every {@link Sounding#STEP_S}; of a note longer than a minute its first
     * @param chance01 that noise alone may be taken for vibrato
     */
    static Optional<Vibrato> in(double[] cents, double chance01) {
        if (!isLongEnough(cents.length)) {
            return Optional.empty();
        }
        return new VibratoSearch(Arrays.copyOf(cents, Math.min(LONGEST, cents.length)))
                .strongest()
                .filter(found -> found.widthCents() >= LEAST_CENTS && found.chance01() <= chance01);
    }

    /** Without the slow way into the note and through it. */
    private static double[] straightened(double[] cents) {
        double[] places = new double[cents.length];
        Arrays.setAll(places, i -> 2.0 * i / (cents.length - 1) - 1);
        PolynomialFit slow = PolynomialFit.equalWeights(places, cents, 2);
        double[] rest = new double[cents.length];
        Arrays.setAll(rest, i -> cents[i] - slow.at(places[i]).value());
        return rest;
    }

    private Optional<Vibrato> strongest() {
        Periodogram spectrum = Periodogram.ofEven(cents, STEP_S);
        Periodogram.Peak peak = spectrum.strongest(LOW_HZ, HIGH_HZ);
        if (!(peak.power() > 0)) {
            return Optional.empty();
        }
        return Optional.of(new Vibrato(peak.frequencyHz(), peak.amplitude(), chance(spectrum, peak)));
    }

    private double chance(Periodogram spectrum, Periodogram.Peak peak) {
        int first = (int) Math.ceil(BACKGROUND_LOW_HZ * spanS);
        int last = (int) Math.floor(BACKGROUND_HIGH_HZ * spanS);
        double[] logHz = new double[last - first + 1];
        double[] logPower = new double[last - first + 1];
        int count = 0;
        for (int k = first; k <= last; k++) {
            double hz = k / spanS;
            if (Math.abs(hz - peak.frequencyHz()) * spanS >= 1.25) {
                logHz[count] = Math.log10(hz);
                logPower[count] = Math.log10(Math.max(TINY, spectrum.power(hz)));
                count++;
            }
        }
        PolynomialFit line = PolynomialFit.equalWeights(Arrays.copyOf(logHz, count), Arrays.copyOf(logPower, count), 1);
        double background = Math.pow(10, line.at(Math.log10(peak.frequencyHz())).value() + LOG_BIAS);
        double worth = (count - 2) / LOG_VARIANCE;
        double single = Math.pow(1 + peak.power() / background / worth, -worth);
        double tried = Math.max(1, BETWEEN * (HIGH_HZ - LOW_HZ) * spanS);
        return -Math.expm1(tried * Math.log1p(-Math.min(single, 1 - TINY)));
    }
}
