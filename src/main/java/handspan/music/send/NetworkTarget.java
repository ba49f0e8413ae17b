package handspan.music.send;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where Open Sound Control goes over the network, written {@code PROTOCOL:HOST:PORT}.
 *
 * @param protocol how it is carried
 * @param host name or number; an IPv6 number without the brackets it has in the written form; a group's number may be
 *     followed by {@code %} and the network interface to send it from
 * @param port 1..65535
 */
public record NetworkTarget(Protocol protocol, String host, int port) implements SendTarget {
    /** How packets are carried. */
    public enum Protocol {
        /** A datagram a packet, to one machine. */
        UDP("udp"),
        /** A datagram a packet, to every machine of this network; only where asked for by this word. */
        UDP_BROADCAST("udp-broadcast"),
        /** A datagram a packet, to every machine that has joined a group; only where asked for by this word. */
        UDP_MULTICAST("udp-multicast"),
        /** A connection; the length before each packet (Open Sound Control 1.0). */
        TCP("tcp"),
        /** A connection; END before and after each packet (RFC 1055, as Open Sound Control 1.1 uses it). */
        TCP_SLIP("tcp-slip");

        private final String word;

        Protocol(String word) {
            this.word = word;
        }

        /** As it is written. */
        public String word() {
            return word;
        }

        /** Whether each packet is a datagram. */
        public boolean isDatagram() {
            return this == UDP || this == UDP_BROADCAST || this == UDP_MULTICAST;
        }

        static String words() {
            return Arrays.stream(values()).map(Protocol::word).collect(Collectors.joining(", "));
        }
    }

    /** Checks host and port. */
    public NetworkTarget {
        if (host.isBlank() || host.chars().anyMatch(c -> Character.isWhitespace(c) || c == '[' || c == ']')) {
            throw new IllegalArgumentException("target host '" + host
                    + "' (a name or number without blanks): name the machine your sound patch runs on");
        }
        if (port < 1 || port > 65_535) {
            throw new IllegalArgumentException(
                    "target port " + port + " (1..65535): name the port your sound patch listens on");
        }
        if (HostNumber.isNumber(host)) {
            misfit(protocol, host, port, HostNumber.isGroup(host), HostNumber.isEverybody(host))
                    .ifPresent(words -> {
                        throw new IllegalArgumentException(words);
                    });
        }
    }

    /** @param text begins with the protocol's word and a colon */
    static NetworkTarget parse(Protocol protocol, String text) {
        int first = protocol.word().length();
        int last = text.lastIndexOf(':');
        if (last <= first + 1 || last == text.length() - 1) {
            throw new IllegalArgumentException("target '" + text + "' (" + protocol.word()
                    + ":HOST:PORT): write it like " + protocol.word() + ":127.0.0.1:9000");
        }
        return new NetworkTarget(
                protocol, host(text, text.substring(first + 1, last)), port(text, text.substring(last + 1)));
    }

    private static int port(String text, String port) {
        // digits only: a sign would pass for a number
        if (!port.chars().allMatch(c -> c >= '0' && c <= '9') || port.length() > 5) {
            throw new IllegalArgumentException(
                    "target '" + text + "': port '" + port + "' is not a number in 1..65535: write it like 9000");
        }
        return Integer.parseInt(port);
    }

    private static String host(String text, String host) {
        if (host.length() > 1 && host.startsWith("[") && host.endsWith("]")) {
            return host.substring(1, host.length() - 1);
        }
        // else an IPv6 number without port would pass for a shorter number with one
        if (host.indexOf(':') >= 0) {
            throw new IllegalArgumentException("target '" + text + "': host '" + host
                    + "' holds a colon (an IPv6 number stands in brackets): write it like udp:[::1]:9000");
        }
        return host;
    }

    /**
     * What is wrong with the way for such an address: many machines are only reached by the word that says so.
     *
     * @param group whether the host's address is a multicast group
     * @param everybody whether it is a broadcast address
     * @return in words; empty if nothing is
     */
    public Optional<String> misfit(boolean group, boolean everybody) {
        return misfit(protocol, host, port, group, everybody);
    }

    private static Optional<String> misfit(Protocol protocol, String host, int port, boolean group, boolean everybody) {
        String text = text(protocol, host, port);
        if (group && protocol != Protocol.UDP_MULTICAST) {
            return Optional.of(
                    "target " + text + ": " + host + " is a multicast group: to send to all who have joined it,"
                            + " write " + text(Protocol.UDP_MULTICAST, host, port));
        }
        if (everybody && protocol != Protocol.UDP_BROADCAST) {
            return Optional.of(
                    "target " + text + ": " + host + " is a broadcast address: to send to every machine there,"
                            + " write " + text(Protocol.UDP_BROADCAST, host, port));
        }
        if (!group && protocol == Protocol.UDP_MULTICAST) {
            return Optional.of("target " + text + ": " + host + " is no multicast group (224.0.0.0 to 239.255.255.255,"
                    + " ff00:: and up): to send to one machine, write " + text(Protocol.UDP, host, port));
        }
        if (protocol == Protocol.UDP_BROADCAST && HostNumber.isVersion6(host)) {
            return Optional.of(
                    "target " + text + ": there is no broadcast in IPv6 (RFC 4291, section 2): send to a group,"
                            + " such as " + text(Protocol.UDP_MULTICAST, "ff02::1", port));
        }
        return Optional.empty();
    }

    /**
     * Whether the host is known without asking anybody: a number, or this machine by the name that stands for it
     * everywhere (RFC 6761, section 6.3).
     */
    public boolean isKnownAtOnce() {
        return host.equals("localhost") || HostNumber.isNumber(host);
    }

    /** The host to look up: without a zone, but for IPv6 numbers, whose zone is part of them (RFC 4007, section 11). */
    public String lookUpHost() {
        return HostNumber.isVersion6(host) ? host : HostNumber.withoutZone(host);
    }

    /** The network interface named after the host; empty where none is. */
    public Optional<String> zone() {
        int at = host.indexOf('%');
        return at < 0 ? Optional.empty() : Optional.of(host.substring(at + 1));
    }

    @Override
    public String text() {
        return text(protocol, host, port);
    }

    private static String text(Protocol protocol, String host, int port) {
        return protocol.word() + ":" + (HostNumber.isVersion6(host) ? "[" + host + "]" : host) + ":" + port;
    }
}
