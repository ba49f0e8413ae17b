package handspan.outside.tone;

import java.io.IOException;

/**
 * Frames as one stretch of tone, by their own times. At its time each frame's pitch and level are reached,
 * {@link Easing#LATE} samples (5 ms) late for the rounding; between frames the tone moves there in line, for the last
 * 20 ms at most: where frames come seldom it holds the older one until then, as a receiver would. A tone whose next
 * frame is more than 1.5 s away fades at that time, as the watchdog of a receiver has it. A frame more than 10 s away
 * is taken for the first one after a sleep of the machine; what is over those 10 s is left out. Pure; owned by one
 * thread.
 */
final class ToneTrack {
    /** Takes what is made. */
    interface Sink {
        /** So many samples from the beginning of an array, which is used again afterwards. */
        void take(short[] samples, int count) throws IOException;
    }

    private static final long RAMP = Pcm.SAMPLES_PER_S / 50;
    private static final long WATCHDOG = Pcm.SAMPLES_PER_S * 3L / 2;
    private static final long LONGEST_GAP = Pcm.SAMPLES_PER_S * 10L;
    private static final double NANOS_PER_SAMPLE = 1e9 / Pcm.SAMPLES_PER_S;

    private final ToneVoice voice = new ToneVoice();
    private final short[] samples = new short[4096];
    private final Sink sink;
    private long zeroNanos;
    private long made;
    private boolean begun;
    private double lastHz;
    private double lastGain01;

    ToneTrack(Sink sink) {
        this.sink = sink;
    }

    /**
     * One frame more.
     *
     * @param timeNanos not before the last one's; else it counts as of the same time
     * @param hz its frequency
     * @param gain01 its amplitude
     */
    void add(long timeNanos, double hz, double gain01) throws IOException {
        if (!begun) {
            begun = true;
            zeroNanos = timeNanos;
        }
        long gap = Math.round((timeNanos - zeroNanos) / NANOS_PER_SAMPLE) - made;
        if (gap > LONGEST_GAP) {
            zeroNanos += Math.round((gap - LONGEST_GAP) * NANOS_PER_SAMPLE);
            gap = LONGEST_GAP;
        }
        if (gap > WATCHDOG && lastGain01 > 0) {
            move(WATCHDOG, lastHz, lastGain01);
            move(RAMP, lastHz, 0);
            gap -= WATCHDOG + RAMP;
            lastGain01 = 0;
        }
        if (gap > RAMP) {
            move(gap - RAMP, lastHz, lastGain01);
            gap = RAMP;
        }
        if (gap <= 0) {
            voice.aim(hz, gain01);
        }
        move(gap, hz, gain01);
        lastHz = hz;
        lastGain01 = gain01;
    }

    /** Fades what still sounds, and lets the easing run out: the last sample is 0. */
    void end() throws IOException {
        move(RAMP, lastHz, 0);
        move(2L * Easing.WINDOW, lastHz, 0);
    }

    /** Samples so far. */
    long made() {
        return made;
    }

    private void move(long count, double hz, double gain01) throws IOException {
        // an aim is reached with the last sample, so a way longer than the array is a hold
        long left = count;
        while (left > 0) {
            int now = (int) Math.min(left, samples.length);
            voice.render(hz, gain01, samples, now);
            sink.take(samples, now);
            made += now;
            left -= now;
        }
    }
}
