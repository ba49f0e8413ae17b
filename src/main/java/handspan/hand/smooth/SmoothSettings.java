package handspan.hand.smooth;

import handspan.number.units.Figures;

/**
 * Settings of the smoothing, computed from a room's noise.
 *
 * @param minCutoffHz cut-off for a still hand
 * @param betaHzPerMmPerS rise of the cut-off with speed
 * @param jitterMm expected wobble of a still hand after smoothing, rms
 * @param stillLagMs lag for a still hand
 */
public record SmoothSettings(double minCutoffHz, double betaHzPerMmPerS, double jitterMm, double stillLagMs) {
    /** Longest lag for a still hand, ms. */
    public static final double LONGEST_LAG_MS = 60;

    /** Cut-off of the speed estimate, Hz (the value its authors start from). */
    public static final double SPEED_CUTOFF_HZ = 1;

    /** Noise makes a still hand look as if it moved; that may raise the cut-off by this share. */
    private static final double NOISE_RISE = 0.3;

    private static final double MOST_BETA = 0.1;

    /**
     * The least lag that brings the wobble down to a target, or the wobble that the longest lag can reach.
     *
     * <p>A one-pole of share a passes white noise of standard deviation s as {@code s sqrt(a / (2 - a))} and lags
     * {@code (1 - a) / a} readings (both closed forms of the geometric series of its weights).
     *
     * @param noiseMm standard deviation of one reading, mm
     * @param ratePerS readings a second
     * @param targetMm wanted wobble, rms, mm
     */
    public static SmoothSettings reaching(double noiseMm, double ratePerS, double targetMm) {
        double intervalS = 1 / ratePerS;
        double ratio = noiseMm <= 0 ? 1 : Math.min(1, targetMm / noiseMm);
        double wanted = 2 * ratio * ratio / (1 + ratio * ratio);
        double least = 1 / (1 + LONGEST_LAG_MS / 1000 * ratePerS);
        double share = Math.min(0.9, Math.max(wanted, least));
        double effectiveHz = OnePole.cutoffHz(share, intervalS);
        double minCutoffHz = effectiveHz / (1 + NOISE_RISE);
        double speedShare = OnePole.share01(SPEED_CUTOFF_HZ, intervalS);
        // as if each difference were new noise: twice too much, so that the cut-off rises by half that share only;
        // the rest is room for its being highest just when the noise is
        double speedNoise = noiseMm * ratePerS * Math.sqrt(2 * speedShare / (2 - speedShare));
        // the mean of |v| of normal noise is 0.8 of its standard deviation
        double beta = speedNoise <= 0 ? MOST_BETA : NOISE_RISE * minCutoffHz / (0.8 * speedNoise);
        return new SmoothSettings(
                minCutoffHz,
                Math.min(MOST_BETA, beta),
                noiseMm * Math.sqrt(share / (2 - share)),
                1000 * intervalS * (1 - share) / share);
    }

    /**
     * What the player should know, in words.
     *
     * @param centsPerMm of the pitch curve
     */
    public String words(double centsPerMm) {
        return "a still hand wobbles " + Figures.text(jitterMm * centsPerMm, 1) + " cents rms with "
                + Figures.text(stillLagMs, 0) + " ms of smoothing";
    }
}
