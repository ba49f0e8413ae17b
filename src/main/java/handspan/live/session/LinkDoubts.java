package handspan.live.session;

import handspan.instrument.line.LineSplitter;
import handspan.instrument.line.TextMeter;
import handspan.number.units.Nanos;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether what comes over a link is what the board printed. Two things spoil it that no single line shows: a wrong
 * speed, by which bytes are no text, and another program that reads the same port, by which each gets pieces of the
 * lines. Pieces are told from a board that prints other lines between by their form: digits taken for one another, a
 * piece is the start, the end or both of the commonest line, and pieces are cut in many places. Lines of a single
 * number can't be told from their pieces. Pure; owned by the path thread.
 */
final class LinkDoubts {
    private static final long WINDOW_NANOS = Nanos.PER_SECOND;
    private static final double PIECES01 = 0.2;
    private static final int FEWEST_LINES = 20;
    private static final int MOST_LINES = 200;
    private static final int FEWEST_CUTS = 3;
    private static final long REPEAT_NANOS = 60 * Nanos.PER_SECOND;

    private final Map<String, Integer> forms = new HashMap<>();
    private final byte[] whole = new byte[LineSplitter.LONGEST];
    private int wholeLength;
    private long usual;
    private int usualLead;
    private int lines;
    private long linesNanos;
    private @Nullable String news;
    private String told = "";
    private long toldNanos;

    /** The link is there, or there again. */
    void onConnected(long timeNanos) {
        lines = 0;
        forms.clear();
        linesNanos = timeNanos;
    }

    /**
     * Bytes came.
     *
     * @param garbled01 share of those of the last second that are no text
     */
    void onBytes(double garbled01, long timeNanos) {
        if (garbled01 > TextMeter.GARBLED01) {
            doubt(
                    "wrong baud rate? " + Math.round(100 * garbled01) + " % of what came is no text; try --baud auto",
                    timeNanos);
        }
    }

    /** A line came that fits the learned shape. */
    void onFit(byte[] line, int length, long timeNanos) {
        long likeness = likeness(line, length);
        if (usualLead == 0) {
            // the form of most lines, by one lead that each of it adds to and each other takes from
            usual = likeness;
            System.arraycopy(line, 0, whole, 0, length);
            wholeLength = length;
        }
        boolean isUsual = likeness == usual;
        usualLead = Math.min(MOST_LINES, usualLead + (isUsual ? 1 : -1));
        if (!isUsual) {
            forms.merge(form(line, length), 1, Integer::sum);
        }
        count(timeNanos);
    }

    /** The same for lines of one form; allocates nothing. */
    private static long likeness(byte[] line, int length) {
        long hash = 0xcbf29ce484222325L;
        boolean inDigits = false;
        for (int i = 0; i < length; i++) {
            boolean digit = line[i] >= '0' && line[i] <= '9';
            if (!(digit && inDigits)) {
                hash = (hash ^ (digit ? '9' : line[i])) * 0x100000001b3L;
            }
            inDigits = digit;
        }
        return hash;
    }

    /** A line came that does not fit it. */
    void onMisfit(byte[] line, int length, long timeNanos) {
        forms.merge(form(line, length), 1, Integer::sum);
        count(timeNanos);
    }

    private void count(long timeNanos) {
        lines++;
        boolean over = timeNanos - linesNanos >= 3 * WINDOW_NANOS && lines >= FEWEST_LINES;
        if (over || lines >= MOST_LINES) {
            judge(timeNanos);
            forms.clear();
            lines = 0;
            linesNanos = timeNanos;
        }
    }

    private void judge(long timeNanos) {
        if (forms.isEmpty() || wholeLength == 0) {
            return;
        }
        String uncut = form(whole, wholeLength);
        Set<String> cuts = new HashSet<>();
        int pieces = 0;
        for (Map.Entry<String, Integer> entry : forms.entrySet()) {
            if (isPiece(entry.getKey(), uncut)) {
                pieces += entry.getValue();
                cuts.add(entry.getKey());
            }
        }
        if (cuts.size() >= FEWEST_CUTS && pieces > PIECES01 * lines) {
            doubt(
                    "lines come in pieces (" + Math.round(100.0 * pieces / lines)
                            + " % of them): does another program read this port, too?",
                    timeNanos);
        }
    }

    /**
     * Whether a form is what is left of whole lines that were cut: an end, a start, or a start with an end after it.
     */
    static boolean isPiece(String form, String whole) {
        if (form.isEmpty() || form.equals(whole)) {
            return false;
        }
        for (int start = 0; start <= form.length(); start++) {
            boolean starts = whole.startsWith(form.substring(0, start)) || isCutNumber(form.substring(0, start), whole);
            if (starts && whole.endsWith(form.substring(start))) {
                return true;
            }
        }
        return false;
    }

    /** A start that ends within a number: the number that follows it after the cut grows onto it. */
    private static boolean isCutNumber(String start, String whole) {
        return start.endsWith("9") && whole.startsWith(start.substring(0, start.length() - 1));
    }

    private static String form(byte[] line, int length) {
        return new String(line, 0, length, StandardCharsets.ISO_8859_1).strip().replaceAll("\\d+", "9");
    }

    private void doubt(String words, long timeNanos) {
        String kind = words.substring(0, 10);
        if (!kind.equals(told) || timeNanos - toldNanos >= REPEAT_NANOS) {
            told = kind;
            toldNanos = timeNanos;
            news = words;
        }
    }

    /** A doubt that is new, or has stood for a minute; null for none. Asked for once. */
    @Nullable
    String takeNews() {
        String was = news;
        news = null;
        return was;
    }
}
