package handspan.command;

import java.util.ArrayList;
import java.util.List;

/** One line for each instrument of an ensemble, in columns as wide as need be. Pure. */
final class EnsembleTable {
    private static final List<String> HEADINGS =
            List.of("#", "instrument", "room", "link", "state", "note", "cents", "level dB", "what is wrong");

    /** Names wider than this are cut, so that notes and troubles stay in sight. */
    private static final int WIDEST_NAME = 18;

    /** These columns are ranged right. */
    private static final List<Integer> NUMBERS = List.of(0, 6, 7);

    private static final String CUT = "..";
    private static final String GAP = "  ";

    /** How one instrument stands; texts may be empty. */
    record Row(
            int number,
            String name,
            String room,
            String link,
            String state,
            String note,
            String cents,
            String level,
            String wrong) {
        private List<String> cells() {
            return List.of(
                    Integer.toString(number),
                    cut(name, WIDEST_NAME),
                    cut(room, WIDEST_NAME),
                    link,
                    state,
                    note,
                    cents,
                    level,
                    wrong.replaceAll("\\s+", " "));
        }
    }

    private EnsembleTable() {}

    /**
     * The lines, headings first.
     *
     * @param columns characters a line at most; what does not fit is cut at its end
     */
    static List<String> lines(List<Row> rows, int columns) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(HEADINGS);
        rows.forEach(row -> cells.add(row.cells()));
        int[] widths = new int[HEADINGS.size()];
        for (List<String> line : cells) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
        }
        return cells.stream().map(line -> cut(line(line, widths), columns)).toList();
    }

    private static String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String blanks = " ".repeat(widths[i] - cells.get(i).length());
            boolean right = NUMBERS.contains(i);
            line.append(right ? blanks : "").append(cells.get(i)).append(right ? "" : blanks);
            line.append(GAP);
        }
        return line.toString().stripTrailing();
    }

    /** A text with its end cut off where it is too long. */
    static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, Math.max(0, most - CUT.length())) + CUT;
    }
}
