package handspan.music.send;

/** What a host that is written as a number says of itself without asking the network. */
final class HostNumber {
    private static final int FIRST_GROUP = 224;
    private static final int LAST_GROUP = 239;
    private static final String EVERYBODY = "255.255.255.255";

    private HostNumber() {}

    /** Whether it is a number rather than a name; a zone after {@code %} may follow. */
    static boolean isNumber(String host) {
        return isVersion6(host) || withoutZone(host).chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'));
    }

    static boolean isVersion6(String host) {
        return host.indexOf(':') >= 0;
    }

    /** Whether it is a multicast group: 224.0.0.0/4 (RFC 5771, section 3), ff00::/8 (RFC 4291, section 2.7). */
    static boolean isGroup(String host) {
        if (isVersion6(host)) {
            // a group of four digits: "ff:" is 00ff
            return host.regionMatches(true, 0, "ff", 0, 2) && host.indexOf(':') == 4;
        }
        int dot = host.indexOf('.');
        if (!isNumber(host) || dot < 1 || dot > 3) {
            return false;
        }
        int first = Integer.parseInt(host.substring(0, dot));
        return first >= FIRST_GROUP && first <= LAST_GROUP;
    }

    /** Whether it means every machine of this network (limited broadcast, RFC 919, section 7). */
    static boolean isEverybody(String host) {
        return withoutZone(host).equals(EVERYBODY);
    }

    static String withoutZone(String host) {
        int zone = host.indexOf('%');
        return zone < 0 ? host : host.substring(0, zone);
    }
}
