package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NoRouteToHostException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A name that stands for several addresses; the numbers are those set aside for documents (RFC 5737, RFC 3849). */
class HostAddressesTest {
    private final List<String> tried = new ArrayList<>();

    private static List<InetAddress> stage() throws UnknownHostException {
        return List.of(InetAddress.getByName("2001:db8::7"), InetAddress.getByName("192.0.2.7"));
    }

    private String tryOut(InetAddress address, IOException first, IOException second) throws IOException {
        tried.add(address.getHostAddress());
        throw tried.size() == 1 ? first : second;
    }

    @Test
    void anAddressThatDoesNotLeadThereIsFollowedByTheNext() throws IOException {
        String opened = HostAddresses.first("stage", stage(), address -> {
            if (address.getHostAddress().indexOf(':') >= 0) {
                throw new NoRouteToHostException("Network is unreachable");
            }
            return address.getHostAddress();
        });
        assertEquals("192.0.2.7", opened);
    }

    @Test
    void theFirstThatWorksIsTaken() throws IOException {
        assertEquals("2001:db8:0:0:0:0:0:7", HostAddresses.first("stage", stage(), InetAddress::getHostAddress));
    }

    @Test
    void aRefusalSaysMoreThanANetworkWithoutAWay() throws IOException {
        IOException refused = new ConnectException("Connection refused");
        IOException noWay = new NoRouteToHostException("Network is unreachable");
        assertThrows(
                ConnectException.class,
                () -> HostAddresses.first("stage", stage(), address -> tryOut(address, refused, noWay)));
        assertEquals(2, tried.size(), "both are tried");
        tried.clear();
        assertThrows(
                ConnectException.class,
                () -> HostAddresses.first("stage", stage(), address -> tryOut(address, noWay, refused)));
    }

    @Test
    void noAddressAtAllIsAnUnknownHost() {
        assertThrows(
                UnknownHostException.class, () -> HostAddresses.first("stage", List.of(), InetAddress::getHostAddress));
    }
}
