package handspan.outside.take;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a take says about itself before its first line: {@code # key: value} lines after {@code # handspan-take/1}.
 * Unknown values are empty, or 0, and are not written.
 *
 * @param started ISO date and time at which the take began, as the caller words it (key {@code started})
 * @param instrument the instrument's name (key {@code instrument})
 * @param source where the lines came from, such as a serial port (key {@code source})
 * @param baud the serial line's rate in bits per second, 0 when unknown (key {@code baud})
 * @param notes free text, one line each, none blank (a line each); when read, also every header line of another key
 */
public record TakeHeader(String started, String instrument, String source, int baud, List<String> notes) {
    /** The first line of a take. */
    static final String FIRST_LINE = "# handspan-take/1";

    /** What the first line of any version of a take begins with. */
    static final String ANY_VERSION = "# handspan-take/";

    public TakeHeader {
        started = oneLine("started", started);
        instrument = oneLine("instrument", instrument);
        source = oneLine("source", source);
        if (baud < 0) {
            throw new IllegalArgumentException("baud " + baud + " bits per second (allowed 0 and more): 0 is unknown");
        }
        notes = notes.stream().map(note -> oneLine("note", note)).toList();
        if (notes.contains("")) {
            throw new IllegalArgumentException("a note is blank (allowed: text): leave it out");
        }
    }

    /** A header that knows nothing. */
    public static TakeHeader unknown() {
        return new TakeHeader("", "", "", 0, List.of());
    }

    /** The header as the lines of a take, the version first. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(FIRST_LINE);
        addKnown(lines, "started", started);
        addKnown(lines, "instrument", instrument);
        addKnown(lines, "source", source);
        addKnown(lines, "baud", baud == 0 ? "" : Integer.toString(baud));
        notes.forEach(note -> addKnown(lines, "note", note));
        return lines;
    }

    /**
     * Reads header lines, each beginning with {@code #}. Nothing is refused: what has no known key, or a baud that is
     * no number, becomes a note.
     */
    static TakeHeader of(List<String> lines) {
        String started = "";
        String instrument = "";
        String source = "";
        int baud = 0;
        List<String> notes = new ArrayList<>();
        for (String line : lines) {
            String text = line.substring(1).strip();
            int colon = text.indexOf(':');
            String key = colon < 0 ? "" : text.substring(0, colon).strip().toLowerCase(Locale.ROOT);
            String value = text.substring(colon + 1).strip();
            switch (key) {
                case "started" -> started = value;
                case "instrument" -> instrument = value;
                case "source" -> source = value;
                case "baud" -> {
                    baud = wholeNumber(value);
                    if (baud == 0) {
                        notes.add(text);
                    }
                }
                case "note" -> notes.add(value);
                default -> notes.add(text);
            }
        }
        notes.removeIf(String::isEmpty);
        return new TakeHeader(started, instrument, source, baud, notes);
    }

    private static int wholeNumber(String text) {
        // at most nine digits, so that it fits an int
        return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : 0;
    }

    private static void addKnown(List<String> lines, String key, String value) {
        if (!value.isEmpty()) {
            lines.add("# " + key + ": " + value);
        }
    }

    private static String oneLine(String key, String value) {
        if (value.indexOf('\n') >= 0 || value.indexOf('\r') >= 0) {
            throw new IllegalArgumentException(
                    key + " '" + value + "' holds a line end (allowed: one line): give each line as a note of its own");
        }
        return value.strip();
    }
}
