package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.live.path.TargetStatus;
import handspan.music.send.NetworkTarget;
import handspan.music.send.NetworkTarget.Protocol;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.outside.osc.packet.OscPacket;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.PacketFraming;
import handspan.outside.osc.packet.PacketSplitter;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Over the real network of this machine alone. */
class StreamTargetTest {
    /** No call of the path may take as long as a person would notice; a machine under load is given that much. */
    private static final double MOST_CALL_MS = 1000;

    private static final int TIMEOUT_MS = 20_000;

    private static final double FLUSH_AND_LOAD_MS = StreamTarget.FLUSH_MS + MOST_CALL_MS;

    private long timeNanos;
    private double longestCallMs;
    private int offered;

    private static StreamTarget target(Protocol protocol, int port) {
        return StreamTarget.start(
                new NetworkTarget(protocol, "127.0.0.1", port),
                () -> new OscEncoder(Frames.ALL_LINES),
                System::nanoTime);
    }

    private void send(StreamTarget target, SoundFrame frame, boolean withState) {
        long start = System.nanoTime();
        target.send(frame, withState);
        offered++;
        longestCallMs = Math.max(longestCallMs, (System.nanoTime() - start) / 1e6);
    }

    private SoundFrame playing() {
        return Frames.at(timeNanos += 5_000_000);
    }

    private SoundFrame silent() {
        return Frames.at(0).silent(timeNanos += 5_000_000, PlayState.AWAY);
    }

    private static SoundFrame numbered(int number) {
        return new SoundFrame(number, 100 + number, 69, 0, 1, 4, 0.5, true, 0.5, 0.5, PlayState.PLAYING);
    }

    private static void connected(StreamTarget target) {
        Waits.until(
                () -> target.status().trouble().isEmpty() && target.isConnected(),
                () -> target.status().toString());
    }

    private static long decided(StreamTarget target) {
        TargetStatus status = target.status();
        return status.sent() + status.refused() + status.dropped();
    }

    @ParameterizedTest
    @EnumSource(
            value = Protocol.class,
            names = {"TCP", "TCP_SLIP"})
    void framesArriveWholeAndInOrder(Protocol protocol) throws IOException {
        int frames = 500;
        try (StreamEars ears = new StreamEars(PacketFraming.of(protocol), 0);
                StreamTarget target = target(protocol, ears.port())) {
            connected(target);
            for (int i = 0; i < frames; i++) {
                target.send(numbered(i), i == 0);
                int soFar = i + 1;
                Waits.until(() -> decided(target) == soFar);
            }
            Waits.until(() -> ears.all().size() == frames);
            assertEquals("599.0", ears.last().argument("/pitch"));
            double before = 0;
            for (StreamEars.Heard heard : ears.all()) {
                assertEquals("", heard.packet().defect());
                assertTrue(heard.packet().messages().size() >= 6);
                double pitch = Double.parseDouble(heard.argument("/pitch").toString());
                assertTrue(pitch > before, pitch + " after " + before);
                before = pitch;
            }
            assertEquals(
                    new TargetStatus(protocol.word() + ":127.0.0.1:" + ears.port(), frames, 0, 0, ""), target.status());
            assertEquals("", ears.trouble());
        }
    }

    @Test
    void aReceiverThatComesLaterIsFoundAndToldWhatIsTrueThen() throws IOException {
        int port;
        try (StreamEars gone = new StreamEars(PacketFraming.LENGTH, 0)) {
            port = gone.port();
        }
        try (StreamTarget target = target(Protocol.TCP, port)) {
            Waits.until(() -> target.status().trouble().startsWith("nobody listens at tcp:127.0.0.1:" + port));
            for (int i = 0; i < 100; i++) {
                send(target, playing(), i == 0);
            }
            send(target, silent(), true);
            assertEquals(100, target.status().refused(), "one waits");
            try (StreamEars back = new StreamEars(PacketFraming.LENGTH, port)) {
                Waits.until(() -> !back.all().isEmpty());
                assertTrue(back.last().isSilent());
                assertEquals("away", back.last().argument("/state"), "without waiting for a change of state");
                assertEquals(1, back.all().size());
                Waits.until(() -> target.status().sent() == 1);
                assertEquals("", target.status().trouble());
            }
        }
        assertTrue(longestCallMs < MOST_CALL_MS, longestCallMs + " ms");
    }

    @Test
    void aReceiverThatHangsUpIsConnectedAnewAndToldAtOnce() throws IOException {
        int port;
        try (StreamEars ears = new StreamEars(PacketFraming.SLIP, 0)) {
            port = ears.port();
            try (StreamTarget target = target(Protocol.TCP_SLIP, port)) {
                connected(target);
                send(target, playing(), true);
                Waits.until(() -> ears.all().size() == 1);
                ears.close();
                Waits.until(() -> !target.status().trouble().isEmpty());
                try (StreamEars back = new StreamEars(PacketFraming.SLIP, port)) {
                    Waits.until(() -> !back.all().isEmpty());
                    assertEquals("playing", back.last().argument("/state"));
                }
            }
        }
    }

    /** Accepts, and reads only when told to. */
    private static ServerSocket lazy() throws IOException {
        ServerSocket server = new ServerSocket();
        server.setReceiveBufferSize(4096);
        server.setSoTimeout(TIMEOUT_MS);
        server.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
        return server;
    }

    private static List<OscPacket> packets(byte[] stream) {
        PacketSplitter splitter = PacketFraming.LENGTH.splitter();
        List<OscPacket> packets = new ArrayList<>();
        splitter.feed(ByteBuffer.wrap(stream), packet -> packets.add(new OscPacketReader().read(packet, 0)));
        assertEquals("", splitter.defect());
        return packets;
    }

    /** Sends frames until the receiver's and the system's buffers are full and nothing moves any more. */
    private void fill(StreamTarget target) {
        long[] sent = {-1, 0};
        Waits.until(
                () -> {
                    send(target, playing(), false);
                    boolean moved = target.status().sent() != sent[0];
                    sent[0] = target.status().sent();
                    sent[1] = moved ? 0 : sent[1] + 1;
                    return sent[1] > 200 && target.status().trouble().contains("too slow");
                },
                () -> target.status().toString());
    }

    @Test
    void aReceiverThatAcceptsAndNeverReadsDelaysNobodyAndIsGivenUp() throws IOException {
        try (ServerSocket server = lazy();
                StreamTarget target = target(Protocol.TCP, server.getLocalPort())) {
            Socket first = server.accept();
            fill(target);
            for (int i = 0; i < 100_000; i++) {
                send(target, playing(), i % 200 == 0);
            }
            TargetStatus stuck = target.status();
            assertTrue(stuck.dropped() >= 99_900, stuck + ": the newest wins");
            send(target, silent(), true);
            Socket second = server.accept();
            second.setSoTimeout(TIMEOUT_MS);
            byte[] rest = second.getInputStream().readNBytes(4);
            byte[] begin =
                    second.getInputStream().readNBytes(ByteBuffer.wrap(rest).getInt());
            OscPacket packet = new OscPacketReader().read(ByteBuffer.wrap(begin), 0);
            assertEquals("", packet.defect(), "a new connection begins with a whole packet");
            assertTrue(new StreamEars.Heard(new InetSocketAddress(0), packet).isSilent());
            first.close();
            second.close();
        }
        assertTrue(longestCallMs < MOST_CALL_MS, longestCallMs + " ms");
    }

    @Test
    void aReceiverThatLagsMissesNoChange() throws IOException {
        try (ServerSocket server = lazy()) {
            StreamTarget target = target(Protocol.TCP, server.getLocalPort());
            Socket socket = server.accept();
            fill(target);
            for (int i = 0; i < 20; i++) {
                for (int j = 0; j < 100; j++) {
                    send(target, i % 2 == 0 ? silent() : playing(), j == 0);
                }
            }
            send(target, silent(), true);
            byte[][] all = new byte[1][];
            Thread reading = new Thread(() -> all[0] = readAll(socket));
            reading.start();
            Waits.until(() -> decided(target) == offered);
            target.close();
            Waits.until(() -> !reading.isAlive());
            List<OscPacket> packets = packets(all[0]);
            List<Boolean> changes = new ArrayList<>();
            for (OscPacket packet : packets) {
                boolean silent = new StreamEars.Heard(new InetSocketAddress(0), packet).isSilent();
                if (changes.isEmpty() || changes.get(changes.size() - 1) != silent) {
                    changes.add(silent);
                }
            }
            assertEquals(22, changes.size(), "it played, then ten ends and ten beginnings, and the last end");
            assertTrue(changes.get(21));
            assertEquals(packets.size(), target.status().sent());
        }
        assertTrue(longestCallMs < MOST_CALL_MS, longestCallMs + " ms");
    }

    private static byte[] readAll(Socket socket) {
        try (InputStream in = socket.getInputStream()) {
            return in.readAllBytes();
        } catch (IOException e) {
            return new byte[0];
        }
    }

    @Test
    void whatIsLeftJustBeforeClosingArrives() throws IOException {
        for (int i = 0; i < 50; i++) {
            try (StreamEars ears = new StreamEars(PacketFraming.LENGTH, 0)) {
                StreamTarget target = target(Protocol.TCP, ears.port());
                connected(target);
                send(target, playing(), true);
                send(target, silent(), true);
                target.close();
                Waits.until(() -> !ears.all().isEmpty() && ears.last().isSilent());
                assertEquals(2, target.status().sent() + target.status().dropped());
            }
        }
    }

    @Test
    void closingBeforeAStuckReceiverReturnsSoon() throws IOException {
        try (ServerSocket server = lazy()) {
            StreamTarget target = target(Protocol.TCP, server.getLocalPort());
            try (Socket socket = server.accept()) {
                fill(target);
                assertFalse(socket.isClosed());
                long start = System.nanoTime();
                target.close();
                double tookMs = (System.nanoTime() - start) / 1e6;
                assertTrue(tookMs < FLUSH_AND_LOAD_MS, tookMs + " ms");
            }
        }
    }

    /** A session ends by interrupting its path; the frames of the closing fade must still go out. */
    @Test
    void anInterruptedThreadStillSends() throws IOException {
        try (StreamEars ears = new StreamEars(PacketFraming.LENGTH, 0);
                StreamTarget target = target(Protocol.TCP, ears.port())) {
            connected(target);
            Thread.currentThread().interrupt();
            try {
                target.send(playing(), true);
                target.send(silent(), true);
            } finally {
                assertTrue(Thread.interrupted());
            }
            Waits.until(() -> !ears.all().isEmpty() && ears.last().isSilent());
        }
    }

    /** RFC 6761 (2013), section 6.4: names under "invalid" never resolve. */
    @Test
    void aHostThatIsNotKnownIsToldInTheWordsOfAllTargets() {
        try (StreamTarget target = StreamTarget.start(
                new NetworkTarget(Protocol.TCP, "stage.invalid", 9000),
                () -> new OscEncoder(Frames.ALL_LINES),
                System::nanoTime)) {
            Waits.until(() -> target.status().trouble().startsWith("host 'stage.invalid' is not known: "));
            target.send(playing(), true);
            target.send(playing(), true);
            assertEquals(1, target.status().dropped());
            assertNotEquals("", target.status().trouble());
        }
    }

    @Test
    void aWayOfDatagramsIsRefused() {
        NetworkTarget udp = new NetworkTarget(Protocol.UDP, "127.0.0.1", 9000);
        assertThrows(
                IllegalArgumentException.class,
                () -> StreamTarget.start(udp, () -> new OscEncoder(Frames.ALL_LINES), System::nanoTime));
    }
}
