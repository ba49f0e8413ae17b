package handspan.outside.osc;

import static java.util.Objects.requireNonNull;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.NetworkTarget;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.outside.osc.packet.PacketFraming;
import java.io.IOException;
import java.net.ConnectException;
import java.net.UnknownHostException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Frames over a connection. A thread of its own connects, writes, and connects again when that fails; the path thread
 * only leaves the newest frame for it, see {@link NewestFrames}. Each connection begins with a whole packet, and with
 * the present state. A receiver that does not read loses frames, and is dropped after seconds.
 *
 * <p>Threads: {@link #send} belongs to the path thread, {@link #close} to whoever ends the program, {@link #status} to
 * all.
 */
public final class StreamTarget implements FrameTarget {
    /** How long closing waits for the last frames to be written. */
    static final long FLUSH_MS = 500;

    /** A first connection that takes longer is told of. */
    private static final long LATE_NANOS = 150 * Nanos.PER_MS;

    private static final long LOOK_MS = 1000;

    private final NetworkTarget target;
    private final Supplier<OscEncoder> encoders;
    private final StreamOpener opener;
    private final LongSupplier clockNanos;
    private final long startNanos;
    private final Thread thread;

    private final FrameHandover handover = new FrameHandover();
    private volatile boolean nobodyListens;
    private final AtomicLong sent = new AtomicLong();
    private final AtomicLong refused = new AtomicLong();
    private final AtomicLong dropped = new AtomicLong();
    private volatile String trouble = "";

    private StreamTarget(
            NetworkTarget target, Supplier<OscEncoder> encoders, StreamOpener opener, LongSupplier clockNanos) {
        this.target = target;
        this.encoders = encoders;
        this.opener = opener;
        this.clockNanos = clockNanos;
        this.startNanos = clockNanos.getAsLong();
        this.thread = new Thread(this::run, "way to " + target.text());
        thread.setDaemon(true);
    }

    /**
     * A target that begins to connect; returns at once.
     *
     * @param encoders an encoder for each connection, so that a new receiver is told all; asked once at once
     * @param clockNanos for waits
     * @throws IllegalArgumentException if the target's packets are datagrams, or what is to be sent can't be
     */
    public static StreamTarget start(NetworkTarget target, Supplier<OscEncoder> encoders, LongSupplier clockNanos) {
        return start(target, encoders, to -> SocketConnection.open(to, clockNanos), clockNanos);
    }

    static StreamTarget start(
            NetworkTarget target, Supplier<OscEncoder> encoders, StreamOpener opener, LongSupplier clockNanos) {
        PacketFraming.of(target.protocol());
        requireNonNull(encoders.get());
        StreamTarget stream = new StreamTarget(target, encoders, opener, clockNanos);
        stream.thread.start();
        return stream;
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        leave(handover.put(frame, withState));
    }

    private void leave(int count) {
        if (count > 0) {
            (nobodyListens ? refused : dropped).addAndGet(count);
        }
    }

    private void run() {
        RetryLadder ladder = new RetryLadder();
        while (!handover.isClosing()) {
            handover.pause(ladder.after(connectAndTalk()));
        }
    }

    /** Returns how long there was a connection, ns. */
    private long connectAndTalk() {
        long sinceNanos = Long.MAX_VALUE;
        try (StreamConnection opened = opener.open(target)) {
            sinceNanos = clockNanos.getAsLong();
            begin(opened);
            talk(opened);
        } catch (IOException | RuntimeException e) {
            onFailure(e);
        } finally {
            handover.end();
        }
        return sinceNanos == Long.MAX_VALUE ? 0 : clockNanos.getAsLong() - sinceNanos;
    }

    private void begin(StreamConnection opened) {
        nobodyListens = false;
        trouble = "";
        leave(handover.begin(opened));
    }

    /** Returns when all is said and the target is to be closed. */
    private void talk(StreamConnection out) throws IOException {
        StreamTalk talk = new StreamTalk(target, encoders.get(), out, words -> trouble = words);
        while (true) {
            // looked at first: what was left before closing still goes out
            boolean last = handover.isClosing();
            NewestFrames.Waiting next = handover.take();
            if (next != null) {
                say(talk, next, out);
            } else if (last) {
                return;
            } else {
                out.await(LOOK_MS);
            }
        }
    }

    private void say(StreamTalk talk, NewestFrames.Waiting next, StreamConnection out) throws IOException {
        try {
            if (talk.say(next.frame(), next.withState())) {
                sent.incrementAndGet();
            }
        } catch (IOException | RuntimeException e) {
            dropped.incrementAndGet();
            out.abort();
            throw e;
        }
    }

    private void onFailure(Exception e) {
        nobodyListens = e instanceof ConnectException;
        if (nobodyListens) {
            trouble = TargetWords.nobodyListens(target);
        } else if (e instanceof UnknownHostException) {
            trouble = TargetWords.unknownHost(target);
        } else if (e instanceof ReceiverGoneException) {
            trouble = TargetWords.hungUp(target);
        } else {
            trouble = TargetWords.cannotReach(target, e);
        }
    }

    @Override
    public TargetStatus status() {
        boolean late = clockNanos.getAsLong() - startNanos > LATE_NANOS && !handover.isConnected();
        String words = trouble.isEmpty() && late && !handover.isClosing() ? TargetWords.connecting(target) : trouble;
        return new TargetStatus(target.text(), sent.get(), refused.get(), dropped.get(), words);
    }

    boolean isConnected() {
        return handover.isConnected();
    }

    /** Writes what waits, silence last of all, and ends; returns after half a second at the latest. */
    @Override
    public void close() {
        StreamConnection open = handover.close();
        if (open != null) {
            try {
                thread.join(FLUSH_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            if (thread.isAlive()) {
                open.abort();
            }
        }
        leave(handover.clear());
    }
}
