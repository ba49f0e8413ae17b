package handspan.outside.take;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Splits a file into lines, one at a time, with a look ahead of a few. A line ends with LF, CR, CR LF or LF CR; the
 * pairs count as one end. A line longer than {@link #LONGEST_BYTES} is cut there, so that no file can fill the memory.
 * Knows where in the stream it is, so that reading can go on there later.
 */
final class RawLines implements Closeable {
    /** Far above any board's line; room for the heading of a table with 100,000 columns. */
    static final int LONGEST_BYTES = 1 << 20;

    private static final int CHUNK_BYTES = 1 << 16;

    private final InputStream in;
    private final byte[] chunk = new byte[CHUNK_BYTES];
    private final Deque<RawLine> ahead = new ArrayDeque<>();
    private byte[] line = new byte[256];
    private int at;
    private int end;
    private long number;

    /** Bytes of the stream before {@link #chunk}. */
    private long beforeChunk;

    private long taken;
    private long takenNumber;

    /** Reads from the stream's start; a UTF-8 byte order mark there is passed over. */
    RawLines(InputStream in) throws IOException {
        this.in = in;
        fill();
        if (startsWith(0xEF, 0xBB, 0xBF)) {
            at = 3;
        }
        taken = at;
    }

    /** Bytes of the stream up to the end of the last line that was taken. */
    long takenBytes() {
        return taken;
    }

    /** Number of that line; 0 before the first. */
    long takenNumber() {
        return takenNumber;
    }

    /**
     * Goes on elsewhere; the stream has been put there.
     *
     * @param bytes of the stream before it, up to the end of a line
     * @param lineNumber of that line
     */
    void goOn(long bytes, long lineNumber) throws IOException {
        ahead.clear();
        end = 0;
        beforeChunk = bytes;
        taken = bytes;
        takenNumber = lineNumber;
        number = lineNumber;
        fill();
    }

    /** Whether the file begins with a UTF-16 byte order mark. Ask before reading. */
    boolean isUtf16() {
        return startsWith(0xFF, 0xFE) || startsWith(0xFE, 0xFF);
    }

    /** The next line, null at the end. */
    @Nullable
    RawLine next() throws IOException {
        RawLine first = ahead.isEmpty() ? read() : ahead.remove();
        taken = first == null ? taken : first.endByte();
        takenNumber = first == null ? takenNumber : first.number();
        return first;
    }

    /** The next line without taking it, null at the end. */
    @Nullable
    RawLine peek() throws IOException {
        peek(1, 1);
        return ahead.peek();
    }

    /** The next lines without taking them: up to {@code lines}, fewer once they hold {@code bytes} or the file ends. */
    List<RawLine> peek(int lines, int bytes) throws IOException {
        long held = ahead.stream().mapToLong(each -> each.bytes().length).sum();
        while (ahead.size() < lines && (ahead.isEmpty() || held < bytes)) {
            RawLine each = read();
            if (each == null) {
                break;
            }
            ahead.add(each);
            held += each.bytes().length;
        }
        return new ArrayList<>(ahead);
    }

    /** How many lines have been taken from the file, looked-ahead ones included. */
    long number() {
        return number;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    private @Nullable RawLine read() throws IOException {
        int b = take();
        if (b < 0) {
            return null;
        }
        int length = 0;
        boolean tooLong = false;
        while (b >= 0 && b != '\n' && b != '\r') {
            if (length == LONGEST_BYTES) {
                tooLong = true;
            } else {
                if (length == line.length) {
                    line = Arrays.copyOf(line, 2 * length);
                }
                line[length++] = (byte) b;
            }
            b = take();
        }
        if (b >= 0) {
            passPartner(b == '\n' ? '\r' : '\n');
        }
        number++;
        return new RawLine(number, Arrays.copyOf(line, length), b >= 0, tooLong, beforeChunk + at);
    }

    private void passPartner(char partner) throws IOException {
        if (at == end) {
            fill();
        }
        if (at < end && chunk[at] == partner) {
            at++;
        }
    }

    private int take() throws IOException {
        if (at == end) {
            fill();
        }
        return at < end ? chunk[at++] & 0xFF : -1;
    }

    private void fill() throws IOException {
        beforeChunk += end;
        at = 0;
        end = in.readNBytes(chunk, 0, CHUNK_BYTES);
    }

    private boolean startsWith(int... marks) {
        for (int i = 0; i < marks.length; i++) {
            if (i >= end || (chunk[i] & 0xFF) != marks[i]) {
                return false;
            }
        }
        return true;
    }
}
