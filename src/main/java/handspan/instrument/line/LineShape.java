package handspan.instrument.line;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How a board writes its numbers into a line.
 *
 * @param separator {@code , ; | :} or tab between fields, or a blank when only blanks part the numbers
 * @param decimalComma whether a comma between digits is a decimal point
 * @param matching how a number finds its slot
 * @param fieldCount fields in a line with {@link Matching#BY_FIELD}; numbers in a line with {@link Matching#BY_ORDER};
 *     the most numbers seen in a line with {@link Matching#BY_LABEL}
 * @param slots the numbers of a reading, 1..{@value #MOST_SLOTS}
 * @param layout what stands around them
 */
public record LineShape(
        char separator, boolean decimalComma, Matching matching, int fieldCount, List<Slot> slots, Layout layout) {
    /** Most numbers in a line. */
    public static final int MOST_SLOTS = 64;

    /** How a number finds its slot. */
    public enum Matching {
        /** By the text before it; the order may change and numbers may be missing. */
        BY_LABEL,
        /** By the field it stands in, counted by separators. */
        BY_FIELD,
        /** By its order among the numbers of the line. */
        BY_ORDER
    }

    /** What a number does from line to line. */
    public enum Nature {
        /** It may be a hand, as far as is known. */
        LIVE("live"),
        /** It never changes. */
        CONSTANT("never changes"),
        /** It rises by one each line. */
        COUNTER("counts lines"),
        /** It rises with each line, as a board's own time does. */
        TIME("board's time");

        private final String words;

        Nature(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * One number of the line.
     *
     * @param label text before it, as the board writes it; empty when there is none
     * @param unit text after it; empty when there is none
     * @param position field or order, from 0
     * @param nature what it was seen to do; reading goes on all the same if it does something else later
     */
    public record Slot(String label, String unit, int position, Nature nature) {
        /** A number that may be a hand. */
        public Slot(String label, String unit, int position) {
            this(label, unit, position, Nature.LIVE);
        }

        /** Checks the position. */
        public Slot {
            if (position < 0 || position > LineSplitter.LONGEST) {
                throw new IllegalArgumentException("position " + position + " (0.." + LineSplitter.LONGEST + ")");
            }
        }
    }

    /**
     * What stands around the numbers.
     *
     * @param opening character that each line begins with; 0 for none
     * @param closing character that each line ends with; 0 for none
     * @param labelAbove whether a label stands on a line of its own and its number on the next
     * @param linesPerReading lines that make one reading together, 1..{@value #MOST_LINES}
     */
    public record Layout(char opening, char closing, boolean labelAbove, int linesPerReading) {
        /** Most lines that make one reading. */
        public static final int MOST_LINES = 16;

        /** One line, nothing around. */
        public static final Layout PLAIN = new Layout('\0', '\0', false, 1);

        /** Characters that lines may begin or end with. */
        static final String FRAMES = "<>[](){}$#!*;@&~^/\\";

        /** Checks frame and count. */
        public Layout {
            if ((opening != 0 && FRAMES.indexOf(opening) < 0) || (closing != 0 && FRAMES.indexOf(closing) < 0)) {
                throw new IllegalArgumentException(
                        "frame '" + opening + "', '" + closing + "' (one of " + FRAMES + " each, or none)");
            }
            if (linesPerReading < 1 || linesPerReading > MOST_LINES) {
                throw new IllegalArgumentException(linesPerReading + " lines for a reading (1.." + MOST_LINES + ")");
            }
        }
    }

    /** A shape of lines that stand for themselves. */
    public LineShape(char separator, boolean decimalComma, Matching matching, int fieldCount, List<Slot> slots) {
        this(separator, decimalComma, matching, fieldCount, slots, Layout.PLAIN);
    }

    /** The same numbers with something around them. */
    public LineShape within(Layout other) {
        return new LineShape(separator, decimalComma, matching, fieldCount, slots, other);
    }

    /** The same with what each number was seen to do, in the order of the slots. */
    public LineShape withNatures(List<Nature> natures) {
        List<Slot> seen = IntStream.range(0, slots.size())
                .mapToObj(i -> new Slot(
                        slots.get(i).label(), slots.get(i).unit(), slots.get(i).position(), natures.get(i)))
                .toList();
        return new LineShape(separator, decimalComma, matching, fieldCount, seen, layout);
    }

    /** Copies the slots and checks the separator. */
    public LineShape {
        slots = List.copyOf(slots);
        if (",;|:\t ".indexOf(separator) < 0) {
            throw new IllegalArgumentException(
                    "separator '" + separator + "' (comma, semicolon, bar, colon, tab or blank)");
        }
        if (slots.isEmpty() || slots.size() > MOST_SLOTS) {
            throw new IllegalArgumentException(slots.size() + " numbers in a line (1.." + MOST_SLOTS + ")");
        }
        if (matching != Matching.BY_LABEL) {
            long places = slots.stream().mapToInt(Slot::position).distinct().count();
            int last = slots.stream().mapToInt(Slot::position).max().orElse(0);
            if (places < slots.size() || last >= fieldCount) {
                throw new IllegalArgumentException(
                        "positions of " + slots.size() + " numbers (each its own, under " + fieldCount + "): " + slots);
            }
        } else if (slots.stream().map(slot -> key(slot.label())).distinct().count() < slots.size()) {
            throw new IllegalArgumentException("two numbers with one label: " + slots);
        }
    }

    /** Numbers parted by a separator, without labels. */
    public static LineShape numbers(char separator, int count) {
        List<Slot> slots =
                IntStream.range(0, count).mapToObj(i -> new Slot("", "", i)).toList();
        Matching matching = separator == ' ' ? Matching.BY_ORDER : Matching.BY_FIELD;
        return new LineShape(separator, false, matching, count, slots);
    }

    /**
     * A slot's name: its label; its position from 1 where it has none, one that an earlier slot has too, or one with a
     * colon, after which the kind of a channel is written.
     */
    public String nameOf(int index) {
        String label = slots.get(index).label();
        boolean usable = !label.isEmpty() && label.indexOf(':') < 0 && indexOf(label) == index;
        return usable ? label : Integer.toString(index + 1);
    }

    /**
     * The slot that a channel's name means: a label (case and blanks do not matter) or a position from 1.
     *
     * @return -1 when there is none
     */
    public int indexOf(String channel) {
        for (int i = 0; i < slots.size(); i++) {
            if (!slots.get(i).label().isEmpty() && key(slots.get(i).label()).equals(key(channel))) {
                return i;
            }
        }
        try {
            int position = Integer.parseInt(channel.strip());
            return position >= 1 && position <= slots.size() ? position - 1 : -1;
        } catch (NumberFormatException e) {
            return -1;
        }
    }

    /** A label as it is compared: lower-case ASCII letters, no blanks. */
    static String key(String label) {
        StringBuilder key = new StringBuilder();
        for (int i = 0; i < label.length(); i++) {
            char c = label.charAt(i);
            if (c > ' ') {
                key.append(c >= 'A' && c <= 'Z' ? (char) (c + 32) : c);
            }
        }
        return key.toString();
    }

    /** The shape in words, for people. */
    public String words() {
        String names = IntStream.range(0, slots.size()).mapToObj(this::words).collect(Collectors.joining(", "));
        String count = slots.size() == 1 ? "1 number" : slots.size() + " numbers";
        boolean alone = slots.size() == 1 || (layout.linesPerReading() > 1 && fieldCount == 1);
        String parted = alone && separator == ' ' ? "" : " parted by " + separatorWord();
        String comma = decimalComma ? ", decimal comma" : "";
        String each = layout.linesPerReading() > 1
                ? " in " + layout.linesPerReading() + " lines"
                : matching == Matching.BY_LABEL ? "" : " a line";
        String labels = matching == Matching.BY_LABEL ? " with labels" : "";
        String above = layout.labelAbove() ? ", each on the line after its label" : "";
        return count + labels + each + parted + comma + above + frame() + ": " + names;
    }

    private String words(int index) {
        Slot slot = slots.get(index);
        String name = nameOf(index);
        return name
                + (slot.label().isEmpty() || slot.label().equals(name) ? "" : " (" + slot.label() + ")")
                + (slot.unit().isEmpty() ? "" : " in " + slot.unit())
                + (slot.nature() == Nature.LIVE ? "" : " (" + slot.nature().words() + ")");
    }

    private String frame() {
        String from = layout.opening() == 0 ? "" : " from " + layout.opening();
        String to = layout.closing() == 0 ? "" : " to " + layout.closing();
        return from.isEmpty() && to.isEmpty() ? "" : "," + from + to;
    }

    private String separatorWord() {
        return switch (separator) {
            case ',' -> "commas";
            case ';' -> "semicolons";
            case '|' -> "bars";
            case ':' -> "colons";
            case '\t' -> "tabs";
            default -> "blanks";
        };
    }
}
