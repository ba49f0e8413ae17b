package handspan.outside.take;

import handspan.number.units.Figures;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** How the lines of one kind of file become entries. */
sealed interface EntrySource permits TakeEntries, LogEntries, TableEntries {
    TakeKind kind();

    /** The next entry, null at the end. */
    @Nullable
    TakeEntry next() throws IOException;

    /** Lines that held something, among those handed out so far. */
    long lineCount();

    /** The lines before the first entry, as they stand. */
    List<String> headerLines();

    /** Whether reading could go on from the end of the line that was taken last, knowing no more than its number. */
    default boolean isBetweenLines() {
        return true;
    }

    /** Goes on after another line; the file has been put there. */
    void goOn(TakeBookmark mark);

    /** What a take says about itself. */
    default TakeHeader header() {
        return TakeHeader.unknown();
    }

    /** How a table was unrolled, in words. */
    default Optional<String> tableRemark() {
        return Optional.empty();
    }

    /**
     * Looks at a file's first lines and chooses.
     *
     * @param ratePerS needed unless it is a take
     */
    static EntrySource of(Path file, RawLines lines, Damage damage, OptionalDouble ratePerS) throws IOException {
        if (lines.isUtf16()) {
            throw new TakeException(file + " is UTF-16 text, two bytes a character: save it as UTF-8 and try again");
        }
        RawLine first = lines.peek();
        if (first == null) {
            throw new TakeException(file + " is empty: record again or choose another file");
        }
        String text = first.text().stripTrailing();
        if (text.equals(TakeHeader.FIRST_LINE)) {
            return new TakeEntries(lines, damage);
        }
        if (text.startsWith(TakeHeader.ANY_VERSION)) {
            throw new TakeException(file + ", line 1: '" + text + "' is another version of a take (readable: '"
                    + TakeHeader.FIRST_LINE + "'): read it with the version that wrote it");
        }
        return untimed(file, lines, damage, ratePerS);
    }

    private static EntrySource untimed(Path file, RawLines lines, Damage damage, OptionalDouble ratePerS)
            throws IOException {
        List<String> preview = lines.peek(LogHeader.PREVIEW_LINES, LogHeader.PREVIEW_BYTES).stream()
                .map(RawLine::text)
                .toList();
        int headerLength = LogHeader.length(preview);
        List<String> header = preview.subList(0, headerLength);
        WideColumns columns = headerLength == 0 ? null : WideColumns.of(header.get(headerLength - 1));
        List<String> worded = header.stream().filter(line -> !line.isBlank()).toList();
        if (ratePerS.isEmpty()) {
            throw new TakeException(withoutRate(file, columns, StatedFigures.of(worded)));
        }
        EvenTimes times = new EvenTimes(ratePerS.getAsDouble());
        for (int i = 0; i < headerLength; i++) {
            lines.next();
        }
        return columns == null
                ? new LogEntries(lines, damage, times, worded)
                : new TableEntries(lines, damage, times, worded, columns);
    }

    private static String withoutRate(Path file, @Nullable WideColumns columns, StatedFigures stated) {
        String what = columns == null
                ? "a plain log without times"
                : "a table of " + Figures.count(columns.values()) + " values of " + columns.name()
                        + " a row, without a time for each";
        String hint = stated.ratePerS().isPresent()
                ? " (its header says " + StatedFigures.rate(stated.ratePerS().getAsDouble()) + " a second)"
                : "";
        return file + " is " + what + ": give --rate PER_SECOND" + hint;
    }
}
