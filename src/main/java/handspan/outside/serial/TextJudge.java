package handspan.outside.serial;

import handspan.instrument.line.Learning;
import handspan.instrument.line.ShapeLearner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Whether bytes that came at some speed are the lines of a board: printable, ended by line ends, and alike enough for a
 * shape to be learned. A wrong speed fails at least one: bits are taken at the wrong moments, so that what comes is no
 * text, or text without line ends, or lines of no shape.
 *
 * @param text01 share of the bytes that are text
 * @param lines whole lines among them
 * @param alike01 share of the whole lines that a shape holds in which they look alike
 * @param bytes how many bytes
 */
record TextJudge(double text01, int lines, double alike01, int bytes) {
    private static final double LEAST_TEXT01 = 0.97;
    private static final double LEAST_ALIKE01 = 0.7;
    private static final int LEAST_LINES = 4;

    /** Judges bytes as they came. */
    static TextJudge of(byte[] bytes, int count) {
        int text = 0;
        for (int i = 0; i < count; i++) {
            int length = textLength(bytes, i, count);
            text += length;
            i += Math.max(0, length - 1);
        }
        List<byte[]> lines = wholeLines(bytes, count);
        return new TextJudge(count == 0 ? 0 : text / (double) count, lines.size(), alike01(lines), count);
    }

    /** Bytes of the character at a place, if it is one of a text: 0 to 2. Signs of degrees and micro are. */
    private static int textLength(byte[] bytes, int at, int count) {
        if (isText(bytes[at])) {
            return 1;
        }
        int sign = at + 1 < count && bytes[at] == (byte) 0xc2 ? at + 1 : at;
        return bytes[sign] == (byte) 0xb0 || bytes[sign] == (byte) 0xb5 ? sign - at + 1 : 0;
    }

    /** Whether a byte belongs into lines of text: printable, or a blank of some sort. */
    static boolean isText(byte b) {
        return (b >= ' ' && b < 0x7f) || b == '\n' || b == '\r' || b == '\t';
    }

    /** Lines between two line ends: the first and the last piece may be cut. */
    private static List<byte[]> wholeLines(byte[] bytes, int count) {
        List<byte[]> lines = new ArrayList<>();
        int start = -1;
        for (int i = 0; i < count; i++) {
            if (bytes[i] == '\n' || bytes[i] == '\r') {
                if (start >= 0 && i > start) {
                    lines.add(java.util.Arrays.copyOfRange(bytes, start, i));
                }
                start = i + 1;
            }
        }
        return lines;
    }

    /** The commonest form among lines, digits taken for one another; 0 where no shape can be learned. */
    private static double alike01(List<byte[]> lines) {
        if (lines.size() < LEAST_LINES || !isLearnable(lines)) {
            return 0;
        }
        java.util.Map<String, Integer> forms = new java.util.HashMap<>();
        int most = 0;
        for (byte[] line : lines) {
            most = Math.max(most, forms.merge(form(line), 1, Integer::sum));
        }
        // boards that print each number on a line of its own have some forms in turn
        double turns =
                forms.values().stream().filter(n -> n >= 2).mapToInt(n -> n).sum();
        return Math.max(most, turns) / lines.size();
    }

    private static String form(byte[] line) {
        return new String(line, java.nio.charset.StandardCharsets.ISO_8859_1)
                .replaceAll("[-+]?\\d+([.]\\d+)?", "9")
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** The one place that asks the learner. */
    private static boolean isLearnable(List<byte[]> lines) {
        ShapeLearner learner = new ShapeLearner();
        for (byte[] line : lines) {
            if (learner.offer(line, line.length)) {
                break;
            }
        }
        return !(learner.learn() instanceof Learning.Nothing);
    }

    /** Whether these are a board's lines. */
    boolean isGood() {
        return text01 >= LEAST_TEXT01 && lines >= LEAST_LINES && alike01 >= LEAST_ALIKE01;
    }

    /** Whether to go on listening may help: text so far, but too few lines. */
    boolean isUndecided() {
        return bytes == 0 || (text01 >= LEAST_TEXT01 && lines < LEAST_LINES);
    }

    /** What was seen, in words. */
    String words() {
        if (bytes == 0) {
            return "nothing came";
        }
        String noText = String.format(Locale.ROOT, "%.0f %% of %d bytes are no text", 100 * (1 - text01), bytes);
        if (text01 < LEAST_TEXT01) {
            return noText;
        }
        return lines < LEAST_LINES
                ? "text, but only " + lines + " whole lines"
                : isGood() ? lines + " lines that are alike" : "text, but its lines are not alike";
    }
}
