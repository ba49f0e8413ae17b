package handspan.outside.take;

import handspan.number.units.Figures;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The values of a wide table, one line each, row after row, dated evenly without a gap between rows. A row with another
 * number of cells than the heading is skipped as damaged. An empty cell is an empty line and keeps its moment.
 */
final class TableEntries implements EntrySource {
    private final RawLines lines;
    private final Damage damage;
    private final EvenTimes times;
    private final List<String> headerLines;
    private final WideColumns columns;
    private List<byte[]> row = List.of();
    private int at;
    private long rows;
    private long lineCount;

    /** Over the lines after the heading. */
    TableEntries(RawLines lines, Damage damage, EvenTimes times, List<String> headerLines, WideColumns columns) {
        this.lines = lines;
        this.damage = damage;
        this.times = times;
        this.headerLines = headerLines;
        this.columns = columns;
    }

    @Override
    public TakeKind kind() {
        return TakeKind.WIDE_TABLE;
    }

    @Override
    public List<String> headerLines() {
        return headerLines;
    }

    @Override
    public long lineCount() {
        return lineCount;
    }

    @Override
    public Optional<String> tableRemark() {
        return Optional.of(Figures.count(rows) + (rows == 1 ? " row of " : " rows of ")
                + Figures.count(columns.values()) + " values of " + columns.name() + ", unrolled");
    }

    @Override
    public boolean isBetweenLines() {
        return at == row.size();
    }

    @Override
    public void goOn(TakeBookmark mark) {
        row = List.of();
        at = 0;
        lineCount = mark.lines();
        rows = mark.lines() / columns.values();
    }

    @Override
    public @Nullable TakeEntry next() throws IOException {
        if (at == row.size() && !nextRow()) {
            return null;
        }
        return new TakeEntry.Line(times.micros(lineCount++), row.get(at++));
    }

    private boolean nextRow() throws IOException {
        int expected = columns.leading() + columns.values();
        for (RawLine line = lines.next(); line != null; line = lines.next()) {
            if (line.isBlank()) {
                continue;
            }
            List<byte[]> cells = columns.cells(line.bytes());
            if (cells.size() == expected && !line.tooLong()) {
                row = cells;
                at = columns.leading();
                rows++;
                return true;
            }
            damage.add(
                    line.number(),
                    Figures.count(cells.size()) + " cells where the heading has " + Figures.count(expected));
        }
        return false;
    }
}
