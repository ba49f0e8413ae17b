package handspan.outside.osc;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.NetworkTarget;
import handspan.music.send.SoundFrame;
import java.io.IOException;
import java.net.PortUnreachableException;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.nio.channels.WritableByteChannel;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * A datagram a frame to one UDP port. The channel is connected, so that "nobody listens there" comes back, and
 * non-blocking, so that no send waits. A frame that doesn't go out is counted and gone; the next one tries again.
 *
 * <p>Threads: {@link #send} and {@link #close} belong to the path thread. {@link #open} and {@link #reopen} look the
 * host's name up, which may take seconds, and belong to any other thread. {@link #status} may be called by all.
 */
public final class UdpTarget implements FrameTarget {
    private final NetworkTarget target;
    private final String refusedTrouble;
    private final OscEncoder encoder;
    private final DatagramOpener opener;

    /** Handed over by reopen; the path thread takes it at the next frame. */
    private final AtomicReference<@Nullable WritableByteChannel> fresh = new AtomicReference<>();

    /** Keeps callers of reopen apart from one another; the path thread never takes it. */
    private final ReentrantLock reopening = new ReentrantLock();

    private volatile boolean closed;
    private volatile boolean hasAddress;
    private volatile String openingTrouble;

    // written by the path thread alone
    private @Nullable WritableByteChannel channel;
    private final SendTrouble sending = new SendTrouble();
    private final AtomicLong sent = new AtomicLong();
    private final AtomicLong refused = new AtomicLong();
    private final AtomicLong dropped = new AtomicLong();
    private volatile String sendingTrouble = "";

    /** Made by the factories; not opened yet. */
    private UdpTarget(NetworkTarget target, OscEncoder encoder, DatagramOpener opener) {
        this.target = target;
        this.refusedTrouble = TargetWords.nobodyListens(target);
        this.encoder = encoder;
        this.opener = opener;
        this.openingTrouble = TargetWords.lookingUp(target);
    }

    /**
     * Looks the host up and connects. A host that is not known or can't be reached is no exception but a target in
     * trouble: it counts every frame as dropped until {@link #reopen} finds it.
     *
     * @param encoder what each frame carries; this target's own
     */
    public static UdpTarget open(NetworkTarget target, OscEncoder encoder) {
        return open(target, encoder, DatagramOpener::connect);
    }

    static UdpTarget open(NetworkTarget target, OscEncoder encoder, DatagramOpener opener) {
        UdpTarget udp = later(target, encoder, opener);
        udp.reopen();
        return udp;
    }

    /** A target that {@link #reopen} has to look up; until then every frame is dropped. Returns at once. */
    public static UdpTarget later(NetworkTarget target, OscEncoder encoder) {
        return later(target, encoder, DatagramOpener::connect);
    }

    static UdpTarget later(NetworkTarget target, OscEncoder encoder, DatagramOpener opener) {
        return new UdpTarget(target, encoder, opener);
    }

    /**
     * Looks the host up once more and, if that works, lets the next frame go to what was found; else all stays as it
     * was. For a host that was not known yet, or whose address has changed. Not for the path thread: it may take
     * seconds.
     *
     * @return whether the host was found
     */
    public boolean reopen() {
        reopening.lock();
        try {
            return !closed && lookUpAndConnect();
        } finally {
            reopening.unlock();
        }
    }

    private boolean lookUpAndConnect() {
        try {
            WritableByteChannel opened = opener.open(target);
            closeQuietly(fresh.getAndSet(opened));
            hasAddress = true;
            openingTrouble = "";
            if (closed) {
                // closed meanwhile: whoever of the two takes it out of the reference closes it
                closeQuietly(fresh.getAndSet(null));
            }
            return true;
        } catch (UnknownHostException e) {
            openingTrouble = TargetWords.unknownHost(target);
        } catch (WrongWayException e) {
            openingTrouble = TargetWords.plain(e);
        } catch (IOException | RuntimeException e) {
            openingTrouble = TargetWords.cannotOpen(target, e);
        }
        return false;
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        takeFresh();
        encoder.begin(frame, withState);
        for (ByteBuffer packet = encoder.next(); packet != null; packet = encoder.next()) {
            send(packet, frame.timeNanos());
        }
        if (!sendingTrouble.equals(sending.words())) {
            sendingTrouble = sending.words();
        }
    }

    private void send(ByteBuffer packet, long timeNanos) {
        WritableByteChannel out = channel;
        if (out == null) {
            count(dropped);
            return;
        }
        try {
            if (out.write(packet) > 0) {
                count(sent);
                sending.onSuccess(timeNanos);
            } else {
                count(dropped);
                sending.onFailure(timeNanos, TargetWords.tooSlow(target));
            }
        } catch (PortUnreachableException e) {
            count(refused);
            sending.onFailure(timeNanos, refusedTrouble);
        } catch (IOException | RuntimeException e) {
            // whatever a network does, the other targets of this path must get their frame
            count(dropped);
            sending.onFailure(timeNanos, TargetWords.cannotReach(target, e));
        }
    }

    @Override
    public TargetStatus status() {
        String trouble = hasAddress ? sendingTrouble : openingTrouble;
        return new TargetStatus(target.text(), sent.get(), refused.get(), dropped.get(), trouble);
    }

    @Override
    public void close() {
        closed = true;
        closeQuietly(fresh.getAndSet(null));
        closeQuietly(channel);
        channel = null;
    }

    private void takeFresh() {
        // the plain look first: an exchange with every frame would cost more than the frame
        WritableByteChannel opened = fresh.get() == null ? null : fresh.getAndSet(null);
        if (opened != null) {
            closeQuietly(channel);
            channel = opened;
            sending.forget();
        }
    }

    /** One writer, so no exchange is needed. */
    private static void count(AtomicLong counter) {
        counter.lazySet(counter.getPlain() + 1);
    }

    private static void closeQuietly(@Nullable WritableByteChannel channel) {
        if (channel == null) {
            return;
        }
        try {
            channel.close();
        } catch (IOException e) {
            // nothing is kept in it: a datagram channel that won't close costs nobody a frame
        }
    }
}
