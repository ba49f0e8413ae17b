package handspan.music.send;

import java.text.Normalizer;

/**
 * Addresses as Open Sound Control 1.0 allows them (M. Wright, 2002, section "OSC Address Spaces"): ASCII, parts parted
 * by {@code /}, and in a part no blank and none of {@code # * , / ? [ ] { }}.
 */
public final class OscAddress {
    private static final String FORBIDDEN = " #*,/?[]{}";

    private OscAddress() {}

    /**
     * Any name as one part of an address: accents fall off, forbidden and non-ASCII characters become {@code _}.
     *
     * @return never empty
     */
    public static String part(String name) {
        String plain = Normalizer.normalize(name.strip(), Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
        StringBuilder part = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            part.append(c > ' ' && c < 127 && FORBIDDEN.indexOf(c) < 0 ? c : '_');
        }
        return part.isEmpty() ? "instrument" : part.toString();
    }

    /**
     * Checks a whole address.
     *
     * @throws IllegalArgumentException naming the address and what is wrong with it
     */
    public static void check(String address) {
        if (!address.startsWith("/") || address.endsWith("/") || address.contains("//")) {
            throw new IllegalArgumentException(
                    "address '" + address
                            + "' (it must start with /, end with a name and have a name between each two /): write it like /name/pitch");
        }
        for (int i = 0; i < address.length(); i++) {
            char c = address.charAt(i);
            if (c <= ' ' || c >= 127 || (c != '/' && FORBIDDEN.indexOf(c) >= 0)) {
                throw new IllegalArgumentException("address '" + address + "': character " + (i + 1)
                        + " is not allowed there (ASCII without blank and # * , ? [ ] { }): leave it out");
            }
        }
    }
}
