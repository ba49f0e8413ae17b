package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuningTest {
    private static final double EXACT = 1e-12;

    private static Tuning with(String name, int tonic, int low, int high, int transpose, double trim) {
        return new Tuning(
                name,
                ReferencePitch.A440,
                Scales.named("minor-pentatonic"),
                tonic,
                low,
                high,
                Direction.HIGH_NEAR,
                Snap.STEPS,
                transpose,
                trim);
    }

    /** Two octaves in 40 cm are 6 cents a millimetre. */
    @Test
    void theUsualTuningIsTwoOctavesFromA3() {
        Tuning usual = Tuning.usual();
        assertEquals("A3", NoteName.of(usual.lowKey()));
        assertEquals("A5", NoteName.of(usual.highKey()));
        assertEquals(Snap.FREE, usual.snap());
        assertEquals(6, usual.centsPerMm(400), EXACT);
        assertEquals(0, usual.shiftKeys(), EXACT);
        assertEquals(25, usual.ladder().size());
    }

    @Test
    void curveAndLadderSpanTheRange() {
        Tuning tuning = with("evening", 9, 57, 81, 0, 0);
        assertEquals(81, tuning.curve().key(0), EXACT);
        assertEquals(57, tuning.curve().key(1), EXACT);
        assertEquals(11, tuning.ladder().size());
        assertEquals(57, tuning.ladder().key(0), EXACT);
    }

    @Test
    void transpositionAndTrimAddUp() {
        assertEquals(-12.25, with("low", 9, 57, 81, -12, -25).shiftKeys(), EXACT);
        assertEquals(7.05, with("high", 9, 57, 81, 7, 5).shiftKeys(), EXACT);
    }

    @Test
    void changesLeaveAllElse() {
        Tuning tuning = with("evening", 4, 57, 81, 3, 12);
        assertEquals(with("evening", 4, 50, 62, 3, 12), tuning.withRange(50, 62));
        assertEquals(Snap.FREE, tuning.withSnap(Snap.FREE).snap());
        assertEquals(tuning, tuning.withSnap(Snap.FREE).withSnap(Snap.STEPS));
        assertEquals("major", tuning.withScale(Scales.named("major")).scale().name());
        assertEquals(tuning, tuning.withScale(Scales.named("major")).withScale(tuning.scale()));
    }

    /** Near-miss twins: the last value that is taken. */
    @ParameterizedTest
    @CsvSource({"0, 0, 127, 48, 100", "11, 59, 60, -48, -100"})
    void theLimitsThemselvesAreTaken(int tonic, int low, int high, int transpose, double trim) {
        assertEquals(trim, with("x", tonic, low, high, transpose, trim).trimCents(), EXACT);
    }

    /** And the first that is not; the message names the value. */
    @ParameterizedTest
    @CsvSource({
        "x, 0,  -1, 60,  0,   0,     -1",
        "x, 0,  60, 128, 0,   0,     128",
        "x, 0,  60, 60,  0,   0,     60",
        "x, 12, 57, 81,  0,   0,     12",
        "x, -1, 57, 81,  0,   0,     -1",
        "x, 0,  57, 81,  49,  0,     49",
        "x, 0,  57, 81,  -49, 0,     -49",
        "x, 0,  57, 81,  0,   100.5, 100.5",
        "x, 0,  57, 81,  0,   NaN,   NaN",
        "x, 0,  61, 62,  0,   0,     no note of minor-pentatonic",
        "' ', 0, 57, 81, 0,   0,     name"
    })
    void whatLiesBeyondIsRefused(
            String name, int tonic, int low, int high, int transpose, double trim, String inMessage) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> with(name, tonic, low, high, transpose, trim));
        assertTrue(refusal.toString().contains(inMessage), refusal.toString());
    }
}
