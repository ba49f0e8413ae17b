package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class OscReceiverTest {
    private static final byte[] MESSAGE_B = Oracle.hex("2f620000 2c690000 00000007");

    private final List<ReceivedMessage> received = new CopyOnWriteArrayList<>();

    private static void send(int port, byte[] packet) throws IOException {
        try (DatagramSocket socket = new DatagramSocket()) {
            socket.send(new DatagramPacket(packet, packet.length, InetAddress.getLoopbackAddress(), port));
        }
    }

    @Test
    void messagesAreStampedByTheGivenClockAndCounted() throws IOException {
        AtomicLong clock = new AtomicLong(1_000);
        try (OscReceiver receiver = OscReceiver.open(0, clock::getAndIncrement, received::add)) {
            send(receiver.port(), MESSAGE_B);
            send(receiver.port(), MESSAGE_B);
            Waits.until(() -> received.size() == 2);
            assertEquals(
                    List.of(
                            new ReceivedMessage(1_000, "/b", "i", List.of(7)),
                            new ReceivedMessage(1_001, "/b", "i", List.of(7))),
                    received);
            assertEquals(new ReceiverStatus(2, 2, 0, 0, ""), receiver.status());
        }
    }

    @Test
    void garbageIsCountedAndListeningGoesOn() throws IOException {
        try (OscReceiver receiver = OscReceiver.open(0, () -> 0, received::add)) {
            send(receiver.port(), new byte[0]);
            send(receiver.port(), Oracle.hex("deadbeef"));
            send(receiver.port(), Oracle.hex("2f620000 2c510000"));
            send(receiver.port(), MESSAGE_B);
            Waits.until(() -> received.size() == 1);
            ReceiverStatus status = receiver.status();
            assertEquals(4, status.packets());
            assertEquals(2, status.malformed());
            assertEquals(1, status.discarded());
            assertTrue(status.trouble().contains("not Open Sound Control"), status.trouble());
        }
    }

    @Test
    void aListenerThatFailsDoesNotEndListening() throws IOException {
        try (OscReceiver receiver = OscReceiver.open(0, () -> 0, message -> {
            received.add(message);
            throw new IllegalStateException("full");
        })) {
            send(receiver.port(), MESSAGE_B);
            send(receiver.port(), MESSAGE_B);
            Waits.until(() -> received.size() == 2);
            Waits.until(() -> receiver.status().trouble().contains("full"));
        }
    }

    @Test
    void aPortThatIsTakenIsToldInWordsAndFreeAfterClosing() throws IOException {
        OscReceiver first = OscReceiver.open(0, () -> 0, received::add);
        IOException taken =
                assertThrows(IOException.class, () -> OscReceiver.open(first.port(), () -> 0, received::add));
        assertTrue(String.valueOf(taken.getMessage()).startsWith("udp port " + first.port() + " at 127.0.0.1"));
        first.close();
        OscReceiver.open(first.port(), () -> 0, received::add).close();
        assertThrows(IllegalArgumentException.class, () -> OscReceiver.open(65_536, () -> 0, received::add));
    }

    @Test
    void itsThreadIsNamedAndEndsWithIt() throws IOException {
        List<Thread> callers = new CopyOnWriteArrayList<>();
        OscReceiver receiver = OscReceiver.open(0, () -> 0, message -> callers.add(Thread.currentThread()));
        send(receiver.port(), MESSAGE_B);
        Waits.until(() -> callers.size() == 1);
        Thread thread = callers.get(0);
        assertEquals("osc-receiver", thread.getName());
        assertTrue(thread.isAlive());
        receiver.close();
        receiver.close();
        assertFalse(thread.isAlive());
        assertEquals("", receiver.status().trouble());
    }
}
