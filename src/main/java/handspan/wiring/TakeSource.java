package handspan.wiring;

import handspan.live.session.Replay;
import handspan.outside.take.TakeBookmark;
import handspan.outside.take.TakeEntry;
import handspan.outside.take.TakeException;
import handspan.outside.take.TakeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A recording as bytes with times: each line with a line end, and one line end before the first. Lines of one time came
 * in one chunk, and do so again.
 */
final class TakeSource implements Replay.TimedBytes, AutoCloseable {
    /** Most bytes of a chunk, so that it fits into what a link is read into. */
    private static final int MOST_BYTES = 3000;

    private final TakeFile file;
    private final OptionalDouble ratePerS;
    private final long startNanos;
    private final TakeBookmark start;
    private final long beginMicros;
    private TakeEntry.@Nullable Line next;
    private boolean first = true;
    private String trouble = "";

    /** A recording from its start; see {@link #TakeSource(Path, OptionalDouble, long, long)}. */
    TakeSource(Path path, OptionalDouble ratePerS, long startNanos) throws TakeException {
        this(path, ratePerS, startNanos, 0);
    }

    /**
     * Opens a recording.
     *
     * @param path of the file
     * @param ratePerS lines a second where the recording has no times
     * @param startNanos time of the place where it begins
     * @param beginMicros that place, microseconds from the recording's start
     * @throws TakeException when it can't be read, saying why and what to do
     */
    TakeSource(Path path, OptionalDouble ratePerS, long startNanos, long beginMicros) throws TakeException {
        this.file = TakeFile.open(path, ratePerS);
        this.ratePerS = ratePerS;
        this.startNanos = startNanos;
        this.start = file.bookmark().orElseThrow(() -> new IllegalStateException("a file that begins in mid-row"));
        this.beginMicros = beginMicros;
        this.next = nextLine();
        passTo(beginMicros);
    }

    private void passTo(long micros) {
        while (next != null && next.micros() < micros) {
            next = nextLine();
        }
    }

    /** Where it begins, microseconds from the recording's start. */
    long beginMicros() {
        return beginMicros;
    }

    /** From where all of it is still to come. */
    TakeBookmark start() {
        return start;
    }

    /** Time of the next line, microseconds from the recording's start; {@link Long#MAX_VALUE} at the end. */
    long nextMicros() {
        return next == null ? Long.MAX_VALUE : next.micros();
    }

    /**
     * Goes to a place; the next line is the first of that time or later.
     *
     * @param micros from the recording's start
     * @param before a bookmark with all lines from there on still to come
     */
    void goTo(long micros, TakeBookmark before) {
        try {
            file.goTo(before);
            next = nextLine();
            passTo(micros);
        } catch (TakeException e) {
            trouble = String.valueOf(e.getMessage());
            next = null;
        }
        again();
    }

    /** Whoever reads takes what comes next for the rest of a line: it begins with a line end once more. */
    void again() {
        first = true;
    }

    private TakeEntry.@Nullable Line nextLine() {
        try {
            TakeEntry entry = file.next();
            while (entry != null && !(entry instanceof TakeEntry.Line)) {
                entry = file.next();
            }
            return (TakeEntry.Line) entry;
        } catch (TakeException e) {
            trouble = String.valueOf(e.getMessage());
            return null;
        }
    }

    @Override
    public long nextNanos() {
        return next == null ? Long.MAX_VALUE : startNanos + (next.micros() - beginMicros) * 1000;
    }

    @Override
    public byte[] next() {
        TakeEntry.Line line = next;
        if (line == null) {
            throw new IllegalStateException("the recording is over");
        }
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        if (first) {
            chunk.write('\n');
        }
        first = false;
        long micros = line.micros();
        while (line != null && line.micros() == micros && fits(chunk, line)) {
            chunk.writeBytes(line.bytes());
            chunk.write('\n');
            line = nextLine();
        }
        next = line;
        return chunk.toByteArray();
    }

    private static boolean fits(ByteArrayOutputStream chunk, TakeEntry.Line line) {
        return chunk.size() <= 1 || chunk.size() + line.bytes().length < MOST_BYTES;
    }

    /** The link speed it says it was made at; 0 where it does not. */
    int baud() {
        return file.header().baud();
    }

    /** What is to be said of the recording, once it has been read. */
    String remark() {
        String read = file.remark(ratePerS);
        return read.isEmpty() || trouble.isEmpty() ? read + trouble : read + "; " + trouble;
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            trouble = String.valueOf(e.getMessage());
        }
    }
}
