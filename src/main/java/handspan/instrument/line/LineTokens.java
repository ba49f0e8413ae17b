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
    private final LineScan scan = new LineScan();
    private byte[] line = new byte[0];
    private int length;
    private byte separator;

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
        scan.begin(bytes, count, separator, commaIsPoint);
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
            if (scan.restIsBlank(at + 1)) {
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
        if (scan.startsNumber(at)) {
            return number(at);
        }
        if (Ascii.isLetter(b)) {
            return word(at);
        }
        if (b == ':' || b == '=') {
            label.colon();
        } else if (b == '*' && count > 0 && scan.isCheckSum(at)) {
            return length;
        } else if (b == '-' || b == '?' || b == '*') {
            label.stroke();
        } else if ((b == ')' || b == ']') && label.isOpen() && !label.hasColon()) {
            label.extend(at, at + 1);
        }
        return at + 1;
    }

    private int number(int from) {
        int clock = separator == ':' ? from : scan.endOfClock(from);
        if (clock > from) {
            return clock;
        }
        int to = scan.endOfNumber(from);
        if (scan.isFollowedByColon(to)) {
            return word(from, to, true);
        }
        if (!add(from, to, false)) {
            return -1;
        }
        if (scan.isBound(from)) {
            fail(openNumber);
        }
        return to;
    }

    private void fail(int number) {
        missing[number] = true;
        value[number] = 0;
    }

    private int word(int from) {
        int to = from;
        while (to < length && Ascii.isLetter(line[to])) {
            to++;
        }
        if (to - from == 1 && line[from] == '_') {
            return to;
        }
        boolean colon = scan.isFollowedByColon(to);
        if (!colon && BoardWords.isHole(line, from, to)) {
            return add(from, to, true) ? to : -1;
        }
        if (!colon && BoardWords.isFailure(line, from, to) && !scan.isFollowedByNumber(to)) {
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
        boolean between = glued && to < length && scan.startsNumber(to);
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
        double number = hole ? 0 : scan.parsed(from, to);
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
