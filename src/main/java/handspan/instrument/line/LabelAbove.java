package handspan.instrument.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A label on a line of its own, {@code Distance:}, whose number stands alone on the next. Owned by one thread. */
final class LabelAbove {
    private static final int OFTEN = 3;

    private final byte[] joined = new byte[2 * LineSplitter.LONGEST + 1];
    private int labelLength;

    /** Whether a line is such a label. */
    static boolean isLabel(byte[] line, int length) {
        char last = LineFrame.last(line, length);
        if (last != ':' && last != '=') {
            return false;
        }
        boolean letter = false;
        for (int i = 0; i < length; i++) {
            letter |= Ascii.isLetter(line[i]);
        }
        return letter;
    }

    /** Whether a line begins with a number, so that it may go with a label above it. */
    static boolean isNumber(byte[] line, int length) {
        char first = LineFrame.first(line, length);
        return (first >= '0' && first <= '9') || first == '-' || first == '+' || first == '.';
    }

    /** Lines with labels put before their numbers where that is how most of them come; else the same lines. */
    static List<byte[]> joined(List<byte[]> lines) {
        int pairs = 0;
        for (int i = 1; i < lines.size(); i++) {
            boolean pair =
                    isLabel(lines.get(i - 1), lines.get(i - 1).length) && isNumber(lines.get(i), lines.get(i).length);
            pairs += pair ? 1 : 0;
        }
        if (pairs < OFTEN || 3 * pairs < lines.size()) {
            return lines;
        }
        List<byte[]> joined = new ArrayList<>();
        LabelAbove above = new LabelAbove();
        for (byte[] line : lines) {
            if (isLabel(line, line.length)) {
                above.keep(line, line.length);
            } else {
                int length = above.join(line, line.length);
                joined.add(Arrays.copyOf(above.bytes(), length));
            }
        }
        return joined;
    }

    /** Keeps a label for the next line. */
    void keep(byte[] line, int length) {
        System.arraycopy(line, 0, joined, 0, length);
        joined[length] = ' ';
        labelLength = length + 1;
    }

    /**
     * Puts the label before a line, once.
     *
     * @return the length of both, in {@link #bytes}
     */
    int join(byte[] line, int length) {
        int from = isNumber(line, length) ? labelLength : 0;
        System.arraycopy(line, 0, joined, from, length);
        labelLength = 0;
        return from + length;
    }

    /** A label and its line. */
    byte[] bytes() {
        return joined;
    }
}
