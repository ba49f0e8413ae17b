package handspan.instrument.survey;

import handspan.number.units.Figures;
import java.util.Arrays;

/**
 * What a number does while no hand is there, and whether another value could be of the same rest.
 *
 * @param quiet whether most lines had no number, or again and again the same one
 * @param same that one; NaN where there was none
 * @param low least value of an ordinary rest
 * @param high greatest one
 */
record AtRest(boolean quiet, double same, double low, double high) {
    private static final double MOSTLY01 = 0.8;
    private static final double SAME = 0.001;

    /** A rest is scattered wider in five seconds than in three, and a hand moves numbers by far more. */
    private static final double WIDER = 1;

    private static final double LEAST_SHARE = 0.02;

    static AtRest of(SlotInPart rest) {
        double[] sorted = rest.sorted();
        if (sorted.length <= (1 - MOSTLY01) * rest.lines()) {
            return new AtRest(true, Double.NaN, Double.NaN, Double.NaN);
        }
        double median = sorted[sorted.length / 2];
        long alike = Arrays.stream(sorted)
                .filter(value -> Math.abs(value - median) <= SAME * Math.abs(median))
                .count();
        boolean quiet = alike >= MOSTLY01 * sorted.length;
        // single strays of a rest don't widen it
        int cut = sorted.length / 50;
        double low = quiet ? median : sorted[cut];
        double high = quiet ? median : sorted[sorted.length - 1 - cut];
        double more = Math.max(WIDER * (high - low), LEAST_SHARE * Math.abs(median));
        return new AtRest(quiet, quiet ? median : Double.NaN, low - more, high + more);
    }

    /** Whether a value says that something else than at rest is before the sensor; never NaN, which is no number. */
    boolean isLeftBy(double value) {
        return !Double.isNaN(value) && (Double.isNaN(low) || value < low || value > high);
    }

    String words() {
        if (Double.isNaN(low)) {
            return "no number";
        }
        if (quiet) {
            return Figures.text(same, same == Math.rint(same) ? 0 : 2) + " again and again";
        }
        return "about " + Figures.text((low + high) / 2, decimals((low + high) / 2));
    }

    private static int decimals(double value) {
        return value == Math.rint(value) || Math.abs(value) >= 20 ? 0 : 2;
    }
}
