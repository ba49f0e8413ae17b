package handspan.outside.take;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakeWriterTest {
    @TempDir
    Path folder;

    @Test
    void writesTheFormWrittenDownForTakes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TakeHeader header = new TakeHeader(
                "2031-05-04T19:30:00+02:00", "reed lamp", "/dev/ttyACM0", 115200, List.of("cold hall, doors open"));
        try (TakeWriter writer = new TakeWriter(out, header)) {
            writer.step("near", 0);
            line(writer, "234,567", 20_125);
            writer.line("235,566 and what was left in the array".getBytes(ISO_8859_1), 7, 40_250);
            writer.captured("near", 20_125, 40_250);
        }
        // written by hand from the form: # header lines, microseconds TAB line, # step TIME NAME, # captured FROM TO
        // NAME
        assertEquals("""
                # handspan-take/1
                # started: 2031-05-04T19:30:00+02:00
                # instrument: reed lamp
                # source: /dev/ttyACM0
                # baud: 115200
                # note: cold hall, doors open
                # step 0 near
                20125\t234,567
                40250\t235,566
                # captured 20125 40250 near
                """, out.toString(UTF_8));
    }

    @Test
    void everyByteButLineEndsComesBackAsItWas() throws IOException {
        byte[] every = new byte[254];
        int length = 0;
        for (int b = 0; b < 256; b++) {
            if (b != '\n' && b != '\r') {
                every[length++] = (byte) b;
            }
        }
        List<byte[]> lines = new ArrayList<>(List.of(
                every,
                new byte[0],
                "# step 5 near".getBytes(ISO_8859_1),
                "# handspan-take/1".getBytes(ISO_8859_1),
                "\t\ttabs\t".getBytes(ISO_8859_1),
                "12 µs".getBytes(UTF_8),
                new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}));
        Random random = new Random(20);
        for (int i = 0; i < 500; i++) {
            byte[] noise = new byte[random.nextInt(300)];
            for (int k = 0; k < noise.length; k++) {
                noise[k] = every[random.nextInt(every.length)];
            }
            lines.add(noise);
        }
        Path file = folder.resolve("all.take");
        List<TakeEntry> written = new ArrayList<>();
        try (TakeWriter writer = new TakeWriter(Files.newOutputStream(file), TakeHeader.unknown())) {
            for (byte[] bytes : lines) {
                long micros = 7L * written.size();
                writer.line(bytes, bytes.length, micros);
                written.add(new TakeEntry.Line(micros, bytes));
            }
        }
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(written, Entries.all(take));
            assertEquals(written.size(), take.lineCount());
            assertEquals(0, take.damagedLines());
        }
    }

    @Test
    void headerAndMarksComeBackAsTheyWere() throws IOException {
        TakeHeader header = new TakeHeader(
                "2031-05-04T19:30:00Z", "Größe: 3 # Σ", "sim:evening", 0, List.of("first", "step 5 of 6: hurried"));
        List<TakeEntry> marks = List.of(
                new TakeEntry.Step(0, "near"),
                new TakeEntry.Line(90, "1".getBytes(ISO_8859_1)),
                new TakeEntry.Step(5, " ruler 250 mm "),
                new TakeEntry.Captured(5, 5, "größer  als 3"),
                new TakeEntry.Captured(0, 999_999_999_999_999_999L, "# 1 2"));
        Path file = folder.resolve("marks.take");
        try (TakeWriter writer = new TakeWriter(Files.newOutputStream(file), header)) {
            for (TakeEntry mark : marks) {
                if (mark instanceof TakeEntry.Line line) {
                    writer.line(line.bytes(), line.bytes().length, line.micros());
                } else if (mark instanceof TakeEntry.Step step) {
                    writer.step(step.name(), step.micros());
                } else if (mark instanceof TakeEntry.Captured captured) {
                    writer.captured(captured.name(), captured.fromMicros(), captured.toMicros());
                }
            }
        }
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(header, take.header());
            assertEquals(marks, Entries.all(take));
            assertEquals(0, take.damagedLines());
        }
    }

    @Test
    void refusesWhatCouldNotBeReadBack() throws IOException {
        try (TakeWriter writer = new TakeWriter(OutputStream.nullOutputStream(), TakeHeader.unknown())) {
            line(writer, "1", 50);
            assertThrows(IllegalArgumentException.class, () -> line(writer, "1", 49));
            assertThrows(IllegalArgumentException.class, () -> line(writer, "1\r", 60));
            assertThrows(IllegalArgumentException.class, () -> line(writer, "1\n2", 60));
            assertThrows(IllegalArgumentException.class, () -> writer.step(" ", 60));
            assertThrows(IllegalArgumentException.class, () -> writer.step("a\nb", 60));
            assertThrows(IllegalArgumentException.class, () -> writer.step("near", -1));
            assertThrows(IllegalArgumentException.class, () -> writer.captured("near", 60, 59));
        }
        assertThrows(IllegalArgumentException.class, () -> new TakeHeader("", "a\nb", "", 0, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new TakeHeader("", "", "", -1, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new TakeHeader("", "", "", 0, List.of(" ")));
    }

    @Test
    void flushHandsOnAllThatWasWritten() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (TakeWriter writer = new TakeWriter(out, TakeHeader.unknown())) {
            line(writer, "23", 4);
            writer.flush();
            assertEquals("# handspan-take/1\n4\t23\n", out.toString(UTF_8));
        }
    }

    @Test
    void aFullDiskLeavesAllWholeLinesReadable() throws IOException {
        int roomBytes = 150_001;
        FullDisk disk = new FullDisk(roomBytes);
        TakeWriter writer = new TakeWriter(disk, TakeHeader.unknown());
        IOException refusal = assertThrows(IOException.class, () -> {
            for (int i = 0; i < 100_000; i++) {
                line(writer, "line " + i, i);
            }
        });
        assertEquals("no space left", refusal.getMessage());
        assertThrows(IOException.class, writer::flush);
        writer.close();
        writer.close();
        assertEquals(1, disk.closings());
        byte[] stored = disk.stored();
        assertEquals(roomBytes, stored.length);

        Path file = Files.write(folder.resolve("full.take"), stored);
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            List<String> texts = Entries.texts(take);
            assertTrue(texts.size() > 5_000, "lines " + texts.size());
            for (int i = 0; i < texts.size(); i++) {
                assertEquals("line " + i, texts.get(i));
            }
            assertTrue(take.damagedLines() <= 1);
        }
    }

    private static void line(TakeWriter writer, String text, long micros) throws IOException {
        byte[] bytes = text.getBytes(ISO_8859_1);
        writer.line(bytes, bytes.length, micros);
    }
}
