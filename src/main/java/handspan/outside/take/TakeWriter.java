package handspan.outside.take;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Writes a take: a header, then {@code microseconds<TAB>line as received} and marks. Lines go out byte for byte; names
 * and header in UTF-8. Buffered for no longer than {@link #FLUSH_LINES} lines or half a second of their times, so that
 * little is missing when the program is killed; all is handed on by {@link #flush()} or {@link #close()}.
 *
 * <p>When the stream refuses a write (a full disk), the exception goes up, nothing more is written and closing only
 * closes: the file then ends inside a line at worst, and {@link TakeFile} reads all whole lines before that, as many as
 * {@link #written} says. Owned by one thread.
 */
public final class TakeWriter implements Closeable {
    private static final int BUFFER_BYTES = 1 << 16;
    private static final int FLUSH_LINES = 50;
    private static final long FLUSH_MICROS = 500_000;

    private static final int LONGEST_NUMBER = 20;

    private final OutputStream out;
    private final @Nullable FileChannel file;
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private final WrittenLines written = new WrittenLines();
    private final byte[] digits = new byte[LONGEST_NUMBER];
    private int filled;
    private long lastMicros;
    private int waiting;
    private long flushedMicros;
    private long handedBytes;
    private @Nullable IOException broken;
    private boolean closed;

    /**
     * Begins a take with its header.
     *
     * @param out closed by {@link #close()}
     */
    public TakeWriter(OutputStream out, TakeHeader header) throws IOException {
        this(out, null, header);
    }

    private TakeWriter(OutputStream out, @Nullable FileChannel file, TakeHeader header) throws IOException {
        this.out = out;
        this.file = file;
        for (String line : header.lines()) {
            text(line);
            put('\n');
        }
    }

    /** Begins a take in a file, which is made or emptied. */
    public static TakeWriter into(Path file, TakeHeader header) throws IOException {
        FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE);
        return new TakeWriter(Channels.newOutputStream(channel), channel, header);
    }

    /**
     * Adds a line as received.
     *
     * @param bytes the line without its line end: any byte but CR and LF
     * @param length how many of the bytes belong to it, 0 for an empty line
     * @param micros when its end arrived, microseconds from the take's start, not before the line before it
     */
    public void line(byte[] bytes, int length, long micros) throws IOException {
        if (micros < lastMicros) {
            throw new IllegalArgumentException("time " + micros + " microseconds (allowed " + lastMicros
                    + " and more, where the line before it stands): write lines in the order they came");
        }
        for (int i = 0; i < length; i++) {
            if (bytes[i] == '\n' || bytes[i] == '\r') {
                throw new IllegalArgumentException("line holds a line end at byte " + (i + 1) + " of " + length
                        + " (allowed: none): split it before writing");
            }
        }
        lastMicros = micros;
        number(micros);
        put('\t');
        put(bytes, length);
        put('\n');
        waiting++;
        if (waiting >= FLUSH_LINES || micros - flushedMicros >= FLUSH_MICROS) {
            flush();
        }
    }

    /** Marks the moment at which a step of a guided calibration begins; see {@link TakeEntry.Step}. */
    public void step(String name, long micros) throws IOException {
        TakeEntry.Step step = new TakeEntry.Step(micros, name);
        text(TakeMarks.STEP);
        number(step.micros());
        put(' ');
        text(step.name());
        put('\n');
    }

    /** Marks the stretch from which a hold was captured; see {@link TakeEntry.Captured}. */
    public void captured(String name, long fromMicros, long toMicros) throws IOException {
        TakeEntry.Captured captured = new TakeEntry.Captured(fromMicros, toMicros, name);
        text(TakeMarks.CAPTURED);
        number(captured.fromMicros());
        put(' ');
        number(captured.toMicros());
        put(' ');
        text(captured.name());
        put('\n');
    }

    /** Hands all that was written so far to the stream. */
    public void flush() throws IOException {
        waiting = 0;
        flushedMicros = lastMicros;
        drain();
        try {
            out.flush();
        } catch (IOException e) {
            broken = e;
            throw e;
        }
    }

    /** Whole lines that the stream has taken; in a file, also those of the write that it refused to finish. */
    public long written() {
        return written.count();
    }

    @Override
    public void close() throws IOException {
        if (closed) {
            return;
        }
        closed = true;
        try (out) {
            if (broken == null) {
                flush();
            }
        }
    }

    private void text(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        put(bytes, bytes.length);
    }

    private void number(long value) throws IOException {
        int at = LONGEST_NUMBER;
        long rest = value;
        do {
            digits[--at] = (byte) ('0' + rest % 10);
            rest /= 10;
        } while (rest > 0);
        while (at < LONGEST_NUMBER) {
            put(digits[at++]);
        }
    }

    private void put(byte[] bytes, int length) throws IOException {
        for (int i = 0; i < length; i++) {
            put(bytes[i]);
        }
    }

    private void put(int value) throws IOException {
        if (filled == BUFFER_BYTES) {
            drain();
        }
        buffer[filled++] = (byte) value;
    }

    // A buffered stream of the library would write its buffer again after a refusal and tear lines in the middle.
    private void drain() throws IOException {
        if (broken != null) {
            throw new IOException("the take could not be written on: " + broken.getMessage(), broken);
        }
        try {
            out.write(buffer, 0, filled);
        } catch (IOException e) {
            broken = e;
            written.add(buffer, taken());
            throw e;
        }
        handedBytes += filled;
        written.add(buffer, filled);
        filled = 0;
    }

    /** How much of the buffer the file took before it refused the rest; a mere stream doesn't tell. */
    private int taken() throws IOException {
        return file == null ? 0 : (int) Math.max(0, Math.min(filled, file.position() - handedBytes));
    }
}
