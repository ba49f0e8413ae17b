package handspan.outside.tone;

import javax.sound.sampled.AudioFormat;

/**
 * Samples of the tone: 48,000 a second, 16 bit, one channel, low byte first. That rate is the usual one of today's
 * sound devices and of sound for pictures, so that nothing is converted on the way to the ear, and its upper edge of 24
 * kHz leaves room to fade out harmonics above what is heard. 16 bits reach 96 dB down, the level curve 60; every
 * program reads them.
 */
final class Pcm {
    static final int SAMPLES_PER_S = 48_000;
    static final int BITS = 16;
    static final int BYTES = BITS / 8;

    /** Full scale: 0 dBFS is a peak of this. */
    static final double FULL = 32_768;

    /** The tone ceiling: no peak passes -12 dB below full scale. A step of 16 bits is kept free for rounding. */
    static final double CEILING = Math.floor(FULL * Math.pow(10, -12 / 20.0)) - 0.5;

    static final AudioFormat FORMAT = new AudioFormat(SAMPLES_PER_S, BITS, 1, true, false);

    private Pcm() {}

    /**
     * Lays out samples as bytes, low byte first.
     *
     * @param count how many of the samples
     * @param bytes room for two a sample
     */
    static void bytes(short[] samples, int count, byte[] bytes) {
        for (int i = 0; i < count; i++) {
            bytes[2 * i] = (byte) samples[i];
            bytes[2 * i + 1] = (byte) (samples[i] >> 8);
        }
    }
}
