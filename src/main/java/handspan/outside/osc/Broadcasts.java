package handspan.outside.osc;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InterfaceAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.nio.ByteBuffer;

/** The broadcast addresses of this machine's networks. */
final class Broadcasts {
    private static final int BITS = 32;
    private static final int EVERYBODY = -1;

    /** A network of two machines has none (RFC 3021). */
    private static final int LONGEST_PREFIX = 30;

    private Broadcasts() {}

    /** Whether an address means every machine of a network that this machine is part of. */
    static boolean isOne(InetAddress address) throws SocketException {
        return address instanceof Inet4Address
                && (number(address) == EVERYBODY
                        || NetworkInterface.networkInterfaces()
                                .flatMap(each -> each.getInterfaceAddresses().stream())
                                .anyMatch(own -> isBroadcastOf(own, address)));
    }

    /** All bits behind those of the network are set (RFC 919, section 7; RFC 922, section 7). */
    private static boolean isBroadcastOf(InterfaceAddress own, InetAddress address) {
        int prefix = own.getNetworkPrefixLength();
        if (!(own.getAddress() instanceof Inet4Address) || prefix < 1 || prefix > LONGEST_PREFIX) {
            return false;
        }
        return number(address) == (number(own.getAddress()) | -1 >>> prefix);
    }

    private static int number(InetAddress address) {
        return ByteBuffer.wrap(address.getAddress()).getInt(address.getAddress().length - BITS / Byte.SIZE);
    }
}
