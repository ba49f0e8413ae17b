package handspan.instrument.line;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How a board writes its numbers into a line.
 *
 * @param separator {@code , ; | } or tab between fields, or a blank when only blanks part the numbers
 * @param decimalComma whether a comma between digits is a decimal point
 * @param matching how a number finds its slot
 * @param fieldCount fields in a line with {@link Matching#BY_FIELD}; numbers in a line with {@link Matching#BY_ORDER};
 *     the most numbers seen in a line with {@link Matching#BY_LABEL}
 * @param slots the numbers of a reading, 1..{@value #MOST_SLOTS}
 */
public record LineShape(char separator, boolean decimalComma, Matching matching, int fieldCount, List<Slot> slots) {
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

    /**
     * One number of the line.
     *
     * @param label text before it, as the board writes it; empty when there is none
     * @param unit text after it; empty when there is none
     * @param position field or order, from 0
     */
    public record Slot(String label, String unit, int position) {
        /** Checks the position. */
        public Slot {
            if (position < 0 || position > LineSplitter.LONGEST) {
                throw new IllegalArgumentException("position " + position + " (0.." + LineSplitter.LONGEST + ")");
            }
        }
    }

    /** Copies the slots and checks the separator. */
    public LineShape {
        slots = List.copyOf(slots);
        if (",;|\t ".indexOf(separator) < 0) {
            throw new IllegalArgumentException("separator '" + separator + "' (comma, semicolon, bar, tab or blank)");
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

    /** A slot's name: its label, or its position from 1. */
    public String nameOf(int index) {
        String label = slots.get(index).label();
        return label.isEmpty() ? Integer.toString(index + 1) : label;
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
        String names = IntStream.range(0, slots.size())
                .mapToObj(i -> nameOf(i)
                        + (slots.get(i).unit().isEmpty()
                                ? ""
                                : " in " + slots.get(i).unit()))
                .collect(Collectors.joining(", "));
        String count = slots.size() == 1 ? "1 number" : slots.size() + " numbers";
        String parted = slots.size() == 1 && separator == ' ' ? "" : " parted by " + separatorWord();
        String comma = decimalComma ? ", decimal comma" : "";
        return matching == Matching.BY_LABEL
                ? count + " with labels" + parted + comma + ": " + names
                : count + " a line" + parted + comma + ": " + names;
    }

    private String separatorWord() {
        return switch (separator) {
            case ',' -> "commas";
            case ';' -> "semicolons";
            case '|' -> "bars";
            case '\t' -> "tabs";
            default -> "blanks";
        };
    }
}
