package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import handspan.Waits;
import handspan.live.path.TargetStatus;
import handspan.music.send.NetworkTarget;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendValue;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

/** Over the real network of this machine alone. */
class UdpTargetTest {
    private static final long FRAME_NANOS = 10_000_000;
    private static final int MEASURED_FRAMES = 100_000;

    /** As for the encoder: an object of 16 bytes a frame would show up as 1.6 MB. */
    private static final long ALLOCATION_SLACK_BYTES = 50_000;

    /** ::1, RFC 4291 (2006), section 2.5.3. */
    private static final byte[] LOOPBACK_6 = {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1};

    private final List<ReceivedMessage> received = new CopyOnWriteArrayList<>();

    private OscReceiver receiver(int port) throws IOException {
        return OscReceiver.open(port, () -> 0, received::add);
    }

    private static NetworkTarget loopback(int port) {
        return new NetworkTarget(NetworkTarget.Protocol.UDP, "127.0.0.1", port);
    }

    private static UdpTarget named(String instrument, int port) {
        return UdpTarget.open(
                loopback(port),
                new OscEncoder(SendPlan.byDefault(instrument, List.of()).lines()));
    }

    private List<String> addressesFrom(String instrument) {
        return received.stream()
                .map(ReceivedMessage::address)
                .filter(address -> address.startsWith("/" + instrument + "/"))
                .toList();
    }

    @Test
    void twoTargetsReachOneReceiver() throws IOException {
        try (OscReceiver receiver = receiver(0);
                UdpTarget moth = named("Moth", receiver.port());
                UdpTarget lark = named("Lark", receiver.port())) {
            for (int i = 0; i < 50; i++) {
                moth.send(Frames.at(i * FRAME_NANOS), i == 0);
                lark.send(Frames.at(i * FRAME_NANOS), false);
            }
            Waits.until(() -> received.size() == 50 * 6 * 2 + 1);
            assertEquals(50 * 6 + 1, addressesFrom("Moth").size());
            assertEquals(50 * 6, addressesFrom("Lark").size());
            assertEquals(
                    List.of(
                            "/Moth/pitch",
                            "/Moth/note",
                            "/Moth/degree",
                            "/Moth/level",
                            "/Moth/hand",
                            "/Moth/place",
                            "/Moth/state"),
                    addressesFrom("Moth").subList(0, 7));
            assertEquals(new TargetStatus("udp:127.0.0.1:" + receiver.port(), 50, 0, 0, ""), moth.status());
            assertEquals(100, receiver.status().packets());
        }
    }

    @Test
    void aTargetThatNobodyListensToIsCountedAndRecoversWhenSomebodyDoes() throws IOException {
        int port;
        try (OscReceiver gone = receiver(0)) {
            port = gone.port();
        }
        try (UdpTarget target = named("Moth", port)) {
            long[] timeNanos = {0};
            int[] frames = {0};
            Waits.until(() -> {
                target.send(Frames.at(timeNanos[0] += FRAME_NANOS), false);
                frames[0]++;
                return target.status().refused() >= 5;
            });
            TargetStatus alone = target.status();
            assertEquals(
                    "nobody listens at udp:127.0.0.1:" + port + ": start the sound patch or name its port",
                    alone.trouble());
            assertEquals(frames[0], alone.sent() + alone.refused() + alone.dropped());

            try (OscReceiver back = receiver(port)) {
                Waits.until(() -> {
                    target.send(Frames.at(timeNanos[0] += FRAME_NANOS), false);
                    return back.status().packets() > 0
                            && target.status().trouble().isEmpty();
                });
                assertTrue(target.status().refused() <= alone.refused() + 1, "one more at most: the one on its way");
            }
        }
    }

    /** RFC 6761 (2013), section 6.4: names under "invalid" never resolve. */
    @Test
    void aHostThatIsNotKnownIsTroubleAndEveryFrameIsCounted() {
        try (UdpTarget target = UdpTarget.open(
                new NetworkTarget(NetworkTarget.Protocol.UDP, "stage.invalid", 9000),
                new OscEncoder(Frames.ALL_LINES))) {
            for (int i = 0; i < 10; i++) {
                target.send(Frames.at(i * FRAME_NANOS), true);
            }
            assertFalse(target.reopen());
            TargetStatus status = target.status();
            assertEquals(10, status.dropped());
            assertEquals(0, status.sent() + status.refused());
            assertTrue(status.trouble().startsWith("host 'stage.invalid' is not known: "), status.trouble());
        }
    }

    @Test
    void aTargetOfTheOtherFamilyIsReachedWhereTheMachineHasIt() throws IOException {
        InetAddress loopback6 = InetAddress.getByAddress(LOOPBACK_6);
        assumeTrue(canBind(loopback6), "this machine has no IPv6");
        try (OscReceiver receiver = OscReceiver.open(loopback6, 0, () -> 0, received::add);
                UdpTarget target = UdpTarget.open(
                        new NetworkTarget(NetworkTarget.Protocol.UDP, "::1", receiver.port()),
                        new OscEncoder(Frames.ALL_LINES))) {
            target.send(Frames.PLAYING, false);
            Waits.until(() -> received.size() == 6);
            assertEquals("udp:[::1]:" + receiver.port(), target.status().target());
        }
    }

    private static boolean canBind(InetAddress address) {
        try (DatagramSocket socket = new DatagramSocket(new InetSocketAddress(address, 0))) {
            return socket.isBound();
        } catch (IOException e) {
            return false;
        }
    }

    /** A session ends by interrupting its path; the frames of the closing fade must still go out. */
    @Test
    void anInterruptedThreadStillSends() throws IOException {
        try (OscReceiver receiver = receiver(0);
                UdpTarget target = named("Moth", receiver.port())) {
            Thread.currentThread().interrupt();
            try {
                target.send(Frames.PLAYING, false);
                target.send(Frames.PLAYING, false);
            } finally {
                assertTrue(Thread.interrupted());
            }
            assertEquals(2, target.status().sent());
            Waits.until(() -> received.size() == 12);
        }
    }

    @Test
    void nothingIsSentWhenThereIsNothingToSay() throws IOException {
        try (OscReceiver receiver = receiver(0);
                UdpTarget target = UdpTarget.open(
                        loopback(receiver.port()),
                        new OscEncoder(List.of(new SendLine(SendValue.STATE, "/s", true))))) {
            target.send(Frames.PLAYING, false);
            target.send(Frames.PLAYING, true);
            Waits.until(() -> received.size() == 1);
            assertEquals(1, target.status().sent());
            assertEquals(1, receiver.status().packets());
        }
    }

    @Test
    void aFrameThatGoesOutCostsNoNewObject() throws IOException {
        // bound and never read: the system lets what doesn't fit fall
        try (DatagramSocket sink = new DatagramSocket(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
                UdpTarget target = named("Moth", sink.getLocalPort())) {
            long bytes = Allocation.bytesOf(MEASURED_FRAMES, i -> target.send(Frames.PLAYING, (i & 7) == 0));
            assertTrue(target.status().sent() > MEASURED_FRAMES, "frames have gone out");
            assertTrue(bytes < ALLOCATION_SLACK_BYTES, () -> bytes + " bytes for " + MEASURED_FRAMES + " frames");
        }
    }

    @Test
    void reopeningWhileFramesGoOutLosesTrackOfNone() throws Exception {
        int frames = 0;
        try (OscReceiver receiver = receiver(0);
                UdpTarget target = UdpTarget.open(
                        loopback(receiver.port()),
                        new OscEncoder(List.of(new SendLine(SendValue.STATE, "/s", true))))) {
            Thread renewing = new Thread(() -> {
                for (int i = 0; i < 200; i++) {
                    target.reopen();
                }
            });
            renewing.start();
            do {
                target.send(Frames.PLAYING, true);
                frames++;
            } while (renewing.isAlive());
            renewing.join();
            TargetStatus status = target.status();
            assertEquals(new TargetStatus(status.target(), frames, 0, 0, ""), status);
        }
    }
}
