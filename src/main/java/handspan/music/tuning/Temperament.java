package handspan.music.tuning;

import java.util.List;

/**
 * Where the notes between two octaves of a tonic lie. The tonic itself always stands where twelve-tone equal
 * temperament has it, so that it agrees with instruments that are tuned so.
 */
public sealed interface Temperament permits EqualDivision, JustIntonation {
    /** The word on the command line and in files, for example {@code 12-equal} or {@code just}. */
    String word();

    /**
     * Where one of the twelve usual notes goes.
     *
     * @param semitones above the tonic, 0..11
     * @return cents above the tonic
     */
    double cents(int semitones);

    /** All its notes within an octave, cents above the tonic, rising from 0. */
    List<Double> allCents();

    /**
     * The temperament with a word.
     *
     * @throws IllegalArgumentException when it is none
     */
    static Temperament parse(String word) {
        if (word.equals(JustIntonation.WORD)) {
            return new JustIntonation();
        }
        if (word.endsWith(EqualDivision.ENDING)) {
            try {
                return new EqualDivision(
                        Integer.parseInt(word.substring(0, word.length() - EqualDivision.ENDING.length())));
            } catch (NumberFormatException e) {
                throw unknown(word, e);
            }
        }
        throw unknown(word, null);
    }

    private static IllegalArgumentException unknown(
            String word, @org.jspecify.annotations.Nullable NumberFormatException cause) {
        return new IllegalArgumentException(
                "temperament '" + word + "' (5-equal..53-equal, just): write it like 19-equal", cause);
    }
}
