package handspan.instrument.survey;

import handspan.number.fit.Noise;
import handspan.number.fit.Robust;
import java.util.Arrays;

/**
 * The longest stretch of a series in which the thing measured stood still: blocks of half a second whose medians stay
 * together.
 *
 * @param from first index
 * @param to index after the last
 */
record StillStretch(int from, int to) {
    /** Blocks may differ from the stretch's first by this many times the white noise. */
    private static final double NOISE_TIMES = 4;

    /**
     * Looks for it.
     *
     * @param series one channel
     * @param ratePerS readings a second
     * @param slack the least that blocks may differ, in the channel's unit
     * @return empty (from = to) when no two neighbouring blocks agree
     */
    static StillStretch in(Series series, double ratePerS, double slack) {
        int block = Math.max(4, (int) Math.round(ratePerS / 2));
        int blocks = series.size() / block;
        StillStretch best = new StillStretch(0, 0);
        int start = 0;
        double reference = Double.NaN;
        double limit = slack;
        for (int b = 0; b < blocks; b++) {
            double[] readings = series.readings(b * block, (b + 1) * block);
            boolean enough = readings.length >= block / 2 && readings.length >= 2;
            double allowed =
                    enough ? Math.max(slack, NOISE_TIMES * Noise.of(readings).white()) : slack;
            boolean seen = enough && drift(readings) <= allowed;
            double median = seen ? Robust.median(readings) : Double.NaN;
            if (!seen || Double.isNaN(reference) || Math.abs(median - reference) > limit) {
                start = b;
                reference = median;
                limit = allowed;
            } else if ((b + 1 - start) * block > best.to - best.from) {
                best = new StillStretch(start * block, (b + 1) * block);
            }
        }
        boolean throughout = best.to == blocks * block && best.to > best.from;
        return throughout ? new StillStretch(best.from, series.size()) : best;
    }

    /** From the first half of a block to the second: a hand that turns back gives two blocks of equal medians. */
    private static double drift(double[] readings) {
        int half = readings.length / 2;
        double first = Robust.median(Arrays.copyOfRange(readings, 0, half));
        double second = Robust.median(Arrays.copyOfRange(readings, half, readings.length));
        return Math.abs(second - first);
    }
}
