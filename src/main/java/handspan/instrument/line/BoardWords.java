package handspan.instrument.line;

/** Words that boards print beside numbers or in their place (common practice, gathered from board programs' lines). */
final class BoardWords {
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
        "\u00ce\u00bcs",
        "ms",
        "s",
        "v",
        "mv",
        "c",
        "f",
        "\u00b0c",
        "\u00b0f",
        "\u00c2\u00b0c",
        "\u00c2\u00b0f",
        "deg",
        "lux",
        "lx",
        "ohm",
        "ohms",
        "kohm",
        "%",
        "hz"
    };

    private static final String[] HOLES = {"nan", "inf", "infinity", "ovf", "null", "none"};

    private static final String[] FAILURES = {
        "timeout",
        "err",
        "error",
        "fail",
        "failed",
        "out",
        "invalid",
        "overflow",
        "overrange",
        "sat",
        "saturated",
        "stale",
        "bad",
        "nosignal",
        "noecho"
    };

    /** Letters of whole lines that stand for a missing number. */
    private static final String[] NOTHINGS = {
        "out",
        "timeout",
        "timedout",
        "sensortimeout",
        "noecho",
        "noreading",
        "notarget",
        "noobject",
        "nohand",
        "nosignal",
        "nodata",
        "nothing",
        "none",
        "null",
        "na",
        "nan",
        "inf",
        "ovf",
        "error",
        "err",
        "readerror",
        "overflow",
        "overrange",
        "invalid",
        "lost",
        "toofar",
        "tooclose",
        "toonear"
    };

    private static final String BEYOND = "outofrange";
    private static final int LONGEST_KEY = 40;

    private BoardWords() {}

    static boolean isUnit(byte[] line, int from, int to) {
        return Ascii.isOneOf(line, from, to, UNITS);
    }

    /** A word that stands for a number which is none. */
    static boolean isHole(byte[] line, int from, int to) {
        return Ascii.isOneOf(line, from, to, HOLES);
    }

    /** A word that says of the number before it, or in its place, that it failed. */
    static boolean isFailure(byte[] line, int from, int to) {
        return Ascii.isOneOf(line, from, to, FAILURES);
    }

    /** Whether a line without a number says, in usual words, that there is nothing to tell. */
    static boolean saysNothing(byte[] line, int length) {
        byte[] key = new byte[LONGEST_KEY];
        int letters = letters(line, length, key);
        return letters > 0
                && letters <= LONGEST_KEY
                && (Ascii.isOneOf(key, 0, letters, NOTHINGS) || contains(key, letters, BEYOND));
    }

    /** How many letters a line has; the first of them go into the key. */
    private static int letters(byte[] line, int length, byte[] key) {
        int count = 0;
        for (int i = 0; i < length; i++) {
            if (line[i] == Ascii.ESCAPE) {
                i = Ascii.endOfEscape(line, length, i) - 1;
            } else if (Ascii.isLetter(line[i])) {
                if (count < key.length) {
                    key[count] = (byte) Ascii.lower(line[i]);
                }
                count++;
            }
        }
        return count;
    }

    private static boolean contains(byte[] key, int length, String word) {
        for (int from = 0; from + word.length() <= length; from++) {
            if (Ascii.matches(key, from, from + word.length(), word)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a line without a number has no letters but strokes. */
    static boolean isStrokes(byte[] line, int length) {
        boolean stroke = false;
        for (int i = 0; i < length; i++) {
            if (line[i] == Ascii.ESCAPE) {
                i = Ascii.endOfEscape(line, length, i) - 1;
            } else if (Ascii.isLetter(line[i])) {
                return false;
            } else {
                stroke |= line[i] == '-' || line[i] == '?' || line[i] == '*';
            }
        }
        return stroke;
    }

    /** The same for lines that differ only in what is no letter. */
    static long likeness(byte[] line, int length) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < length; i++) {
            if (Ascii.isLetter(line[i])) {
                hash = (hash ^ Ascii.lower(line[i])) * 0x100000001b3L;
            }
        }
        return hash;
    }
}
