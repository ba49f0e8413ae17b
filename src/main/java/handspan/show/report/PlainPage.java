package handspan.show.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of Markdown as text for a terminal. Of Markdown it knows what the handbook uses: headings, paragraphs, points
 * with {@code -} or a number, tables, fenced blocks, {@code **words**} and {@code `code`}.
 *
 * @param parts in their order
 */
record PlainPage(List<Part> parts) {
    private static final Pattern HEADING = Pattern.compile("(#+) (.*)");
    private static final Pattern POINT = Pattern.compile("(-|\\d+\\.) (.*)");
    private static final Pattern INLINE = Pattern.compile("`([^`]*)`|\\*\\*([^*]+)\\*\\*|\\*([^*\\s][^*]*)\\*");
    private static final String FENCE = "```";

    /** Lines of this many characters at least: shorter ones hold no sentence. */
    static final int LEAST_COLUMNS = 20;

    /** Copies the list. */
    PlainPage {
        parts = List.copyOf(parts);
    }

    /** Something that stands by itself on a page. */
    sealed interface Part permits Heading, Words, Code, PlainTable {
        /** Its lines, none longer than so many characters where it can be broken at all. */
        List<String> lines(int columns);
    }

    /** A heading, underlined by its level. */
    record Heading(int level, String words) implements Part {
        @Override
        public List<String> lines(int columns) {
            List<String> lines = wrapped(words, columns);
            int longest = lines.stream().mapToInt(String::length).max().orElse(0);
            List<String> all = new ArrayList<>(lines);
            all.add((level == 1 ? "=" : level == 2 ? "-" : "~").repeat(longest));
            return all;
        }
    }

    /** A paragraph, or a point with its mark hanging out on the left. */
    record Words(String mark, String words) implements Part {
        @Override
        public List<String> lines(int columns) {
            String first = mark.isEmpty() ? "" : mark + " ";
            List<String> lines = new ArrayList<>();
            for (String line : wrapped(words, columns - first.length())) {
                lines.add((lines.isEmpty() ? first : " ".repeat(first.length())) + line);
            }
            return lines;
        }
    }

    /** A block that is copied as it is. */
    record Code(List<String> code) implements Part {
        @Override
        public List<String> lines(int columns) {
            return code.stream().map(line -> ("    " + line).stripTrailing()).toList();
        }
    }

    /** Takes a page apart. */
    static PlainPage of(String markdown) {
        List<Part> parts = new ArrayList<>();
        List<String> block = new ArrayList<>();
        boolean fenced = false;
        for (String line : (markdown + "\n").split("\n", -1)) {
            if (line.startsWith(FENCE)) {
                if (fenced) {
                    parts.add(new Code(List.copyOf(block)));
                    block.clear();
                } else {
                    close(block, parts);
                }
                fenced = !fenced;
            } else if (!fenced && (line.isBlank() || begins(line))) {
                close(block, parts);
                if (!line.isBlank()) {
                    block.add(line);
                }
            } else {
                block.add(line);
            }
        }
        close(block, parts);
        return new PlainPage(parts);
    }

    private static boolean begins(String line) {
        return HEADING.matcher(line).matches() || POINT.matcher(line).matches();
    }

    private static void close(List<String> block, List<Part> parts) {
        if (block.isEmpty()) {
            return;
        }
        String first = block.get(0);
        Matcher heading = HEADING.matcher(first);
        Matcher point = POINT.matcher(first);
        String joined = String.join(" ", block.stream().map(String::strip).toList());
        if (heading.matches()) {
            parts.add(new Heading(heading.group(1).length(), plain(heading.group(2))));
        } else if (first.startsWith("|")) {
            parts.add(PlainTable.of(block));
        } else if (point.matches()) {
            parts.add(new Words(
                    point.group(1), plain(joined.substring(point.group(1).length() + 1))));
        } else {
            parts.add(new Words("", plain(joined)));
        }
        block.clear();
    }

    /** Without stars; code of several words, and single signs, in quotes. */
    static String plain(String markdown) {
        return INLINE.matcher(markdown).replaceAll(match -> {
            String code = match.group(1);
            String words = match.group(2) == null ? match.group(3) : match.group(2);
            return Matcher.quoteReplacement(code == null ? words : quoted(code));
        });
    }

    private static String quoted(String code) {
        if (code.length() > 1 && !code.contains(" ")) {
            return code;
        }
        String quote = code.contains("'") ? "\"" : "'";
        return quote + code + quote;
    }

    /** A cell of a table; one that is code and nothing else needs no quotes. */
    static String plainCell(String markdown) {
        boolean code =
                markdown.length() > 1 && markdown.startsWith("`") && markdown.indexOf('`', 1) == markdown.length() - 1;
        return code ? markdown.substring(1, markdown.length() - 1) : plain(markdown);
    }

    /** Breaks words into lines; one that is too long for a line has a line of its own. */
    static List<String> wrapped(String words, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split(" +", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The page in lines of at most so many characters. */
    String text(int columns) {
        int width = Math.max(LEAST_COLUMNS, columns);
        StringBuilder text = new StringBuilder();
        Part before = null;
        for (Part part : parts) {
            boolean pointAfterPoint = isPoint(part) && isPoint(before);
            if (before != null && !pointAfterPoint) {
                text.append('\n');
            }
            part.lines(width).forEach(line -> text.append(line).append('\n'));
            before = part;
        }
        return text.toString();
    }

    private static boolean isPoint(@org.jspecify.annotations.Nullable Part part) {
        return part instanceof Words words && !words.mark().isEmpty();
    }
}
