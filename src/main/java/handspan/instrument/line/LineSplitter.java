package handspan.instrument.line;

/**
 * Cuts a byte stream into lines, whatever ends them: CR, LF, CR LF, LF CR. Blank lines vanish. What stands before the
 * first line end after {@link #restart()} is dropped, because it may be the tail of a line; so is a line longer than
 * {@link #LONGEST} bytes, up to its end. Bytes of zero around a line, as a reset or a buffer printed whole leaves them,
 * are no part of it. Owned by one thread.
 */
public final class LineSplitter {
    /** Longest line kept, in bytes without its end. */
    public static final int LONGEST = 256;

    /** Takes the lines. */
    public interface Lines {
        /**
         * A whole line.
         *
         * @param bytes valid during the call only
         * @param length bytes of the line, 1..{@link #LONGEST}
         */
        void line(byte[] bytes, int length);

        /** A line was longer than {@link #LONGEST} and has been dropped. */
        void tooLong();
    }

    private final byte[] line = new byte[LONGEST];
    private int length;
    private boolean dropping = true;
    private boolean tooLong;

    /** Forgets a half line and drops all up to the next line end; call it after each connect. */
    public void restart() {
        length = 0;
        dropping = true;
        tooLong = false;
    }

    /**
     * Takes bytes as they came.
     *
     * @param chunk the bytes
     * @param count how many of them, from the first
     * @param lines called for each line that ends within the chunk
     */
    public void accept(byte[] chunk, int count, Lines lines) {
        for (int i = 0; i < count; i++) {
            byte b = chunk[i];
            if (b == '\n' || b == '\r') {
                end(lines);
            } else if (!dropping && (b != 0 || length > 0)) {
                if (length == LONGEST) {
                    dropping = true;
                    tooLong = true;
                } else {
                    line[length++] = b;
                }
            }
        }
    }

    /** How many lines end within a chunk that is still to be taken. */
    public int linesIn(byte[] chunk, int count) {
        int lines = 0;
        boolean kept = !dropping && length > 0;
        boolean dropped = dropping;
        for (int i = 0; i < count; i++) {
            if (chunk[i] == '\n' || chunk[i] == '\r') {
                lines += kept ? 1 : 0;
                kept = false;
                dropped = false;
            } else {
                kept = !dropped && (kept || chunk[i] != 0);
            }
        }
        return lines;
    }

    private void end(Lines lines) {
        while (length > 0 && line[length - 1] == 0) {
            length--;
        }
        if (tooLong) {
            lines.tooLong();
        } else if (!dropping && length > 0) {
            lines.line(line, length);
        }
        length = 0;
        dropping = false;
        tooLong = false;
    }
}
