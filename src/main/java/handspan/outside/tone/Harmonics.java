package handspan.outside.tone;

/**
 * The timbre of the tone: six harmonics, each at half the amplitude of the one below, so that low notes are heard
 * through small loudspeakers too. A harmonic that comes near the upper edge is faded out between 14 and 20 kHz, as half
 * a period of a raised cosine, and is gone long before it would fold back at 24 kHz; the others then grow as much as
 * keeps the sum of squares, so that the rms of the tone is the same at every pitch.
 *
 * <p>Where all sines crest at once the sum of amplitudes {@code a} is reached. Against the rms it is largest with all
 * harmonics whole: {@code sum(a) / sqrt(sum(a^2))} rises with each {@code a} as long as that is below {@code sum(a^2) /
 * sum(a)}, which is 0.67 or more here, and only the first is above a half. That largest sum is 1.
 */
final class Harmonics {
    /** Rms of {@link #at} over whole periods, whatever the pitch; a peak of 1 is never passed. */
    static final double RMS01;

    private static final int COUNT = 6;

    /** Where fading begins and ends: above what most loudspeakers and ears carry, below 24 kHz. */
    private static final double WHOLE_HZ = 14_000;

    private static final double GONE_HZ = 20_000;

    private static final double[] SHARES = new double[COUNT];
    private static final double WHOLE_POWER;

    static {
        double sum = 0;
        double power = 0;
        for (int n = 0; n < COUNT; n++) {
            SHARES[n] = Math.pow(0.5, n);
            sum += SHARES[n];
            power += SHARES[n] * SHARES[n];
        }
        WHOLE_POWER = power;
        RMS01 = Math.sqrt(power / 2) / sum;
    }

    private Harmonics() {}

    /**
     * One value of the wave.
     *
     * @param phase01 where in the period of the first harmonic
     * @param hz frequency of the first harmonic, at most 12,000
     * @return -1..1
     */
    static double at(double phase01, double hz) {
        double angle = 2 * Math.PI * phase01;
        double twiceCosine = 2 * Math.cos(angle);
        // sin(nx) = 2 cos(x) sin((n-1)x) - sin((n-2)x)
        double before = 0;
        double sine = Math.sin(angle);
        boolean whole = COUNT * hz <= WHOLE_HZ;
        double power = whole ? WHOLE_POWER : 0;
        double value = 0;
        for (int n = 1; n <= COUNT; n++) {
            double amplitude = SHARES[n - 1];
            if (!whole) {
                amplitude *= n == 1 ? 1 : left01(n * hz);
                power += amplitude * amplitude;
            }
            value += amplitude * sine;
            double next = twiceCosine * sine - before;
            before = sine;
            sine = next;
        }
        return value * RMS01 / Math.sqrt(power / 2);
    }

    private static double left01(double hz) {
        return 1 - Swell.raised01((hz - WHOLE_HZ) / (GONE_HZ - WHOLE_HZ));
    }
}
