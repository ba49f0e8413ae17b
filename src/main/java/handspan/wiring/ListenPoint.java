package handspan.wiring;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.Collectors;

/**
 * Where to listen: how, at which of this machine's addresses, at which port. Written {@code 9000}, {@code udp:9000},
 * {@code tcp:9000} or {@code tcp-slip:9000}.
 *
 * @param protocol how packets come
 * @param address loopback unless it was asked for another
 * @param port 1..65535, or 0 for any that is free
 */
public record ListenPoint(Protocol protocol, InetAddress address, int port) {
    private static final int MOST_PORT = 65_535;

    /** Ways in. */
    public enum Protocol {
        /** A packet a datagram. */
        UDP("udp"),
        /** A stream, a length before each packet (Open Sound Control 1.0). */
        TCP("tcp"),
        /** A stream, packets between the end marks of SLIP (Open Sound Control 1.1). */
        TCP_SLIP("tcp-slip");

        private final String word;

        Protocol(String word) {
            this.word = word;
        }

        /** As it is written. */
        public String word() {
            return word;
        }
    }

    /**
     * Reads the written form; listens on loopback, which no other machine can reach.
     *
     * @throws IllegalArgumentException saying what is wrong
     */
    public static ListenPoint parse(String text) {
        int colon = text.lastIndexOf(':');
        String word = colon < 0 ? Protocol.UDP.word() : text.substring(0, colon);
        Protocol protocol = Arrays.stream(Protocol.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + text + "': '" + word
                        + "' is not a way in (udp, tcp, tcp-slip): write it like 9000 or udp:9000"));
        return new ListenPoint(protocol, InetAddress.getLoopbackAddress(), port(text, text.substring(colon + 1)));
    }

    private static int port(String text, String port) {
        boolean digits = !port.isEmpty() && port.length() <= 5 && port.chars().allMatch(c -> c >= '0' && c <= '9');
        if (!digits || Integer.parseInt(port) > MOST_PORT) {
            throw new IllegalArgumentException("'" + text + "': port '" + port
                    + "' is not a number in 0..65535 (0 takes any that is free): write it like 9000");
        }
        return Integer.parseInt(port);
    }

    /** The same port at every address of this machine: whoever reaches the machine reaches it. */
    public ListenPoint fromNetwork() {
        try {
            return new ListenPoint(protocol, InetAddress.getByAddress(new byte[4]), port);
        } catch (UnknownHostException e) {
            throw new IllegalStateException("four bytes are an address", e);
        }
    }

    /**
     * The same port at one address of this machine.
     *
     * @param place a number such as {@code 192.168.0.7}, or the name of a network interface such as {@code eth0}
     * @throws IllegalArgumentException when this machine has no such address
     */
    public ListenPoint at(String place) {
        try {
            boolean number = place.indexOf(':') >= 0 || place.matches("[0-9.]+");
            NetworkInterface named = number ? null : NetworkInterface.getByName(place);
            if (number) {
                InetAddress address = InetAddress.getByName(place);
                if (address.isAnyLocalAddress() || NetworkInterface.getByInetAddress(address) != null) {
                    return new ListenPoint(protocol, address, port);
                }
            } else if (named != null) {
                return new ListenPoint(protocol, firstOf(named, place), port);
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(refusal(place), e);
        }
        throw new IllegalArgumentException(refusal(place));
    }

    private static InetAddress firstOf(NetworkInterface named, String place) {
        return named.inetAddresses()
                .min(Comparator.comparing(address -> !(address instanceof Inet4Address)))
                .orElseThrow(() -> new IllegalArgumentException(
                        "network interface '" + place + "' has no address now: connect it first"));
    }

    private static String refusal(String place) {
        return "'" + place + "' is no address of this machine, which has " + ownAddresses()
                + ": name one of these, or a network interface";
    }

    private static String ownAddresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .map(InetAddress::getHostAddress)
                    .collect(Collectors.joining(", "));
        } catch (IOException e) {
            return "none that the system would tell";
        }
    }

    /** Whether only programs of this machine can reach it. */
    public boolean isPrivate() {
        return address.isLoopbackAddress();
    }

    /** The same at another port. */
    ListenPoint withPort(int other) {
        return new ListenPoint(protocol, address, other);
    }

    /** In words, with who can reach it. */
    public String words() {
        String host = address.getHostAddress();
        return protocol.word() + " port " + port + " at " + host
                + (isPrivate() ? ", from this machine only" : ", from the network");
    }
}
