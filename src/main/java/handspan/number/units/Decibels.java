package handspan.number.units;

/**
 * Level in decibels against amplitude ("gain"): {@code dB = 20 lg(gain)}.
 *
 * <p>Source: ISO 80000-3:2006 and IEC 60027-3, level of a field quantity (clause from memory).
 */
public final class Decibels {
    private Decibels() {}

    /** Amplitude ratio of a level; 0 dB is 1. */
    public static double gain(double levelDb) {
        return Math.pow(10, levelDb / 20);
    }

    /**
     * Level of an amplitude ratio.
     *
     * @param gain above 0
     */
    public static double of(double gain) {
        return 20 * Math.log10(gain);
    }
}
