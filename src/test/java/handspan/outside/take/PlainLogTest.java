package handspan.outside.take;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainLogTest {
    private static final OptionalDouble NO_RATE = OptionalDouble.empty();

    @TempDir
    Path folder;

    @Test
    void linesAreDatedEvenlyFromZeroAndTheHeaderIsKeptApart() throws IOException {
        Path file = write("log.csv", "Fs,50.00\nLogging time,3600\nd\n79.0\n74.0\n76.0\n77.0\n");
        try (TakeFile log = TakeFile.open(file, OptionalDouble.of(3))) {
            assertEquals(TakeKind.PLAIN_LOG, log.kind());
            assertEquals(List.of("Fs,50.00", "Logging time,3600", "d"), log.headerLines());
            assertEquals(OptionalDouble.of(50), log.statedRatePerS());
            assertEquals(OptionalDouble.of(3600), log.statedSeconds());
            assertEquals(TakeHeader.unknown(), log.header());
            // thirds of a second, rounded to the nearest microsecond
            assertEquals(
                    List.of(line(0, "79.0"), line(333_333, "74.0"), line(666_667, "76.0"), line(1_000_000, "77.0")),
                    Entries.all(log));
            assertEquals(4, log.lineCount());
            assertEquals(Optional.empty(), log.tableRemark());
        }
    }

    @Test
    void withoutARateTheMessageSaysWhatToGive() throws IOException {
        Path bare = write("bare.txt", "D:23\nD:24\n");
        assertEquals(
                bare + " is a plain log without times: give --rate PER_SECOND",
                assertThrows(TakeException.class, () -> open(bare, NO_RATE)).getMessage());
        Path stated = write("stated.txt", "Fs,50.00\n23\n24\n");
        assertEquals(
                stated + " is a plain log without times: give --rate PER_SECOND (its header says 50 a second)",
                assertThrows(TakeException.class, () -> open(stated, NO_RATE)).getMessage());
        Path take = write("with-times.take", "# handspan-take/1\n5\ta\n");
        try (TakeFile own = TakeFile.open(take, NO_RATE)) {
            assertEquals(List.of(line(5, "a")), Entries.all(own));
        }
    }

    @Test
    void ratesThatCannotDateAreRefused() throws IOException {
        Path log = write("log.txt", "1\n2\n");
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1_000_001}) {
            assertThrows(IllegalArgumentException.class, () -> open(log, OptionalDouble.of(bad)));
        }
    }

    @Test
    void everyKindOfLineEndPartsLines() throws IOException {
        Path file = write("ends.txt", "1\n2\r3\r\n4\n\r5\r\r6");
        try (TakeFile log = TakeFile.open(file, OptionalDouble.of(1))) {
            assertEquals(List.of("1", "2", "3", "4", "5", "", "6"), Entries.texts(log));
        }
    }

    @Test
    void blankLinesAreHandedOnButTakeNoTime() throws IOException {
        Path file = write("blocks.txt", "mid: 41.2\nleft: 18.0\n\nmid: 40.9\nleft: 18.1\n \n");
        try (TakeFile log = TakeFile.open(file, OptionalDouble.of(1000))) {
            assertEquals(
                    List.of(
                            line(0, "mid: 41.2"),
                            line(1000, "left: 18.0"),
                            line(2000, ""),
                            line(2000, "mid: 40.9"),
                            line(3000, "left: 18.1"),
                            line(4000, " ")),
                    Entries.all(log));
            assertEquals(4, log.lineCount());
        }
    }

    @Test
    void bytesOfALogComeThroughAsTheyAre() throws IOException {
        Path file = write("raw.txt", "\u0000\u00FF\u001B[2J\n873 \u00C2\u00B5s\n");
        try (TakeFile log = TakeFile.open(file, OptionalDouble.of(1))) {
            assertEquals(List.of("\u0000\u00FF\u001B[2J", "873 \u00C2\u00B5s"), Entries.texts(log));
        }
    }

    @Test
    void anEndlessLineOfALogIsSkippedAndItsMomentPasses() throws IOException {
        Path file = write("endless.txt", "1\n" + "7".repeat(RawLines.LONGEST_BYTES + 1) + "\n3\n");
        try (TakeFile log = TakeFile.open(file, OptionalDouble.of(1))) {
            assertEquals(List.of(line(0, "1"), line(2_000_000, "3")), Entries.all(log));
            assertEquals(1, log.damagedLines());
        }
    }

    /**
     * Kept lines would weigh some 50 MB: 24 bytes or more for each of the million entries and as much for its bytes.
     */
    @Test
    void aMillionLinesStreamThroughLittleMemory() throws IOException {
        int lines = 1_000_000;
        long allowedGrowthBytes = 16L << 20;
        Path file = folder.resolve("long.txt");
        try (OutputStream out = Files.newOutputStream(file)) {
            byte[] block = "234.0,567\n".repeat(10_000).getBytes(ISO_8859_1);
            for (int i = 0; i < lines / 10_000; i++) {
                out.write(block);
            }
        }
        try (TakeFile log = TakeFile.open(file, OptionalDouble.of(55.6))) {
            assertEquals(line(0, "234.0,567"), log.next());
            long usedAtStart = usedBytes();
            for (int i = 2; i < lines; i++) {
                log.next();
            }
            long grown = usedBytes() - usedAtStart;
            assertTrue(grown < allowedGrowthBytes, "grown by " + grown + " bytes");
            // by hand: 999,999 / 55.6 = 17,985.593525 s
            assertEquals(line(17_985_593_525L, "234.0,567"), log.next());
            assertEquals(null, log.next());
            assertEquals(lines, log.lineCount());
        }
    }

    @Test
    void filesThatCannotBeReadAreNamedWithTheRemedy() throws IOException {
        Path missing = folder.resolve("missing.take");
        assertMessage(missing, missing + " does not exist: check the file's name");
        Path nowhere = folder.resolve("no-folder").resolve("a.take");
        assertMessage(nowhere, nowhere + " does not exist, nor does its folder: check the folder's name");
        assertMessage(folder, folder + " is a folder: name a file in it");
        Path empty = write("empty.take", "");
        assertMessage(empty, empty + " is empty: record again or choose another file");
        Path newer = write("newer.take", "# handspan-take/2\n5\ta\n");
        assertMessage(
                newer,
                newer + ", line 1: '# handspan-take/2' is another version of a take"
                        + " (readable: '# handspan-take/1'): read it with the version that wrote it");
        // Unicode standard, byte order mark U+FEFF in UTF-16 little endian: FF FE
        Path wide = Files.write(folder.resolve("wide.txt"), "\uFEFF23\n".getBytes(UTF_16LE));
        assertMessage(wide, wide + " is UTF-16 text, two bytes a character: save it as UTF-8 and try again");
        assertEquals(
                "locked.take may not be read by this user: change its permissions or copy it to a folder of your own",
                TakeException.opening(Path.of("locked.take"), new AccessDeniedException("locked.take"))
                        .getMessage());
    }

    private void assertMessage(Path file, String message) {
        TakeException refusal = assertThrows(TakeException.class, () -> open(file, OptionalDouble.of(50)));
        assertEquals(message, refusal.getMessage());
    }

    private static List<TakeEntry> open(Path file, OptionalDouble ratePerS) throws IOException {
        try (TakeFile opened = TakeFile.open(file, ratePerS)) {
            return new ArrayList<>(Entries.all(opened));
        }
    }

    private static long usedBytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private static TakeEntry.Line line(long micros, String text) {
        return new TakeEntry.Line(micros, text.getBytes(ISO_8859_1));
    }

    private Path write(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(ISO_8859_1));
    }
}
