package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.HeardWav;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The voice, measured as samples with what {@link HeardWav} has: windows, phases, crossings. */
class ToneVoiceTest {
    private static final double CEILING_DB = -12;

    /** What one cent is to a frequency: 2^(1/1200). */
    private static final double PITCH_TOLERANCE_CENTS = 1;

    private static final double LEVEL_TOLERANCE_DB = 0.2;

    private static final double ALIAS_LIMIT_DB = -70;

    /** Above the sixth harmonic of what is played in the tests of clicks, with the window's width. */
    private static final double ABOVE_HZ = 4000;

    private static final double CLICK_LIMIT_DB = -90;

    private final ToneVoice voice = new ToneVoice();

    private HeardWav steady(double hz, double gain01, double seconds) {
        short[] settle = new short[4800];
        voice.render(hz, gain01, settle, settle.length);
        voice.render(hz, gain01, settle, settle.length);
        short[] samples = new short[(int) (seconds * HeardWav.SAMPLES_PER_S)];
        voice.render(hz, gain01, samples, samples.length);
        return HeardWav.of(samples, samples.length);
    }

    private static double cents(double hz, double ofHz) {
        return 1200 * Math.log(hz / ofHz) / Math.log(2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {8, 16.3516, 27.5, 65.4064, 110, 261.6256, 440, 1046.502, 2637.02, 3951.07, 7040, 11_999})
    void pitchIsWithinACentAndLevelTheSameEverywhere(double hz) {
        double windowS = Math.max(0.05, 6 / hz);
        HeardWav heard = steady(hz, 1, 4 * windowS);
        double heardHz = heard.hz(windowS, 3 * windowS, windowS);
        assertEquals(0, cents(heardHz, hz), PITCH_TOLERANCE_CENTS / 10, heardHz + " Hz");
        double levelDb = heard.rmsDb(2 * windowS, 2 * windowS);
        double fullDb = 20 * Math.log10(ToneVoice.FULL_RMS / 32_768);
        assertEquals(fullDb, levelDb, LEVEL_TOLERANCE_DB / 4);
        assertTrue(heard.peakDb() <= CEILING_DB, heard.peakDb() + " dBFS");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, -6, -20, -40, -60})
    void levelIsAsManyDecibelsBelowFullAsAskedFor(double levelDb) {
        double fullDb = steady(330, 1, 0.3).rmsDb(0.15, 0.2);
        HeardWav heard = steady(330, Math.pow(10, levelDb / 20), 0.3);
        assertEquals(levelDb, heard.rmsDb(0.15, 0.2) - fullDb, LEVEL_TOLERANCE_DB);
    }

    /** The crests of six sines never quite meet: the loudest pitch peaks some dB below the ceiling. */
    @Test
    void noGainAndNoPitchPassesTheCeiling() {
        double loudestDb = Double.NEGATIVE_INFINITY;
        for (double hz = 8; hz < 13_000; hz *= 1.37) {
            for (double gain01 : new double[] {1, 2, 1e9, Double.POSITIVE_INFINITY}) {
                loudestDb = Math.max(loudestDb, steady(hz, gain01, 0.15).peakDb());
            }
        }
        assertTrue(loudestDb <= CEILING_DB && loudestDb > CEILING_DB - 4, loudestDb + " dBFS");
    }

    @Test
    void whatIsNoNumberChangesNothing() {
        steady(440, 0.5, 0.1);
        HeardWav heard = steady(Double.NaN, 0.5, 0.2);
        assertEquals(0, cents(heard.hz(0.05, 0.15, 0.05), 440), PITCH_TOLERANCE_CENTS);
        assertEquals(Double.NEGATIVE_INFINITY, steady(440, Double.NaN, 0.1).peakDb());
        assertEquals(0, cents(steady(1e9, 1, 0.2).hz(0.05, 0.15, 0.05), ToneVoice.HIGHEST_HZ), PITCH_TOLERANCE_CENTS);
    }

    /** All that is not at whole multiples of the note, or above 20.5 kHz, has no business there. */
    @ParameterizedTest
    @ValueSource(doubles = {1760, 2637.02, 3951.07, 4434.92, 5919.91, 7902.13, 11_839.8})
    void highNotesFoldNothingBack(double hz) {
        int count = 4096;
        double[] amplitudes = steady(hz, 1, 0.2).spectrum(1000, count);
        double strongest = 0;
        double stray = 0;
        for (int k = 5; k < amplitudes.length; k++) {
            double lineHz = k * (double) HeardWav.SAMPLES_PER_S / count;
            double nearestHz = Math.max(1, Math.round(lineHz / hz)) * hz;
            boolean own = Math.abs(lineHz - nearestHz) < 5.0 * HeardWav.SAMPLES_PER_S / count && lineHz < 20_500;
            strongest = Math.max(strongest, amplitudes[k]);
            stray = own ? stray : Math.max(stray, amplitudes[k]);
        }
        double strayDb = 20 * Math.log10(stray / strongest);
        assertTrue(strayDb < ALIAS_LIMIT_DB, strayDb + " dB");
    }

    @Test
    void itBeginsWithSilenceAndEndsInSilence() {
        short[] samples = new short[2000];
        voice.aim(440, 1);
        voice.render(440, 1, samples, 2000);
        assertEquals(0, samples[0]);
        assertEquals(0, samples[1]);
        voice.aim(440, 0);
        voice.render(440, 0, samples, 2000);
        for (int i = 2 * Easing.WINDOW; i < 2000; i++) {
            assertEquals(0, samples[i], "sample " + i);
        }
        assertTrue(voice.isSilent());
    }

    /** A note an octave above the last one sounds at its own pitch from its first samples on. */
    @Test
    void aNoteAfterSilenceDoesNotSlideInFromTheLastOne() {
        steady(440, 1, 0.1);
        short[] quiet = new short[1000];
        voice.render(440, 0, quiet, 1000);
        voice.render(440, 0, quiet, 1000);
        short[] samples = new short[4800];
        voice.render(880, 1, samples, samples.length);
        HeardWav heard = HeardWav.of(samples, samples.length);
        assertEquals(0, cents(heard.hz(0.012, 0.03, 0.02), 880), PITCH_TOLERANCE_CENTS);
    }

    private HeardWav steps(double[] gains01, double[] hz, int each) {
        short[] samples = new short[gains01.length * each];
        short[] some = new short[each];
        for (int i = 0; i < gains01.length; i++) {
            voice.aim(hz[i], gains01[i]);
            voice.render(hz[i], gains01[i], some, each);
            System.arraycopy(some, 0, samples, i * each, each);
        }
        return HeardWav.of(samples, samples.length);
    }

    /** What would be heard of the same steps without easing is more than 30 dB above the limit. */
    @Test
    void stepsOfLevelDoNotClick() {
        double[] gains01 = {0, 1, 0, 1, 0.1, 0.9, 0};
        double[] hz = {331, 331, 331, 331, 331, 331, 331};
        HeardWav heard = steps(gains01, hz, 1111);
        assertTrue(heard.clickDb(ABOVE_HZ) < CLICK_LIMIT_DB, heard.clickDb(ABOVE_HZ) + " dBFS");
        short[] cut = new short[heard.count()];
        for (int i = 0; i < cut.length; i++) {
            double x = 2 * Math.PI * 331 * i / HeardWav.SAMPLES_PER_S;
            cut[i] = (short) (ToneVoice.FULL_RMS * Math.sqrt(2) * Math.sin(x) * gains01[i / 1111]);
        }
        double cutDb = HeardWav.of(cut, cut.length).clickDb(ABOVE_HZ);
        assertTrue(cutDb > CLICK_LIMIT_DB + 30, cutDb + " dBFS");
    }

    @Test
    void leapsOfPitchDoNotClick() {
        double[] gains01 = {1, 1, 1, 1, 1, 1};
        double[] hz = {110, 440, 55, 523.25, 65.4, 300};
        HeardWav heard = steps(gains01, hz, 2000);
        assertTrue(heard.clickDb(ABOVE_HZ) < CLICK_LIMIT_DB, heard.clickDb(ABOVE_HZ) + " dBFS");
    }

    /** Aims as wild as they come, every few samples: under the ceiling, and without anything above the tone. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whateverIsAimedAtNeverClicksNorPassesTheCeiling(long seed) {
        Random chance = new Random(seed);
        int total = 60_000;
        short[] samples = new short[total];
        short[] some = new short[3000];
        int at = 0;
        while (at < total) {
            double hz = 40 * Math.pow(2, 3.5 * chance.nextDouble());
            double gain01 = chance.nextInt(4) == 0 ? 0 : chance.nextDouble() * 1.5;
            if (chance.nextInt(3) == 0) {
                voice.aim(hz, gain01);
            }
            int count = Math.min(total - at, chance.nextBoolean() ? chance.nextInt(40) : chance.nextInt(3000));
            voice.render(hz, gain01, some, count);
            System.arraycopy(some, 0, samples, at, count);
            at += count;
        }
        HeardWav heard = HeardWav.of(samples, total);
        assertTrue(heard.peakDb() <= CEILING_DB && heard.peakDb() > CEILING_DB - 6, heard.peakDb() + " dBFS");
        assertTrue(heard.clickDb(ABOVE_HZ) < CLICK_LIMIT_DB, heard.clickDb(ABOVE_HZ) + " dBFS");
    }
}
