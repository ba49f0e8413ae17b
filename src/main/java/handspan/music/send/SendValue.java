package handspan.music.send;

/** What one line of output can carry, with its Open Sound Control types and its default address below the name. */
public enum SendValue {
    /** Frequency in Hz. */
    PITCH("pitch", "f"),
    /** Nearest key of twelve-tone equal temperament at this A4, and cents from it, -50..50. */
    NOTE("note", "if"),
    /** Degree of the nearest scale note, and its octave. */
    DEGREE("degree", "ii"),
    /** Gain 0..1. */
    LEVEL("level", "f"),
    /** 1 while a hand plays. */
    HAND("hand", "i"),
    /** Pitch place and level place, each 0..1. */
    PLACE("place", "ff"),
    /** {@code playing}, {@code away}, {@code muted} or {@code lost}: on change and once a second. */
    STATE("state", "s");

    private final String word;
    private final String types;

    SendValue(String word, String types) {
        this.word = word;
        this.types = types;
    }

    /** The name used in profiles and as the last part of the default address. */
    public String word() {
        return word;
    }

    /** Type tags without the leading comma. */
    public String types() {
        return types;
    }
}
