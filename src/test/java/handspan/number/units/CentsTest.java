package handspan.number.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CentsTest {
    /** Half a unit of the sixth decimal, and what the printed figure leaves to the second. */
    private static final double TOLERANCE_CENTS = 1e-6;

    private static final double RELATIVE_TOLERANCE = 1e-12;

    /**
     * Just intervals, exact to six decimals: {@code 1200 log2(ratio)} worked out apart from this code; the ones with
     * two decimals in the usual tables of 5-limit intervals agree (21.51, 41.06, 90.22, 203.91 ...). The cent: A. J.
     * Ellis, appendix to H. Helmholtz, On the Sensations of Tone, 2nd English edition, 1885.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
                    syntonic comma,            81,     80,      21.506290
                    diesis,                    128,    125,     41.058858
                    Pythagorean limma,         256,    243,     90.224996
                    major limma,               135,    128,     92.178716
                    large limma,               27,     25,      133.237575
                    grave tone,                800,    729,     160.897423
                    major tone,                9,      8,       203.910002
                    diminished third,          256,    225,     223.462571
                    augmented second,          75,     64,      274.582429
                    minor third,               6,      5,       315.641287
                    perfect fourth,            4,      3,       498.044999
                    tritone,                   45,     32,      590.223716
                    minor sixth,               8,      5,       813.686286
                    major sixth,               5,      3,       884.358713
                    Pythagorean minor seventh, 16,     9,       996.089998
                    major seventh,             15,     8,       1088.268715
                    Pythagorean comma,         531441, 524288,  23.460010
                    schisma,                   32805,  32768,   1.953721
                    """)
    void justIntervalsHaveTheirCents(String interval, double upper, double lower, double cents) {
        assertEquals(cents, Cents.between(lower, upper), TOLERANCE_CENTS, interval);
        assertEquals(-cents, Cents.between(upper, lower), TOLERANCE_CENTS, interval + " downward");
        assertEquals(upper / lower, Cents.ratio(cents), 1e-9 * upper / lower, interval + " back");
    }

    /** By definition of the octave and of equal temperament. */
    @Test
    void anOctaveIsTwelveHundredCentsAndASemitoneTheTwelfthRootOfTwo() {
        assertEquals(1200, Cents.between(220, 440), TOLERANCE_CENTS);
        assertEquals(0.5, Cents.ratio(-1200), RELATIVE_TOLERANCE);
        assertEquals(2, Math.pow(Cents.ratio(100), 12), 2 * RELATIVE_TOLERANCE);
    }
}
