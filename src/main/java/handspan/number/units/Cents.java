package handspan.number.units;

/**
 * The cent: one hundredth of an equal-tempered semitone, 1200 to the octave.
 *
 * <p>{@code cents = 1200 * log2(f / g)}. Source: A. J. Ellis, appendix to H. Helmholtz, On the Sensations of Tone, 2nd
 * English edition, 1885.
 */
public final class Cents {
    /** Cents in an octave. */
    public static final double PER_OCTAVE = 1200;

    private static final double LN_2 = Math.log(2);

    private Cents() {}

    /**
     * The interval from one frequency up to another.
     *
     * @param fromHz above 0
     * @param toHz above 0
     * @return cents, negative when {@code toHz} is the lower one
     */
    public static double between(double fromHz, double toHz) {
        return PER_OCTAVE * Math.log(toHz / fromHz) / LN_2;
    }

    /** The frequency ratio that an interval in cents stands for. */
    public static double ratio(double cents) {
        return Math.pow(2, cents / PER_OCTAVE);
    }
}
