package handspan.hand.smooth;

import java.util.ArrayList;
import java.util.List;

/**
 * How much a still hand is smoothed, computed from a room's noise: the least lag that brings its wobble down to a
 * target, or the wobble that the longest lag can reach.
 *
 * <p>A one-pole of share a passes white noise of standard deviation s as {@code s sqrt(a / (2 - a))} and lags {@code (1
 * - a) / a} readings (both closed forms of the geometric series of its weights).
 *
 * @param noise of the sensor
 * @param ratePerS readings a second, above 0
 * @param targetMm wanted wobble, rms, mm, above 0
 * @param longestLagMs most lag for a still hand, ms, above 0
 */
public record SmoothSettings(SensorNoise noise, double ratePerS, double targetMm, double longestLagMs) {
    /** Longest lag for a still hand, ms, unless the player asks for more or less. */
    public static final double LONGEST_LAG_MS = 60;

    /** Even without noise a reading does not go the whole way: numbers come in steps. */
    private static final double MOST_SHARE = 0.9;

    /** No reading is trusted any closer, mm: a hand trembles by 0.05 to 0.18 mm (M. Lakie et al., J. Physiol. 2015). */
    private static final double LEAST_NOISE_MM = 0.3;

    /**
     * A point of what can be had: so much wobble for so much lag.
     *
     * @param lagMs for a still hand, ms
     * @param jitterMm wobble of a still hand, rms, mm
     */
    public record Trade(double lagMs, double jitterMm) {}

    /** Checks the figures. */
    public SmoothSettings {
        if (!(ratePerS > 0) || !(targetMm > 0) || !(longestLagMs > 0)) {
            throw new IllegalArgumentException("smoothing of " + ratePerS + " readings a second towards " + targetMm
                    + " mm within " + longestLagMs + " ms (all above 0)");
        }
    }

    /** The usual settings for a sensor whose noise is the same everywhere. */
    public static SmoothSettings reaching(double noiseMm, double ratePerS, double targetMm) {
        return reaching(SensorNoise.even(noiseMm), ratePerS, targetMm, Quickness.USUAL);
    }

    /**
     * The settings of a room.
     *
     * @param noise of its sensor
     * @param ratePerS readings a second
     * @param targetMm wobble to aim at, rms, mm
     * @param quickness what the player wants
     */
    public static SmoothSettings reaching(SensorNoise noise, double ratePerS, double targetMm, Quickness quickness) {
        return new SmoothSettings(noise, ratePerS, targetMm * quickness.factor(), LONGEST_LAG_MS / quickness.factor());
    }

    /** The share of the way that a still hand's reading goes, where its noise is so large, 0..1. */
    double share01(double noiseMm) {
        double ratio = noiseMm <= 0 ? 1 : Math.min(1, targetMm / noiseMm);
        double wanted = 2 * ratio * ratio / (1 + ratio * ratio);
        double least = 1 / (1 + longestLagMs / 1000 * ratePerS);
        return Math.min(MOST_SHARE, Math.max(wanted, least));
    }

    /** The share at the worst place, 0..1. */
    public double share01() {
        return share01(noise.worstMm());
    }

    /** Wobble of a still hand after smoothing at the worst place, rms, mm. */
    public double jitterMm() {
        return jitterMm(noise.worstMm(), share01());
    }

    /** Wobble of a still hand at a place, rms, mm. */
    public double jitterMm(double atMm) {
        double noiseMm = noise.at(atMm);
        return jitterMm(noiseMm, share01(noiseMm));
    }

    private static double jitterMm(double noiseMm, double share01) {
        return noiseMm * Math.sqrt(share01 / (2 - share01));
    }

    /** Lag of a still hand's small steps at the worst place, ms. */
    public double stillLagMs() {
        return lagMs(share01());
    }

    private double lagMs(double share01) {
        return 1000 / ratePerS * (1 - share01) / share01;
    }

    /** Whether the wobble comes down to what is aimed at, everywhere. */
    public boolean reachesTarget() {
        return jitterMm() <= targetMm * (1 + 1e-9);
    }

    /** Lag at which it would, ms. */
    public double lagForTargetMs() {
        double ratio = Math.min(1, targetMm / Math.max(1e-6, noise.worstMm()));
        return lagMs(Math.min(MOST_SHARE, 2 * ratio * ratio / (1 + ratio * ratio)));
    }

    /** What wobble can be had for what lag at the worst place, from none to a given lag, at least two points. */
    public List<Trade> trades(double upToMs) {
        List<Trade> trades = new ArrayList<>();
        int count = 24;
        for (int i = 0; i <= count; i++) {
            // closer together where it is steep
            double lagMs = upToMs * i * i / (count * count);
            double share = 1 / (1 + lagMs / 1000 * ratePerS);
            trades.add(new Trade(lagMs, jitterMm(noise.worstMm(), share)));
        }
        return trades;
    }

    /** The most noise to reckon with, mm, above 0. */
    double worstNoiseMm() {
        return Math.max(LEAST_NOISE_MM, noise.worstMm());
    }

    /** The noise to reckon with at a place, mm, above 0. */
    double noiseMm(double atMm) {
        return Math.max(LEAST_NOISE_MM, noise.at(atMm));
    }
}
