package handspan.outside.midi;

/**
 * Gain as a controller: {@code value = highest * sqrt(gain)}, so that a receiver that makes {@code 40 lg(value /
 * highest)} dB of it, as is recommended for expression, comes to the gain that was meant.
 *
 * <p>Source: General MIDI Level 2 (recommended practice RP-024, MIDI Manufacturers Association, 1999), and General MIDI
 * Level 1 Developer Guidelines, volume and expression: 40 log10(value / 127) dB; from memory.
 *
 * <p>In seven bits a value is {@code 40 lg(1 + 1 / (2 * value))} dB off at most: 0.1 dB at the usual ceiling of -6 dB,
 * 0.3 at -26, 2 at the floor of -60. In fourteen it is less than 0.02 dB everywhere above the floor.
 */
final class MidiLevel {
    /** Seven bits. */
    static final int COARSE = 127;

    /** Fourteen bits. */
    static final int FINE = 16_383;

    private MidiLevel() {}

    /**
     * The value of a gain.
     *
     * @param gain01 0..1
     * @param highest {@link #COARSE} or {@link #FINE}
     */
    static int value(double gain01, int highest) {
        return (int) Math.round(highest * Math.sqrt(Math.max(0, Math.min(1, gain01))));
    }
}
