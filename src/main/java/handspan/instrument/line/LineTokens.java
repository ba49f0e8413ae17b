package handspan.instrument.line;

/**
 * The numbers of one line, each with the field it stands in, the text before it (label) and the text after it (unit).
 * One object serves line after line and allocates nothing. Owned by one thread.
 *
 * <p>What is told apart: a number; a word that stands for a missing number ({@code nan}, {@code inf}, {@code ovf}); a
 * label, which is text before a number, together with digits that {@code :} or {@code =} follows; a unit, which is a
 * known unit after a number, or letters glued to it; the separator. All other characters are passed over.
 */
final class LineTokens {
    private static final String[] UNITS = {
        "mm",
        "cm",
        "m",
        "in",
        "inch",
        "inches",
        "us",
        "\u00b5s",
        "\u00c2\u00b5s",
        "ms",
        "s",
        "v",
        "mv",
        "c",
        "f",
        "lux",
        "lx",
        "%",
        "hz"
    };
    private static final String[] HOLES = {"nan", "inf", "infinity", "ovf", "null", "none"};

    private byte[] line = new byte[0];
    private int length;
    private byte separator;
    private boolean decimalComma;

    private int count;
    private int fields;
    private boolean endsEmpty;
    private final double[] value = new double[LineShape.MOST_SLOTS];
    private final boolean[] missing = new boolean[LineShape.MOST_SLOTS];
    private final int[] field = new int[LineShape.MOST_SLOTS];
    private final int[] labelFrom = new int[LineShape.MOST_SLOTS];
    private final int[] labelTo = new int[LineShape.MOST_SLOTS];
    private final int[] unitFrom = new int[LineShape.MOST_SLOTS];
    private final int[] unitTo = new int[LineShape.MOST_SLOTS];

    private int pendingFrom;
    private int pendingTo;
    private boolean pendingEnded;
    private int openNumber;

    /**
     * Takes a line apart.
     *
     * @return false when it holds control characters or more than {@link LineShape#MOST_SLOTS} numbers
     */
    boolean split(byte[] bytes, int count, char separatorChar, boolean commaIsPoint) {
        line = bytes;
        length = count;
        separator = (byte) separatorChar;
        decimalComma = commaIsPoint;
        this.count = 0;
        fields = 1;
        endsEmpty = false;
        openNumber = -1;
        dropPending();
        int at = 0;
        while (at < length) {
            at = step(at);
            if (at < 0) {
                return false;
            }
        }
        closeField();
        return true;
    }

    private int step(int at) {
        byte b = line[at];
        if (b == separator && b != ' ') {
            closeField();
            if (restIsBlank(at + 1)) {
                endsEmpty = true;
                return length;
            }
            fields++;
            return at + 1;
        }
        if (b >= 0 && b < ' ' && b != '\t') {
            return -1;
        }
        if (startsNumber(at)) {
            return number(at);
        }
        if (isLetter(b)) {
            return word(at);
        }
        if ((b == ':' || b == '=') && pendingFrom >= 0) {
            pendingEnded = true;
        }
        return at + 1;
    }

    private int number(int from) {
        int to = endOfNumber(from);
        if (isFollowedByColon(to)) {
            extendPending(from, to);
            return to;
        }
        return add(from, to, false) ? to : -1;
    }

    private int word(int from) {
        int to = from;
        while (to < length && isLetter(line[to])) {
            to++;
        }
        if (isHole(from, to)) {
            return add(from, to, true) ? to : -1;
        }
        boolean unit = openNumber >= 0
                && unitFrom[openNumber] < 0
                && pendingFrom < 0
                && !isFollowedByColon(to)
                && (isUnit(from, to) || (from > 0 && isDigit(line[from - 1])));
        if (unit) {
            unitFrom[openNumber] = from;
            unitTo[openNumber] = to;
        } else {
            extendPending(from, to);
        }
        return to;
    }

    private boolean add(int from, int to, boolean hole) {
        if (count == LineShape.MOST_SLOTS) {
            return false;
        }
        double number = hole ? 0 : Decimal.parse(line, from, to);
        boolean absent = hole || !Double.isFinite(number);
        value[count] = absent ? 0 : number;
        missing[count] = absent;
        field[count] = fields - 1;
        labelFrom[count] = pendingFrom;
        labelTo[count] = pendingTo;
        unitFrom[count] = -1;
        unitTo[count] = -1;
        openNumber = count;
        count++;
        dropPending();
        return true;
    }

    /**
     * Text left over after a field's last number is its unit; a label that ended with a colon goes on to the next
     * field.
     */
    private void closeField() {
        if (pendingFrom >= 0 && !pendingEnded) {
            if (openNumber >= 0 && unitFrom[openNumber] < 0) {
                unitFrom[openNumber] = pendingFrom;
                unitTo[openNumber] = pendingTo;
            }
            dropPending();
        }
        openNumber = -1;
    }

    private void extendPending(int from, int to) {
        if (pendingFrom < 0) {
            pendingFrom = from;
        }
        pendingTo = to;
        pendingEnded = false;
    }

    private void dropPending() {
        pendingFrom = -1;
        pendingTo = -1;
        pendingEnded = false;
    }

    private boolean startsNumber(int at) {
        byte b = line[at];
        if (isDigit(b)) {
            return true;
        }
        boolean glued = at > 0 && (isDigit(line[at - 1]) || isLetter(line[at - 1]));
        if (b == '.') {
            return at + 1 < length && isDigit(line[at + 1]);
        }
        if (b != '-' && b != '+') {
            return false;
        }
        int next = at + 1 < length && line[at + 1] == '.' ? at + 2 : at + 1;
        return next < length && isDigit(line[next]) && !(glued && isDigit(line[at - 1]));
    }

    private int endOfNumber(int from) {
        int at = from;
        if (line[at] == '-' || line[at] == '+') {
            at++;
        }
        at = endOfDigits(at);
        if (at < length && isPoint(at)) {
            at = endOfDigits(at + 1);
        }
        if (at < length && (line[at] == 'e' || line[at] == 'E')) {
            int exponent = at + 1 < length && (line[at + 1] == '-' || line[at + 1] == '+') ? at + 2 : at + 1;
            if (exponent < length && isDigit(line[exponent])) {
                at = endOfDigits(exponent);
            }
        }
        return at;
    }

    private boolean isPoint(int at) {
        return line[at] == '.' || (decimalComma && line[at] == ',' && at + 1 < length && isDigit(line[at + 1]));
    }

    private int endOfDigits(int from) {
        int at = from;
        while (at < length && isDigit(line[at])) {
            at++;
        }
        return at;
    }

    private boolean isFollowedByColon(int from) {
        int at = from;
        while (at < length && line[at] == ' ') {
            at++;
        }
        return at < length && (line[at] == ':' || line[at] == '=');
    }

    private boolean restIsBlank(int from) {
        for (int at = from; at < length; at++) {
            if (line[at] != ' ' && line[at] != '\t') {
                return false;
            }
        }
        return true;
    }

    private boolean isUnit(int from, int to) {
        return isOneOf(UNITS, from, to);
    }

    private boolean isHole(int from, int to) {
        return isOneOf(HOLES, from, to) && !isFollowedByColon(to);
    }

    private boolean isOneOf(String[] words, int from, int to) {
        for (String word : words) {
            if (word.length() == to - from && matches(word, from)) {
                return true;
            }
        }
        return false;
    }

    private boolean matches(String word, int from) {
        for (int i = 0; i < word.length(); i++) {
            if (lower(line[from + i]) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }

    private static boolean isLetter(byte b) {
        return (b >= 'a' && b <= 'z') || (b >= 'A' && b <= 'Z') || b < 0 || b == '%' || b == '_';
    }

    /** The byte as a Latin-1 character, ASCII letters in lower case. */
    private static int lower(byte b) {
        return b >= 'A' && b <= 'Z' ? b + 32 : b & 0xff;
    }

    int count() {
        return count;
    }

    /** Fields in the line; an empty last one does not count. */
    int fields() {
        return fields;
    }

    /** Whether the line ends with a separator: with an empty last field. */
    boolean endsEmpty() {
        return endsEmpty;
    }

    double value(int number) {
        return value[number];
    }

    boolean isMissing(int number) {
        return missing[number];
    }

    int field(int number) {
        return field[number];
    }

    String label(int number) {
        return text(labelFrom[number], labelTo[number]);
    }

    String unit(int number) {
        return text(unitFrom[number], unitTo[number]);
    }

    /** Compares a label with a key made by {@link LineShape#key}, without making a string. */
    boolean labelIs(int number, String key) {
        int matched = 0;
        for (int at = labelFrom[number]; at < labelTo[number]; at++) {
            int c = lower(line[at]);
            if (c > ' ') {
                if (matched == key.length() || key.charAt(matched) != c) {
                    return false;
                }
                matched++;
            }
        }
        return matched == key.length();
    }

    private String text(int from, int to) {
        return from < 0 ? "" : new String(line, from, to - from, java.nio.charset.StandardCharsets.ISO_8859_1);
    }
}
