package handspan.outside.take;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The entries of a take; damaged lines are counted and passed over. */
final class TakeEntries implements EntrySource {
    private final RawLines lines;
    private final Damage damage;
    private final List<String> headerLines = new ArrayList<>();
    private long lastMicros;
    private long lastNumber;
    private long lineCount;

    /** Reads the header at once. */
    TakeEntries(RawLines lines, Damage damage) throws IOException {
        this.lines = lines;
        this.damage = damage;
        while (true) {
            RawLine line = lines.peek();
            if (line == null || !line.terminated() || !line.startsWith('#') || TakeMarks.looksLikeMark(line.text())) {
                break;
            }
            headerLines.add(line.text());
            lines.next();
        }
    }

    @Override
    public TakeKind kind() {
        return TakeKind.TAKE;
    }

    @Override
    public TakeHeader header() {
        return TakeHeader.of(headerLines.subList(Math.min(1, headerLines.size()), headerLines.size()));
    }

    @Override
    public List<String> headerLines() {
        return List.copyOf(headerLines);
    }

    @Override
    public long lineCount() {
        return lineCount;
    }

    @Override
    public void goOn(TakeBookmark mark) {
        lineCount = mark.lines();
        lastMicros = mark.micros();
        lastNumber = mark.lineNumber();
    }

    @Override
    public @Nullable TakeEntry next() throws IOException {
        for (RawLine line = lines.next(); line != null; line = lines.next()) {
            TakeEntry entry = entry(line);
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    private @Nullable TakeEntry entry(RawLine line) {
        if (!line.terminated()) {
            // half a number looks like a number: an unfinished line is never used
            damage.add(line.number(), "cut off in the middle, the take ends there");
            return null;
        }
        if (line.tooLong()) {
            damage.add(line.number(), "longer than " + RawLines.LONGEST_BYTES + " bytes");
            return null;
        }
        return line.startsWith('#') ? mark(line) : timedLine(line);
    }

    private @Nullable TakeEntry mark(RawLine line) {
        TakeEntry mark = TakeMarks.read(line.text());
        if (mark == null) {
            damage.add(line.number(), "'" + excerpt(line) + "' is no mark (# step TIME NAME, # captured FROM TO NAME)");
        }
        return mark;
    }

    private @Nullable TakeEntry timedLine(RawLine line) {
        byte[] bytes = line.bytes();
        int tab = 0;
        while (tab < bytes.length && bytes[tab] != '\t') {
            tab++;
        }
        if (tab == bytes.length) {
            damage.add(line.number(), "'" + excerpt(line) + "' has no tab after a time");
            return null;
        }
        long micros = TakeMarks.micros(bytes, tab);
        if (micros < 0) {
            damage.add(line.number(), "'" + excerpt(line) + "' does not begin with a time in whole microseconds");
            return null;
        }
        if (micros < lastMicros) {
            damage.add(
                    line.number(),
                    "its time, " + micros + " microseconds, lies before that of line " + lastNumber + ", "
                            + lastMicros);
            return null;
        }
        lastMicros = micros;
        lastNumber = line.number();
        lineCount++;
        return new TakeEntry.Line(micros, Arrays.copyOfRange(bytes, tab + 1, bytes.length));
    }

    private static String excerpt(RawLine line) {
        String text = line.text().replaceAll("\\p{Cntrl}", "?");
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
