package handspan.wiring;

import handspan.live.session.Event;
import handspan.outside.tone.Signal;
import handspan.outside.tone.SignalPlayer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Signals for a player whose hands are in the air, at what happens while holds are captured. */
public final class Cues implements AutoCloseable {
    private final @Nullable SignalPlayer player;

    private Cues(@Nullable SignalPlayer player) {
        this.player = player;
    }

    /** No sound. */
    public static Cues silent() {
        return new Cues(null);
    }

    /**
     * Signals through the machine's sound device.
     *
     * @param trouble told in words, once, when there is none; called by another thread
     */
    public static Cues heard(Consumer<String> trouble) {
        return new Cues(SignalPlayer.start(trouble));
    }

    /**
     * Notes to be found, through the machine's sound device.
     *
     * @param trouble told in words, once, when there is none; called by another thread
     */
    public static Cues notes(Consumer<String> trouble) {
        return new Cues(SignalPlayer.start(trouble, "the notes to find are shown by name"));
    }

    /** Whether there is anything to be heard. */
    public boolean sound() {
        return player != null && !player.isDeaf();
    }

    /** Sounds a note. Never waits. */
    public void note(double hz) {
        if (player != null) {
            player.playNote(hz);
        }
    }

    /** Something has happened: most events make no sound. Never waits. */
    public void onEvent(Event event) {
        if (event.what() instanceof Event.Asked || event.what() instanceof Event.WaveAsked) {
            play(Signal.BEGIN);
        } else if (event.what() instanceof Event.Captured) {
            play(Signal.CAPTURED);
        } else if (event.what() instanceof Event.NotYet) {
            play(Signal.REFUSED);
        } else if (event.what() instanceof Event.Undone) {
            play(Signal.UNDONE);
        }
    }

    /** All holds are there. Never waits. */
    public void finished() {
        play(Signal.FINISHED);
    }

    private void play(Signal signal) {
        if (player != null) {
            player.play(signal);
        }
    }

    /** Lets the last signal be heard. */
    @Override
    public void close() {
        if (player != null) {
            player.close();
        }
    }
}
