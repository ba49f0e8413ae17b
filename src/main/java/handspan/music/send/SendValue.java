package handspan.music.send;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What one line of output can carry, with its usual Open Sound Control types. */
public enum SendValue {
    /** Frequency in Hz. */
    PITCH("pitch", "f", true),
    /** Nearest key of twelve-tone equal temperament at this A4, and cents from it, -50..50. */
    NOTE("note", "if", true),
    /** Degree of the nearest scale note, and its octave. */
    DEGREE("degree", "ii", true),
    /** Gain 0..1. */
    LEVEL("level", "f", true),
    /** 1 while a hand plays. */
    HAND("hand", "i", true),
    /** Pitch place and level place, each 0..1. */
    PLACE("place", "ff", true),
    /**
     * {@code playing}, {@code away}, {@code muted} or {@code lost}, or their number {@link PlayState#number}: on change
     * and once a second.
     */
    STATE("state", "s", true),
    /** Key number with its fraction, 69 = A4; as a whole number the nearest key. */
    KEY("key", "f", false),
    /** Cents from the nearest key, -50..50. */
    CENTS("cents", "f", false),
    /** Level in dB below full, {@value #SILENCE_DB} in silence. */
    DB("db", "f", false),
    /** Place of the pitch hand in its zone, 0..1. */
    PITCH_PLACE("pitch-place", "f", false),
    /** Place of the level hand in its zone, 0..1. */
    LEVEL_PLACE("level-place", "f", false),
    /** The number of a channel as the board printed it; nothing where it printed none. */
    RAW("raw", "f", false),
    /** What a hand's sensor measured, in its physical unit; nothing where it sees nothing. */
    PHYSICAL("physical", "f", false);

    /** What stands for the level of silence, dB: below the floor of 16-bit sound (this project's own choice). */
    public static final double SILENCE_DB = -120;

    private final String word;
    private final String types;
    private final boolean usual;

    SendValue(String word, String types, boolean usual) {
        this.word = word;
        this.types = types;
        this.usual = usual;
    }

    /** The name used in profiles and as the last part of the default address. */
    public String word() {
        return word;
    }

    /** Usual type tags without the leading comma; as many as there are numbers. */
    public String types() {
        return types;
    }

    /** Whether it is sent unless told otherwise. */
    public boolean isUsual() {
        return usual;
    }

    /** Whether a channel has to be named with it. */
    public boolean isOfChannel() {
        return this == RAW || this == PHYSICAL;
    }

    /** Whether a receiver that never gets its last value would go on sounding. */
    public boolean sounds() {
        return this == LEVEL || this == DB || this == HAND;
    }

    /** The values that are sent unless told otherwise. */
    public static List<SendValue> usual() {
        return Arrays.stream(values()).filter(SendValue::isUsual).toList();
    }

    /**
     * The value a word stands for.
     *
     * @throws IllegalArgumentException naming the words there are
     */
    public static SendValue parse(String word) {
        for (SendValue value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("value '" + word + "' ("
                + Arrays.stream(values()).map(SendValue::word).collect(Collectors.joining(", "))
                + "): name one of these");
    }

    /**
     * A number of a frame.
     *
     * @param which 0, or 1 for the second of two
     * @param channel where the frame's channel values have this line's; only for values of a channel
     * @return NaN where there is none
     */
    public double number(SoundFrame frame, int which, int channel) {
        return switch (this) {
            case PITCH -> frame.pitchHz();
            case NOTE -> which == 0 ? frame.key() : frame.centsFromKey();
            case DEGREE -> which == 0 ? frame.degree() : frame.octave();
            case LEVEL -> frame.gain01();
            case HAND -> frame.hand() ? 1 : 0;
            case PLACE -> which == 0 ? frame.pitchPlace01() : frame.levelPlace01();
            case STATE -> frame.state().number();
            case KEY -> frame.key() + frame.centsFromKey() / 100;
            case CENTS -> frame.centsFromKey();
            case DB -> frame.gain01() > 0 ? Math.max(SILENCE_DB, 20 * Math.log10(frame.gain01())) : SILENCE_DB;
            case PITCH_PLACE -> frame.pitchPlace01();
            case LEVEL_PLACE -> frame.levelPlace01();
            case RAW -> frame.channels().raw(channel);
            case PHYSICAL -> frame.channels().physical(channel);
        };
    }
}
