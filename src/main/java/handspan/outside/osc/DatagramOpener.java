package handspan.outside.osc;

import handspan.music.send.NetworkTarget;
import handspan.music.send.NetworkTarget.Protocol;
import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardProtocolFamily;
import java.net.StandardSocketOptions;
import java.nio.channels.DatagramChannel;
import java.nio.channels.WritableByteChannel;
import java.util.Optional;

/** How a target gets at its network. */
@FunctionalInterface
interface DatagramOpener {
    /**
     * Looks the host up and connects.
     *
     * @return a channel that sends each write as one datagram and never blocks
     * @throws java.net.UnknownHostException if the host's name is not known
     * @throws IOException if the network refuses otherwise
     */
    WritableByteChannel open(NetworkTarget target) throws IOException;

    /** The real network. */
    static WritableByteChannel connect(NetworkTarget target) throws IOException {
        return HostAddresses.first(target, address -> connect(target, address));
    }

    private static WritableByteChannel connect(NetworkTarget target, InetAddress address) throws IOException {
        Optional<String> misfit = target.misfit(address.isMulticastAddress(), Broadcasts.isOne(address));
        if (misfit.isPresent()) {
            throw new WrongWayException(misfit.get());
        }
        DatagramChannel channel = DatagramChannel.open(familyOf(address));
        try {
            channel.configureBlocking(false);
            if (target.protocol() == Protocol.UDP_BROADCAST) {
                channel.setOption(StandardSocketOptions.SO_BROADCAST, true);
            } else if (target.protocol() == Protocol.UDP_MULTICAST) {
                Groups.prepare(channel, target);
            }
            return channel.connect(new InetSocketAddress(address, target.port()));
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    /** The family of sockets that reach an address: those of the other one refuse it. */
    static StandardProtocolFamily familyOf(InetAddress address) {
        return address instanceof Inet6Address ? StandardProtocolFamily.INET6 : StandardProtocolFamily.INET;
    }
}
