package handspan.outside.take;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class RecordingTapTest {
    private static final long READING_NANOS = 10_000_000;

    /** A device of Linux that takes no byte: every write ends with "no space left on device" (full(4)). */
    private static final Path FULL = Path.of("/dev/full");

    @TempDir
    Path folder;

    private static void lines(RecordingTap tap, int from, int to) {
        for (int i = from; i < to; i++) {
            byte[] line = ("line " + i).getBytes(US_ASCII);
            tap.onLine(line, line.length, i * READING_NANOS);
        }
    }

    private static List<String> read(Path file) {
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            return Entries.texts(take);
        } catch (IOException e) {
            return List.of();
        }
    }

    /** What a program that is killed leaves: the file as it is while the recording is still open. */
    @Test
    void linesAreInTheFileLongBeforeItIsClosed() throws IOException {
        Path file = folder.resolve("killed.take");
        try (RecordingTap tap = new RecordingTap(TakeWriter.into(file, TakeHeader.unknown()))) {
            lines(tap, 0, 120);
            Waits.until(() -> read(file).size() >= 100);
            // and the last ones as soon as no other comes for half a second
            Waits.until(() -> read(file).size() == 120);
            assertEquals(120, tap.written());
            assertEquals(0, tap.lost());
        }
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aFullDiskEndsTheRecordingAndNothingElse() throws IOException {
        try (RecordingTap tap = new RecordingTap(TakeWriter.into(FULL, TakeHeader.unknown()))) {
            lines(tap, 0, 120);
            Waits.until(() -> !tap.trouble().isEmpty());
            lines(tap, 120, 200);
            assertTrue(tap.trouble().startsWith("recording stopped: "), tap.trouble());
            assertEquals(0, tap.written());
            assertEquals(200, tap.lost());
        }
    }

    @Test
    void whatIsCountedAsWrittenIsThereAndTheFileIsClosedAtOnce() throws IOException {
        FullDisk disk = new FullDisk(10_007);
        try (RecordingTap tap = new RecordingTap(new TakeWriter(disk, TakeHeader.unknown()))) {
            lines(tap, 0, 3_000);
            Waits.until(() -> !tap.trouble().isEmpty());
            assertEquals("recording stopped: no space left", tap.trouble());
            assertEquals(1, disk.closings());
            Path file = Files.write(folder.resolve("brim.take"), disk.stored());
            // a stream doesn't tell how much of its last write it took: those lines are there, but not counted
            long there = read(file).size();
            assertTrue(tap.written() <= there && tap.written() > there - 51, tap.written() + " of " + there);
            assertEquals(3_000 - tap.written(), tap.lost());
        }
    }

    /** A line out of its time can't be written; that is told like a full disk, and no thread dies of it unheard. */
    @Test
    void aLineThatCanNotBeWrittenEndsTheRecordingInWords() throws IOException {
        Path file = folder.resolve("late.take");
        try (RecordingTap tap = new RecordingTap(TakeWriter.into(file, TakeHeader.unknown()))) {
            lines(tap, 100, 102);
            lines(tap, 150, 151);
            lines(tap, 120, 121);
            Waits.until(() -> !tap.trouble().isEmpty());
            assertTrue(tap.trouble().contains("write lines in the order they came"), tap.trouble());
            assertEquals(List.of("line 100", "line 101", "line 150"), read(file));
            assertEquals(3, tap.written());
        }
    }
}
