package handspan.outside.take;

/**
 * A place in a file from which {@link TakeFile#goTo} reads on: the end of a line.
 *
 * @param micros time of the last line before it, microseconds from the start; 0 before the first
 * @param bytes of the file before it
 * @param lineNumber of the file's lines before it
 * @param lines of the recording before it, as {@link TakeFile#lineCount} counts
 */
public record TakeBookmark(long micros, long bytes, long lineNumber, long lines) {
    /** Checks that nothing is below 0. */
    public TakeBookmark {
        if (micros < 0 || bytes < 0 || lineNumber < 0 || lines < 0) {
            throw new IllegalArgumentException("bookmark at " + micros + " microseconds, byte " + bytes + ", line "
                    + lineNumber + ", " + lines + " lines (allowed 0 and more): take it from a file");
        }
    }
}
