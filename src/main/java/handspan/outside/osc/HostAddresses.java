package handspan.outside.osc;

import handspan.music.send.NetworkTarget;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;

/**
 * The addresses of a target's host, one after the other: a name may stand for several, and the first may be of a kind
 * that does not lead there, such as IPv6 on a network that has none.
 */
final class HostAddresses {
    private HostAddresses() {}

    /** Something to be tried with an address. */
    @FunctionalInterface
    interface Attempt<T> {
        T at(InetAddress address) throws IOException;
    }

    /**
     * Looks the host up and gives what comes of the first address that works.
     *
     * @throws UnknownHostException if its name is not known
     * @throws IOException what went wrong, if none works
     */
    static <T> T first(NetworkTarget target, Attempt<T> attempt) throws IOException {
        return first(target.host(), List.of(InetAddress.getAllByName(target.lookUpHost())), attempt);
    }

    static <T> T first(String host, List<InetAddress> addresses, Attempt<T> attempt) throws IOException {
        IOException last = new UnknownHostException(host);
        for (InetAddress address : addresses) {
            try {
                return attempt.at(address);
            } catch (IOException e) {
                // that somebody is there and refuses says more than that there is no way
                last = last instanceof ConnectException ? last : e;
            }
        }
        throw last;
    }
}
