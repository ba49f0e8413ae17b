package handspan.wiring;

import handspan.outside.osc.PacketSource;
import handspan.outside.osc.StreamPackets;
import handspan.outside.osc.UdpPackets;
import handspan.outside.osc.packet.OscPart;
import handspan.outside.osc.packet.OscPattern;
import handspan.outside.osc.packet.PacketDecoder;
import handspan.outside.osc.packet.PacketFraming;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;

/**
 * Listens for packets and keeps those that arrive until somebody has time to look at them: what comes faster than that
 * is counted as missed once so many wait, so that neither the network's buffer nor memory fills up.
 */
public final class Ears implements AutoCloseable {
    private static final int MOST_WAITING = 4_096;
    private static final long MOST_WAITING_BYTES = 4 << 20;

    /** A packet as it came. */
    private static final class Waiting {
        private final byte[] bytes;
        private final InetSocketAddress sender;
        private final long timeNanos;

        Waiting(byte[] bytes, InetSocketAddress sender, long timeNanos) {
            this.bytes = bytes;
            this.sender = sender;
            this.timeNanos = timeNanos;
        }
    }

    private final BlockingQueue<Waiting> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final AtomicLong waitingBytes = new AtomicLong();
    private final AtomicLong packets = new AtomicLong();
    private final AtomicLong bytes = new AtomicLong();
    private final AtomicLong missed = new AtomicLong();
    private final PacketSource source;
    private final ListenPoint point;
    private volatile boolean closed;

    private Ears(ListenPoint point) throws IOException {
        this.source = open(point, this::onPacket);
        this.point = point.withPort(source.address().getPort());
    }

    /**
     * Begins to listen.
     *
     * @throws IOException if the port can't be had
     */
    public static Ears open(ListenPoint point) throws IOException {
        return new Ears(point);
    }

    private static PacketSource open(ListenPoint point, PacketSource.Listener listener) throws IOException {
        return switch (point.protocol()) {
            case UDP -> UdpPackets.open(point.address(), point.port(), Rigs.CLOCK, listener);
            case TCP -> stream(PacketFraming.LENGTH, point, listener);
            case TCP_SLIP -> stream(PacketFraming.SLIP, point, listener);
        };
    }

    private static PacketSource stream(PacketFraming framing, ListenPoint point, PacketSource.Listener listener)
            throws IOException {
        return StreamPackets.open(framing, point.address(), point.port(), Rigs.CLOCK, listener);
    }

    /**
     * Tells which addresses a pattern of Open Sound Control 1.0 means.
     *
     * @throws IllegalArgumentException when it is none
     */
    public static Predicate<String> pattern(String pattern) {
        return OscPattern.of(pattern)::matches;
    }

    private void onPacket(ByteBuffer packet, InetSocketAddress sender, long timeNanos) {
        packets.incrementAndGet();
        int length = packet.remaining();
        bytes.addAndGet(length);
        if (waitingBytes.get() + length > MOST_WAITING_BYTES) {
            missed.incrementAndGet();
            return;
        }
        byte[] copy = new byte[length];
        packet.get(copy);
        waitingBytes.addAndGet(length);
        if (!waiting.offer(new Waiting(copy, sender, timeNanos))) {
            waitingBytes.addAndGet(-length);
            missed.incrementAndGet();
        }
    }

    /** Where it listens, with the port that it really has. */
    public ListenPoint point() {
        return point;
    }

    /** The next packet, waited for up to so many ms; those that arrived before the closing still come. */
    public Optional<HeardPacket> next(long waitMs) throws InterruptedException {
        Waiting next = waiting.poll(closed ? 0 : waitMs, TimeUnit.MILLISECONDS);
        if (next == null) {
            return Optional.empty();
        }
        waitingBytes.addAndGet(-next.bytes.length);
        OscPart part = PacketDecoder.decode(ByteBuffer.wrap(next.bytes), next.timeNanos);
        return Optional.of(HeardPacket.of(part, Peer.words(next.sender), next.timeNanos));
    }

    /** Packets that arrived. */
    public long packets() {
        return packets.get();
    }

    /** Bytes in them. */
    public long bytes() {
        return bytes.get();
    }

    /** Packets that were let go because too many waited. */
    public long missed() {
        return missed.get();
    }

    /** The latest trouble in words; empty when there has been none. */
    public String trouble() {
        return source.trouble();
    }

    /** Whether it has stopped listening. */
    public boolean isClosed() {
        return closed;
    }

    @Override
    public void close() {
        closed = true;
        source.close();
    }
}
