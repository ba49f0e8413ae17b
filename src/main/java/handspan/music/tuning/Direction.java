package handspan.music.tuning;

import java.util.Locale;

/** Which end of the play zone is the high one. */
public enum Direction {
    /** Pitch rises as the hand comes near. */
    HIGH_NEAR,
    /** Pitch rises as the hand goes away. */
    HIGH_FAR;

    /** The word on the command line and in files: {@code high-near} or {@code high-far}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The direction with a word.
     *
     * @throws IllegalArgumentException when it is none
     */
    public static Direction parse(String word) {
        for (Direction direction : values()) {
            if (direction.word().equals(word)) {
                return direction;
            }
        }
        throw new IllegalArgumentException("direction '" + word + "' (high-near, high-far): name one of these");
    }
}
