package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitchBendTest {
    /**
     * Rows: MIDI 1.0 Detailed Specification, Pitch Bend Change and registered parameter 0; 48 is that of RP-053 (2018).
     */
    @ParameterizedTest
    @CsvSource({
        "2, -2, 0, 00, 00, -2.00000000",
        "2, -1, 4096, 00, 20, -1.00000000",
        "2, -0.5, 6144, 00, 30, -0.50000000",
        "2, -0.01, 8151, 57, 3F, -0.01000977",
        "2, 0, 8192, 00, 40, 0.00000000",
        "2, 0.01, 8233, 29, 40, 0.01000977",
        "2, 0.5, 10240, 00, 50, 0.50000000",
        "2, 1, 12288, 00, 60, 1.00000000",
        "2, 1.5, 14336, 00, 70, 1.50000000",
        "2, 2, 16383, 7F, 7F, 1.99975586",
        "48, -48, 0, 00, 00, -48.00000000",
        "48, -24, 4096, 00, 20, -24.00000000",
        "48, -12, 6144, 00, 30, -12.00000000",
        "48, -1, 8021, 55, 3E, -1.00195312",
        "48, -0.5, 8107, 2B, 3F, -0.49804688",
        "48, 0, 8192, 00, 40, 0.00000000",
        "48, 0.5, 8277, 55, 40, 0.49804688"
    })
    void everyPublishedBendHasItsValue(
            int range, double semitones, int value, String low, String high, double decoded) {
        int made = new PitchBend(range).value(semitones);
        assertEquals(value, made);
        assertEquals(Integer.parseInt(low, 16), made & 0x7F);
        assertEquals(Integer.parseInt(high, 16), made >> 7);
        assertEquals(decoded, (made - 8192) * range / 8192.0, 1e-8);
    }

    @Test
    void whatLiesBeyondIsSaidAsTheEnd() {
        PitchBend bend = new PitchBend(2);
        assertEquals(0, bend.value(-1000));
        assertEquals(16_383, bend.value(1000));
        assertTrue(bend.reaches(-2) && bend.reaches(2 * 8191 / 8192.0));
        assertFalse(bend.reaches(2), "a whole step off");
        assertFalse(bend.reaches(-2.0002));
    }
}
