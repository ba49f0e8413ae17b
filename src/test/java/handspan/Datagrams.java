package handspan;

import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.DatagramChannel;
import java.util.ArrayList;
import java.util.List;

/** Keeps every datagram that comes to a port of this machine, with the time at which its receive call returned. */
public final class Datagrams implements AutoCloseable {
    private static final int MOST_BYTES = 2048;
    private static final int SOCKET_BUFFER_BYTES = 1 << 20;

    /** One datagram. */
    public static final class Datagram {
        private final long timeNanos;
        private final byte[] bytes;

        Datagram(long timeNanos, byte[] bytes) {
            this.timeNanos = timeNanos;
            this.bytes = bytes;
        }

        /** When its receive call returned. */
        public long timeNanos() {
            return timeNanos;
        }

        /** What was in it. */
        public byte[] bytes() {
            return bytes;
        }

        /** The messages in it, where it is Open Sound Control. */
        public List<ReceivedMessage> messages() {
            return new OscPacketReader().read(ByteBuffer.wrap(bytes), timeNanos).messages();
        }

        /** The first argument of the message whose address ends so. */
        public Object argument(String ending) {
            for (ReceivedMessage message : messages()) {
                Object first = message.arguments().isEmpty()
                        ? null
                        : message.arguments().get(0);
                if (first != null && message.address().endsWith(ending)) {
                    return first;
                }
            }
            throw new IllegalStateException("no message " + ending + " in " + messages());
        }

        /** How loud it is. */
        public double gain01() {
            return ((Number) argument("/level")).doubleValue();
        }

        /** Whether a hand plays. */
        public boolean hasHand() {
            return argument("/hand").equals(1);
        }
    }

    private final DatagramChannel channel;
    private final Thread thread;
    private final List<Datagram> all = new ArrayList<>();

    /** Listens on any free port. */
    public Datagrams() throws IOException {
        channel = DatagramChannel.open();
        channel.setOption(StandardSocketOptions.SO_RCVBUF, SOCKET_BUFFER_BYTES);
        channel.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
        thread = new Thread(this::receive, "datagrams");
        thread.setDaemon(true);
        thread.start();
    }

    private void receive() {
        ByteBuffer buffer = ByteBuffer.allocateDirect(MOST_BYTES);
        try {
            while (channel.isOpen()) {
                buffer.clear();
                channel.receive(buffer);
                long nowNanos = System.nanoTime();
                byte[] bytes = new byte[buffer.flip().remaining()];
                buffer.get(bytes);
                synchronized (all) {
                    all.add(new Datagram(nowNanos, bytes));
                    all.notifyAll();
                }
            }
        } catch (IOException e) {
            // closed: the end
        }
    }

    /** Where it listens. */
    public int port() throws IOException {
        return ((InetSocketAddress) channel.getLocalAddress()).getPort();
    }

    /** All so far. */
    public List<Datagram> all() {
        synchronized (all) {
            return List.copyOf(all);
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
