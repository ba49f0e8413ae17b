package handspan.wiring;

import handspan.live.session.Replay;
import handspan.outside.take.TakeEntry;
import handspan.outside.take.TakeException;
import handspan.outside.take.TakeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    private TakeEntry.@Nullable Line next;
    private boolean first = true;
    private String trouble = "";

    /**
     * Opens a recording.
     *
     * @param path of the file
     * @param ratePerS lines a second where the recording has no times
     * @param startNanos added to all times
     * @throws TakeException when it can't be read, saying why and what to do
     */
    TakeSource(Path path, OptionalDouble ratePerS, long startNanos) throws TakeException {
        this.file = TakeFile.open(path, ratePerS);
        this.ratePerS = ratePerS;
        this.startNanos = startNanos;
        this.next = nextLine();
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
        return next == null ? Long.MAX_VALUE : startNanos + next.micros() * 1000;
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
        List<String> remarks = new ArrayList<>();
        if (ratePerS.isPresent()) {
            file.rateRemark(file.lineCount(), ratePerS.getAsDouble()).ifPresent(remarks::add);
        }
        file.tableRemark().ifPresent(remarks::add);
        file.damageRemark().ifPresent(remarks::add);
        if (!trouble.isEmpty()) {
            remarks.add(trouble);
        }
        return String.join("; ", remarks);
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
