package handspan.hand.smooth;

import handspan.number.units.Nanos;

/**
 * Keeps single wild readings out. A reading further from the last good one than a hand could have gone is held back; it
 * passes only when the next one confirms it. Owned by one thread.
 */
public final class SpikeGate {
    /** Fastest hand that passes without a wait, mm/s. A fast reach peaks at about 2 m/s (common practice). */
    private static final double FASTEST_MM_PER_S = 2500;

    /** Noise allowed on top, in standard deviations. */
    private static final double NOISE_TIMES = 6;

    private final double noiseMm;
    private double goodMm;
    private long goodNanos;
    private double heldMm;
    private long heldNanos;
    private boolean hasGood;
    private boolean hasHeld;
    private long heldBack;

    /**
     * A gate for a sensor.
     *
     * @param noiseMm standard deviation of its readings, mm
     */
    public SpikeGate(double noiseMm) {
        this.noiseMm = noiseMm;
    }

    /**
     * Judges a reading.
     *
     * @param mm position
     * @param timeNanos arrival
     * @return whether to go on with it
     */
    public boolean passes(double mm, long timeNanos) {
        if (hasGood && !agree(mm, timeNanos, goodMm, goodNanos)) {
            boolean confirmed = hasHeld && agree(mm, timeNanos, heldMm, heldNanos);
            if (!confirmed) {
                hasHeld = true;
                heldMm = mm;
                heldNanos = timeNanos;
                heldBack++;
                return false;
            }
        }
        hasGood = true;
        hasHeld = false;
        goodMm = mm;
        goodNanos = timeNanos;
        return true;
    }

    private boolean agree(double mm, long timeNanos, double otherMm, long otherNanos) {
        double reachMm = NOISE_TIMES * noiseMm + FASTEST_MM_PER_S * Nanos.toSeconds(timeNanos - otherNanos);
        return Math.abs(mm - otherMm) <= reachMm;
    }

    /** Forgets the last good reading; the next one passes. */
    public void reset() {
        hasGood = false;
        hasHeld = false;
    }

    /** Readings held back so far. */
    public long heldBack() {
        return heldBack;
    }
}
