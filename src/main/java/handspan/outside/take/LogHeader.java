package handspan.outside.take;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Tells the header of a plain log from its data.
 *
 * <p><b>The rule.</b> Header are the leading lines, at most the first {@value #MOST_LINES} of the file, that
 *
 * <ol>
 *   <li>hold a letter outside their numbers (an exponent as in {@code 1e-3} is part of a number; {@code nan},
 *       {@code inf} and {@code ovf} stand in place of one), and
 *   <li>have a shape that no other of the first {@value #PREVIEW_LINES} lines has. The shape is the line in small
 *       letters without blanks, with {@code 0} for each number: {@code Fs,50.00} has the shape {@code fs,0}, and both
 *       {@code Distance: 23 cm} and {@code distance: 7 cm} have the shape {@code distance:0cm}.
 * </ol>
 *
 * <p>A ruled line, with neither letter nor number, is header too, however often it comes. The first line that is
 * neither ends the header; the heading of a wide table ends it as its last line. Blank lines between header lines
 * belong to it. When no line is left after the header, there is no header: the file is one short block of labelled
 * data.
 *
 * <p>In short: a label that comes again is data, words that come once are header. The price: a single banner, a cut or
 * garbled line with letters, or a single word for "no reading" at the very top is taken for header, where it can still
 * be seen; the recording begins one line later.
 */
final class LogHeader {
    /** Header lines stand among this many first lines of the file. */
    static final int MOST_LINES = 10;

    /** How many lines are looked at to see whether a shape comes again: several rounds of a board with ten labels. */
    static final int PREVIEW_LINES = 50;

    /** The look ahead ends here too; a wide table reaches it in a few rows. */
    static final int PREVIEW_BYTES = 1 << 18;

    private static final Pattern NUMBER = Pattern.compile(
            "\\b(?:nan|inf|ovf)\\b|0[xX][0-9a-fA-F]+|[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private LogHeader() {}

    /**
     * How many of a log's first lines are header.
     *
     * @param preview the first lines of the file, {@value #PREVIEW_LINES} where it has so many
     */
    static int length(List<String> preview) {
        List<String> shapes = preview.stream().map(LogHeader::shape).toList();
        Map<String, Integer> times = new HashMap<>();
        shapes.forEach(shape -> times.merge(shape, 1, Integer::sum));
        int length = 0;
        for (int i = 0; i < Math.min(MOST_LINES, shapes.size()); i++) {
            String shape = shapes.get(i);
            if (shape.isEmpty()) {
                continue;
            }
            if (!isRuled(shape) && (!hasLetter(shape) || times.getOrDefault(shape, 0) > 1)) {
                break;
            }
            length = i + 1;
            if (WideColumns.of(preview.get(i)) != null) {
                return length;
            }
        }
        boolean dataFollows = shapes.subList(length, shapes.size()).stream().anyMatch(shape -> !shape.isEmpty());
        return dataFollows ? length : 0;
    }

    /** The line in small letters without blanks, {@code 0} for each number. */
    static String shape(String line) {
        String small = line.toLowerCase(Locale.ROOT);
        return BLANKS.matcher(NUMBER.matcher(small).replaceAll("0")).replaceAll("");
    }

    private static boolean hasLetter(String shape) {
        return shape.chars().anyMatch(Character::isLetter);
    }

    private static boolean isRuled(String shape) {
        return shape.chars().noneMatch(c -> Character.isLetter(c) || c == '0');
    }
}
