package handspan.music.tuning;

import java.util.Locale;

/** How pitch is drawn to the notes of the scale. */
public enum Snap {
    /** Not at all. */
    FREE,
    /** Pitch is drawn towards the nearest note of the scale by a strength, and can pass between notes. */
    PULL,
    /** Only the notes of the scale sound. */
    STEPS,
    /** When the hand comes to rest its place becomes the nearest note of the scale; from there pitch is free. */
    ONSET;

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
        throw new IllegalArgumentException("snap '" + word + "' (free, pull, steps, onset): name one of these");
    }
}
