package handspan.outside.osc.packet;

import java.util.ArrayList;
import java.util.List;

/** Takes one part of an address pattern into its pieces, by the five rules of Open Sound Control 1.0. */
final class PatternReader {
    private static final String SPECIAL = "?*[]{}";

    private final String pattern;
    private final String part;
    private final List<OscPattern.Piece> pieces = new ArrayList<>();
    private int at;

    private PatternReader(String pattern, String part) {
        this.pattern = pattern;
        this.part = part;
    }

    /**
     * Reads a part.
     *
     * @param pattern the whole, for words
     * @param part without any {@code /}
     */
    static List<OscPattern.Piece> read(String pattern, String part) {
        PatternReader reader = new PatternReader(pattern, part);
        while (reader.at < part.length()) {
            reader.readPiece();
        }
        return List.copyOf(reader.pieces);
    }

    private void readPiece() {
        switch (part.charAt(at)) {
            case '*' -> {
                at++;
                pieces.add(new OscPattern.Any());
            }
            case '?' -> {
                at++;
                pieces.add(new OscPattern.OneOf("", true));
            }
            case '[' -> pieces.add(set(upTo(']')));
            case '{' -> pieces.add(new OscPattern.Strings(List.of(upTo('}').split(",", -1))));
            case ']', '}' -> throw refusal("'" + part.charAt(at) + "' closes what was not opened");
            default -> pieces.add(new OscPattern.Strings(List.of(plain())));
        }
    }

    private String plain() {
        int start = at;
        while (at < part.length() && SPECIAL.indexOf(part.charAt(at)) < 0) {
            at++;
        }
        return part.substring(start, at);
    }

    private String upTo(char end) {
        int close = part.indexOf(end, at + 1);
        if (close < 0) {
            throw refusal("'" + part.charAt(at) + "' without '" + end + "'");
        }
        String inside = part.substring(at + 1, close);
        at = close + 1;
        return inside;
    }

    /** A minus between two characters is a range; {@code !} in front makes the opposite; elsewhere both are plain. */
    private static OscPattern.OneOf set(String inside) {
        boolean opposite = inside.startsWith("!");
        String list = opposite ? inside.substring(1) : inside;
        StringBuilder ranges = new StringBuilder();
        int i = 0;
        while (i < list.length()) {
            char first = list.charAt(i);
            boolean range = i + 2 < list.length() && list.charAt(i + 1) == '-';
            char last = range ? list.charAt(i + 2) : first;
            ranges.append((char) Math.min(first, last)).append((char) Math.max(first, last));
            i += range ? 3 : 1;
        }
        return new OscPattern.OneOf(ranges.toString(), opposite);
    }

    private IllegalArgumentException refusal(String what) {
        return new IllegalArgumentException("pattern '" + pattern + "': " + what + " (Open Sound Control 1.0 knows ? *"
                + " [abc] [!a-z] {one,other}): leave it out or add its other half");
    }
}
