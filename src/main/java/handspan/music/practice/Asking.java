package handspan.music.practice;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How a player is asked for a note. */
public enum Asking {
    /** Its name is shown. */
    NAME("name"),
    /** It sounds; neither its name nor the way to it is shown. */
    SOUND("sound"),
    /** Its name is shown and it sounds. */
    BOTH("both");

    private final String word;

    Asking(String word) {
        this.word = word;
    }

    /** In a word, as it is written. */
    public String word() {
        return word;
    }

    /** Whether the name is shown. */
    public boolean shows() {
        return this != SOUND;
    }

    /** Whether the note sounds. */
    public boolean sounds() {
        return this != NAME;
    }

    /**
     * The way of asking that a word stands for.
     *
     * @throws IllegalArgumentException naming the words there are
     */
    public static Asking parse(String word) {
        return Arrays.stream(values())
                .filter(asking -> asking.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("asking by '" + word + "' ("
                        + Arrays.stream(values()).map(Asking::word).collect(Collectors.joining(", ")) + ")"));
    }
}
