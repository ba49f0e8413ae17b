package handspan.music.tuning;

/**
 * The note a scale starts from, as it is written: Bb and A# sound alike, and spell their scales differently.
 *
 * @param letter A..G
 * @param accidental -1 flat, 0 natural, 1 sharp
 */
public record Tonic(char letter, int accidental) {
    private static final String[] USUAL = {"C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"};

    /** Checks both. */
    public Tonic {
        if (letter < 'A' || letter > 'G' || accidental < -1 || accidental > 1) {
            throw new IllegalArgumentException(
                    "key " + letter + " with accidental " + accidental + " (A..G, flat, natural or sharp)");
        }
    }

    /**
     * The tonic with a name.
     *
     * @param name for example {@code A}, {@code F#}, {@code Bb}
     * @throws IllegalArgumentException when it is none
     */
    public static Tonic parse(String name) {
        String letters = "ABCDEFG";
        int accidental = name.length() == 1 ? 0 : name.endsWith("#") ? 1 : name.endsWith("b") ? -1 : 2;
        char letter = name.isEmpty() ? ' ' : Character.toUpperCase(name.charAt(0));
        if (name.length() > 2 || letters.indexOf(letter) < 0 || accidental > 1) {
            throw new IllegalArgumentException("key '" + name + "' (a note without octave): write it like A, F# or Bb");
        }
        return new Tonic(letter, accidental);
    }

    /**
     * The tonic of a pitch class, by the name that gives its major key the fewest accidentals.
     *
     * @param pitchClass 0..11, 0 = C
     */
    public static Tonic of(int pitchClass) {
        if (pitchClass < 0 || pitchClass >= USUAL.length) {
            throw new IllegalArgumentException("tonic " + pitchClass + " (pitch class 0..11, 0 = C)");
        }
        return parse(USUAL[pitchClass]);
    }

    /** Its pitch class, 0 = C. */
    public int pitchClass() {
        return Math.floorMod(Spelling.naturalPitchClass(letter) + accidental, 12);
    }

    /** As written, for example {@code Bb}. */
    public String name() {
        return letter + Spelling.accidentals(accidental);
    }
}
