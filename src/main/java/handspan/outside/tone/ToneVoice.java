package handspan.outside.tone;

import java.util.Arrays;

/**
 * The voice of the listening tone: from pitch and level to samples. Pitch goes in equal ratios, level in a straight
 * line of amplitude from one aim to the next; {@link Easing} rounds both, so that no order of aims can click; the phase
 * never leaps. It begins in silence, and while it is silent another pitch is taken at once, so that a note never slides
 * in from the last one.
 *
 * <p>Level: the rms of the tone is {@code gain01 * }{@link #FULL_RMS}, whatever the pitch; full level, 0 dB, peaks at
 * the tone ceiling of -12 dBFS at most, and no gain passes it. Below 8 Hz and above 12 kHz the pitch stays at that end;
 * what is no number changes nothing. Pure; owned by one thread.
 */
final class ToneVoice {
    static final double LOWEST_HZ = 8;
    static final double HIGHEST_HZ = 12_000;

    /** Rms of the tone at gain 1, in steps of 16 bits: 19.7 dB below full scale. */
    static final double FULL_RMS = Pcm.CEILING * Harmonics.RMS01;

    private static final double LN_2 = Math.log(2);

    private final Easing pitch = new Easing();
    private final Easing gain = new Easing();
    private double aimOctaves = octaves(440);
    private double aimGain01;
    private double phase01;

    /** An aim that holds from now on; only the easing is between it and the one before. */
    void aim(double hz, double gain01) {
        if (isSilent()) {
            phase01 = 0;
        }
        toPitch(hz);
        aimGain01 = limited(gain01);
    }

    /**
     * Makes samples on the way to an aim, which is reached with the last of them, but for the easing.
     *
     * @param hz where pitch shall go
     * @param gain01 where level shall go
     * @param samples filled from its beginning
     * @param count how many
     */
    void render(double hz, double gain01, short[] samples, int count) {
        double fromGain01 = aimGain01;
        double toGain01 = limited(gain01);
        if (isSilent()) {
            toPitch(hz);
            phase01 = 0;
            if (toGain01 == 0) {
                Arrays.fill(samples, 0, count, (short) 0);
                return;
            }
        }
        double fromOctaves = aimOctaves;
        toPitch(hz);
        for (int i = 0; i < count; i++) {
            double share01 = (i + 1) / (double) count;
            samples[i] = sample(
                    fromOctaves + share01 * (aimOctaves - fromOctaves), fromGain01 + share01 * (toGain01 - fromGain01));
        }
        aimGain01 = toGain01;
    }

    private short sample(double octaves, double gain01) {
        double hz = Math.exp(LN_2 * pitch.next(octaves));
        double level01 = gain.next(gain01);
        double value = Pcm.CEILING * level01 * Harmonics.at(phase01, hz);
        phase01 += hz / Pcm.SAMPLES_PER_S;
        phase01 -= Math.floor(phase01);
        return (short) Math.round(value);
    }

    /** Whether nothing sounds and nothing is aimed at. */
    boolean isSilent() {
        return aimGain01 == 0 && gain.isZero();
    }

    /** Begins anew in silence, for where what was made last is not what was heard last. */
    void restart() {
        gain.fill(0);
        aimGain01 = 0;
    }

    private void toPitch(double hz) {
        if (Double.isFinite(hz) && hz > 0) {
            aimOctaves = octaves(Math.max(LOWEST_HZ, Math.min(HIGHEST_HZ, hz)));
        }
        if (isSilent()) {
            pitch.fill(aimOctaves);
        }
    }

    private static double limited(double gain01) {
        return gain01 > 0 ? Math.min(1, gain01) : 0;
    }

    private static double octaves(double hz) {
        return Math.log(hz) / LN_2;
    }
}
