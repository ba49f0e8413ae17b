package handspan.instrument.line;

/**
 * The numbers of one line, each with the field it stands in, the text before it (label) and the text after it (unit).
 * One object serves line after line and allocates nothing. Owned by one thread.
 *
 * <p>What is told apart: a number, decimal or {@code 0x1F}; a word that stands for a missing number ({@code nan},
 * {@code ovf}), or that says that the number before it failed ({@code TIMEOUT}); a label, which is text before a
 * number, together with digits that {@code :} or {@code =} follows; a unit, which is a known unit after a number, or
 * letters glued to it; the separator. A label with a colon that no number follows has a missing one ({@code Distance:
 * ---}). A number that only bounds the value ({@code D: >200}) is missing. Times of the clock ({@code 12:03:11}), a
 * check sum at the end ({@code *5E}) and a terminal's commands are passed over, as are all other characters.
 */
final class LineTokens {
    private byte[] line = new byte[0];
    private int length;
    private byte separator;
    private boolean decimalComma;

    private int count;
    private int fields;
    private boolean endsEmpty;
    private boolean textForNumber;
    private final double[] value = new double[LineShape.MOST_SLOTS];
    private final boolean[] missing = new boolean[LineShape.MOST_SLOTS];
    private final int[] field = new int[LineShape.MOST_SLOTS];
    private final int[] labelFrom = new int[LineShape.MOST_SLOTS];
    private final int[] labelTo = new int[LineShape.MOST_SLOTS];
    private final int[] unitFrom = new int[LineShape.MOST_SLOTS];
    private final int[] unitTo = new int[LineShape.MOST_SLOTS];

    private final OpenLabel label = new OpenLabel();
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
        textForNumber = false;
        openNumber = -1;
        label.drop();
        int at = 0;
        while (at < length) {
            at = step(at);
            if (at < 0) {
                return false;
            }
        }
        return closeField();
    }

    private int step(int at) {
        byte b = line[at];
        if (b == separator && b != ' ') {
            if (!closeField()) {
                return -1;
            }
            if (restIsBlank(at + 1)) {
                endsEmpty = true;
                return length;
            }
            fields++;
            return at + 1;
        }
        if (Ascii.isControl(b)) {
            return -1;
        }
        if (b == Ascii.ESCAPE) {
            return Ascii.endOfEscape(line, length, at);
        }
        if (startsNumber(at)) {
            return number(at);
        }
        if (Ascii.isLetter(b)) {
            return word(at);
        }
        if (b == ':' || b == '=') {
            label.colon();
        } else if (b == '*' && isCheckSum(at)) {
            return length;
        } else if (b == '-' || b == '?' || b == '*') {
            label.stroke();
        } else if ((b == ')' || b == ']') && label.isOpen() && !label.hasColon()) {
            label.extend(at, at + 1);
        }
        return at + 1;
    }

    private int number(int from) {
        int clock = separator == ':' ? from : endOfClock(from);
        if (clock > from) {
            return clock;
        }
        int to = endOfNumber(from);
        if (isFollowedByColon(to)) {
            return word(from, to, true);
        }
        if (!add(from, to, false)) {
            return -1;
        }
        if (isBound(from)) {
            fail(openNumber);
        }
        return to;
    }

    /** Whether {@code >} or {@code <} stands before a number, in the place of a value. */
    private boolean isBound(int from) {
        if (from == 0 || (line[from - 1] != '>' && line[from - 1] != '<')) {
            return false;
        }
        int at = from - 2;
        while (at >= 0 && Ascii.isBlank(line[at]) && (separator == ' ' || line[at] != separator)) {
            at--;
        }
        // "=>" is an arrow
        return at >= 0
                && (line[at] == ':'
                        || (line[at] == '=' && at < from - 2)
                        || (line[at] == separator && separator != ' '));
    }

    private void fail(int number) {
        missing[number] = true;
        value[number] = 0;
    }

    /** Two digits to base 16 behind a star, at the end of a line of numbers (the form of NMEA 0183). */
    private boolean isCheckSum(int at) {
        return count > 0
                && !Ascii.isBlank(line[at - 1])
                && (line[at - 1] != separator || line[0] == '$')
                && at + 2 < length
                && Ascii.isHexDigit(line[at + 1])
                && Ascii.isHexDigit(line[at + 2])
                && restIsBlank(at + 3);
    }

    private int word(int from) {
        int to = from;
        while (to < length && Ascii.isLetter(line[to])) {
            to++;
        }
        if (to - from == 1 && line[from] == '_') {
            return to;
        }
        boolean colon = isFollowedByColon(to);
        if (!colon && BoardWords.isHole(line, from, to)) {
            return add(from, to, true) ? to : -1;
        }
        if (!colon && BoardWords.isFailure(line, from, to) && !isFollowedByNumber(to)) {
            return failure(from, to);
        }
        boolean unit = openNumber >= 0 && unitFrom[openNumber] < 0 && !label.isOpen() && !colon && isUnit(from, to);
        if (unit) {
            unitFrom[openNumber] = from;
            unitTo[openNumber] = to;
            return to;
        }
        return word(from, to, colon);
    }

    /** A known unit or letters glued to a number; a letter with digits on both sides is a label: {@code A41B319}. */
    private boolean isUnit(int from, int to) {
        boolean glued = from > 0 && Ascii.isDigit(line[from - 1]);
        boolean between = glued && to < length && startsNumber(to);
        return BoardWords.isUnit(line, from, to) ? !between || to - from > 1 : glued && !between;
    }

    /** A word of a label; after a colon it is a text in place of a number, or begins the next label. */
    private int word(int from, int to, boolean colon) {
        if (label.hasColon() && colon) {
            boolean afterStroke = label.hasStroke();
            int nextFrom = afterStroke && label.textFrom() >= 0 ? label.textFrom() : from;
            if (!addMissing()) {
                return -1;
            }
            label.extend(nextFrom, to);
        } else {
            label.extend(from, to);
        }
        return to;
    }

    /** The number before it failed, or there is none where one should be. */
    private int failure(int from, int to) {
        if (openNumber >= 0 && !label.isOpen()) {
            fail(openNumber);
        } else {
            label.extend(from, to);
        }
        return to;
    }

    private boolean add(int from, int to, boolean hole) {
        if (count == LineShape.MOST_SLOTS) {
            return false;
        }
        double number = hole ? 0 : parsed(from, to);
        boolean absent = hole || !Double.isFinite(number);
        value[count] = absent ? 0 : number;
        missing[count] = absent;
        put(label.from(), label.to());
        openNumber = count - 1;
        return true;
    }

    /** A label with a colon whose number is not there. */
    private boolean addMissing() {
        textForNumber = true;
        if (count == LineShape.MOST_SLOTS) {
            return false;
        }
        value[count] = 0;
        missing[count] = true;
        put(label.from(), label.colonAt());
        return true;
    }

    private void put(int labelStart, int labelEnd) {
        field[count] = fields - 1;
        labelFrom[count] = labelStart;
        labelTo[count] = labelEnd;
        unitFrom[count] = -1;
        unitTo[count] = -1;
        count++;
        label.drop();
    }

    private double parsed(int from, int to) {
        return isHex(from) ? Decimal.parseHex(line, from + 2, to) : Decimal.parse(line, from, to);
    }

    /**
     * Text left over after a field's last number is its unit; a label that ended with a colon goes on to the next
     * field; one that text or a stroke follows has a missing number.
     */
    private boolean closeField() {
        boolean room = true;
        if (label.hasColon() && (label.textFrom() >= 0 || label.hasStroke())) {
            room = addMissing();
        } else if (label.isOpen() && !label.hasColon()) {
            if (openNumber >= 0 && unitFrom[openNumber] < 0) {
                unitFrom[openNumber] = label.from();
                unitTo[openNumber] = label.to();
            }
            label.drop();
        }
        openNumber = -1;
        return room;
    }

    private boolean startsNumber(int at) {
        byte b = line[at];
        if (Ascii.isDigit(b)) {
            return true;
        }
        boolean glued = at > 0 && (Ascii.isDigit(line[at - 1]) || Ascii.isLetter(line[at - 1]));
        if (b == '.') {
            return at + 1 < length && Ascii.isDigit(line[at + 1]);
        }
        if (b != '-' && b != '+') {
            return false;
        }
        int next = at + 1 < length && line[at + 1] == '.' ? at + 2 : at + 1;
        return next < length && Ascii.isDigit(line[next]) && !(glued && Ascii.isDigit(line[at - 1]));
    }

    private int endOfNumber(int from) {
        if (isHex(from)) {
            int at = from + 2;
            while (at < length && Ascii.isHexDigit(line[at])) {
                at++;
            }
            return at;
        }
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
            if (exponent < length && Ascii.isDigit(line[exponent])) {
                at = endOfDigits(exponent);
            }
        }
        return at;
    }

    private boolean isHex(int from) {
        return from + 2 < length
                && line[from] == '0'
                && Ascii.lower(line[from + 1]) == 'x'
                && Ascii.isHexDigit(line[from + 2]);
    }

    /** Where a time like {@code 12:03:11} or {@code 12:03:11.250} ends; where it began when it is none. */
    private int endOfClock(int from) {
        int at = from;
        for (int part = 0; part < 3; part++) {
            int end = endOfDigits(at);
            boolean two = end - at == 2 || (part == 0 && end - at == 1);
            boolean colon = end < length && line[end] == ':';
            if (!two || (part < 2 && !colon)) {
                return from;
            }
            at = part < 2 ? end + 1 : end;
        }
        if (at < length && line[at] == ':') {
            return from;
        }
        return at + 1 < length && line[at] == '.' && Ascii.isDigit(line[at + 1]) ? endOfDigits(at + 1) : at;
    }

    private boolean isPoint(int at) {
        return line[at] == '.' || (decimalComma && line[at] == ',' && at + 1 < length && Ascii.isDigit(line[at + 1]));
    }

    private int endOfDigits(int from) {
        int at = from;
        while (at < length && Ascii.isDigit(line[at])) {
            at++;
        }
        return at;
    }

    private int endOfBlanks(int from) {
        int at = from;
        while (at < length && line[at] == ' ') {
            at++;
        }
        return at;
    }

    private boolean isFollowedByColon(int from) {
        int at = endOfBlanks(from);
        if (at < length && line[at] == '"') {
            at = endOfBlanks(at + 1);
        }
        return at < length && line[at] != separator && (line[at] == ':' || line[at] == '=');
    }

    private boolean isFollowedByNumber(int from) {
        int at = endOfBlanks(from);
        return at < length && startsNumber(at);
    }

    private boolean restIsBlank(int from) {
        for (int at = from; at < length; at++) {
            if (!Ascii.isBlank(line[at])) {
                return false;
            }
        }
        return true;
    }

    int count() {
        return count;
    }

    /** Why {@link #split} gave up. */
    Rejection failure() {
        return count == LineShape.MOST_SLOTS ? Rejection.OTHER_COUNT : Rejection.NOT_TEXT;
    }

    /** Fields in the line; an empty last one does not count. */
    int fields() {
        return fields;
    }

    /** Whether text stands where a number should be. */
    boolean hasTextForNumber() {
        return textForNumber;
    }

    /** Whether the line holds a number. */
    boolean hasNumber() {
        for (int i = 0; i < count; i++) {
            if (!missing[i]) {
                return true;
            }
        }
        return false;
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

    /** Whether a known unit follows a number, and is another one than this. */
    boolean hasOtherUnit(int number, String unit) {
        int from = unitFrom[number];
        return from >= 0
                && !Ascii.matches(line, from, unitTo[number], unit)
                && BoardWords.isUnit(line, from, unitTo[number]);
    }

    /** Compares a label with a key made by {@link LineShape#key}, without making a string. */
    boolean labelIs(int number, String key) {
        int matched = 0;
        for (int at = labelFrom[number]; at < labelTo[number]; at++) {
            int c = Ascii.lower(line[at]);
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
        return from < 0 ? "" : LineText.of(line, from, to);
    }
}
