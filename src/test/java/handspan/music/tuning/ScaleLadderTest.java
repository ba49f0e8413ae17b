package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleLadderTest {
    private static final double EXACT = 1e-12;

    private static final int C = 0;

    private static final int A = 9;

    /** A made-up scale with cells of very different width: 150, 550 and 500 cents from note to note. */
    private static final Scale UNEVEN = new Scale("uneven", List.of(0.0, 150.0, 700.0));

    private static String names(ScaleLadder ladder) {
        return String.join(
                " ",
                IntStream.range(0, ladder.size())
                        .mapToObj(
                                i -> NoteName.of((int) ladder.key(i)) + "." + ladder.degree(i) + "." + ladder.octave(i))
                        .toList());
    }

    /** Note, degree, octave of the tonic below: A minor pentatonic is A C D E G (common practice). */
    @Test
    void theLadderHoldsTheScalesNotesFromEndToEnd() {
        assertEquals(
                "A3.1.3 C4.2.3 D4.3.3 E4.4.3 G4.5.3 A4.1.4",
                names(ScaleLadder.of(Scales.named("minor-pentatonic"), A, 57, 69)));
        assertEquals("B3.7.3 C4.1.4 D4.2.4 E4.3.4", names(ScaleLadder.of(Scales.named("major"), C, 59, 65 - 1)));
    }

    @Test
    void bothEndsOfTheRangeBelongToIt() {
        assertEquals(128, ScaleLadder.of(Scales.named("chromatic"), C, 0, 127).size());
        assertEquals(25, ScaleLadder.of(Scales.named("chromatic"), A, 57, 81).size());
        assertEquals(1, ScaleLadder.of(UNEVEN, C, 60, 60).size());
        assertEquals(1, ScaleLadder.of(UNEVEN, C, 61.5, 61.5).size());
    }

    @Test
    void notesMeetHalfWay() {
        ScaleLadder ladder = ScaleLadder.of(UNEVEN, C, 60, 72);
        assertEquals(60.75, ladder.upperBoundary(0), EXACT);
        assertEquals(64.25, ladder.upperBoundary(1), EXACT);
        assertEquals(64.25, ladder.lowerBoundary(2), EXACT);
        assertEquals(69.5, ladder.upperBoundary(2), EXACT);
        assertEquals(Double.NEGATIVE_INFINITY, ladder.lowerBoundary(0));
        assertEquals(Double.POSITIVE_INFINITY, ladder.upperBoundary(3));
    }

    /** Against a plain search for the least distance. */
    @ParameterizedTest
    @CsvSource({"chromatic", "blues", "harmonic-minor", "major-pentatonic"})
    void everyPitchBelongsToTheNoteNearestToIt(String scale) {
        ScaleLadder ladder = ScaleLadder.of(Scales.named(scale), A, 45, 81);
        for (double key = 40.013; key < 90; key += 0.037) {
            int nearest = 0;
            for (int i = 1; i < ladder.size(); i++) {
                if (Math.abs(ladder.key(i) - key) < Math.abs(ladder.key(nearest) - key)) {
                    nearest = i;
                }
            }
            assertEquals(nearest, ladder.nearest(key), scale + " at " + key);
        }
    }

    /** The smallest gap of each scale in semitones (common practice); a quarter of it bounds the hysteresis. */
    @ParameterizedTest
    @CsvSource({"chromatic, 1", "harmonic-minor, 1", "whole-tone, 2", "minor-pentatonic, 2", "octatonic, 1"})
    void theNarrowestCellReachesHalfTheSmallestGapToEitherSide(String scale, double semitones) {
        assertEquals(semitones, ScaleLadder.of(Scales.named(scale), A, 45, 81).narrowestCell(), EXACT);
    }

    @Test
    void unevenCellsCountByTheirShorterSide() {
        assertEquals(1.5, ScaleLadder.of(UNEVEN, C, 60, 72).narrowestCell(), EXACT);
        assertEquals(5, ScaleLadder.of(UNEVEN, C, 67, 72).narrowestCell(), EXACT);
        assertEquals(Double.POSITIVE_INFINITY, ScaleLadder.of(UNEVEN, C, 60, 61).narrowestCell());
    }

    @Test
    void aRangeWithoutANoteIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ScaleLadder.of(Scales.named("major-pentatonic"), C, 65, 66));
    }
}
