package handspan.outside.tone;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.jspecify.annotations.Nullable;

/**
 * Lets what is sent be heard through the machine's sound device, in a thread of its own. That makes blocks of 5 ms and
 * each of them goes to the newest frame; the device's clock is the pace. So the queue is one frame long, and all that
 * is ever passed over is what lasted less than a block, or what came while the device took nothing. Where no new frame
 * has come for 1.5 s of sound the tone fades by itself. When the device has run out of sound the tone begins anew from
 * silence: the cut can't be undone, but nothing leaps in after it. No device is said once; playing goes on.
 */
public final class ListenTarget implements FrameTarget {
    static final int BLOCK = Pcm.SAMPLES_PER_S / 200;

    /** 30 ms: what waits there is heard late, but a thread that is woken late by less than that is not heard. */
    static final int UNDERWAY_BYTES = 6 * BLOCK * Pcm.BYTES;

    /** Blocks in 1.5 s. */
    static final int PATIENCE_BLOCKS = 300;

    /** How long the end waits for what is still to be heard. */
    private static final long LAST_WORDS_MS = 2000;

    private final Loudspeaker loudspeaker;
    private final AtomicReference<@Nullable SoundFrame> newest = new AtomicReference<>();
    private final AtomicLong taken = new AtomicLong();
    private final AtomicLong passedOver = new AtomicLong();
    private final AtomicLong gaps = new AtomicLong();
    private final ToneVoice voice = new ToneVoice();
    private final short[] samples = new short[BLOCK];
    private final byte[] bytes = new byte[BLOCK * Pcm.BYTES];
    private final Thread thread;
    private volatile boolean closing;
    private volatile String trouble = "";
    private double hz = 440;
    private double gain01;
    private int patience;

    private ListenTarget(Loudspeaker loudspeaker) {
        this.loudspeaker = loudspeaker;
        this.thread = new Thread(this::run, "listening");
        thread.setDaemon(true);
    }

    /** Starts on the usual device. */
    public static ListenTarget start() {
        return start(Loudspeaker.prompt(UNDERWAY_BYTES));
    }

    static ListenTarget start(Loudspeaker loudspeaker) {
        ListenTarget target = new ListenTarget(loudspeaker);
        target.thread.start();
        return target;
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        if (!trouble.isEmpty() || closing || newest.getAndSet(frame) != null) {
            passedOver.incrementAndGet();
        }
    }

    private void run() {
        try (SourceDataLine line = loudspeaker.open(Pcm.FORMAT)) {
            playOn(line);
        } catch (LineUnavailableException | SecurityException e) {
            trouble = without(String.valueOf(e.getMessage()));
        } catch (IllegalArgumentException e) {
            trouble = without("none found");
        }
    }

    private static String without(String why) {
        return "no sound device for the tone (" + why + "): playing goes on without it";
    }

    private void playOn(SourceDataLine line) {
        boolean sounded = false;
        while (!closing || !voice.isSilent()) {
            take(newest.getAndSet(null));
            if (sounded && line.available() >= line.getBufferSize()) {
                gaps.incrementAndGet();
                voice.restart();
            }
            sounded = !voice.isSilent() || gain01 > 0;
            voice.render(hz, closing ? 0 : gain01, samples, BLOCK);
            Pcm.bytes(samples, BLOCK, bytes);
            if (line.write(bytes, 0, bytes.length) < bytes.length) {
                trouble = "the sound device takes no more: playing goes on without the tone";
                return;
            }
        }
        line.drain();
    }

    private void take(@Nullable SoundFrame frame) {
        if (frame != null) {
            taken.incrementAndGet();
            hz = frame.pitchHz();
            gain01 = frame.gain01();
            patience = PATIENCE_BLOCKS;
        } else if (patience > 0) {
            patience--;
        } else {
            gain01 = 0;
        }
    }

    /** How often the device had run out of sound. */
    public long gaps() {
        return gaps.get();
    }

    @Override
    public TargetStatus status() {
        return new TargetStatus("listen", taken.get(), 0, passedOver.get(), trouble);
    }

    /** Fades what still sounds, then lets go of the device. */
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
