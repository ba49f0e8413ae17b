package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScalesTest {
    /** Semitones from note to note up to the octave, as theory books give them (common practice). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "chromatic,        1 1 1 1 1 1 1 1 1 1 1 1",
        "major,            2 2 1 2 2 2 1",
        "natural-minor,    2 1 2 2 1 2 2",
        "harmonic-minor,   2 1 2 2 1 3 1",
        "melodic-minor,    2 1 2 2 2 2 1",
        "dorian,           2 1 2 2 2 1 2",
        "phrygian,         1 2 2 2 1 2 2",
        "lydian,           2 2 2 1 2 2 1",
        "mixolydian,       2 2 1 2 2 1 2",
        "locrian,          1 2 2 1 2 2 2",
        "phrygian-dominant, 1 3 1 2 1 2 2",
        "double-harmonic-major, 1 3 1 2 1 3 1",
        "hungarian-minor,  2 1 3 1 1 3 1",
        "hirajoshi,        2 1 4 1 4",
        "in-sen,           1 4 2 3 2",
        "rast,             2 1.5 1.5 2 2 1.5 1.5",
        "bayati,           1.5 1.5 2 2 1 2 2",
        "even-pentatonic,  2.4 2.4 2.4 2.4 2.4",
        "major-pentatonic, 2 2 3 2 3",
        "minor-pentatonic, 3 2 2 3 2",
        "blues,            3 2 1 1 3 2",
        "whole-tone,       2 2 2 2 2 2",
        "octatonic,        2 1 2 1 2 1 2 1"
    })
    void scalesHaveTheirSteps(String name, String semitones) {
        List<Double> steps = new ArrayList<>();
        double cents = 0;
        for (String semitone : semitones.split(" ", -1)) {
            steps.add(cents);
            cents += 100 * Double.parseDouble(semitone);
        }
        assertEquals(1200, cents, "up to the octave");
        assertEquals(steps, Scales.named(name).stepsCents());
    }

    /**
     * The church modes are the major scale begun on another degree; the minor pentatonic is the major one from its
     * fifth.
     */
    @ParameterizedTest(name = "{0} = {1} from degree {2}")
    @CsvSource({
        "dorian, major, 2",
        "phrygian, major, 3",
        "lydian, major, 4",
        "mixolydian, major, 5",
        "natural-minor, major, 6",
        "locrian, major, 7",
        "phrygian-dominant, harmonic-minor, 5",
        "hungarian-minor, double-harmonic-major, 4",
        "minor-pentatonic, major-pentatonic, 5"
    })
    void modesAreRotationsOfTheirParent(String mode, String parent, int degree) {
        assertEquals(rotated(gaps(parent), degree - 1), gaps(mode));
    }

    private static List<Double> gaps(String name) {
        List<Double> steps = Scales.named(name).stepsCents();
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            gaps.add((i + 1 < steps.size() ? steps.get(i + 1) : 1200) - steps.get(i));
        }
        return gaps;
    }

    private static List<Double> rotated(List<Double> gaps, int by) {
        List<Double> rotated = new ArrayList<>(gaps);
        Collections.rotate(rotated, -by);
        return rotated;
    }

    @Test
    void noTwoScalesShareANameOrTheirNotes() {
        List<Scale> all = Scales.all();
        assertTrue(all.size() >= 14, all::toString);
        assertEquals(all.size(), all.stream().map(Scale::name).distinct().count());
        assertEquals(all.size(), all.stream().map(Scale::stepsCents).distinct().count());
    }

    @Test
    void anUnknownScaleIsRefusedWithTheNamesThereAre() {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> Scales.named("Major"));
        assertTrue(refusal.toString().contains("'Major'"), refusal.toString());
        assertTrue(refusal.toString().contains("minor-pentatonic"), refusal.toString());
    }

    @Test
    void stepsMustStartAtNothingAndRiseWithinTheOctave() {
        assertEquals(
                3,
                new Scale("just triad", List.of(0.0, 386.3, 702.0)).stepsCents().size());
        for (List<Double> steps : List.of(
                List.<Double>of(),
                List.of(100.0, 200.0),
                List.of(0.0, 200.0, 200.0),
                List.of(0.0, 300.0, 200.0),
                List.of(0.0, 1200.0),
                List.of(0.0, Double.NaN))) {
            assertThrows(IllegalArgumentException.class, () -> new Scale("odd", steps), steps.toString());
        }
    }

    @Test
    void aScaleKeepsItsStepsWhateverBecomesOfTheListItWasMadeFrom() {
        List<Double> steps = new ArrayList<>(List.of(0.0, 500.0));
        Scale scale = new Scale("open", steps);
        steps.set(1, 700.0);
        assertEquals(List.of(0.0, 500.0), scale.stepsCents());
    }
}
