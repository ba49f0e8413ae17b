package handspan.outside.osc;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.DatagramChannel;
import java.util.function.LongSupplier;

/** Listens on a UDP port. Owns one thread, {@code osc-receiver}, which calls the listener; closing ends it. */
public final class UdpPackets implements PacketSource {
    /** Asked of the system, which may grant less: room for a burst while the thread waits for the processor. */
    private static final int SOCKET_BUFFER_BYTES = 1 << 20;

    private static final int DATAGRAM_MAX_BYTES = 65_535;

    private final DatagramChannel channel;
    private final InetSocketAddress address;
    private final LongSupplier clockNanos;
    private final Listener listener;
    private final ByteBuffer buffer = ByteBuffer.allocateDirect(DATAGRAM_MAX_BYTES);
    private final Thread thread;
    private volatile String trouble = "";

    private UdpPackets(DatagramChannel channel, LongSupplier clockNanos, Listener listener) throws IOException {
        this.channel = channel;
        this.address = (InetSocketAddress) channel.getLocalAddress();
        this.clockNanos = clockNanos;
        this.listener = listener;
        this.thread = new Thread(this::receiveUntilClosed, "osc-receiver");
        thread.setDaemon(true);
    }

    /**
     * Listens on one of this machine's addresses, open to whoever can reach it; loopback can't be reached by any other
     * machine.
     *
     * @param port 1..65535, or 0 for any that is free, see {@link #address()}
     * @param clockNanos stamps packets as they arrive
     * @throws IOException if the port can't be had
     */
    public static UdpPackets open(InetAddress host, int port, LongSupplier clockNanos, Listener listener)
            throws IOException {
        ListenPort.check(port);
        DatagramChannel channel = DatagramChannel.open(DatagramOpener.familyOf(host));
        try {
            channel.setOption(StandardSocketOptions.SO_RCVBUF, SOCKET_BUFFER_BYTES);
            channel.bind(new InetSocketAddress(host, port));
            UdpPackets packets = new UdpPackets(channel, clockNanos, listener);
            packets.thread.start();
            return packets;
        } catch (IOException e) {
            channel.close();
            throw ListenPort.refused("udp", host, port, e);
        }
    }

    @Override
    public InetSocketAddress address() {
        return address;
    }

    @Override
    public String trouble() {
        return trouble;
    }

    /**
     * Sends an answer from the port listened on; one that the network refuses is a trouble in words.
     *
     * @param packet from position to limit
     */
    public void answer(ByteBuffer packet, InetSocketAddress receiver) {
        try {
            channel.send(packet, receiver);
        } catch (IOException | RuntimeException e) {
            trouble = "an answer to " + receiver + " was not sent: " + e;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            trouble = "closing: " + e.getMessage();
        }
        ListenPort.join(thread);
    }

    private void receiveUntilClosed() {
        try {
            while (true) {
                buffer.clear();
                InetSocketAddress sender = (InetSocketAddress) channel.receive(buffer);
                hand(sender, clockNanos.getAsLong());
            }
        } catch (ClosedChannelException e) {
            // closed on purpose: the only way this thread ends well
        } catch (IOException e) {
            trouble = "receiving has ended: " + e.getMessage();
        }
    }

    private void hand(InetSocketAddress sender, long timeNanos) {
        try {
            listener.onPacket(buffer.flip(), sender, timeNanos);
        } catch (RuntimeException e) {
            // a listener's fault must not end listening
            trouble = "a packet was not taken: " + e;
        }
    }
}
