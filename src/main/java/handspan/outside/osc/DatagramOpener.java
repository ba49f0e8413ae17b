package handspan.outside.osc;

import handspan.music.send.SendTarget;
import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardProtocolFamily;
import java.nio.channels.DatagramChannel;
import java.nio.channels.WritableByteChannel;

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
    WritableByteChannel open(SendTarget target) throws IOException;

    /** The real network. */
    static WritableByteChannel connect(SendTarget target) throws IOException {
        InetAddress address = InetAddress.getByName(target.host());
        DatagramChannel channel = DatagramChannel.open(familyOf(address));
        try {
            channel.configureBlocking(false);
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
