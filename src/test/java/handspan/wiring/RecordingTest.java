package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An evening can't be had again: a recording never writes over another. */
class RecordingTest {
    private static final Source SOURCE = Source.parse("sim:hall");

    @TempDir
    Path folder;

    private Optional<Path> recorded(Path file) throws IOException {
        try (Recording recording = Recording.into(file, "2031-05-04T19:30:00Z", "Willowreach", SOURCE, 115200)) {
            return recording.setAside();
        }
    }

    @Test
    void aTakeThatIsThereIsMovedToTheNextFreeName() throws IOException {
        Path file = folder.resolve("evening.take");
        Files.writeString(file, "first");
        assertEquals(Optional.of(folder.resolve("evening-2.take")), recorded(file));
        Files.writeString(file, "second");
        assertEquals(Optional.of(folder.resolve("evening-3.take")), recorded(file));

        assertEquals("first", Files.readString(folder.resolve("evening-2.take")));
        assertEquals("second", Files.readString(folder.resolve("evening-3.take")));
        assertTrue(Files.readString(file).contains("sim:hall"));
    }

    @Test
    void aNameWithoutAnEndingIsCountedAsWell() throws IOException {
        Path file = folder.resolve("evening");
        Files.writeString(file, "first");

        assertEquals(Optional.of(folder.resolve("evening-2")), recorded(file));
    }

    @Test
    void whereThereIsNoneOrAnEmptyFileNothingIsMoved() throws IOException {
        Path file = folder.resolve("evening.take");
        assertEquals(Optional.empty(), recorded(file));

        Path empty = Files.createFile(folder.resolve("empty.take"));
        assertEquals(Optional.empty(), recorded(empty));
    }

    @Test
    void theRecordingThatIsPlayedIsNotRecordedInto() throws IOException {
        Path file = folder.resolve("evening.take");
        Files.writeString(file, "first");
        Source same = Source.parse("take:" + file);
        IOException e = assertThrows(
                IOException.class, () -> Recording.into(file, "2031-05-04T19:30:00Z", "Willowreach", same, 115200));

        assertTrue(String.valueOf(e.getMessage()).contains("is the recording that is played"), e::getMessage);
        assertEquals("first", Files.readString(file));
    }
}
