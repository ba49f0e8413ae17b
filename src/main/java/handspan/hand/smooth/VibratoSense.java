package handspan.hand.smooth;

/**
 * Tells vibrato from noise: the strength of what lies around 6 Hz, against what noise alone would put there. Vibrato is
 * 5.5 to 8 Hz (R. Timmers, P. Desain, ICMPC 2000); a smoother that is slow enough for a still hand would swallow it.
 *
 * <p>A band-pass of two poles (R. Bristow-Johnson, Cookbook formulae for audio EQ biquad filter coefficients, BPF with
 * 0 dB peak gain, from memory), its absolute value low-passed. White noise of standard deviation s leaves it with
 * {@code s sqrt(pi B / R)}, B its -3 dB width and R the rate (noise bandwidth of a second-order band-pass is pi/2 B, of
 * R/2 in all); the mean of |x| of a normal value is 0.8 of its standard deviation. Owned by one thread.
 */
final class VibratoSense {
    private static final double CENTRE_HZ = 6.3;
    private static final double WIDTH_HZ = 3;
    private static final double ENVELOPE_HZ = 2;

    /**
     * Below so many times the noise's own mean there is none. Noise alone is above for a few thousandths of the time,
     * which raises a still hand's wobble by less than a hundredth.
     */
    private static final double NONE_TIMES = 2.1;

    /** From so many times on it is sure. */
    private static final double SURE_TIMES = 2.4;

    /** Where a sensor has no noise at all, mm. */
    private static final double LEAST_MEAN_MM = 0.01;

    /** Slower boards can't show 6 Hz at all. */
    private static final double LEAST_RATE_PER_S = 16;

    private final boolean possible;
    private final SensorNoise noise;
    private final double meanPerNoise;
    private final double b0;
    private final double a1;
    private final double a2;
    private final OnePole envelope = new OnePole();
    private double x1;
    private double x2;
    private double y1;
    private double y2;
    private boolean started;

    /**
     * A sense.
     *
     * @param noise of the sensor
     * @param ratePerS readings a second
     */
    VibratoSense(SensorNoise noise, double ratePerS) {
        this.noise = noise;
        this.possible = ratePerS >= LEAST_RATE_PER_S;
        double w = 2 * Math.PI * Math.min(CENTRE_HZ, 0.45 * ratePerS) / ratePerS;
        double alpha = Math.sin(w) * WIDTH_HZ / (2 * CENTRE_HZ);
        this.b0 = alpha / (1 + alpha);
        this.a1 = -2 * Math.cos(w) / (1 + alpha);
        this.a2 = (1 - alpha) / (1 + alpha);
        this.meanPerNoise = 0.8 * Math.sqrt(Math.PI * WIDTH_HZ / ratePerS);
    }

    /**
     * Takes a reading.
     *
     * @param mm as read
     * @param intervalS time since the last, s
     * @return 0 = no vibrato, 1 = vibrato
     */
    double next01(double mm, double intervalS) {
        if (!possible) {
            return 0;
        }
        if (!started) {
            started = true;
            x1 = mm;
            x2 = mm;
            y1 = 0;
            y2 = 0;
            envelope.reset();
        }
        double y = b0 * (mm - x2) - a1 * y1 - a2 * y2;
        x2 = x1;
        x1 = mm;
        y2 = y1;
        y1 = y;
        double mean = envelope.next(Math.abs(y), ENVELOPE_HZ, intervalS);
        double noiseMean = Math.max(LEAST_MEAN_MM, meanPerNoise * noise.at(mm));
        return Math.max(0, Math.min(1, (mean / noiseMean - NONE_TIMES) / (SURE_TIMES - NONE_TIMES)));
    }

    void reset() {
        started = false;
    }
}
