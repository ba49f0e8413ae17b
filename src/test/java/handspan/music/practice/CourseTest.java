package handspan.music.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tonic;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys by hand: C4 = 60; C major two octaves up is 60 62 64 65 67 69 71 72 74 76 77 79 81 83 84. */
class CourseTest {
    private static final ScaleLadder MAJOR = ladder("major", 60, 84);

    private static ScaleLadder ladder(String scale, int low, int high) {
        return ScaleLadder.of(
                Scales.named(scale),
                EqualDivision.TWELVE,
                Tonic.of(0),
                new PitchRange(low, high, Direction.HIGH_FAR, 0));
    }

    private static List<Double> even(ScaleLadder ladder) {
        return Collections.nCopies(ladder.size(), 1.0);
    }

    private static double way(Course course, ScaleLadder ladder, int i) {
        return Math.abs(
                ladder.key(course.notes().get(i)) - ladder.key(course.notes().get(i - 1)));
    }

    @Test
    void itBeginsAtTheTonicNearestToTheMiddle() {
        assertEquals(
                72, MAJOR.key(Course.through(MAJOR, 1, even(MAJOR), 1).notes().get(0)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void firstNeighboursThenThirdsThenFifthsAndOctavesThenAnywhere(long seed) {
        Course course = Course.through(MAJOR, 80, even(MAJOR), seed);
        for (int i = 1; i < 20; i++) {
            assertTrue(way(course, MAJOR, i) <= 2, "step " + i);
            assertEquals(1, Math.abs(course.notes().get(i) - course.notes().get(i - 1)), "step " + i);
        }
        for (int i = 20; i < 40; i++) {
            assertTrue(Set.of(3.0, 4.0).contains(way(course, MAJOR, i)), "step " + i);
        }
        for (int i = 40; i < 60; i++) {
            assertTrue(Set.of(7.0, 12.0).contains(way(course, MAJOR, i)), "step " + i);
        }
        boolean others = false;
        for (int i = 60; i < 80; i++) {
            others |= !Set.of(3.0, 4.0, 7.0, 12.0).contains(way(course, MAJOR, i));
        }
        assertTrue(others);
    }

    @ParameterizedTest
    @ValueSource(strings = {"chromatic", "minor-pentatonic", "whole-tone"})
    void neverTheSameNoteTwiceInARow(String scale) {
        ScaleLadder ladder = ladder(scale, 60, 67);
        for (long seed = 1; seed <= 50; seed++) {
            Course course = Course.through(ladder, 40, even(ladder), seed);
            for (int i = 1; i < 40; i++) {
                assertNotEquals(course.notes().get(i - 1), course.notes().get(i));
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameCourseAndAnotherOneAnother() {
        assertEquals(Course.through(MAJOR, 40, even(MAJOR), 5), Course.through(MAJOR, 40, even(MAJOR), 5));
        assertNotEquals(Course.through(MAJOR, 40, even(MAJOR), 5), Course.through(MAJOR, 40, even(MAJOR), 6));
    }

    /**
     * Anywhere, a note of weight 4 among 14 of weight 1 is drawn after each other note with 4/17, so with p the share
     * of its askings p = (1 - p) 4/17, which makes 4/21 = 0.190; one of even weight has 1/15 = 0.067. Of 6,000 draws
     * the share scatters by less than 0.006.
     */
    @Test
    void aWeakNoteComesMoreOften() {
        List<Double> weights = new java.util.ArrayList<>(even(MAJOR));
        weights.set(3, 4.0);
        int asked = 0;
        int count = 0;
        for (long seed = 1; seed <= 20; seed++) {
            List<Integer> notes = Course.through(MAJOR, 1200, weights, seed).notes();
            List<Integer> anywhere = notes.subList(900, 1200);
            asked += Collections.frequency(anywhere, 3);
            count += anywhere.size();
        }
        assertEquals(4.0 / 21, asked / (double) count, 0.02);
    }

    /** Two notes a fifth apart have no third between them. */
    @Test
    void whereThereIsNoSuchIntervalTheNearerOnesServe() {
        ScaleLadder two = ladder("chromatic", 60, 61);
        assertEquals(
                List.of(0, 1, 0, 1, 0, 1, 0, 1),
                Course.through(two, 8, even(two), 1).notes());
    }

    @Test
    void whatIsNoCourseIsRefusedWithTheReason() {
        assertTrue(refused(() -> Course.through(MAJOR, 0, even(MAJOR), 1)).contains("0 notes to find (1..1200)"));
        assertTrue(refused(() -> Course.through(ladder("major", 60, 61), 5, List.of(1.0), 1))
                .contains("single note"));
        assertTrue(refused(() -> Course.through(MAJOR, 5, List.of(1.0), 1)).contains("1 weights for 15 notes"));
        assertTrue(refused(() -> new Course(List.of(1, 2, 2))).contains("note 3 of the course is the same"));
    }

    private static String refused(org.junit.jupiter.api.function.Executable maker) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, maker).getMessage());
    }
}
