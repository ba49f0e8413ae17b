package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Waits;
import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.NetworkTarget;
import handspan.music.send.PlayState;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SoundFrame;
import handspan.outside.osc.PacketSource;
import handspan.outside.osc.StreamPackets;
import handspan.outside.osc.UdpPackets;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.PacketFraming;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

/** Targets that are well beside targets that are not. */
class TargetsTest {
    private static final int FRAMES = 400;
    private static final long FRAME_NANOS = 2_000_000;

    /** No frame may wait for as long as a person would notice; a machine under load is given that much. */
    private static final double MOST_GAP_MS = 1_000;

    private static SoundFrame frame(long timeNanos) {
        return new SoundFrame(timeNanos, 440, 69, 0, 1, 4, 0.5, true, 0.5, 0.5, PlayState.PLAYING);
    }

    private static SendPlan plan(List<String> targets) {
        return SendPlan.byDefault(
                "Moth", targets.stream().map(SendTarget::parse).toList());
    }

    private static double longestGapMs(List<Datagram> all) {
        double longest = 0;
        for (int i = 1; i < all.size(); i++) {
            longest = Math.max(longest, (all.get(i).timeNanos() - all.get(i - 1).timeNanos()) / 1e6);
        }
        return longest;
    }

    /** What a receiver gets of frames that go to it and to others; the one that vanishes does so half-way. */
    private static List<Datagram> heard(List<String> others, Runnable halfWay) throws IOException {
        try (Datagrams good = new Datagrams()) {
            List<String> all = new ArrayList<>(others);
            all.add("udp:127.0.0.1:" + good.port());
            try (Targets targets = Targets.open(plan(all))) {
                for (int i = 0; i < FRAMES; i++) {
                    if (i == FRAMES / 2) {
                        halfWay.run();
                    }
                    for (FrameTarget target : targets.all()) {
                        target.send(frame(i * FRAME_NANOS), i == 0);
                    }
                    LockSupport.parkNanos(FRAME_NANOS);
                }
                Waits.until(() -> good.all().size() >= FRAMES, () -> good.all().size() + " frames");
                List<TargetStatus> status = targets.status();
                assertEquals(FRAMES, status.get(status.size() - 1).sent());
                for (TargetStatus other : status.subList(0, others.size())) {
                    // what goes over a connection keeps the newest for whoever will listen
                    int waiting = other.target().startsWith("tcp") ? 1 : 0;
                    assertEquals(FRAMES - waiting, other.sent() + other.refused() + other.dropped(), other.target());
                    assertFalse(other.trouble().isEmpty(), other.target());
                }
            }
            return good.all();
        }
    }

    @Test
    void aRefusingAnUnknownAndAVanishedTargetDelayNobody() throws IOException {
        int refusing;
        try (Datagrams gone = new Datagrams()) {
            refusing = gone.port();
        }
        try (Datagrams vanishing = new Datagrams()) {
            // names under "invalid" never resolve (RFC 6761, section 6.4); 127.0.0.0/8 ends with a broadcast address
            List<Datagram> all = heard(
                    List.of(
                            "udp:127.0.0.1:" + refusing,
                            "udp:stage.invalid:9000",
                            "tcp:127.0.0.1:" + refusing,
                            "tcp-slip:stage.invalid:9000",
                            "udp:127.255.255.255:9000",
                            "udp:127.0.0.1:" + vanishing.port()),
                    () -> {
                        try {
                            vanishing.close();
                        } catch (IOException e) {
                            throw new IllegalStateException(e);
                        }
                    });
            assertEquals(FRAMES, all.size());
            assertTrue(longestGapMs(all) < MOST_GAP_MS, longestGapMs(all) + " ms");
        }
        List<Datagram> alone = heard(List.of(), () -> {});
        assertEquals(FRAMES, alone.size(), "the same alone");
    }

    @Test
    void openingAsksNobody() {
        try (Targets targets = Targets.open(plan(List.of("udp:stage.invalid:9000")))) {
            String trouble = targets.status().get(0).trouble();
            assertTrue(
                    trouble.startsWith("looking up stage.invalid") || trouble.startsWith("host 'stage.invalid'"),
                    trouble);
            Waits.until(
                    () -> targets.status().get(0).trouble().startsWith("host 'stage.invalid' is not known"),
                    () -> targets.status().get(0).trouble());
        }
    }

    @Test
    void numbersAndThisMachineNeedNoLookUp() {
        for (String host : List.of("127.0.0.1", "10.1.2.3", "localhost", "::1")) {
            assertTrue(new NetworkTarget(NetworkTarget.Protocol.UDP, host, 9000).isKnownAtOnce(), host);
        }
        for (String host : List.of("stage", "stage.local", "1a.example", "127.0.0.1.example")) {
            assertFalse(new NetworkTarget(NetworkTarget.Protocol.UDP, host, 9000).isKnownAtOnce(), host);
        }
    }

    private static boolean has(InetAddress address) {
        try (DatagramSocket socket = new DatagramSocket(new InetSocketAddress(address, 0))) {
            return socket.isBound();
        } catch (IOException e) {
            return false;
        }
    }

    /** One of each kind at once, on both families where the machine has them; ::1 is RFC 4291, section 2.5.3. */
    @Test
    void everyKindOfTargetOfBothFamiliesGetsTheSame() throws IOException {
        List<PacketSource> receivers = new ArrayList<>();
        List<List<ReceivedMessage>> heard = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (String host : List.of("127.0.0.1", "::1")) {
            InetAddress address = InetAddress.getByName(host);
            if (!has(address)) {
                continue;
            }
            for (String way : List.of("udp", "tcp", "tcp-slip")) {
                List<ReceivedMessage> messages = new CopyOnWriteArrayList<>();
                OscPacketReader reader = new OscPacketReader();
                PacketSource.Listener listener = (packet, from, timeNanos) ->
                        messages.addAll(reader.read(packet, 0).messages());
                PacketSource receiver = way.equals("udp")
                        ? UdpPackets.open(address, 0, () -> 0, listener)
                        : StreamPackets.open(
                                way.equals("tcp") ? PacketFraming.LENGTH : PacketFraming.SLIP,
                                address,
                                0,
                                () -> 0,
                                listener);
                receivers.add(receiver);
                heard.add(messages);
                String number = host.equals("::1") ? "[::1]" : host;
                names.add(way + ":" + number + ":" + receiver.address().getPort());
            }
        }
        try (Targets targets = Targets.open(plan(names))) {
            for (FrameTarget target : targets.all()) {
                target.send(frame(0), true);
            }
            Waits.until(
                    () -> targets.status().stream().allMatch(status -> status.sent() == 1),
                    () -> targets.status().toString());
            for (FrameTarget target : targets.all()) {
                target.send(frame(FRAME_NANOS), false);
            }
            Waits.until(() -> heard.stream().allMatch(messages -> messages.size() == 7 + 6));
            for (List<ReceivedMessage> messages : heard) {
                assertEquals(heard.get(0), messages);
            }
            for (int i = 0; i < names.size(); i++) {
                assertEquals(
                        new TargetStatus(names.get(i), 2, 0, 0, ""),
                        targets.status().get(i));
            }
        }
        receivers.forEach(PacketSource::close);
    }
}
