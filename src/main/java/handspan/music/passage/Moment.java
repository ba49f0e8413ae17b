package handspan.music.passage;

import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;

/**
 * A moment of a passage.
 *
 * @param timeNanos when, on the session's clock
 * @param soundKey pitch that sounded, as a key number with 69 = A4
 * @param handKey pitch that the hand alone would have made, without snapping
 * @param gain01 amplitude, 0 = silence
 * @param hand whether a hand played
 * @param lost whether the board did not send
 */
public record Moment(long timeNanos, double soundKey, double handKey, double gain01, boolean hand, boolean lost) {
    /** Checks that keys and gain are numbers. */
    public Moment {
        if (!Double.isFinite(soundKey) || !Double.isFinite(handKey) || !(gain01 >= 0 && gain01 <= 1)) {
            throw new IllegalArgumentException(
                    "a moment of key " + soundKey + ", hand " + handKey + ", gain " + gain01 + " (numbers; gain 0..1)");
        }
    }

    /**
     * What a frame says.
     *
     * @param tuning that it was played in
     */
    public static Moment of(SoundFrame frame, Tuning tuning) {
        return new Moment(
                frame.timeNanos(),
                tuning.reference().key(frame.pitchHz()),
                tuning.curve().key(frame.pitchPlace01()) + tuning.shiftKeys(),
                frame.gain01(),
                frame.hand(),
                frame.state() == PlayState.LOST);
    }

    /** Whether it is to be heard under a hand. */
    boolean sounds() {
        return hand && gain01 > 0;
    }
}
