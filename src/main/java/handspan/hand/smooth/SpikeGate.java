package handspan.hand.smooth;

import handspan.number.units.Nanos;

/**
 * Keeps single wild readings out. A reading further from where the hand was to be expected than a hand could have got
 * is held back; it passes only when the next one confirms it. Owned by one thread.
 */
public final class SpikeGate {
    /** Fastest hand that passes without a wait, mm/s. A fast reach peaks at about 2 m/s (common practice). */
    private static final double FASTEST_MM_PER_S = 2500;

    /**
     * Strongest acceleration that passes, mm/s^2. A reach of 250 mm that peaks at 2 m/s takes 26 m/s^2 (a minimum-jerk
     * move: T. Flash, N. Hogan, J. Neurosci. 5 (1985) 1688-1703); a smoother learns of it a reading late, which counts
     * three times in what it expects.
     */
    private static final double STRONGEST_MM_PER_S2 = 80_000;

    /** Noise allowed on top, in standard deviations. */
    private static final double NOISE_TIMES = 6;

    private double goodMm;
    private long goodNanos;
    private double heldMm;
    private long heldNanos;
    private boolean hasGood;
    private boolean hasHeld;
    private boolean jumped;
    private long heldBack;

    /**
     * Judges a reading.
     *
     * @param mm position
     * @param timeNanos when it was measured
     * @param expectedMm where the hand was to be expected then; NaN where nothing is known yet
     * @param noiseMm standard deviation of a reading there
     * @return whether to go on with it
     */
    public boolean passes(double mm, long timeNanos, double expectedMm, double noiseMm) {
        boolean usual = !hasGood
                || (near(mm, timeNanos, goodMm, goodNanos, noiseMm) && expected(mm, timeNanos, expectedMm, noiseMm));
        jumped = !usual && hasHeld && near(mm, timeNanos, heldMm, heldNanos, noiseMm);
        if (!usual && !jumped) {
            hasHeld = true;
            heldMm = mm;
            heldNanos = timeNanos;
            heldBack++;
            return false;
        }
        hasGood = true;
        hasHeld = false;
        goodMm = mm;
        goodNanos = timeNanos;
        return true;
    }

    /** Whether the last reading passed only because it confirmed the one before: the hand is elsewhere. */
    public boolean hasJumped() {
        return jumped;
    }

    /** Whether a hand could have come here from another reading. */
    private static boolean near(double mm, long timeNanos, double otherMm, long otherNanos, double noiseMm) {
        double reachMm = NOISE_TIMES * noiseMm + FASTEST_MM_PER_S * Nanos.toSeconds(timeNanos - otherNanos);
        return Math.abs(mm - otherMm) <= reachMm;
    }

    private boolean expected(double mm, long timeNanos, double expectedMm, double noiseMm) {
        double seconds = Nanos.toSeconds(timeNanos - goodNanos);
        double reachMm = NOISE_TIMES * noiseMm + STRONGEST_MM_PER_S2 * seconds * seconds / 2;
        return Double.isNaN(expectedMm) || Math.abs(mm - expectedMm) <= reachMm;
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
