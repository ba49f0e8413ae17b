package handspan.number.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecibelsTest {
    private static final double RELATIVE_TOLERANCE = 1e-11;

    private static final double TOLERANCE_DB = 1e-9;

    /**
     * Level of a field quantity, 20 lg of the amplitude ratio: ISO 80000-3:2006 and IEC 60027-3 (clause from memory);
     * ratios worked out apart from this code to twelve figures.
     */
    @ParameterizedTest(name = "{0} dB")
    @CsvSource(textBlock = """
                    -96,               1.58489319246e-05
                    -60,               0.001
                    -40,               0.01
                    -20,               0.1
                    -12,               0.251188643151
                    -10,               0.316227766017
                    -6,                0.501187233627
                    -3,                0.707945784384
                    -1,                0.891250938134
                    0,                 1
                    1,                 1.1220184543
                    3,                 1.41253754462
                    6.020599913279624, 2
                    20,                10
                    """)
    void levelsHaveTheirAmplitudeRatios(double levelDb, double ratio) {
        assertEquals(ratio, Decibels.gain(levelDb), RELATIVE_TOLERANCE * ratio);
        assertEquals(levelDb, Decibels.of(ratio), TOLERANCE_DB);
    }
}
