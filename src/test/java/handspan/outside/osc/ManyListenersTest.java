package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import handspan.music.send.NetworkTarget;
import handspan.music.send.SendTarget;
import handspan.outside.osc.packet.OscPacket;
import handspan.outside.osc.packet.OscPacketReader;
import java.io.IOException;
import java.net.DatagramPacket;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.MulticastSocket;
import java.net.NetworkInterface;
import java.nio.ByteBuffer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Groups and broadcasts, on this machine's own networks, where it has them. */
class ManyListenersTest {
    private static final int TIMEOUT_MS = 10_000;

    private static NetworkInterface loopback() throws IOException {
        return NetworkInterface.getByInetAddress(InetAddress.getLoopbackAddress());
    }

    /**
     * Loopback for IPv4; Linux has no way to IPv6 groups there, so that they need a network: one hop, never further.
     */
    private static NetworkInterface networkFor(String group) throws IOException {
        if (group.indexOf(':') < 0) {
            return loopback();
        }
        for (NetworkInterface each : NetworkInterface.networkInterfaces().toList()) {
            if (each.isUp()
                    && each.supportsMulticast()
                    && !each.isLoopback()
                    && each.inetAddresses().anyMatch(Inet6Address.class::isInstance)) {
                return each;
            }
        }
        return loopback();
    }

    private static UdpTarget open(String target) {
        return UdpTarget.open((NetworkTarget) SendTarget.parse(target), new OscEncoder(Frames.ALL_LINES));
    }

    private static OscPacket receive(MulticastSocket socket) throws IOException {
        DatagramPacket packet = new DatagramPacket(new byte[2048], 2048);
        socket.receive(packet);
        return new OscPacketReader().read(ByteBuffer.wrap(packet.getData(), 0, packet.getLength()), 0);
    }

    private static @Nullable MulticastSocket joined(String group) throws IOException {
        MulticastSocket socket = new MulticastSocket(0);
        try {
            socket.setSoTimeout(TIMEOUT_MS);
            socket.joinGroup(new InetSocketAddress(InetAddress.getByName(group), 0), networkFor(group));
            return socket;
        } catch (IOException e) {
            socket.close();
            return null;
        }
    }

    /** Administratively scoped IPv4 (RFC 2365), link-local and organization-local IPv6 (RFC 4291, section 2.7). */
    @ParameterizedTest
    @ValueSource(strings = {"239.255.77.77", "ff02::7777", "ff08::7777"})
    void allWhoHaveJoinedAGroupHearIt(String group) throws IOException {
        String network = networkFor(group).getName();
        try (MulticastSocket one = joined(group);
                MulticastSocket other = joined(group)) {
            assumeTrue(one != null && other != null, "this machine has no such groups");
            for (MulticastSocket socket : new MulticastSocket[] {one, other}) {
                String host = group.indexOf(':') < 0 ? group + "%" + network : "[" + group + "%" + network + "]";
                try (UdpTarget target = open("udp-multicast:" + host + ":" + socket.getLocalPort())) {
                    target.send(Frames.PLAYING, true);
                    assumeFalse(target.status().trouble().contains("unreachable"), "no way to groups of this kind");
                    assertEquals("", target.status().trouble());
                    assertEquals(1, target.status().sent());
                    OscPacket packet = receive(socket);
                    assertEquals("", packet.defect());
                    assertEquals(7, packet.messages().size());
                }
            }
        }
    }

    @Test
    void aGroupByWayOfAnInterfaceThatIsNotThereIsTroubleInWords() {
        try (UdpTarget target = open("udp-multicast:239.255.77.77%nowhere:9000")) {
            assertEquals(
                    "target udp-multicast:239.255.77.77%nowhere:9000: this machine has no network interface 'nowhere':"
                            + " name one it has, or leave it out",
                    target.status().trouble());
        }
    }

    /** The last address of 127.0.0.0/8 (RFC 919, section 7; RFC 922, section 7). */
    @Test
    void everyMachineOfANetworkIsReachedByTheWordForItAlone() throws IOException {
        InetAddress last = InetAddress.getByName("127.255.255.255");
        assumeTrue(Broadcasts.isOne(last), "this machine's loopback network is not 127.0.0.0/8");
        try (MulticastSocket socket = new MulticastSocket(0)) {
            socket.setSoTimeout(TIMEOUT_MS);
            try (UdpTarget plain = open("udp:127.255.255.255:" + socket.getLocalPort())) {
                plain.send(Frames.PLAYING, true);
                assertEquals(1, plain.status().dropped());
                assertTrue(
                        plain.status()
                                .trouble()
                                .endsWith("write udp-broadcast:127.255.255.255:" + socket.getLocalPort()),
                        plain.status().trouble());
            }
            try (UdpTarget all = open("udp-broadcast:127.255.255.255:" + socket.getLocalPort())) {
                all.send(Frames.PLAYING, true);
                assertEquals("", all.status().trouble());
                assertEquals(7, receive(socket).messages().size());
            }
        }
    }

    @Test
    void onlyTheLastAddressOfANetworkIsABroadcast() throws IOException {
        assertTrue(Broadcasts.isOne(InetAddress.getByName("255.255.255.255")));
        for (String one : new String[] {"127.0.0.1", "127.255.255.254", "::1", "224.0.0.1"}) {
            assertEquals(false, Broadcasts.isOne(InetAddress.getByName(one)), one);
        }
    }
}
