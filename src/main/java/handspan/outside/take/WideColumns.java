package handspan.outside.take;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The columns of a wide table: some leading ones, then a run of {@value #FEWEST} or more of one name with consecutive
 * numbers up to the last column, such as {@code id,time,V0,V1,...,V2999}.
 *
 * @param separator comma, semicolon or tab
 * @param leading columns before the run
 * @param values columns of the run
 * @param name the run's name without number
 */
record WideColumns(char separator, int leading, int values, String name) {
    /** Fewer numbered columns may well be so many sensors side by side. */
    static final int FEWEST = 50;

    private static final int LONGEST_NAME = 64;

    private static final Pattern NUMBERED = Pattern.compile("\"?\\s*(.*\\p{L}.*?)([0-9]{1,9})\\s*\"?");

    /** The columns a heading names, null when it is not the heading of a wide table. */
    static @Nullable WideColumns of(String heading) {
        for (char separator : new char[] {',', ';', '\t'}) {
            WideColumns columns = of(heading, separator);
            if (columns != null) {
                return columns;
            }
        }
        return null;
    }

    private static @Nullable WideColumns of(String heading, char separator) {
        List<String> cells = new ArrayList<>(Arrays.asList(heading.strip().split(Pattern.quote("" + separator), -1)));
        if (cells.get(cells.size() - 1).isBlank()) {
            cells.remove(cells.size() - 1);
        }
        int run = 0;
        String name = "";
        long number = 0;
        for (int i = cells.size() - 1; i >= 0; i--) {
            if (cells.get(i).length() > LONGEST_NAME) {
                break;
            }
            Matcher cell = NUMBERED.matcher(cells.get(i));
            if (!cell.matches()
                    || (run > 0 && (!cell.group(1).equals(name) || Long.parseLong(cell.group(2)) != number - 1))) {
                break;
            }
            name = cell.group(1);
            number = Long.parseLong(cell.group(2));
            run++;
        }
        return run < FEWEST ? null : new WideColumns(separator, cells.size() - run, run, name.strip());
    }

    /**
     * A row's cells, leading ones included, blanks and quotes around them removed; an empty last one does not count.
     */
    List<byte[]> cells(byte[] row) {
        List<byte[]> cells = new ArrayList<>(leading + values);
        int from = 0;
        for (int i = 0; i <= row.length; i++) {
            if (i == row.length || row[i] == separator) {
                if (i < row.length || i > from) {
                    cells.add(bare(row, from, i));
                }
                from = i + 1;
            }
        }
        return cells;
    }

    private static byte[] bare(byte[] row, int from, int to) {
        int first = from;
        int last = to;
        while (first < last && isPadding(row[first])) {
            first++;
        }
        while (last > first && isPadding(row[last - 1])) {
            last--;
        }
        return Arrays.copyOfRange(row, first, last);
    }

    private static boolean isPadding(byte b) {
        return b == ' ' || b == '"';
    }
}
