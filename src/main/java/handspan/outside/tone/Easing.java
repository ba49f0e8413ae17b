package handspan.outside.tone;

import java.util.Arrays;

/**
 * Takes the steps and corners out of a control: the mean of the latest 5 ms, and of that once more the mean of 5 ms. A
 * step becomes an S of 10 ms; a straight line stays one and comes {@link #LATE} samples later; what does not move is
 * given back exactly, and nothing overshoots. Sums are whole numbers, so that they hold for hours. Owned by one thread.
 */
final class Easing {
    /** 5 ms: sines that swell within 5 ms or more are heard without a click (common practice). */
    static final int WINDOW = Pcm.SAMPLES_PER_S / 200;

    /** How much later a straight line comes, samples. */
    static final int LATE = WINDOW - 1;

    /** Steps of a control: 2^-40. Twice summed over 240 samples, controls up to 128 stay below 2^63. */
    private static final double UNIT = 1L << 40;

    private static final double MOST = 100;

    private final long[] values = new long[WINDOW];
    private final long[] sums = new long[WINDOW];
    private long sum;
    private long sumOfSums;
    private int at;

    /** As if a control had been there for ever. */
    void fill(double control) {
        long value = steps(control);
        sum = WINDOW * value;
        sumOfSums = WINDOW * sum;
        Arrays.fill(values, value);
        Arrays.fill(sums, sum);
    }

    /**
     * One sample later.
     *
     * @param control 0..100
     */
    double next(double control) {
        long value = steps(control);
        sum += value - values[at];
        values[at] = value;
        sumOfSums += sum - sums[at];
        sums[at] = sum;
        at = at + 1 == WINDOW ? 0 : at + 1;
        return sumOfSums / (UNIT * WINDOW * WINDOW);
    }

    /** Whether all of the latest 10 ms is 0. */
    boolean isZero() {
        return sumOfSums == 0;
    }

    private static long steps(double control) {
        return Math.round(Math.max(0, Math.min(MOST, control)) * UNIT);
    }
}
