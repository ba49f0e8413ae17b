package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleLadderTest {
    /** D dorian has the notes of C major; C minor has three others, and a wider range has more. */
    @Test
    void laddersOfTheSameNotesAreSeenToBe() {
        PitchRange octave = new PitchRange(60, 72, Direction.HIGH_FAR, 0);
        ScaleLadder major = ScaleLadder.of(Scales.named("major"), EqualDivision.TWELVE, Tonic.of(0), octave);
        ScaleLadder dorian = ScaleLadder.of(Scales.named("dorian"), EqualDivision.TWELVE, Tonic.of(2), octave);
        ScaleLadder minor = ScaleLadder.of(Scales.named("natural-minor"), EqualDivision.TWELVE, Tonic.of(0), octave);
        ScaleLadder wide = ScaleLadder.of(
                Scales.named("major"),
                EqualDivision.TWELVE,
                Tonic.of(0),
                new PitchRange(60, 84, Direction.HIGH_FAR, 0));
        assertTrue(major.hasNotesOf(dorian));
        assertFalse(major.hasNotesOf(minor));
        assertFalse(major.hasNotesOf(wide));
    }

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
                names(ScaleLadder.of(Scales.named("minor-pentatonic"), EqualDivision.TWELVE, Tonic.of(A), 57, 69)));
        assertEquals(
                "B3.7.3 C4.1.4 D4.2.4 E4.3.4",
                names(ScaleLadder.of(Scales.named("major"), EqualDivision.TWELVE, Tonic.of(C), 59, 65 - 1)));
    }

    @Test
    void bothEndsOfTheRangeBelongToIt() {
        assertEquals(
                128,
                ScaleLadder.of(Scales.named("chromatic"), EqualDivision.TWELVE, Tonic.of(C), 0, 127)
                        .size());
        assertEquals(
                25,
                ScaleLadder.of(Scales.named("chromatic"), EqualDivision.TWELVE, Tonic.of(A), 57, 81)
                        .size());
        assertEquals(
                1,
                ScaleLadder.of(UNEVEN, EqualDivision.TWELVE, Tonic.of(C), 60, 60)
                        .size());
        assertEquals(
                1,
                ScaleLadder.of(UNEVEN, EqualDivision.TWELVE, Tonic.of(C), 61.5, 61.5)
                        .size());
    }

    @Test
    void notesMeetHalfWay() {
        ScaleLadder ladder = ScaleLadder.of(UNEVEN, EqualDivision.TWELVE, Tonic.of(C), 60, 72);
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
        ScaleLadder ladder = ScaleLadder.of(Scales.named(scale), EqualDivision.TWELVE, Tonic.of(A), 45, 81);
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
        assertEquals(
                semitones,
                ScaleLadder.of(Scales.named(scale), EqualDivision.TWELVE, Tonic.of(A), 45, 81)
                        .narrowestCell(),
                EXACT);
    }

    @Test
    void unevenCellsCountByTheirShorterSide() {
        assertEquals(
                1.5,
                ScaleLadder.of(UNEVEN, EqualDivision.TWELVE, Tonic.of(C), 60, 72)
                        .narrowestCell(),
                EXACT);
        assertEquals(
                5,
                ScaleLadder.of(UNEVEN, EqualDivision.TWELVE, Tonic.of(C), 67, 72)
                        .narrowestCell(),
                EXACT);
        assertEquals(
                Double.POSITIVE_INFINITY,
                ScaleLadder.of(UNEVEN, EqualDivision.TWELVE, Tonic.of(C), 60, 61)
                        .narrowestCell());
    }

    @Test
    void aRangeWithoutANoteIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> ScaleLadder.of(Scales.named("major-pentatonic"), EqualDivision.TWELVE, Tonic.of(C), 65, 66));
    }

    private static Tuning inD(Temperament temperament, String low, String high) {
        return new Tuning(
                "in D",
                ReferencePitch.A440,
                temperament,
                Scales.named("major"),
                Tonic.parse("D"),
                new PitchRange(NoteName.parse(low), NoteName.parse(high), Direction.HIGH_FAR, 0),
                Snapping.of(Snap.FREE),
                0,
                0);
    }

    /** The just fifth is 702 cents, the major third 386 (Ellis 1885): F# is 14 cents below, A 2 above the keys. */
    @Test
    void theEndsOfARangeStandAtTheNotesAsTheyAreTuned() {
        Tuning just = inD(new JustIntonation(), "F#4", "A5");
        assertEquals(62 + 3.86314, just.ladder().key(0), 1e-5);
        assertEquals(just.ladder().key(0), just.curve().key(0), EXACT);
        assertEquals(74 + 7.01955, just.curve().key(1), 1e-5);
        assertEquals(just.curve().key(1), just.ladder().key(just.ladder().size() - 1), EXACT);
        assertEquals("F#4", just.noteName(just.ladder(), 0));
    }

    /** An end that is no note of the scale stays at its key: F4 in D major. */
    @Test
    void anEndThatIsNoNoteOfTheScaleStaysAtItsKey() {
        Tuning just = inD(new JustIntonation(), "F4", "A5");
        assertEquals(65, just.curve().key(0), EXACT);
        assertEquals(65.86314, just.ladder().key(0), 1e-5);
    }

    /** In 19 equal steps C# and Db are two notes; all nineteen have names that tell them apart. */
    @Test
    void nineteenNotesHaveNineteenNames() {
        Tuning tuning = new Tuning(
                "nineteen",
                ReferencePitch.A440,
                new EqualDivision(19),
                Scales.named("chromatic"),
                Tonic.parse("C"),
                new PitchRange(60, 71, Direction.HIGH_FAR, 0),
                Snapping.of(Snap.FREE),
                0,
                0);
        ScaleLadder ladder = tuning.ladder();
        assertEquals(18, ladder.size());
        assertEquals("C4", tuning.noteName(ladder, 0));
        assertEquals("C#4-37", tuning.noteName(ladder, 1));
        assertEquals(
                18,
                java.util.stream.IntStream.range(0, ladder.size())
                        .mapToObj(note -> tuning.noteName(ladder, note))
                        .distinct()
                        .count());
    }

    /** D4 to A4 as 12 sees it; what sounds is a tone higher and 5 cents more. */
    @Test
    void namesAreThoseThatSound() {
        Tuning moved = inD(EqualDivision.TWELVE, "D4", "A4").shifted(2, 5);
        assertEquals("E4", moved.noteName(moved.ladder(), 0));
        assertEquals("G#4", moved.noteName(moved.ladder(), 2));
    }
}
