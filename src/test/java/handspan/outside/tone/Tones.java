package handspan.outside.tone;

import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;

/** Frames of which only the sound matters. */
final class Tones {
    static final long MS = 1_000_000;

    private Tones() {}

    static SoundFrame frame(long timeNanos, double hz, double gain01) {
        PlayState state = gain01 > 0 ? PlayState.PLAYING : PlayState.AWAY;
        return new SoundFrame(timeNanos, hz, 69, 0, 1, 4, gain01, gain01 > 0, 0.5, 0.5, state);
    }
}
