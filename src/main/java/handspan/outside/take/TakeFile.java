package handspan.outside.take;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Reads a recorded file entry by entry, holding only a few lines of it at a time. It tells by itself what it has before
 * it:
 *
 * <ul>
 *   <li>a take: its first line is {@code # handspan-take/1}; it brings its own times and marks;
 *   <li>a plain log: any other text; a few header lines may lead ({@link #headerLines()}), each further line is a line
 *       as received, dated evenly by a rate the caller gives, the first at 0;
 *   <li>a wide table: its heading ends in 50 or more columns of one name numbered in order; each row is a stretch of
 *       one channel and becomes one line per value, dated likewise, the leading columns left out.
 * </ul>
 *
 * <p>What cannot be used is skipped, counted ({@link #damagedLines()}) and the first of it named; reading goes on.
 * Owned by one thread; close it.
 */
public final class TakeFile implements Closeable {
    private final Path file;
    private final SeekableByteChannel channel;
    private final RawLines lines;
    private final Damage damage;
    private final EntrySource source;
    private final StatedFigures stated;
    private long lastMicros;

    private TakeFile(Path file, SeekableByteChannel channel, RawLines lines, Damage damage, EntrySource source) {
        this.file = file;
        this.channel = channel;
        this.lines = lines;
        this.damage = damage;
        this.source = source;
        this.stated = StatedFigures.of(source.kind() == TakeKind.TAKE ? List.of() : source.headerLines());
    }

    /**
     * Opens a file and reads its header.
     *
     * @param ratePerS lines (of a wide table: values) per second, above 0, at most 1,000,000; needed for logs and
     *     tables, unused for takes, which have their own times
     * @throws TakeException when the file is missing, unreadable, empty, of a newer version, or needs a rate
     */
    public static TakeFile open(Path file, OptionalDouble ratePerS) throws TakeException {
        if (Files.isDirectory(file)) {
            throw new TakeException(file + " is a folder: name a file in it");
        }
        try {
            return open(file, Files.newByteChannel(file), ratePerS);
        } catch (TakeException e) {
            throw e;
        } catch (IOException e) {
            throw TakeException.opening(file, e);
        }
    }

    private static TakeFile open(Path file, SeekableByteChannel in, OptionalDouble ratePerS) throws IOException {
        try {
            RawLines lines = new RawLines(Channels.newInputStream(in));
            Damage damage = new Damage();
            return new TakeFile(file, in, lines, damage, EntrySource.of(file, lines, damage, ratePerS));
        } catch (IOException | RuntimeException e) {
            in.close();
            throw e;
        }
    }

    /** What kind of file this is. */
    public TakeKind kind() {
        return source.kind();
    }

    /** What a take says about itself; all unknown for logs and tables. */
    public TakeHeader header() {
        return source.header();
    }

    /** The lines before the first entry, as they stand, blank ones left out. */
    public List<String> headerLines() {
        return source.headerLines();
    }

    /** The rate that the header of a log claims, lines per second. */
    public OptionalDouble statedRatePerS() {
        return stated.ratePerS();
    }

    /** The length that the header of a log claims, s. */
    public OptionalDouble statedSeconds() {
        return stated.seconds();
    }

    /**
     * Words the contradiction, if any, between what a log's header claims, its number of lines and the rate in use.
     * Does not read on: call it with {@link #lineCount()} once all is read.
     *
     * @param lineCount lines of data in the whole log
     * @param givenRate the rate by which they are dated, per second
     */
    public Optional<String> rateRemark(long lineCount, double givenRate) {
        return stated.rateRemark(lineCount, givenRate);
    }

    /** How a wide table was unrolled so far, for example {@code 28 rows of 3,000 values of V, unrolled}. */
    public Optional<String> tableRemark() {
        return source.tableRemark();
    }

    /** Lines so far; blank lines of a log do not count. The number of all lines once {@link #next()} gave null. */
    public long lineCount() {
        return source.lineCount();
    }

    /** Lines (of a wide table: rows) that had to be skipped so far. */
    public long damagedLines() {
        return damage.count();
    }

    /** How many lines were skipped, with number and fault of the first; empty when none. */
    public Optional<String> damageRemark() {
        return damage.remark();
    }

    /**
     * All that is to be said of the file, once it has been read; may be empty.
     *
     * @param givenRate the rate by which its lines are dated, where it has no times
     */
    public String remark(OptionalDouble givenRate) {
        List<String> remarks = new ArrayList<>();
        if (givenRate.isPresent()) {
            rateRemark(lineCount(), givenRate.getAsDouble()).ifPresent(remarks::add);
        }
        tableRemark().ifPresent(remarks::add);
        damageRemark().ifPresent(remarks::add);
        return String.join("; ", remarks);
    }

    /**
     * The next entry, null at the end.
     *
     * @throws TakeException when the disk fails
     */
    public @Nullable TakeEntry next() throws TakeException {
        try {
            TakeEntry entry = source.next();
            lastMicros = entry instanceof TakeEntry.Line line ? line.micros() : lastMicros;
            return entry;
        } catch (IOException e) {
            throw TakeException.reading(file, lines.number(), e);
        }
    }

    /** Where reading could go on later; empty in the middle of a table's row. */
    public Optional<TakeBookmark> bookmark() {
        return source.isBetweenLines()
                ? Optional.of(new TakeBookmark(lastMicros, lines.takenBytes(), lines.takenNumber(), source.lineCount()))
                : Optional.empty();
    }

    /**
     * Goes on from a bookmark of this very file, forward or back.
     *
     * @throws TakeException when the disk fails
     */
    public void goTo(TakeBookmark mark) throws TakeException {
        try {
            channel.position(mark.bytes());
            lines.goOn(mark.bytes(), mark.lineNumber());
            source.goOn(mark);
            lastMicros = mark.micros();
        } catch (IOException e) {
            throw TakeException.reading(file, mark.lineNumber(), e);
        }
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
