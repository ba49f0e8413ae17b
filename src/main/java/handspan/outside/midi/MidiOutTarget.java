package handspan.outside.midi;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.MidiForm;
import handspan.music.send.MidiTarget;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.LongSupplier;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;
import org.jspecify.annotations.Nullable;

/**
 * A MIDI device of this machine. A thread of its own opens it, plays frames on it, and looks for it every few seconds
 * where it is missing, busy or gone; the path only leaves the newest frame for it, see {@link Newest}. A frame counts
 * as sent when the voice has followed it, as dropped when a newer one came first or there is no device.
 *
 * <p>Threads: {@link #send} belongs to the path thread, {@link #status} and {@link #close} to any.
 */
public final class MidiOutTarget implements FrameTarget {
    private static final long LOOK_AGAIN_NANOS = 3 * Nanos.PER_SECOND;

    /** So that an overlooked wake-up would cost no more than that. */
    private static final long LONGEST_REST_NANOS = Nanos.PER_SECOND;

    /** How long the end waits for a device that holds the thread up. */
    private static final long LAST_WORDS_MS = 1000;

    private static final long AT_ONCE = -1;

    private final MidiTarget target;
    private final MidiOpener opener;
    private final LongSupplier clock;
    private final Newest newest = new Newest();
    private final AtomicLong sent = new AtomicLong();
    private final AtomicLong dropped = new AtomicLong();
    private final Thread thread;
    private volatile boolean closing;
    private volatile String trouble;

    // the thread's own
    private final MidiVoice voice;
    private @Nullable Receiver receiver;
    private long lookNanos;

    private MidiOutTarget(MidiTarget target, MidiForm form, MidiOpener opener, LongSupplier clock) {
        this.target = target;
        this.opener = opener;
        this.clock = clock;
        this.voice = new MidiVoice(form, this::say);
        this.trouble = "opening " + target.text();
        this.lookNanos = clock.getAsLong();
        this.thread = new Thread(this::run, target.text());
        this.thread.setDaemon(true);
    }

    /**
     * Starts; the device is opened meanwhile.
     *
     * @param clock monotonic, ns
     */
    public static MidiOutTarget start(MidiTarget target, MidiForm form, LongSupplier clock) {
        return start(target, form, MidiOutputs::open, clock);
    }

    static MidiOutTarget start(MidiTarget target, MidiForm form, MidiOpener opener, LongSupplier clock) {
        MidiOutTarget started = new MidiOutTarget(target, form, opener, clock);
        started.thread.start();
        return started;
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        if (newest.put(frame)) {
            dropped.incrementAndGet();
        }
        LockSupport.unpark(thread);
    }

    @Override
    public TargetStatus status() {
        return new TargetStatus(target.text(), sent.get(), 0, dropped.get(), trouble);
    }

    /** Says "silence" and lets go of the device; waits for that, but not for long. */
    @Override
    public void close() {
        closing = true;
        LockSupport.unpark(thread);
        try {
            thread.join(LAST_WORDS_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        while (!closing) {
            long now = clock.getAsLong();
            if (receiver == null && now >= lookNanos) {
                look(now);
            }
            Newest.Taken taken = newest.take();
            if (taken != null) {
                play(taken, now);
            } else if (receiver != null && now >= voice.nextNanos()) {
                tell(() -> voice.onTick(now), now);
            } else {
                rest(now);
            }
        }
        leave(clock.getAsLong());
    }

    private void rest(long now) {
        long longest = now + LONGEST_REST_NANOS;
        long until = Math.min(longest, receiver == null ? lookNanos : voice.nextNanos());
        LockSupport.parkNanos(this, until - now);
    }

    private void look(long now) {
        lookNanos = now + LOOK_AGAIN_NANOS;
        try {
            receiver = opener.open(target.device());
        } catch (MidiUnavailableException | RuntimeException e) {
            trouble = words(e);
            return;
        }
        if (tell(() -> voice.begin(now), now)) {
            trouble = "";
        }
    }

    private void play(Newest.Taken taken, long now) {
        SoundFrame frame = taken.frame();
        boolean told = receiver != null
                && tell(
                        () -> {
                            if (taken.silenceBefore()) {
                                voice.onFrame(frame.silent(frame.timeNanos(), PlayState.AWAY), now);
                            }
                            voice.onFrame(frame, now);
                        },
                        now);
        (told ? sent : dropped).incrementAndGet();
    }

    /** Whatever a device throws, the thread goes on and looks for it again. */
    private boolean tell(Runnable messages, long now) {
        try {
            messages.run();
            return true;
        } catch (RuntimeException e) {
            trouble = target.text() + " is gone (" + words(e) + "): plug it in again";
            letGo();
            lookNanos = now + LOOK_AGAIN_NANOS;
            return false;
        }
    }

    private void say(int status, int first, int second) {
        Receiver open = receiver;
        if (open == null) {
            throw new IllegalStateException("not open");
        }
        try {
            open.send(new ShortMessage(status, first, second), AT_ONCE);
        } catch (InvalidMidiDataException e) {
            throw new IllegalStateException(e);
        }
    }

    private void leave(long now) {
        if (receiver == null && voice.isOn()) {
            // it went away with a note: a last try to end it
            look(now);
        }
        Newest.Taken left = newest.take();
        if (left != null) {
            play(left, now);
        }
        if (receiver != null) {
            tell(() -> voice.end(now), now);
        }
        letGo();
    }

    private void letGo() {
        Receiver open = receiver;
        receiver = null;
        if (open != null) {
            try {
                open.close();
            } catch (RuntimeException e) {
                // a device that can't be closed is left to the system
                trouble = target.text() + " can't be closed (" + words(e) + ")";
            }
        }
    }

    private static String words(Exception e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }
}
