package handspan.outside.osc;

import static java.util.Objects.requireNonNull;

import handspan.music.send.PlayState;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SoundFrame;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Random;

/** Frames and lines to send in tests. */
public final class Frames {
    /** A4 a little flat, hand in the zone. */
    public static final SoundFrame PLAYING =
            new SoundFrame(0, 438.25, 69, -6.899_1, 5, 4, 0.625, true, 0.25, 0.75, PlayState.PLAYING);

    /** Before the first hand. */
    public static final SoundFrame NOTHING_YET = new SoundFrame(0, 0, 0, 0, 0, 0, 0, false, 0, 0, PlayState.AWAY);

    public static final List<SendLine> ALL_LINES =
            SendPlan.byDefault("Moth", List.of()).lines();

    private Frames() {}

    public static SoundFrame at(long timeNanos) {
        return new SoundFrame(timeNanos, 440, 69, 0, 1, 4, 0.5, true, 0.5, 0.5, PlayState.PLAYING);
    }

    /** The one packet of a frame in a bundle that is acted on at once. */
    public static ByteBuffer packet(OscEncoder encoder, SoundFrame frame, boolean withState) {
        encoder.begin(frame, withState);
        return requireNonNull(encoder.next());
    }

    public static PlayState anyState(Random random) {
        return List.of(PlayState.values()).get(random.nextInt(PlayState.values().length));
    }

    public static SoundFrame in(PlayState state) {
        return new SoundFrame(0, 220.5, 57, 3.25, -2, -1, 1, false, 1, 0, state);
    }
}
