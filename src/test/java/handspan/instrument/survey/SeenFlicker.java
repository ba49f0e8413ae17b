package handspan.instrument.survey;

/** Where the flicker of lamps shows itself, for tests of other packages. */
public final class SeenFlicker {
    private SeenFlicker() {}

    /** Frequency at which lines of a rate show lamps that flicker, Hz. */
    public static double hz(double sourceHz, double linesPerS) {
        return new Flicker(sourceHz).seenAtHz(linesPerS);
    }
}
