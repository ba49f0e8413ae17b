package handspan.hand.smooth;

/**
 * The "1 Euro" adaptive low-pass: its cut-off rises with the speed of the hand, so that a still hand is steady and a
 * moving one is followed. {@code fc = minCutoff + beta |v|}, v being the speed after a low-pass of its own.
 *
 * <p>Source: G. Casiez, N. Roussel, D. Vogel, 1 Euro Filter: a simple speed-based low-pass filter for noisy input in
 * interactive systems, CHI 2012, pp. 2527-2530. As in the authors' own program, the speed is taken from the reading
 * against the last output. Here it is what the smoother is held against.
 */
public final class OneEuro {
    private final double minCutoffHz;
    private final double betaHzPerMmPerS;
    private final double speedCutoffHz;
    private final OnePole position = new OnePole();
    private final OnePole speed = new OnePole();

    /**
     * A filter.
     *
     * @param minCutoffHz cut-off for a still hand, above 0
     * @param betaHzPerMmPerS how fast the cut-off rises with speed, 0 or more
     * @param speedCutoffHz cut-off of the speed, above 0
     */
    public OneEuro(double minCutoffHz, double betaHzPerMmPerS, double speedCutoffHz) {
        check(minCutoffHz, betaHzPerMmPerS, speedCutoffHz);
        this.minCutoffHz = minCutoffHz;
        this.betaHzPerMmPerS = betaHzPerMmPerS;
        this.speedCutoffHz = speedCutoffHz;
    }

    /**
     * Takes a reading.
     *
     * @param inputMm position in mm
     * @param intervalS time since the last reading, s, above 0; not used for the first
     * @return smoothed position in mm
     */
    public double next(double inputMm, double intervalS) {
        if (!position.hasValue()) {
            speed.next(0, speedCutoffHz, intervalS);
            return position.next(inputMm, minCutoffHz, intervalS);
        }
        double v = speed.next((inputMm - position.value()) / intervalS, speedCutoffHz, intervalS);
        return position.next(inputMm, minCutoffHz + betaHzPerMmPerS * Math.abs(v), intervalS);
    }

    private static void check(double minCutoffHz, double betaHzPerMmPerS, double speedCutoffHz) {
        if (!(minCutoffHz > 0) || !(betaHzPerMmPerS >= 0) || !(speedCutoffHz > 0)) {
            throw new IllegalArgumentException("cut-offs " + minCutoffHz + " and " + speedCutoffHz
                    + " Hz (above 0), beta " + betaHzPerMmPerS + " Hz per mm/s (0 or more)");
        }
    }

    /** Forgets all; the next reading is taken as it is. */
    public void reset() {
        position.reset();
        speed.reset();
    }

    /**
     * The smoothed speed that steers the cut-off, mm/s. Being taken against the last output, it is larger than the
     * hand's own wherever the output lags: on a steady move by the factor 1 / share of the one-pole.
     */
    public double speedMmPerS() {
        return speed.hasValue() ? speed.value() : 0;
    }
}
