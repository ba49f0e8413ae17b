package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignalTonesTest {
    private static final double SAMPLES_PER_S = 44_100;

    /** The ceiling: 20 lg(peak / full scale), dBFS. */
    private static final double CEILING_DB = -12;

    /**
     * A sine of peak A moves by at most 2 pi f A / fs from sample to sample; at the ceiling (8231 of 32768) and 990 Hz
     * that is 1161. A tone cut off at its crest leaps by its peak, over 6000.
     */
    private static final int MOST_LEAP = 1161;

    private static int leap(short[] samples) {
        int most = Math.max(Math.abs(samples[0]), Math.abs(samples[samples.length - 1]));
        for (int i = 1; i < samples.length; i++) {
            most = Math.max(most, Math.abs(samples[i] - samples[i - 1]));
        }
        return most;
    }

    private static double peak(short[] samples) {
        int peak = 0;
        for (short sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return peak;
    }

    /**
     * Power at one frequency. Source: G. Goertzel, An algorithm for the evaluation of finite trigonometric series,
     * Amer. Math. Monthly 65 (1958) 34-35.
     */
    private static double goertzel(short[] samples, double hz) {
        double c = 2 * Math.cos(2 * Math.PI * hz / SAMPLES_PER_S);
        double s1 = 0;
        double s2 = 0;
        for (short sample : samples) {
            double s0 = sample + c * s1 - s2;
            s2 = s1;
            s1 = s0;
        }
        return s1 * s1 + s2 * s2 - c * s1 * s2;
    }

    /** Stretches between silences of 5 ms and more. */
    private static List<short[]> tones(short[] samples) {
        List<short[]> tones = new ArrayList<>();
        int from = -1;
        int quiet = 0;
        for (int i = 0; i < samples.length; i++) {
            quiet = Math.abs(samples[i]) < 30 ? quiet + 1 : 0;
            if (quiet == 0 && from < 0) {
                from = i;
            } else if (quiet > 220 && from >= 0) {
                tones.add(Arrays.copyOfRange(samples, from, i - quiet + 1));
                from = -1;
            }
        }
        return tones;
    }

    private static double hzByCrossings(short[] tone) {
        int first = -1;
        int last = -1;
        int count = 0;
        for (int i = 1; i < tone.length; i++) {
            if (tone[i - 1] < 0 && tone[i] >= 0) {
                first = first < 0 ? i : first;
                last = i;
                count++;
            }
        }
        return (count - 1) * SAMPLES_PER_S / (last - first);
    }

    @ParameterizedTest
    @EnumSource(Signal.class)
    void everySignalStaysUnderTheCeilingAndIsHeard(Signal signal) {
        double db = 20 * Math.log10(peak(SignalTones.samples(signal)) / 32_768);
        assertTrue(db <= CEILING_DB && db > -20, db + " dBFS");
    }

    @ParameterizedTest
    @EnumSource(Signal.class)
    void noSignalClicks(Signal signal) {
        short[] samples = SignalTones.samples(signal);
        assertEquals(0, samples[0]);
        assertEquals(0, samples[samples.length - 1]);
        assertTrue(leap(samples) <= MOST_LEAP, "leap of " + leap(samples));
        short[] cut = Arrays.copyOf(samples, 0);
        for (int end = 2000; end < 2100 && leap(cut.length == 0 ? samples : cut) <= MOST_LEAP; end++) {
            cut = Arrays.copyOf(samples, end);
        }
        assertTrue(leap(cut) > MOST_LEAP, "a tone cut off in its middle is a click");
    }

    /** Each tone is found by counting its rising zero crossings and is the strongest of all tones used. */
    @ParameterizedTest
    @EnumSource(Signal.class)
    void everyToneHasThePitchItNames(Signal signal) {
        List<short[]> tones = tones(SignalTones.samples(signal));
        assertEquals(signal.notes().size(), tones.size());
        for (int i = 0; i < tones.size(); i++) {
            double hz = signal.notes().get(i).hz();
            assertEquals(hz, hzByCrossings(tones.get(i)), 0.01 * hz);
            for (double other : new double[] {330, 440, 550, 660, 990}) {
                assertTrue(other == hz || goertzel(tones.get(i), other) < 0.1 * goertzel(tones.get(i), hz));
            }
        }
    }

    @Test
    void noTwoSignalsAreAlike() {
        Set<String> patterns = new HashSet<>();
        for (Signal signal : Signal.values()) {
            StringBuilder pattern = new StringBuilder();
            tones(SignalTones.samples(signal))
                    .forEach(tone ->
                            pattern.append(Math.round(hzByCrossings(tone) / 20)).append(' '));
            assertTrue(patterns.add(pattern.toString()), signal + " sounds like another: " + pattern);
        }
        assertFalse(patterns.isEmpty());
    }

    @Test
    void bytesAreTheSamplesLowByteFirst() {
        short[] samples = SignalTones.samples(Signal.BEGIN);
        byte[] bytes = SignalTones.bytes(Signal.BEGIN);
        for (int i = 0; i < samples.length; i++) {
            assertEquals(
                    samples[i],
                    java.nio.ByteBuffer.wrap(bytes, 2 * i, 2)
                            .order(java.nio.ByteOrder.LITTLE_ENDIAN)
                            .getShort());
        }
    }

    /**
     * A note of 0.9 s: its own frequency is there, not that of the keys beside it (a semitone apart, 100 cents), and
     * its octave has a quarter of the power, for its amplitude is half; no peak above the ceiling.
     */
    @ParameterizedTest
    @ValueSource(doubles = {110, 440, 1760})
    void aNoteToBeFoundHasItsPitchAndStaysUnderTheCeiling(double hz) {
        short[] samples = SignalTones.noteSamples(hz);
        double there = goertzel(samples, hz);
        assertTrue(there > 100 * goertzel(samples, hz * Math.pow(2, 1 / 12.0)));
        assertTrue(there > 100 * goertzel(samples, hz * Math.pow(2, -1 / 12.0)));
        assertEquals(0.25, goertzel(samples, 2 * hz) / there, 0.02);
        double peakDb = 20 * Math.log10(peak(samples) / 32_768);
        assertTrue(peakDb < CEILING_DB && peakDb > CEILING_DB - 8, peakDb + " dBFS");
        assertEquals(0, samples[0]);
        assertEquals(0, samples[samples.length - 1]);
    }

    @Test
    void aNoteAboveTheUpperEdgeSoundsOctavesLower() {
        assertArrayEquals(SignalTones.noteSamples(8_000), SignalTones.noteSamples(16_000));
    }
}
