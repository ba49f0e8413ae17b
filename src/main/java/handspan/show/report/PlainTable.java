package handspan.show.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table in characters. Where it is too wide its widest columns are broken into lines; where even its longest words
 * are too wide, each row becomes a list.
 *
 * @param rows of as many cells each; the first has the headings
 */
record PlainTable(List<List<String>> rows) implements PlainPage.Part {
    private static final Pattern BAR = Pattern.compile("(?<!\\\\)\\|");
    private static final Pattern RULE = Pattern.compile("[|:\\- ]+");
    private static final String GAP = "  ";

    /** Checks that all rows have as many cells. */
    PlainTable {
        rows = rows.stream().map(List::copyOf).toList();
        int columns = rows.get(0).size();
        for (List<String> row : rows) {
            if (row.size() != columns) {
                throw new IllegalArgumentException(
                        "table row of " + row.size() + " cells: " + row + " (" + columns + " as in its first row)");
            }
        }
    }

    /** Takes the lines of a table apart; a bar within a cell is written {@code \|}. */
    static PlainTable of(List<String> lines) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : lines) {
            if (RULE.matcher(line).matches()) {
                continue;
            }
            String[] cells = BAR.split(line.strip(), -1);
            // what stands before the first bar and after the last is no cell
            rows.add(Arrays.stream(cells, 1, cells.length - 1)
                    .map(cell -> PlainPage.plainCell(cell.strip().replace("\\|", "|")))
                    .toList());
        }
        return new PlainTable(rows);
    }

    @Override
    public List<String> lines(int columns) {
        int count = rows.get(0).size();
        int room = columns - GAP.length() * (count - 1);
        int[] widths = new int[count];
        int[] least = new int[count];
        for (List<String> row : rows) {
            for (int c = 0; c < count; c++) {
                widths[c] = Math.max(widths[c], row.get(c).length());
                least[c] = Math.max(least[c], longestWord(row.get(c)));
            }
        }
        while (Arrays.stream(widths).sum() > room) {
            int widest = -1;
            for (int c = 0; c < count; c++) {
                if (widths[c] > least[c] && (widest < 0 || widths[c] > widths[widest])) {
                    widest = c;
                }
            }
            if (widest < 0) {
                return asList(columns);
            }
            widths[widest]--;
        }
        return drawn(widths);
    }

    private static int longestWord(String cell) {
        return Arrays.stream(cell.split(" ", -1)).mapToInt(String::length).max().orElse(0);
    }

    private List<String> drawn(int[] widths) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            boolean heading = lines.isEmpty();
            List<List<String>> cells = new ArrayList<>();
            for (int c = 0; c < widths.length; c++) {
                cells.add(PlainPage.wrapped(row.get(c), widths[c]));
            }
            int height = cells.stream().mapToInt(List::size).max().orElse(0);
            for (int i = 0; i < height; i++) {
                StringBuilder line = new StringBuilder();
                for (int c = 0; c < widths.length; c++) {
                    String cell = i < cells.get(c).size() ? cells.get(c).get(i) : "";
                    line.append(c == 0 ? "" : GAP).append(cell).append(" ".repeat(widths[c] - cell.length()));
                }
                lines.add(line.toString().stripTrailing());
            }
            if (heading) {
                lines.add(String.join(
                        GAP, Arrays.stream(widths).mapToObj("-"::repeat).toList()));
            }
        }
        return lines;
    }

    private List<String> asList(int columns) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            for (int c = 0; c < row.size(); c++) {
                String heading = rows.get(0).get(c);
                lines.addAll(PlainPage.wrapped((heading.isEmpty() ? "" : heading + ": ") + row.get(c), columns));
            }
        }
        return lines;
    }
}
