package handspan.music.tuning;

import java.util.Locale;

/** How pitch is drawn to the notes of the scale. */
public enum Snap {
    /** Not at all. */
    FREE,
    /** Only the notes of the scale sound. */
    STEPS;

    /** The word on the command line and in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The snapping with a word.
     *
     * @throws IllegalArgumentException when it is none
     */
    public static Snap parse(String word) {
        for (Snap snap : values()) {
            if (snap.word().equals(word)) {
                return snap;
            }
        }
        throw new IllegalArgumentException("snap '" + word + "' (free, steps): name one of these");
    }
}
