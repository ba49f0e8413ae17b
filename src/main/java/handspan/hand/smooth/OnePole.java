package handspan.hand.smooth;

/**
 * A first-order low-pass for unevenly spaced readings.
 *
 * <p>{@code y += a (x - y)}, {@code a = 1 / (1 + tau / T)}, {@code tau = 1 / (2 pi fc)}, with T the time since the last
 * reading and fc the cut-off. Source: the exponential smoothing that G. Casiez, N. Roussel and D. Vogel, 1 Euro Filter,
 * CHI 2012, pp. 2527-2530, start from. Owned by one thread.
 */
public final class OnePole {
    private double value;
    private boolean started;

    /**
     * The share of the way that one reading goes.
     *
     * @param cutoffHz above 0
     * @param intervalS time since the last reading, s, above 0
     * @return 0..1
     */
    public static double share01(double cutoffHz, double intervalS) {
        double tau = 1 / (2 * Math.PI * cutoffHz);
        return 1 / (1 + tau / intervalS);
    }

    /** Takes a reading; the first one is taken as it is. */
    public double next(double input, double cutoffHz, double intervalS) {
        value = started ? value + share01(cutoffHz, intervalS) * (input - value) : input;
        started = true;
        return value;
    }

    /** Forgets all. */
    public void reset() {
        started = false;
    }

    /** The latest output. */
    public double value() {
        return value;
    }

    /** Whether there was a reading since the start or the last reset. */
    public boolean hasValue() {
        return started;
    }
}
