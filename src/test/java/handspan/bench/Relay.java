package handspan.bench;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.DatagramChannel;

/**
 * The least that can stand between a port and a datagram in this language: reads bytes from the same serial library
 * with the same settings, cuts them at line ends, sends each line as it is. One thread, nothing understood, nothing
 * made.
 */
public final class Relay {
    private static final int DATA_BITS = 8;

    private Relay() {}

    /** Runs until the port ends: name of the port, link speed, number of the UDP port. */
    public static void main(String[] words) throws IOException {
        SerialPort port = SerialPort.getCommPort(words[0]);
        port.setComPortParameters(Integer.parseInt(words[1]), DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 0, 0);
        if (!port.openPort()) {
            throw new IOException("port " + words[0] + " can't be opened");
        }
        byte[] bytes = new byte[4096];
        ByteBuffer line = ByteBuffer.allocateDirect(4096);
        try (DatagramChannel out = DatagramChannel.open()) {
            out.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), Integer.parseInt(words[2])));
            // "the port is open"
            out.write(ByteBuffer.wrap(new byte[1]));
            int count = port.readBytes(bytes, bytes.length);
            while (count > 0) {
                for (int i = 0; i < count; i++) {
                    line.put(bytes[i]);
                    if (bytes[i] == '\n') {
                        out.write(line.flip());
                        line.clear();
                    }
                }
                count = port.readBytes(bytes, bytes.length);
            }
        }
    }
}
