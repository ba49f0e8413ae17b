package handspan.outside.osc;

import handspan.outside.osc.packet.OscPacket;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * Listens on a UDP port and hands every message to a listener. Owns one thread, {@code osc-receiver}, which calls the
 * listener; closing ends it. Bytes that are no Open Sound Control are counted, never thrown.
 */
public final class OscReceiver implements AutoCloseable {
    private final Consumer<ReceivedMessage> listener;
    private final OscPacketReader reader = new OscPacketReader();
    private final UdpPackets source;

    private final AtomicLong packets = new AtomicLong();
    private final AtomicLong messages = new AtomicLong();
    private final AtomicLong discarded = new AtomicLong();
    private final AtomicLong malformed = new AtomicLong();
    private volatile String trouble = "";

    private OscReceiver(InetAddress host, int port, LongSupplier clockNanos, Consumer<ReceivedMessage> listener)
            throws IOException {
        this.listener = listener;
        this.source = UdpPackets.open(host, port, clockNanos, this::onPacket);
    }

    /**
     * Listens on this machine's loopback address, which no other machine can reach.
     *
     * @param port 1..65535, or 0 for any that is free, see {@link #port()}
     * @param clockNanos stamps packets as they arrive
     * @param listener called by the receiver's thread, a message at a time; must return soon
     * @throws IOException if the port can't be had
     */
    public static OscReceiver open(int port, LongSupplier clockNanos, Consumer<ReceivedMessage> listener)
            throws IOException {
        return open(InetAddress.getLoopbackAddress(), port, clockNanos, listener);
    }

    /** Listens on another of this machine's addresses, open to whoever can reach it; else as on loopback. */
    public static OscReceiver open(
            InetAddress host, int port, LongSupplier clockNanos, Consumer<ReceivedMessage> listener)
            throws IOException {
        return new OscReceiver(host, port, clockNanos, listener);
    }

    /** The port listened on. */
    public int port() {
        return source.address().getPort();
    }

    /** What has happened so far; may be read by any thread. */
    public ReceiverStatus status() {
        String latest = source.trouble().isEmpty() ? trouble : source.trouble();
        return new ReceiverStatus(packets.get(), messages.get(), discarded.get(), malformed.get(), latest);
    }

    /** Ends listening; returns when the thread has ended, after a second at the latest. */
    @Override
    public void close() {
        source.close();
    }

    private void onPacket(ByteBuffer bytes, InetSocketAddress sender, long timeNanos) {
        OscPacket packet = reader.read(bytes, timeNanos);
        packets.incrementAndGet();
        discarded.addAndGet(packet.discarded());
        if (packet.malformed()) {
            malformed.incrementAndGet();
            trouble = "a packet is not Open Sound Control: " + packet.defect();
        }
        for (ReceivedMessage message : packet.messages()) {
            messages.incrementAndGet();
            try {
                listener.accept(message);
            } catch (RuntimeException e) {
                // a listener's fault must not end listening
                trouble = "message " + message.address() + " was not taken: " + e;
            }
        }
    }
}
