package handspan.outside.take;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a plain log, dated evenly. A blank line is handed on, since some boards end a block of lines with one,
 * but it takes no time and is not counted. A last line without a line end is kept: many programs leave that one out.
 */
final class LogEntries implements EntrySource {
    private final RawLines lines;
    private final Damage damage;
    private final EvenTimes times;
    private final List<String> headerLines;
    private long lineCount;

    /** Over the lines after the header. */
    LogEntries(RawLines lines, Damage damage, EvenTimes times, List<String> headerLines) {
        this.lines = lines;
        this.damage = damage;
        this.times = times;
        this.headerLines = headerLines;
    }

    @Override
    public TakeKind kind() {
        return TakeKind.PLAIN_LOG;
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
    public void goOn(TakeBookmark mark) {
        lineCount = mark.lines();
    }

    @Override
    public @Nullable TakeEntry next() throws IOException {
        for (RawLine line = lines.next(); line != null; line = lines.next()) {
            long micros = times.micros(lineCount);
            if (line.isBlank()) {
                return new TakeEntry.Line(micros, line.bytes());
            }
            // it was one line of the log: its moment passes even when it cannot be used
            lineCount++;
            if (!line.tooLong()) {
                return new TakeEntry.Line(micros, line.bytes());
            }
            damage.add(line.number(), "longer than " + RawLines.LONGEST_BYTES + " bytes");
        }
        return null;
    }
}
