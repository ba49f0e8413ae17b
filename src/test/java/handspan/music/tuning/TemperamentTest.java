package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperamentTest {
    private static final double PUBLISHED_CENTS = 0.005;
    private static final double EXACT_CENTS = 1e-6;

    /**
     * Sizes of just intervals: A. J. Ellis, appendix to H. Helmholtz, On the Sensations of Tone, 2nd English edition,
     * 1885; the second column printed there to two decimals, where it was read, else worked out to six decimals apart
     * from this code.
     */
    @ParameterizedTest(name = "{0}/{1}")
    @CsvSource({
        "81,     80,     21.51",
        "128,    125,    41.06",
        "256,    243,    90.22",
        "135,    128,    92.18",
        "27,     25,     133.24",
        "800,    729,    160.90",
        "9,      8,      203.91",
        "256,    225,    223.46",
        "75,     64,     274.58"
    })
    void ratiosHaveTheirPublishedSize(int over, int under, double cents) {
        assertEquals(cents, new Ratio(over, under).cents(), PUBLISHED_CENTS);
    }

    /** The same source, exact column; 16/15 and 5/4 by hand: 9/8 less 135/128, and the fifth less 6/5. */
    @Test
    void justNotesStandAtTheirExactPlaces() {
        Temperament just = Temperament.parse("just");
        double[] exact = {
            0,
            203.910002 - 92.178716,
            203.910002,
            315.641287,
            701.955001 - 315.641287,
            498.044999,
            590.223716,
            1200 - 498.044999,
            813.686286,
            884.358713,
            701.955001 + 315.641287,
            1088.268715
        };
        for (int semitones = 0; semitones < exact.length; semitones++) {
            assertEquals(exact[semitones], just.cents(semitones), 2 * EXACT_CENTS, semitones + " semitones");
            assertEquals(just.cents(semitones), just.allCents().get(semitones));
        }
    }

    /**
     * Fifth and major third of equal divisions, in cents to one decimal, as books on tuning list them (from memory;
     * they follow from {@code 1200 k / n} for the whole k next to 702 and to 400).
     */
    @ParameterizedTest(name = "{0} equal steps")
    @CsvSource({
        "12, 700.0, 400.0",
        "19, 694.7, 378.9",
        "22, 709.1, 381.8",
        "24, 700.0, 400.0",
        "31, 696.8, 387.1",
        "41, 702.4, 409.8",
        "53, 701.9, 407.5",
        "17, 705.9, 423.5"
    })
    void divisionsHaveTheirFifthAndThird(int steps, double fifthCents, double thirdCents) {
        EqualDivision division = new EqualDivision(steps);
        assertEquals(fifthCents, division.cents(7), 0.051);
        assertEquals(thirdCents, division.cents(4), 0.051);
        assertEquals(steps, division.allCents().size());
        assertEquals(1200.0 / steps, division.allCents().get(1), EXACT_CENTS);
    }

    /** The nearest step is at most half a step away, whatever the division. */
    @Test
    void everyNoteGoesToTheNearestStep() {
        for (int steps = 5; steps <= 53; steps++) {
            for (int semitones = 0; semitones < 12; semitones++) {
                double cents = new EqualDivision(steps).cents(semitones);
                assertTrue(Math.abs(cents - 100 * semitones) <= 600.0 / steps + EXACT_CENTS);
                assertEquals(0, Math.IEEEremainder(cents, 1200.0 / steps), EXACT_CENTS);
            }
        }
    }

    /** 31 equal steps: the meantone of the books, 5 5 3 5 5 5 3 for major. */
    @Test
    void majorInThirtyOneStepsIsFiveFiveThree() {
        List<Double> cents = Scales.named("major").stepsCents(new EqualDivision(31));
        int[] steps = {0, 5, 10, 13, 18, 23, 28};
        for (int degree = 0; degree < steps.length; degree++) {
            assertEquals(1200.0 * steps[degree] / 31, cents.get(degree), EXACT_CENTS);
        }
    }

    @Test
    void aScaleThatLosesANoteInADivisionIsRefused() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> Scales.named("major").stepsCents(new EqualDivision(5)));
        assertTrue(refusal.toString().contains("'major' in 5-equal"), refusal.toString());
        assertEquals(
                5,
                Scales.named("minor-pentatonic")
                        .stepsCents(new EqualDivision(5))
                        .size());
    }

    @Test
    void chromaticIsEveryNoteThereIs() {
        assertEquals(
                19, Scales.named("chromatic").stepsCents(new EqualDivision(19)).size());
        assertEquals(
                12, Scales.named("chromatic").stepsCents(new JustIntonation()).size());
    }

    @Test
    void scalesOfCentsAndRatiosSoundAsWrittenInAnyTemperament() {
        for (String name : List.of("rast", "harmonics-8-to-16")) {
            Scale scale = Scales.named(name);
            assertEquals(scale.stepsCents(), scale.stepsCents(new EqualDivision(19)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"12-equal", "5-equal", "53-equal", "just"})
    void aTemperamentComesBackFromItsWord(String word) {
        assertEquals(word, Temperament.parse(word).word());
    }

    @ParameterizedTest
    @ValueSource(strings = {"4-equal", "54-equal", "-equal", "equal", "12", "even", "", "12-Equal"})
    void anythingElseIsRefusedWithWhatIsAllowed(String word) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> Temperament.parse(word));
        assertTrue(refusal.toString().contains("5"), refusal.toString());
        assertTrue(refusal.toString().contains("53"), refusal.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"5/", "/4", "5/4/3", "0/1", "5/-4", "x", "", "NaN", "-5", "1200", "2/1", "1e400"})
    void aStepThatIsNoneIsRefused(String step) {
        assertThrows(IllegalArgumentException.class, () -> Scale.written("own", List.of("0", step)));
    }
}
