package handspan.instrument.line;

/** Bytes as characters of Latin-1: what boards print is ASCII, but for a unit now and then. */
final class Ascii {
    static final byte ESCAPE = 0x1b;

    private Ascii() {}

    static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }

    static boolean isHexDigit(byte b) {
        int lower = lower(b);
        return isDigit(b) || (lower >= 'a' && lower <= 'f');
    }

    /** Letters, and what stands like one in labels and units. */
    static boolean isLetter(byte b) {
        return (b >= 'a' && b <= 'z') || (b >= 'A' && b <= 'Z') || b < 0 || b == '%' || b == '_';
    }

    static boolean isBlank(byte b) {
        return b == ' ' || b == '\t';
    }

    /** A control character that no text has; tab, and the escape that begins a terminal's commands, are none. */
    static boolean isControl(byte b) {
        return (b >= 0 && b < ' ' && b != '\t' && b != ESCAPE) || b == 0x7f;
    }

    /** The byte as a Latin-1 character, ASCII letters in lower case. */
    static int lower(byte b) {
        return b >= 'A' && b <= 'Z' ? b + 32 : b & 0xff;
    }

    /** Whether a word in lower case stands between two positions. */
    static boolean matches(byte[] line, int from, int to, String word) {
        if (word.length() != to - from) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            if (lower(line[from + i]) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    static boolean isOneOf(byte[] line, int from, int to, String[] words) {
        for (String word : words) {
            if (matches(line, from, to, word)) {
                return true;
            }
        }
        return false;
    }

    /** Where a terminal's command that begins with an escape ends: {@code ESC [ ... letter}, or two bytes. */
    static int endOfEscape(byte[] line, int length, int from) {
        int at = from + 1;
        if (at < length && line[at] == '[') {
            at++;
            while (at < length && line[at] >= ' ' && line[at] < '@') {
                at++;
            }
        }
        return Math.min(length, at + 1);
    }
}
