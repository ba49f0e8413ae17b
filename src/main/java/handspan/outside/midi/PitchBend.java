package handspan.outside.midi;

/**
 * Pitch bend: 14 bits, the lower seven first, centre 8192. {@code value = 8192 + round(8192 semitones / range)}, so
 * that the lowest value is the whole range down and the highest, 16383, one step less than the whole range up. A step
 * is {@code range / 8192}: 0.024 cents for 2 semitones, 0.59 for 48.
 *
 * <p>Source: MIDI 1.0 Detailed Specification, Pitch Bend Change; the range is registered parameter 0.
 *
 * @param rangeSemitones how far the receiver bends at most, either way, 1..96
 */
record PitchBend(int rangeSemitones) {
    private static final int CENTRE = 8192;
    private static final int HIGHEST = 16_383;

    /** Whether a bend lies within half a step of one that can be said. */
    boolean reaches(double semitones) {
        long steps = steps(semitones);
        return steps >= -CENTRE && steps <= HIGHEST - CENTRE;
    }

    /** The value of a bend, 0..16383; that of the end where it lies beyond. */
    int value(double semitones) {
        return (int) Math.max(0, Math.min(HIGHEST, CENTRE + steps(semitones)));
    }

    private long steps(double semitones) {
        return Math.round(CENTRE * semitones / rangeSemitones);
    }
}
