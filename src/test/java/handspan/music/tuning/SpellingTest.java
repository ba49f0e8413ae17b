package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spelling as key signatures and theory books have it (common practice). */
class SpellingTest {
    private static String names(String tonic, String scale) {
        return String.join(" ", Scales.named(scale).noteNames(Tonic.parse(tonic)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "F,  major,            F G A Bb C D E",
        "D,  major,            D E F# G A B C#",
        "F#, major,            F# G# A# B C# D# E#",
        "Gb, major,            Gb Ab Bb Cb Db Eb F",
        "G#, major,            G# A# B# C# D# E# F##",
        "D,  natural-minor,    D E F G A Bb C",
        "C,  natural-minor,    C D Eb F G Ab Bb",
        "A,  harmonic-minor,   A B C D E F G#",
        "G,  blues,            G Bb C Db D F",
        "C,  whole-tone,       C D E F# G# A#",
        "D,  chromatic,        D D# E F F# G G# A A# B C C#",
        "Bb, chromatic,        Bb B C Db D Eb E F Gb G Ab A",
        "C,  rast,             C D E-50 F G A B-50",
        "D,  rast,             D E F+50 G A B C+50"
    })
    void notesAreSpeltForTheKey(String tonic, String scale, String names) {
        assertEquals(names, names(tonic, scale));
    }

    /** An octave belongs to its letter: Cb4 is the key below C4, B#3 is C4 itself. */
    @Test
    void octavesFollowTheLetter() {
        assertEquals(
                "Cb4", Spelling.of(Tonic.parse("Gb"), Scales.named("major")).name(59));
        assertEquals(
                "B#3", Spelling.of(Tonic.parse("C#"), Scales.named("major")).name(60));
        assertEquals("Bb3", Spelling.of(Tonic.parse("F"), Scales.named("major")).name(58));
        assertEquals("C-1", Spelling.of(Tonic.parse("C"), Scales.named("major")).name(0));
    }

    /** Whatever the key, the name that is said is the key that was meant. */
    @Test
    void everyNameReadsBackAsItsKey() {
        for (Scale scale : Scales.all()) {
            for (char letter = 'A'; letter <= 'G'; letter++) {
                for (int accidental = -1; accidental <= 1; accidental++) {
                    Spelling spelling = Spelling.of(new Tonic(letter, accidental), scale);
                    for (int key = 12; key < 120; key++) {
                        assertEquals(key, NoteName.parse(spelling.name(key)), scale.name() + " on " + letter);
                    }
                }
            }
        }
    }

    /** D major up a semitone is written in E flat, not in D sharp with its nine sharps; two down in C. */
    @ParameterizedTest
    @CsvSource({
        "D, major, 1, 63, Eb4",
        "D, major, -2, 60, C4",
        "A, natural-minor, 4, 64, E4",
        "A, natural-minor, 4, 61, C#4",
        "D, natural-minor, 1, 66, Gb4",
        "D, major, 12, 66, F#4"
    })
    void aTransposedTuningIsSpeltInTheKeyThatSounds(String tonic, String scale, int transpose, int key, String name) {
        Tuning tuning = new Tuning(
                "moved",
                ReferencePitch.A440,
                EqualDivision.TWELVE,
                Scales.named(scale),
                Tonic.parse(tonic),
                new PitchRange(48, 72, Direction.HIGH_FAR, 0),
                Snapping.of(Snap.FREE),
                transpose,
                0);
        assertEquals(name, tuning.spelling().name(key));
    }

    @Test
    void halfWayTheWhiteKeyIsNamed() {
        assertEquals(64, Spelling.nearest(63.5));
        assertEquals(65, Spelling.nearest(65.5));
        assertEquals(61, Spelling.nearest(60.6));
    }
}
