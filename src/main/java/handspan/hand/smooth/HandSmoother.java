package handspan.hand.smooth;

/**
 * Smooths the hand's distance: an adaptive low-pass ({@link OneEuro}) whose cut-off is opened where the hand vibrates
 * ({@link VibratoSense}). Owned by one thread.
 */
public final class HandSmoother {
    /** Cut-off while vibrato is sure, Hz: five times its rate, so that it keeps its width. */
    private static final double VIBRATO_CUTOFF_HZ = 30;

    private final OneEuro adaptive;
    private final VibratoSense vibrato;

    /**
     * A smoother.
     *
     * @param settings for a still hand
     * @param noiseMm standard deviation of one reading, mm
     * @param ratePerS readings a second
     */
    public HandSmoother(SmoothSettings settings, double noiseMm, double ratePerS) {
        this.adaptive = new OneEuro(settings.minCutoffHz(), settings.betaHzPerMmPerS(), SmoothSettings.SPEED_CUTOFF_HZ);
        this.vibrato = new VibratoSense(noiseMm, ratePerS);
    }

    /** Goes on with other settings, from where it is. */
    public void use(SmoothSettings settings) {
        adaptive.use(settings.minCutoffHz(), settings.betaHzPerMmPerS());
    }

    /**
     * Takes a reading.
     *
     * @param inputMm position in mm
     * @param intervalS time since the last reading, s, above 0; not used for the first
     * @return smoothed position in mm
     */
    public double next(double inputMm, double intervalS) {
        double open = vibrato.next01(inputMm, intervalS);
        return adaptive.next(inputMm, intervalS, open * VIBRATO_CUTOFF_HZ);
    }

    /** Forgets all; the next reading is taken as it is. */
    public void reset() {
        adaptive.reset();
        vibrato.reset();
    }

    /** The smoothed speed, mm/s; larger than the hand's own where the output lags. */
    public double speedMmPerS() {
        return adaptive.speedMmPerS();
    }
}
