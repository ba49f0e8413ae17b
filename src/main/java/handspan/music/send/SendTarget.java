package handspan.music.send;

/**
 * Where frames go, as written on the command line and in profiles: {@code udp:HOST:PORT}.
 *
 * @param protocol {@code udp}
 * @param host name or number; an IPv6 number without the brackets it has in the written form
 * @param port 1..65535
 */
public record SendTarget(Protocol protocol, String host, int port) {
    /** Ways out. */
    public enum Protocol {
        /** A datagram a frame. */
        UDP
    }

    /** Checks host and port. */
    public SendTarget {
        if (host.isBlank() || host.chars().anyMatch(c -> Character.isWhitespace(c) || c == '[' || c == ']')) {
            throw new IllegalArgumentException("target host '" + host
                    + "' (a name or number without blanks): name the machine your sound patch runs on");
        }
        if (port < 1 || port > 65_535) {
            throw new IllegalArgumentException(
                    "target port " + port + " (1..65535): name the port your sound patch listens on");
        }
    }

    /**
     * Reads the written form.
     *
     * @throws IllegalArgumentException saying what is wrong
     */
    public static SendTarget parse(String text) {
        int first = text.indexOf(':');
        int last = text.lastIndexOf(':');
        if (first < 0 || last <= first + 1 || last == text.length() - 1) {
            throw new IllegalArgumentException(
                    "target '" + text + "' (udp:HOST:PORT): write it like udp:127.0.0.1:9000");
        }
        if (!text.substring(0, first).equals("udp")) {
            throw new IllegalArgumentException("target '" + text + "': '" + text.substring(0, first)
                    + "' is not a way out (udp): write it like udp:127.0.0.1:9000");
        }
        return new SendTarget(
                Protocol.UDP, host(text, text.substring(first + 1, last)), port(text, text.substring(last + 1)));
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
     * Whether the host is known without asking anybody: a number, or this machine by the name that stands for it
     * everywhere (RFC 6761, section 6.3).
     */
    public boolean isKnownAtOnce() {
        return host.equals("localhost")
                || host.indexOf(':') >= 0
                || host.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'));
    }

    /** The written form. */
    public String text() {
        return "udp:" + (host.indexOf(':') >= 0 ? "[" + host + "]" : host) + ":" + port;
    }
}
