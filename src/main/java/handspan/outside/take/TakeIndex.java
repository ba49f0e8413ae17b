package handspan.outside.take;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

/**
 * What a file has to be read through once to be known: how long it lasts, its marks, and bookmarks along it, so that
 * any place is found without reading all before it. An hour has some 700 bookmarks, however many lines. Immutable.
 */
public final class TakeIndex {
    /** Between bookmarks lie so much time and so many lines at least: both are read through in no time. */
    private static final long APART_MICROS = 5_000_000;

    private static final long APART_LINES = 100;

    /** More marks than any calibration makes. */
    private static final int MOST_MARKS = 500;

    private final long lengthMicros;
    private final List<TakeBookmark> bookmarks;
    private final List<TakeEntry> marks;
    private final String remark;

    private TakeIndex(long lengthMicros, List<TakeBookmark> bookmarks, List<TakeEntry> marks, String remark) {
        this.lengthMicros = lengthMicros;
        this.bookmarks = List.copyOf(bookmarks);
        this.marks = List.copyOf(marks);
        this.remark = remark;
    }

    /**
     * Reads a file through, holding a few lines of it at a time.
     *
     * @param ratePerS lines a second where it has no times
     * @param goesOn asked now and then; what was read until it says no is what is known
     * @throws IOException when it can't be read
     */
    public static TakeIndex of(Path path, OptionalDouble ratePerS, BooleanSupplier goesOn) throws IOException {
        List<TakeBookmark> bookmarks = new ArrayList<>();
        List<TakeEntry> marks = new ArrayList<>();
        try (TakeFile file = TakeFile.open(path, ratePerS)) {
            file.bookmark().ifPresent(bookmarks::add);
            long lengthMicros = 0;
            TakeEntry entry = file.next();
            while (entry != null && (file.lineCount() % APART_LINES != 0 || goesOn.getAsBoolean())) {
                if (entry instanceof TakeEntry.Line line) {
                    lengthMicros = line.micros();
                    bookmark(file, bookmarks);
                } else if (marks.size() < MOST_MARKS) {
                    marks.add(entry);
                }
                entry = file.next();
            }
            return new TakeIndex(lengthMicros, bookmarks, marks, file.remark(ratePerS));
        }
    }

    private static void bookmark(TakeFile file, List<TakeBookmark> bookmarks) {
        TakeBookmark last = bookmarks.get(bookmarks.size() - 1);
        if (file.lineCount() - last.lines() >= APART_LINES) {
            file.bookmark()
                    .filter(here -> here.micros() - last.micros() >= APART_MICROS)
                    .ifPresent(bookmarks::add);
        }
    }

    /** Time of the last line, microseconds from the start. */
    public long lengthMicros() {
        return lengthMicros;
    }

    /** Steps and captures, as they stand. */
    public List<TakeEntry> marks() {
        return marks;
    }

    /** What is to be said of the file; may be empty. */
    public String remark() {
        return remark;
    }

    /**
     * The last bookmark from which all lines of a time and later are still to come.
     *
     * @param micros microseconds from the start
     */
    public TakeBookmark before(long micros) {
        int low = 0;
        int high = bookmarks.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            // a line of the same time may stand before the bookmark
            if (bookmarks.get(middle).micros() < micros) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return bookmarks.get(low);
    }
}
