package handspan.outside.osc;

import handspan.outside.osc.packet.PacketFraming;
import handspan.outside.osc.packet.PacketSplitter;
import java.io.Closeable;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedSelectorException;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Listens for connections on a TCP port and takes packets out of what comes over them. Owns one thread,
 * {@code osc-stream-receiver}, which calls the listener; closing ends it and all connections.
 */
public final class StreamPackets implements PacketSource {
    /** Enough for a class of instruments; who comes when all are taken is hung up on. */
    static final int MOST_CONNECTIONS = 64;

    private static final int READ_BYTES = 65_536;

    private final PacketFraming framing;
    private final ServerSocketChannel server;
    private final Selector selector;
    private final InetSocketAddress address;
    private final LongSupplier clockNanos;
    private final Listener listener;
    private final ByteBuffer buffer = ByteBuffer.allocate(READ_BYTES);
    private final Thread thread;
    private volatile String trouble = "";

    /** A sender that is connected. */
    private record Sender(SocketChannel channel, InetSocketAddress address, PacketSplitter splitter) {}

    private StreamPackets(PacketFraming framing, ServerSocketChannel server, LongSupplier clockNanos, Listener listener)
            throws IOException {
        this.framing = framing;
        this.server = server;
        this.selector = Selector.open();
        this.address = (InetSocketAddress) server.getLocalAddress();
        this.clockNanos = clockNanos;
        this.listener = listener;
        this.thread = new Thread(this::receiveUntilClosed, "osc-stream-receiver");
        thread.setDaemon(true);
        server.configureBlocking(false);
        server.register(selector, SelectionKey.OP_ACCEPT);
    }

    /**
     * Listens on one of this machine's addresses, open to whoever can reach it; loopback can't be reached by any other
     * machine.
     *
     * @param framing how packets are told apart
     * @param port 1..65535, or 0 for any that is free, see {@link #address()}
     * @param clockNanos stamps packets as they arrive
     * @throws IOException if the port can't be had
     */
    public static StreamPackets open(
            PacketFraming framing, InetAddress host, int port, LongSupplier clockNanos, Listener listener)
            throws IOException {
        ListenPort.check(port);
        ServerSocketChannel server = ServerSocketChannel.open();
        try {
            server.bind(new InetSocketAddress(host, port));
            StreamPackets packets = new StreamPackets(framing, server, clockNanos, listener);
            packets.thread.start();
            return packets;
        } catch (IOException e) {
            server.close();
            throw ListenPort.refused("tcp", host, port, e);
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

    @Override
    public void close() {
        try {
            server.close();
            selector.wakeup();
        } catch (IOException e) {
            trouble = "closing: " + e.getMessage();
        }
        ListenPort.join(thread);
    }

    private void receiveUntilClosed() {
        try {
            while (server.isOpen()) {
                selector.select(this::onReady);
            }
        } catch (IOException | ClosedSelectorException e) {
            trouble = "receiving has ended: " + e.getMessage();
        } finally {
            selector.keys().forEach(key -> hangUp(key.attachment()));
            closeQuietly(selector);
        }
    }

    private void onReady(SelectionKey key) {
        if (key.attachment() instanceof Sender sender) {
            read(sender);
        } else if (key.isValid()) {
            accept();
        }
    }

    private void accept() {
        try {
            SocketChannel channel = server.accept();
            if (channel == null) {
                return;
            }
            if (selector.keys().size() > MOST_CONNECTIONS) {
                trouble = "more than " + MOST_CONNECTIONS + " connections: the last was hung up on";
                channel.close();
                return;
            }
            channel.configureBlocking(false);
            InetSocketAddress from = (InetSocketAddress) channel.getRemoteAddress();
            channel.register(selector, SelectionKey.OP_READ, new Sender(channel, from, framing.splitter()));
        } catch (IOException e) {
            trouble = "a connection was not taken: " + e.getMessage();
        }
    }

    private void read(Sender sender) {
        try {
            int read = sender.channel().read(buffer.clear());
            if (read < 0) {
                hangUp(sender);
            } else {
                take(sender);
            }
        } catch (IOException e) {
            trouble = "a connection has broken: " + e.getMessage();
            hangUp(sender);
        }
    }

    private void take(Sender sender) {
        PacketSplitter splitter = sender.splitter();
        long garbled = splitter.garbled();
        long timeNanos = clockNanos.getAsLong();
        splitter.feed(buffer.flip(), packet -> hand(packet, sender.address(), timeNanos));
        if (!splitter.defect().isEmpty()) {
            trouble = sender.address() + " was hung up on: " + splitter.defect();
            hangUp(sender);
        } else if (splitter.garbled() > garbled) {
            trouble = sender.address() + " sends frames that break the rules of SLIP (RFC 1055)";
        }
    }

    private void hand(ByteBuffer packet, InetSocketAddress sender, long timeNanos) {
        try {
            listener.onPacket(packet, sender, timeNanos);
        } catch (RuntimeException e) {
            // a listener's fault must not end listening
            trouble = "a packet was not taken: " + e;
        }
    }

    private static void hangUp(@Nullable Object sender) {
        if (sender instanceof Sender gone) {
            closeQuietly(gone.channel());
        }
    }

    private static void closeQuietly(Closeable what) {
        try {
            what.close();
        } catch (IOException e) {
            // it is gone either way
        }
    }
}
