package handspan.wiring;

import java.net.Inet6Address;
import java.net.InetSocketAddress;

/** Whoever is at the other end. */
final class Peer {
    private Peer() {}

    /** Address and port, as targets are written: an IPv6 number in brackets. */
    static String words(InetSocketAddress peer) {
        String host = peer.getAddress().getHostAddress();
        return (peer.getAddress() instanceof Inet6Address ? "[" + host + "]" : host) + ":" + peer.getPort();
    }
}
