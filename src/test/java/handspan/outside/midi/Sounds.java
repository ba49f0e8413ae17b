package handspan.outside.midi;

import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;

/** Frames to play in tests; MIDI takes nothing of them but time, pitch and gain. */
final class Sounds {
    /** 200 a second. */
    static final long FRAME = 5 * Nanos.PER_MS;

    private Sounds() {}

    static SoundFrame of(double hz, double gain01, long timeNanos) {
        boolean hand = gain01 > 0;
        return new SoundFrame(
                timeNanos, hz, 0, 0, 1, 4, gain01, hand, 0.5, 0.5, hand ? PlayState.PLAYING : PlayState.AWAY);
    }

    /** Pitch of a key number or between, by ISO 16 and twelve equal steps. */
    static double hz(double key) {
        return 440 * Math.pow(2, (key - 69) / 12);
    }
}
