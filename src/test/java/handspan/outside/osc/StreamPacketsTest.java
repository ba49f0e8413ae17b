package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.outside.osc.packet.PacketFraming;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StreamPacketsTest {
    /** {@code /SYNC ,f 0.5}: unit-test datagram of the python-osc library (public domain). */
    private static final String SYNC = "2f53594e43000000 2c660000 3f000000";

    private static Socket connect(StreamEars ears) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), ears.port());
        socket.setSoTimeout(20_000);
        return socket;
    }

    private static void say(Socket socket, String hex) throws IOException {
        socket.getOutputStream().write(Oracle.hex(hex));
    }

    /** Both framings by hand, from OSC 1.0 "OSC Packets" and RFC 1055. */
    @ParameterizedTest
    @CsvSource({"LENGTH, 00000010, ''", "SLIP, c0, c0", "SLIP, '', c0"})
    void packetsOfSeveralSendersAreKeptApart(PacketFraming framing, String before, String after) throws IOException {
        try (StreamEars ears = new StreamEars(framing, 0)) {
            List<Socket> senders = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                senders.add(connect(ears));
                say(senders.get(i), before + SYNC.substring(0, 10));
            }
            for (Socket sender : senders) {
                say(sender, SYNC.substring(10) + after);
            }
            Waits.until(() -> ears.all().size() == 10);
            assertTrue(ears.all().stream()
                    .allMatch(heard -> heard.argument("/SYNC").equals("0.5")));
            assertEquals(
                    10,
                    ears.all().stream().map(StreamEars.Heard::from).distinct().count());
            for (Socket sender : senders) {
                sender.close();
            }
        }
    }

    @Test
    void aSenderWithoutLengthsIsHungUpOnWithAWordAndOthersAreNot() throws IOException {
        try (StreamEars ears = new StreamEars(PacketFraming.LENGTH, 0);
                Socket good = connect(ears);
                Socket bad = connect(ears)) {
            say(bad, "c0" + SYNC + "c0");
            assertEquals(-1, bad.getInputStream().read(), "hung up");
            assertTrue(ears.trouble().contains("hung up on: a packet's length is given as "), ears.trouble());
            say(good, "00000010" + SYNC);
            Waits.until(() -> ears.all().size() == 1);
        }
    }

    @Test
    void moreConnectionsThanThereIsRoomForAreHungUpOn() throws IOException {
        try (StreamEars ears = new StreamEars(PacketFraming.LENGTH, 0)) {
            List<Socket> senders = new ArrayList<>();
            for (int i = 0; i < StreamPackets.MOST_CONNECTIONS; i++) {
                senders.add(connect(ears));
                say(senders.get(i), "00000010" + SYNC);
            }
            Waits.until(() -> ears.all().size() == StreamPackets.MOST_CONNECTIONS);
            try (Socket tooMany = connect(ears)) {
                assertEquals(-1, tooMany.getInputStream().read());
            }
            senders.get(0).close();
            Waits.until(() -> isTaken(ears));
            for (Socket sender : senders) {
                sender.close();
            }
        }
    }

    private static boolean isTaken(StreamEars ears) {
        int before = ears.all().size();
        try (Socket next = connect(ears)) {
            say(next, "00000010" + SYNC);
            next.shutdownOutput();
            return next.getInputStream().read() == -1 && ears.all().size() > before;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void aPortThatIsTakenIsToldInWords() throws IOException {
        try (StreamEars ears = new StreamEars(PacketFraming.LENGTH, 0)) {
            IOException refused =
                    assertThrows(IOException.class, () -> new StreamEars(PacketFraming.LENGTH, ears.port()));
            assertTrue(
                    String.valueOf(refused.getMessage()).startsWith("tcp port " + ears.port() + " at 127.0.0.1"),
                    refused.getMessage());
        }
        assertThrows(IllegalArgumentException.class, () -> new StreamEars(PacketFraming.LENGTH, 70_000));
    }
}
