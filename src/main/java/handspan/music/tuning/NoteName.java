package handspan.music.tuning;

/** Names of keys in scientific pitch notation: C4 = key 60, B3 one below it, sharps as #, flats as b. */
public final class NoteName {
    private static final Spelling IN_C = Spelling.of(Tonic.of(0), Scales.named("chromatic"));
    private static final int[] LETTER_KEYS = {9, 11, 0, 2, 4, 5, 7};

    private NoteName() {}

    /** The name of a key with its octave, for example {@code C#4} for 61. */
    public static String of(int key) {
        return IN_C.name(key);
    }

    /** The name of a key without octave. */
    public static String pitchClass(int key) {
        return IN_C.pitchClass(key);
    }

    /**
     * The key of a name with octave.
     *
     * @param name for example {@code A4}, {@code F#3}, {@code Bb2}
     * @throws IllegalArgumentException when it is none
     */
    public static int parse(String name) {
        int end = accidentalsEnd(name);
        try {
            long octave = Integer.parseInt(name.substring(end));
            long key = letterKey(name, end) + 12 * (octave + 1);
            if (key >= 0 && key <= 127) {
                return (int) key;
            }
        } catch (NumberFormatException e) {
            throw wrong(name, e);
        }
        throw wrong(name, null);
    }

    private static int accidentalsEnd(String name) {
        if (name.isEmpty() || letterIndex(name.charAt(0)) < 0) {
            throw wrong(name, null);
        }
        int end = 1;
        while (end < name.length() && (name.charAt(end) == '#' || name.charAt(end) == 'b')) {
            end++;
        }
        return end;
    }

    private static int letterKey(String name, int end) {
        int key = LETTER_KEYS[letterIndex(name.charAt(0))];
        for (int i = 1; i < end; i++) {
            key += name.charAt(i) == '#' ? 1 : -1;
        }
        return key;
    }

    private static int letterIndex(char c) {
        return "ABCDEFG".indexOf(Character.toUpperCase(c));
    }

    private static IllegalArgumentException wrong(String name, @org.jspecify.annotations.Nullable Exception cause) {
        return new IllegalArgumentException("note '" + name + "' (C-1..G9): write it like A4, F#3 or Bb2", cause);
    }
}
