package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteNameTest {
    @Test
    void everyKeyIsFoundAgainByItsName() {
        for (int key = 0; key < 128; key++) {
            assertEquals(key, NoteName.parse(NoteName.of(key)), NoteName.of(key));
        }
    }

    /** Scientific pitch notation with C4 = key 60 (MIDI 1.0 key numbers). */
    @ParameterizedTest
    @CsvSource({"0, C-1", "12, C0", "21, A0", "57, A3", "60, C4", "61, C#4", "69, A4", "70, A#4", "108, C8", "127, G9"})
    void keysHaveTheirScientificNames(int key, String name) {
        assertEquals(name, NoteName.of(key));
        assertEquals(key, NoteName.parse(name));
    }

    /** A flat lowers and a sharp raises by a semitone; the octave number is the letter's. */
    @ParameterizedTest
    @CsvSource({"Bb2, 46", "bb2, 46", "Cb4, 59", "B#3, 60", "Ebb4, 62", "F##3, 55", "f#3, 54", "Fb4, 64", "B#-2, 0"})
    void sharpsAndFlatsMoveTheLetterByASemitone(String name, int key) {
        assertEquals(key, NoteName.parse(name));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "4",
                "H4",
                "A",
                "A#",
                "Ab",
                "A4.5",
                "A 4",
                "a4x",
                "#4",
                "G#9",
                "Cb-1",
                "C-2",
                "A10",
                "A2147483647",
                "C357913940",
                "A99999999999"
            })
    void whatIsNoNoteFromCMinusOneToG9IsRefusedByName(String name) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> NoteName.parse(name));
        assertTrue(refusal.toString().contains("'" + name + "'"), refusal.toString());
    }

    @ParameterizedTest
    @CsvSource({"C, 0", "c#, 1", "Db, 1", "A, 9", "Bb, 10", "B, 11", "b, 11", "Cb, 11", "B#, 0"})
    void aNoteWithoutOctaveIsAPitchClass(String name, int pitchClass) {
        assertEquals(pitchClass, Tonic.parse(name).pitchClass());
    }

    @Test
    void pitchClassesAreNamedBySharps() {
        assertEquals("A#", NoteName.pitchClass(10));
        assertEquals("B", NoteName.pitchClass(-1));
        assertEquals("C", NoteName.pitchClass(60));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "", "H", "major"})
    void aPitchClassHasNoOctave(String name) {
        assertThrows(IllegalArgumentException.class, () -> Tonic.parse(name));
    }
}
