package handspan.outside.tone;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.jspecify.annotations.Nullable;

/**
 * Plays signals through the machine's sound device, in a thread of its own: asking for one never waits. Where there is
 * no device that is said once, and all signals are passed over. When signals come faster than they sound, those that
 * find the queue full are dropped.
 */
public final class SignalPlayer implements AutoCloseable {
    /** A handful of signals is a few seconds of sound: what comes later would be old news. */
    private static final int QUEUED = 4;

    private static final long LOOK_MS = 50;
    private static final String USUAL_REMEDY = "go by the words, or give --no-cues";

    /** How long the end waits for what is still to be heard. */
    private static final long LAST_WORDS_MS = 2000;

    private static final AudioFormat FORMAT = new AudioFormat(SignalTones.SAMPLES_PER_S, 16, 1, true, false);

    private final BlockingQueue<Supplier<byte[]>> queue = new ArrayBlockingQueue<>(QUEUED);
    private final Loudspeaker loudspeaker;
    private final Consumer<String> trouble;
    private final String remedy;
    private final Thread thread;
    private volatile boolean closing;
    private volatile boolean deaf;

    private SignalPlayer(Loudspeaker loudspeaker, Consumer<String> trouble, String remedy) {
        this.loudspeaker = loudspeaker;
        this.trouble = trouble;
        this.remedy = remedy;
        this.thread = new Thread(this::run, "signals");
        this.thread.setDaemon(true);
    }

    /**
     * Starts on the usual device.
     *
     * @param trouble told in words, once, when there is no device; called by this player's thread
     */
    public static SignalPlayer start(Consumer<String> trouble) {
        return start(trouble, USUAL_REMEDY);
    }

    /**
     * Starts on the usual device.
     *
     * @param trouble told in words, once, when there is no device; called by this player's thread
     * @param remedy what to do then
     */
    public static SignalPlayer start(Consumer<String> trouble, String remedy) {
        return start(Loudspeaker.usual(), trouble, remedy);
    }

    static SignalPlayer start(Loudspeaker loudspeaker, Consumer<String> trouble) {
        return start(loudspeaker, trouble, USUAL_REMEDY);
    }

    private static SignalPlayer start(Loudspeaker loudspeaker, Consumer<String> trouble, String remedy) {
        SignalPlayer player = new SignalPlayer(loudspeaker, trouble, remedy);
        player.thread.start();
        return player;
    }

    /**
     * Asks for a signal. Never waits.
     *
     * @return false when it is dropped
     */
    public boolean play(Signal signal) {
        return offer(() -> SignalTones.bytes(signal));
    }

    /**
     * Asks for a note. Never waits.
     *
     * @param hz its frequency, above 0
     * @return false when it is dropped
     */
    public boolean playNote(double hz) {
        return offer(() -> SignalTones.noteBytes(hz));
    }

    /** Whether nothing can be heard: there is no device. */
    public boolean isDeaf() {
        return deaf;
    }

    private boolean offer(Supplier<byte[]> sound) {
        return !deaf && !closing && queue.offer(sound);
    }

    private void run() {
        try (SourceDataLine line = loudspeaker.open(FORMAT)) {
            playAll(line);
        } catch (LineUnavailableException | SecurityException e) {
            giveUp(String.valueOf(e.getMessage()));
        } catch (IllegalArgumentException e) {
            giveUp("none found");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void giveUp(String why) {
        deaf = true;
        queue.clear();
        trouble.accept("no sound device that could play signals (" + why + "): " + remedy);
    }

    private void playAll(SourceDataLine line) throws InterruptedException {
        while (!closing || !queue.isEmpty()) {
            @Nullable Supplier<byte[]> sound = queue.poll(LOOK_MS, TimeUnit.MILLISECONDS);
            if (sound != null) {
                byte[] bytes = sound.get();
                line.write(bytes, 0, bytes.length);
            }
        }
        line.drain();
    }

    /** Lets what is queued be heard, but not for long, then lets go of the device. */
    @Override
    public void close() {
        closing = true;
        try {
            thread.join(LAST_WORDS_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
