package handspan.outside.take;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Any place of a file is read from as if all before it had been read: held against reading it whole. */
class TakeIndexTest {
    private static final int PLACES = 60;

    @TempDir
    Path folder;

    private Path file(String text) throws IOException {
        return Files.write(folder.resolve("file"), text.getBytes(ISO_8859_1));
    }

    private static List<TakeEntry> lines(TakeFile file) throws TakeException {
        return Entries.all(file).stream()
                .filter(TakeEntry.Line.class::isInstance)
                .toList();
    }

    /** What stands from a time on in a list that was read from the start. */
    private static List<TakeEntry> from(long micros, List<TakeEntry> lines) {
        return lines.stream()
                .filter(line -> ((TakeEntry.Line) line).micros() >= micros)
                .toList();
    }

    private void everyPlaceIsFound(Path file, OptionalDouble rate, int leastBookmarks) throws IOException {
        TakeIndex index = TakeIndex.of(file, rate, () -> true);
        List<TakeEntry> whole;
        long count;
        try (TakeFile read = TakeFile.open(file, rate)) {
            whole = lines(read);
            count = read.lineCount();
        }
        long length = ((TakeEntry.Line) whole.get(whole.size() - 1)).micros();
        assertEquals(length, index.lengthMicros());
        Random random = new Random(7);
        List<TakeBookmark> used = new ArrayList<>();
        try (TakeFile read = TakeFile.open(file, rate)) {
            for (int i = 0; i < PLACES; i++) {
                long micros = i == 0 ? 0 : i == 1 ? length : random.nextLong(length + 2);
                TakeBookmark mark = index.before(micros);
                used.add(mark);
                read.goTo(mark);
                assertEquals(from(micros, whole), from(micros, lines(read)), "from " + micros);
                assertEquals(count, read.lineCount());
            }
        }
        long different = used.stream().distinct().count();
        assertTrue(different >= leastBookmarks, different + " bookmarks were of use");
    }

    /** Board lines of 50 a second for five minutes, some at the same time, with marks, damage and each line end. */
    @Test
    void ofATakeWithItsOwnTimes() throws IOException {
        Random random = new Random(3);
        StringBuilder text = new StringBuilder("\u00ef\u00bb\u00bf# handspan-take/1\r\n# instrument: reed\n");
        long micros = 1000;
        for (int i = 0; i < 15_000; i++) {
            micros += random.nextInt(5) == 0 ? 0 : random.nextInt(40_000);
            text.append(micros).append('\t').append(i).append(",300").append(i % 7 == 0 ? "\r\n" : "\n");
            if (i % 1000 == 0) {
                text.append("# step ").append(micros).append(" near\n");
            }
            if (i % 313 == 0) {
                text.append("12\tbefore its time\n");
            }
        }
        Path file = file(text.toString());
        everyPlaceIsFound(file, OptionalDouble.empty(), 20);
        TakeIndex index = TakeIndex.of(file, OptionalDouble.empty(), () -> true);
        assertEquals(15, index.marks().size());
        // the first stands before any time; each later one is damaged: 15,000 / 313 rounded up, less none
        assertTrue(index.remark().startsWith("48 damaged lines skipped")
                || index.remark().startsWith("47 damaged"));
    }

    @Test
    void ofAPlainLogThatIsDatedByARate() throws IOException {
        String text = IntStream.range(0, 12_000)
                .mapToObj(i -> i % 50 == 49 ? i + "\n" : Integer.toString(i))
                .collect(Collectors.joining("\n", "distances of an evening\n", "\n"));
        everyPlaceIsFound(file(text), OptionalDouble.of(40), 20);
    }

    /** Bookmarks stand at the ends of rows only. */
    @Test
    void ofAWideTable() throws IOException {
        int values = 200;
        StringBuilder text = new StringBuilder("id");
        IntStream.range(0, values).forEach(i -> text.append(",V").append(i));
        text.append('\n');
        for (int row = 0; row < 60; row++) {
            text.append(row);
            for (int i = 0; i < values; i++) {
                text.append(',').append(row * values + i);
            }
            text.append('\n');
        }
        everyPlaceIsFound(file(text.toString()), OptionalDouble.of(20), 20);
    }

    /** 2 hours at 1000 lines a second would be 7 million lines; a bookmark at each 5 s is 1440. */
    @Test
    void bookmarksAreFewHoweverManyLinesThereAre() throws IOException {
        String text = IntStream.range(0, 60_000)
                .mapToObj(i -> i * 1000L + "\t" + i)
                .collect(Collectors.joining("\n", "# handspan-take/1\n", "\n"));
        Path file = file(text);
        TakeIndex index = TakeIndex.of(file, OptionalDouble.empty(), () -> true);
        long different = IntStream.range(0, 60)
                .mapToObj(s -> index.before(s * 1_000_000L))
                .distinct()
                .count();
        // 60 s at 5 s each
        assertTrue(different >= 11 && different <= 13, different + " bookmarks");
        assertEquals(59_999_000, index.lengthMicros());
    }

    @Test
    void aReadingThatIsBrokenOffKnowsWhatItHasSeen() throws IOException {
        String text = IntStream.range(0, 1000)
                .mapToObj(i -> i * 20_000L + "\t" + i)
                .collect(Collectors.joining("\n", "# handspan-take/1\n", "\n"));
        TakeIndex index = TakeIndex.of(file(text), OptionalDouble.empty(), () -> false);
        assertTrue(index.lengthMicros() < 100 * 20_000L);
        assertEquals(0, index.before(50_000_000).micros());
    }
}
