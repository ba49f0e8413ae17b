package handspan;

import com.illposed.osc.BufferBytesReceiver;
import com.illposed.osc.OSCBundle;
import com.illposed.osc.OSCMessage;
import com.illposed.osc.OSCPacket;
import com.illposed.osc.OSCSerializeException;
import com.illposed.osc.OSCSerializerAndParserBuilder;
import com.illposed.osc.transport.OSCPortOut;
import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Somebody else who sends to a port of this machine: messages through the library JavaOSC, other bytes as they are. */
public final class OscSender implements AutoCloseable {
    private final OSCPortOut out;
    private final DatagramSocket socket;
    private final int port;

    /** A sender to a port. */
    public OscSender(int port) throws IOException {
        this.port = port;
        this.out = new OSCPortOut(InetAddress.getLoopbackAddress(), port);
        this.socket = new DatagramSocket(0, InetAddress.getLoopbackAddress());
    }

    /** A message. */
    public void send(String address, Object... arguments) throws IOException {
        send(message(address, arguments));
    }

    /** A message to be put in a bundle. */
    public static OSCMessage message(String address, Object... arguments) {
        return new OSCMessage(address, List.of(arguments));
    }

    /** A message to a pattern. The library writes none, so that stars stand as underscores until all is written. */
    public static byte[] pattern(String address, Object... arguments) {
        ByteBuffer buffer = ByteBuffer.allocate(1_000);
        try {
            new OSCSerializerAndParserBuilder()
                    .buildSerializer(new BufferBytesReceiver(buffer))
                    .write(message(address.replace('*', '_'), arguments));
        } catch (OSCSerializeException e) {
            throw new AssertionError(e);
        }
        byte[] bytes = new byte[buffer.flip().remaining()];
        buffer.get(bytes);
        for (int i = 0; i < address.length(); i++) {
            bytes[i] = (byte) address.charAt(i);
        }
        return bytes;
    }

    /** A bundle. */
    public void sendBundle(OSCPacket... packets) throws IOException {
        send(new OSCBundle(new ArrayList<>(List.of(packets))));
    }

    private void send(OSCPacket packet) throws IOException {
        try {
            out.send(packet);
        } catch (OSCSerializeException e) {
            throw new IOException(e);
        }
    }

    /** Bytes as they are, from {@link #answers()}. */
    public void sendBytes(byte[] bytes) throws IOException {
        socket.send(new DatagramPacket(bytes, bytes.length, InetAddress.getLoopbackAddress(), port));
    }

    /** The socket that bytes go out of, where answers come to. */
    public DatagramSocket answers() {
        return Objects.requireNonNull(socket);
    }

    @Override
    public void close() throws IOException {
        out.close();
        socket.close();
    }
}
