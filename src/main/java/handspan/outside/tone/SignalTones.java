package handspan.outside.tone;

/**
 * Signals as samples: 16 bit, one channel. Each tone is a sine that swells and dies as half a period of a raised
 * cosine, {@code (1 - cos(pi t / T)) / 2}, so that nothing clicks; between and after tones there is silence. The peak
 * stays under the ceiling of -12 dB below full scale: signals come close to the ear through headphones.
 */
final class SignalTones {
    static final int SAMPLES_PER_S = 44_100;

    /** Full scale of 16 bits. */
    private static final double FULL = 32_768;

    /** -14 dBFS: 2 dB under the ceiling. */
    private static final double PEAK = FULL * Math.pow(10, -14 / 20.0);

    /** Sines that swell within 5 ms or more are heard without a click (common practice). */
    private static final int ATTACK_MS = 10;

    private static final int DECAY_MS = 50;
    private static final int GAP_MS = 40;

    /** Long enough to hear a pitch, and to sing it. */
    private static final int NOTE_MS = 900;

    /** Keeps one signal apart from the next. */
    private static final int AFTER_MS = 120;

    private SignalTones() {}

    /** The samples of a signal with the silence after it. */
    static short[] samples(Signal signal) {
        int total = count(AFTER_MS);
        for (Signal.Note note : signal.notes()) {
            total += count(note.ms()) + count(GAP_MS);
        }
        short[] samples = new short[total];
        int at = 0;
        for (Signal.Note note : signal.notes()) {
            int length = count(note.ms());
            for (int i = 0; i < length; i++) {
                double sine = Math.sin(2 * Math.PI * note.hz() * i / SAMPLES_PER_S);
                samples[at + i] = (short) Math.round(PEAK * swell01(i, length - 1) * sine);
            }
            at += length + count(GAP_MS);
        }
        return samples;
    }

    /**
     * A note to be found, with the harmonics of the listening tone, so that low ones are heard through small
     * loudspeakers too. What lies above their upper edge sounds octaves lower.
     *
     * @param hz above 0
     */
    static short[] noteSamples(double hz) {
        double heardHz = hz;
        while (heardHz > ToneVoice.HIGHEST_HZ) {
            heardHz /= 2;
        }
        int length = count(NOTE_MS);
        short[] samples = new short[length + count(AFTER_MS)];
        for (int i = 0; i < length; i++) {
            double phase01 = heardHz * i / SAMPLES_PER_S;
            double wave = Harmonics.at(phase01 - Math.floor(phase01), heardHz);
            samples[i] = (short) Math.round(PEAK * swell01(i, length - 1) * wave);
        }
        return samples;
    }

    /** A signal as bytes, low byte first. */
    static byte[] bytes(Signal signal) {
        return bytes(samples(signal));
    }

    /** A note as bytes, low byte first. */
    static byte[] noteBytes(double hz) {
        return bytes(noteSamples(hz));
    }

    private static byte[] bytes(short[] samples) {
        byte[] bytes = new byte[2 * samples.length];
        Pcm.bytes(samples, samples.length, bytes);
        return bytes;
    }

    private static double swell01(int sample, int last) {
        double in = Swell.raised01(sample / (double) count(ATTACK_MS));
        double out = Swell.raised01((last - sample) / (double) count(DECAY_MS));
        return in * out;
    }

    private static int count(int ms) {
        return SAMPLES_PER_S * ms / 1000;
    }
}
