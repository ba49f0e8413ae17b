package handspan.outside.osc;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.DatagramChannel;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * Listens on a UDP port and hands every message to a listener. Owns one thread, {@code osc-receiver}, which calls the
 * listener; closing ends it. Bytes that are no Open Sound Control are counted, never thrown.
 */
public final class OscReceiver implements AutoCloseable {
    /** Asked of the system, which may grant less: room for a burst while the thread waits for the processor. */
    private static final int SOCKET_BUFFER_BYTES = 1 << 20;

    private static final int DATAGRAM_MAX_BYTES = 65_535;
    private static final long JOIN_MILLIS = 1_000;

    private final DatagramChannel channel;
    private final InetSocketAddress address;
    private final LongSupplier clockNanos;
    private final Consumer<ReceivedMessage> listener;
    private final OscPacketReader reader = new OscPacketReader();
    private final ByteBuffer buffer = ByteBuffer.allocateDirect(DATAGRAM_MAX_BYTES);
    private final Thread thread;

    private final AtomicLong packets = new AtomicLong();
    private final AtomicLong messages = new AtomicLong();
    private final AtomicLong discarded = new AtomicLong();
    private final AtomicLong malformed = new AtomicLong();
    private volatile String trouble = "";

    private OscReceiver(DatagramChannel channel, LongSupplier clockNanos, Consumer<ReceivedMessage> listener)
            throws IOException {
        this.channel = channel;
        this.address = (InetSocketAddress) channel.getLocalAddress();
        this.clockNanos = clockNanos;
        this.listener = listener;
        this.thread = new Thread(this::receiveUntilClosed, "osc-receiver");
        thread.setDaemon(true);
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
        if (port < 0 || port > 65_535) {
            throw new IllegalArgumentException("port " + port + " (0..65535): 0 takes any that is free");
        }
        DatagramChannel channel = DatagramChannel.open(DatagramOpener.familyOf(host));
        try {
            channel.setOption(StandardSocketOptions.SO_RCVBUF, SOCKET_BUFFER_BYTES);
            channel.bind(new InetSocketAddress(host, port));
            OscReceiver receiver = new OscReceiver(channel, clockNanos, listener);
            receiver.thread.start();
            return receiver;
        } catch (IOException e) {
            channel.close();
            throw new IOException(
                    "udp port " + port + " at " + host.getHostAddress() + " can't be opened (" + e.getMessage()
                            + "): close what listens there, or name another port",
                    e);
        }
    }

    /** The port listened on. */
    public int port() {
        return address.getPort();
    }

    /** What has happened so far; may be read by any thread. */
    public ReceiverStatus status() {
        return new ReceiverStatus(packets.get(), messages.get(), discarded.get(), malformed.get(), trouble);
    }

    /** Ends listening; returns when the thread has ended, after a second at the latest. */
    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            trouble = "closing: " + e.getMessage();
        }
        if (Thread.currentThread() != thread) {
            try {
                thread.join(JOIN_MILLIS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void receiveUntilClosed() {
        try {
            while (true) {
                buffer.clear();
                channel.receive(buffer);
                long timeNanos = clockNanos.getAsLong();
                onPacket(reader.read(buffer.flip(), timeNanos));
            }
        } catch (ClosedChannelException e) {
            // closed on purpose: the only way this thread ends well
        } catch (IOException e) {
            trouble = "receiving has ended: " + e.getMessage();
        }
    }

    private void onPacket(OscPacket packet) {
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
