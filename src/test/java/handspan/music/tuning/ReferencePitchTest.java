package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferencePitchTest {
    /** Half a unit of the tenth decimal, and a little for the double it is printed from. */
    private static final double PRINTED_HZ = 5.1e-11;

    private static final double RELATIVE_TOLERANCE = 1e-12;

    /** A table of two decimals that truncates in one place (E5 659.25, exact 659.2551). */
    private static final double PUBLISHED_HZ = 0.0075;

    private static final MathContext DIGITS = new MathContext(60);

    /** The twelfth root of two to fifty figures (a test below multiplies it out). */
    private static final BigDecimal SEMITONE = new BigDecimal("1.0594630943592952645618252949463417007792043174942");

    /**
     * Keys 0 to 127 in Hz. Equal temperament on A4 = 440 Hz (ISO 16:1975), key 69 = A4 (MIDI 1.0); worked out apart
     * from this code and printed to ten decimals.
     */
    private static final String KEYS_HZ = """
            8.1757989156  8.6619572180  9.1770239974  9.7227182413  10.3008611535  10.9133822323  11.5623257097  12.2498573744
            12.9782717994  13.7500000000  14.5676175474  15.4338531643  16.3515978313  17.3239144361  18.3540479948  19.4454364826
            20.6017223071  21.8267644646  23.1246514195  24.4997147489  25.9565435987  27.5000000000  29.1352350949  30.8677063285
            32.7031956626  34.6478288721  36.7080959897  38.8908729653  41.2034446141  43.6535289291  46.2493028390  48.9994294977
            51.9130871975  55.0000000000  58.2704701898  61.7354126570  65.4063913251  69.2956577442  73.4161919794  77.7817459305
            82.4068892282  87.3070578583  92.4986056779  97.9988589954  103.8261743950  110.0000000000  116.5409403795  123.4708253140
            130.8127826503  138.5913154884  146.8323839587  155.5634918610  164.8137784564  174.6141157165  184.9972113558  195.9977179909
            207.6523487900  220.0000000000  233.0818807590  246.9416506281  261.6255653006  277.1826309769  293.6647679174  311.1269837221
            329.6275569129  349.2282314330  369.9944227116  391.9954359817  415.3046975799  440.0000000000  466.1637615181  493.8833012561
            523.2511306012  554.3652619537  587.3295358348  622.2539674442  659.2551138257  698.4564628660  739.9888454233  783.9908719635
            830.6093951599  880.0000000000  932.3275230362  987.7666025122  1046.5022612024  1108.7305239075  1174.6590716696  1244.5079348883
            1318.5102276515  1396.9129257320  1479.9776908465  1567.9817439270  1661.2187903198  1760.0000000000  1864.6550460724  1975.5332050245
            2093.0045224048  2217.4610478150  2349.3181433393  2489.0158697766  2637.0204553030  2793.8258514640  2959.9553816931  3135.9634878540
            3322.4375806396  3520.0000000000  3729.3100921447  3951.0664100490  4186.0090448096  4434.9220956300  4698.6362866785  4978.0317395533
            5274.0409106059  5587.6517029281  5919.9107633862  6271.9269757080  6644.8751612791  7040.0000000000  7458.6201842894  7902.1328200980
            8372.0180896192  8869.8441912599  9397.2725733570  9956.0634791066  10548.0818212118  11175.3034058561  11839.8215267723  12543.8539514160
            """;

    /**
     * Notes C0 to B5 in Hz as printed to two decimals: B. H. Suits, Physics of Music, table of note frequencies,
     * Michigan Technological University.
     */
    private static final String PUBLISHED = """
            C0 16.35  C#0 17.32  D0 18.35  D#0 19.45  E0 20.60  F0 21.83
            F#0 23.12  G0 24.50  G#0 25.96  A0 27.50  A#0 29.14  B0 30.87
            C1 32.70  C#1 34.65  D1 36.71  D#1 38.89  E1 41.20  F1 43.65
            F#1 46.25  G1 49.00  G#1 51.91  A1 55.00  A#1 58.27  B1 61.74
            C2 65.41  C#2 69.30  D2 73.42  D#2 77.78  E2 82.41  F2 87.31
            F#2 92.50  G2 98.00  G#2 103.83  A2 110.00  A#2 116.54  B2 123.47
            C3 130.81  C#3 138.59  D3 146.83  D#3 155.56  E3 164.81  F3 174.61
            F#3 185.00  G3 196.00  G#3 207.65  A3 220.00  A#3 233.08  B3 246.94
            C4 261.63  C#4 277.18  D4 293.66  D#4 311.13  E4 329.63  F4 349.23
            F#4 369.99  G4 392.00  G#4 415.30  A4 440.00  A#4 466.16  B4 493.88
            C5 523.25  C#5 554.37  D5 587.33  D#5 622.25  E5 659.25  F5 698.46
            F#5 739.99  G5 783.99  G#5 830.61  A5 880.00  A#5 932.33  B5 987.77
            """;

    @Test
    void everyKeyHasItsFrequency() {
        String[] printed = KEYS_HZ.strip().split("\\s+", -1);
        assertEquals(128, printed.length);
        for (int key = 0; key < 128; key++) {
            double hz = Double.parseDouble(printed[key]);
            assertEquals(hz, ReferencePitch.A440.hz(key), PRINTED_HZ, "key " + key);
            assertEquals(key, ReferencePitch.A440.key(hz), 1e-9, "key " + key);
        }
    }

    @ParameterizedTest(name = "A4 = {0} Hz")
    @ValueSource(doubles = {415, 430.5, 440, 443, 466})
    void everyKeyAgreesWithTheFormulaInSixtyFigures(double a4Hz) {
        assertEquals(2, SEMITONE.pow(12, DIGITS).doubleValue(), 1e-15);
        ReferencePitch reference = new ReferencePitch(a4Hz);
        for (int key = 0; key < 128; key++) {
            double hz = new BigDecimal(a4Hz)
                    .multiply(SEMITONE.pow(key - 69, DIGITS), DIGITS)
                    .doubleValue();
            assertEquals(hz, reference.hz(key), RELATIVE_TOLERANCE * hz, "key " + key);
        }
    }

    @Test
    void notesHaveTheirPublishedFrequencies() {
        String[] cells = PUBLISHED.strip().split("\\s+", -1);
        assertEquals(2 * 72, cells.length);
        for (int i = 0; i < cells.length; i += 2) {
            double hz = Double.parseDouble(cells[i + 1]);
            assertEquals(hz, ReferencePitch.A440.hz(NoteName.parse(cells[i])), PUBLISHED_HZ, cells[i]);
        }
    }

    @Test
    void aQuarterToneLiesMidwayBetweenTwoKeys() {
        double between = Math.sqrt(440 * 466.1637615180899);
        assertEquals(between, ReferencePitch.A440.hz(69.5), 1e-9);
        assertEquals(69.5, ReferencePitch.A440.key(between), 1e-9);
    }

    @Test
    void referencesFrom415To466HzAreTaken() {
        assertEquals(415, new ReferencePitch(415).hz(69), 0);
        assertEquals(466, new ReferencePitch(466).hz(69), 0);
        for (double hz : new double[] {414.99, 466.01, 0, -440, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> new ReferencePitch(hz), hz + " Hz");
        }
    }
}
