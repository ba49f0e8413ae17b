package handspan.music.tuning;

/**
 * What snapping has to know of a room: how much a still hand's pitch wobbles, and the play at a boundary that follows.
 *
 * @param jitterCents wobble of a still hand after smoothing, rms, 0 or more
 * @param hysteresisCents half-width of the band around each boundary, 0 or more
 */
public record SnapLimits(double jitterCents, double hysteresisCents) {
    /** Most hysteresis, as a share of the narrowest cell: beyond it a note could not be left on purpose. */
    public static final double MOST_OF_CELL01 = 0.25;

    /**
     * An adaptive smoother opens just when the noise is at its largest, so that a still hand's wobble has longer tails
     * than a normal one (found on four hours of simulated rest at 30, 50 and 100 readings a second: with 1 there were
     * 1.3 to 1.9 switches a minute, with this 0.2 to 0.7).
     */
    private static final double LONG_TAILS = 1.15;

    /** A hand slower than this is at rest, cents/s (this project's own choice). */
    private static final double REST_CENTS_PER_S = 60;

    /** A hand faster than this is no longer at rest, cents/s. */
    private static final double MOVE_CENTS_PER_S = 120;

    /** How far noise alone spreads a still hand's pitch within {@link #REST_MS}, standard deviations. */
    private static final double REST_SPREAD = 3;

    private static final double MOVE_SPREAD = 5;

    /** How long a hand must be slow to be at rest, ms: vibrato's turning points are shorter. */
    static final double REST_MS = 150;

    /** Checks both. */
    public SnapLimits {
        if (!(jitterCents >= 0) || !(hysteresisCents >= 0)) {
            throw new IllegalArgumentException(
                    "jitter of " + jitterCents + " and hysteresis of " + hysteresisCents + " cents (0 or more)");
        }
    }

    /**
     * The limits of a still hand's wobble.
     *
     * @param jitterCents wobble after smoothing, rms
     * @param share01 share of a one-pole that smooths a still hand as much
     * @param ratePerS decisions a second
     */
    public static SnapLimits of(double jitterCents, double share01, double ratePerS) {
        return new SnapLimits(jitterCents, LONG_TAILS * hysteresisCents(jitterCents, share01, ratePerS));
    }

    double hysteresisKeys() {
        return hysteresisCents / ReferencePitch.CENTS_PER_KEY;
    }

    /** Most that pitch may range over {@link #REST_MS} for a hand that comes to rest, key numbers. */
    double restKeys() {
        return (REST_CENTS_PER_S * REST_MS / 1000 + REST_SPREAD * jitterCents) / ReferencePitch.CENTS_PER_KEY;
    }

    /** Least that pitch ranges over {@link #REST_MS} for a hand that has left its rest, key numbers. */
    double moveKeys() {
        return (MOVE_CENTS_PER_S * REST_MS / 1000 + MOVE_SPREAD * jitterCents) / ReferencePitch.CENTS_PER_KEY;
    }

    /**
     * Half-width of the hysteresis at which a hand resting exactly on a boundary switches less than once a minute.
     *
     * <p>Rice's formula {@code nu = (1 / 2 pi) (sv / sx) exp(-h^2 / (2 sx^2))} solved for h, with sv the rms finite
     * difference of the smoothed pitch times the rate of decisions. Source: S. O. Rice, Mathematical analysis of random
     * noise, Bell Syst. Tech. J. 23-24 (1944-45), sections 3.3 and 3.4. For a one-pole of share a over white noise the
     * finite difference is {@code sx sqrt(2 a)} (closed form).
     *
     * @param jitterCents wobble of a still hand after smoothing, rms
     * @param share01 share of the one-pole
     * @param ratePerS decisions a second
     * @return cents
     */
    public static double hysteresisCents(double jitterCents, double share01, double ratePerS) {
        double perSecond = 1.0 / 60;
        double crossings = Math.sqrt(2 * share01) * ratePerS / (2 * Math.PI);
        return crossings <= perSecond ? 0 : jitterCents * Math.sqrt(2 * Math.log(crossings / perSecond));
    }
}
