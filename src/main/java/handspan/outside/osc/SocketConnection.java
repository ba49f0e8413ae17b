package handspan.outside.osc;

import handspan.music.send.NetworkTarget;
import handspan.number.units.Nanos;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketTimeoutException;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.util.function.LongSupplier;

/** A TCP connection that never waits longer than seconds. What the receiver says is read and forgotten. */
final class SocketConnection implements StreamConnection {
    static final long CONNECT_MS = 3000;

    /** One frame must be taken within this time, else the receiver hangs. */
    static final long WRITE_MS = 3000;

    /** So little that a slow receiver does not get what was true long ago: about a fifth of a second of frames. */
    private static final int SOCKET_BUFFER_BYTES = 16 * 1024;

    private final SocketChannel channel;
    private final Selector selector;
    private final SelectionKey key;
    private final LongSupplier clockNanos;
    private final ByteBuffer replies = ByteBuffer.allocate(1024);

    private SocketConnection(SocketChannel channel, Selector selector, LongSupplier clockNanos) throws IOException {
        this.channel = channel;
        this.selector = selector;
        this.clockNanos = clockNanos;
        channel.configureBlocking(false);
        channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
        channel.setOption(StandardSocketOptions.SO_SNDBUF, SOCKET_BUFFER_BYTES);
        this.key = channel.register(selector, SelectionKey.OP_CONNECT);
    }

    /** Looks the host up and tries its addresses, one after the other. */
    static StreamConnection open(NetworkTarget target, LongSupplier clockNanos) throws IOException {
        return HostAddresses.first(target, address -> connect(address, target.port(), clockNanos));
    }

    private static SocketConnection connect(InetAddress address, int port, LongSupplier clockNanos) throws IOException {
        SocketChannel channel = SocketChannel.open();
        try {
            SocketConnection connection = new SocketConnection(channel, Selector.open(), clockNanos);
            try {
                connection.connect(new InetSocketAddress(address, port));
                return connection;
            } catch (IOException | RuntimeException e) {
                connection.selector.close();
                throw e;
            }
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private void connect(InetSocketAddress address) throws IOException {
        long endNanos = clockNanos.getAsLong() + CONNECT_MS * Nanos.PER_MS;
        boolean connected = channel.connect(address);
        while (!connected) {
            selectUntil(endNanos, "no answer within " + CONNECT_MS / 1000 + " s");
            connected = channel.finishConnect();
        }
        key.interestOps(SelectionKey.OP_READ);
    }

    private void selectUntil(long endNanos, String tooLate) throws IOException {
        long leftMs = (endNanos - clockNanos.getAsLong()) / Nanos.PER_MS;
        if (leftMs <= 0) {
            throw new SocketTimeoutException(tooLate);
        }
        selector.select(leftMs);
        selector.selectedKeys().clear();
    }

    @Override
    public boolean write(ByteBuffer bytes) throws IOException {
        channel.write(bytes);
        return !bytes.hasRemaining();
    }

    @Override
    public void finish(ByteBuffer bytes) throws IOException {
        key.interestOps(SelectionKey.OP_READ | SelectionKey.OP_WRITE);
        long endNanos = clockNanos.getAsLong() + WRITE_MS * Nanos.PER_MS;
        while (bytes.hasRemaining()) {
            selectUntil(endNanos, "it has read nothing for " + WRITE_MS / 1000 + " s");
            dropReplies();
            channel.write(bytes);
        }
        key.interestOps(SelectionKey.OP_READ);
    }

    @Override
    public void await(long millis) throws IOException {
        selector.select(millis);
        selector.selectedKeys().clear();
        dropReplies();
    }

    private void dropReplies() throws IOException {
        int read;
        do {
            read = channel.read(replies.clear());
        } while (read > 0);
        if (read < 0) {
            throw new ReceiverGoneException();
        }
    }

    @Override
    public void wake() {
        selector.wakeup();
    }

    /** Nothing of what waits in the system is sent after this. */
    @Override
    public void abort() {
        try {
            channel.setOption(StandardSocketOptions.SO_LINGER, 0);
            close();
        } catch (IOException e) {
            // it is broken already, which is what was asked for
        }
    }

    /** What was written still arrives. */
    @Override
    public void close() throws IOException {
        selector.close();
        channel.close();
    }
}
