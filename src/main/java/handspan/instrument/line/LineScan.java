package handspan.instrument.line;

/** Looks ahead and back in one line: where numbers begin and end, and what stands beside them. Owned by one thread. */
final class LineScan {
    private byte[] line = new byte[0];
    private int length;
    private byte separator;
    private boolean decimalComma;

    /** The next line. */
    void begin(byte[] bytes, int count, byte parting, boolean commaIsPoint) {
        line = bytes;
        length = count;
        separator = parting;
        decimalComma = commaIsPoint;
    }

    /** The number between two positions; not finite where no double holds it. */
    double parsed(int from, int to) {
        return isHex(from) ? Decimal.parseHex(line, from + 2, to) : Decimal.parse(line, from, to);
    }

    /** Whether {@code >} or {@code <} stands before a number, in the place of a value. */
    boolean isBound(int from) {
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

    /** Two digits to base 16 behind a star, at the end of a line of numbers (the form of NMEA 0183). */
    boolean isCheckSum(int at) {
        return at > 0
                && !Ascii.isBlank(line[at - 1])
                && (line[at - 1] != separator || line[0] == '$')
                && at + 2 < length
                && Ascii.isHexDigit(line[at + 1])
                && Ascii.isHexDigit(line[at + 2])
                && restIsBlank(at + 3);
    }

    boolean startsNumber(int at) {
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

    int endOfNumber(int from) {
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
    int endOfClock(int from) {
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

    boolean isFollowedByColon(int from) {
        int at = endOfBlanks(from);
        if (at < length && line[at] == '"') {
            at = endOfBlanks(at + 1);
        }
        return at < length && line[at] != separator && (line[at] == ':' || line[at] == '=');
    }

    boolean isFollowedByNumber(int from) {
        int at = endOfBlanks(from);
        return at < length && startsNumber(at);
    }

    boolean restIsBlank(int from) {
        for (int at = from; at < length; at++) {
            if (!Ascii.isBlank(line[at])) {
                return false;
            }
        }
        return true;
    }
}
