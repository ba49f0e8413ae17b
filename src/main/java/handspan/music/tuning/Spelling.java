package handspan.music.tuning;

import java.util.List;

/**
 * What the twelve notes are called in a key: those of the scale with its letters (B flat in F major, not A sharp), the
 * others with sharps where the key has sharps and flats where it has flats.
 *
 * <p>Names are in scientific pitch notation, C4 = key 60, sharps as #, flats as b. An octave belongs to its letter: Cb4
 * is key 59.
 */
public final class Spelling {
    private static final String LETTERS = "CDEFGAB";
    private static final int[] NATURALS = {0, 2, 4, 5, 7, 9, 11};
    private static final String[] SHARP = {"C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"};
    private static final String[] FLAT = {"C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B"};

    private final String[] names = new String[12];
    private final int[] accidentals = new int[12];

    private Spelling(Tonic tonic, Scale scale) {
        boolean flats = tonic.accidental() < 0 || tonic.equals(new Tonic('F', 0));
        boolean lettered = !scale.letters().isEmpty();
        if (lettered) {
            letter(tonic, scale);
            flats = hasFlats(flats);
        }
        for (int pitchClass = 0; pitchClass < 12; pitchClass++) {
            if (names[pitchClass] == null) {
                String name = (flats ? FLAT : SHARP)[pitchClass];
                put(pitchClass, name.charAt(0), name.length() == 1 ? 0 : flats ? -1 : 1);
            }
        }
    }

    /** The names in the key of a scale. */
    public static Spelling of(Tonic tonic, Scale scale) {
        return new Spelling(tonic, scale);
    }

    /**
     * The names in a key that is known by its pitch class only, with the fewest accidentals.
     *
     * @param pitchClass of the tonic, 0..11
     */
    public static Spelling of(int pitchClass, Scale scale) {
        Spelling flat = new Spelling(Tonic.parse(FLAT[pitchClass]), scale);
        Spelling sharp = new Spelling(Tonic.parse(SHARP[pitchClass]), scale);
        int difference = flat.accidentals(pitchClass, scale) - sharp.accidentals(pitchClass, scale);
        boolean usuallyFlat = Tonic.of(pitchClass).accidental() < 0;
        return difference < 0 || (difference == 0 && usuallyFlat) ? flat : sharp;
    }

    private void letter(Tonic tonic, Scale scale) {
        int first = LETTERS.indexOf(tonic.letter());
        List<Double> cents = scale.stepsCents();
        for (int degree = 0; degree < cents.size(); degree++) {
            int pitchClass = Math.floorMod(
                    tonic.pitchClass() + (int) Math.rint(cents.get(degree) / ReferencePitch.CENTS_PER_KEY), 12);
            char letter = LETTERS.charAt((first + scale.letters().get(degree)) % LETTERS.length());
            put(pitchClass, letter, Math.floorMod(pitchClass - naturalPitchClass(letter) + 6, 12) - 6);
        }
    }

    private void put(int pitchClass, char letter, int accidental) {
        names[pitchClass] = letter + accidentals(accidental);
        accidentals[pitchClass] = accidental;
    }

    private boolean hasFlats(boolean otherwise) {
        int sum = 0;
        for (int accidental : accidentals) {
            sum += accidental;
        }
        return sum == 0 ? otherwise : sum < 0;
    }

    private int accidentals(int tonic, Scale scale) {
        int sum = 0;
        for (double cents : scale.stepsCents()) {
            sum += Math.abs(accidentals[
                    Math.floorMod(tonic + (int) Math.rint(cents / ReferencePitch.CENTS_PER_KEY), 12)]);
        }
        return sum;
    }

    static int naturalPitchClass(char letter) {
        return NATURALS[LETTERS.indexOf(letter)];
    }

    static String accidentals(int accidental) {
        return (accidental < 0 ? "b" : "#").repeat(Math.abs(accidental));
    }

    /** The key a pitch is named after: the nearest; half-way between two, that of a white key. */
    public static int nearest(double key) {
        int below = (int) Math.floor(key);
        double above = key - below;
        boolean tie = Math.abs(above - 0.5) < 1e-6;
        boolean whiteBelow = SHARP[Math.floorMod(below, 12)].length() == 1;
        return tie ? (whiteBelow ? below : below + 1) : (int) Math.rint(key);
    }

    /** Cents from the key that a pitch is named after, with their sign; empty where they round to none. */
    static String centsOff(double key) {
        long cents = Math.round((key - nearest(key)) * ReferencePitch.CENTS_PER_KEY);
        return cents == 0 ? "" : (cents > 0 ? "+" : "") + cents;
    }

    /** The name of a key number without octave. */
    public String pitchClass(int key) {
        return names[Math.floorMod(key, 12)];
    }

    /** The name of a key number with its octave, for example {@code Bb3} for 58 in F. */
    public String name(int key) {
        int pitchClass = Math.floorMod(key, 12);
        return names[pitchClass] + (Math.floorDiv(key - accidentals[pitchClass], 12) - 1);
    }
}
