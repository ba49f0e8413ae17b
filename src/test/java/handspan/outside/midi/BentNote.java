package handspan.outside.midi;

/** Values of the pitch bend, for tests of other packages. */
public final class BentNote {
    private BentNote() {}

    /** The bend, 0..16383, of so many semitones at a range. */
    public static int value(int rangeSemitones, double semitones) {
        return new PitchBend(rangeSemitones).value(semitones);
    }
}
