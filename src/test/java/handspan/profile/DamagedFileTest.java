package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are no readable profile: said where, and never written over. What is JSON: RFC 8259. */
class DamagedFileTest {
    private static final String ROOM = "Copper Attic";

    @TempDir
    Path folder;

    /** Contents in Latin-1, so that any byte can stand there, and what the message must say of the place. */
    static Stream<Arguments> damaged() {
        return Stream.of(
                Arguments.of("", "the file is empty"),
                Arguments.of(" \n", "the file is empty"),
                // as some file systems leave a file after a power cut; the place named is the one just read past
                Arguments.of("\u0000\u0000\u0000", "line 1, column 2: not JSON"),
                Arguments.of("[]", "does not hold an object"),
                // a colon left out before the value
                Arguments.of("{\n  \"room\" \"x\"\n}", "line 2, column 10: not JSON"),
                // cut off in the middle of a text
                Arguments.of("{\n  \"room\": \"Copp", "line 2, column 16: not JSON"),
                // a decimal comma: the second number stands where a key should
                Arguments.of("{\n\n  \"ratePerS\": 50,125\n}", "line 3, column 18: not JSON"),
                // columns count characters, not bytes: two letters with accents stand before the fault
                Arguments.of("{\"\u00c3\u00a9\u00c3\u00a9\": x}", "line 1, column 8: not JSON"),
                // one key twice
                Arguments.of(
                        "{\n  \"room\": \"a\",\n  \"room\": \"b\"\n}",
                        "line 3, column 9: not JSON: Duplicate field 'room'"),
                Arguments.of("{}\n}", "line 2, column 1: not JSON"),
                Arguments.of("{}\n{}", "line 2, column 1: more text after the closing brace"),
                // too deep for any reader
                Arguments.of("{\"a\": " + "[".repeat(1500), "nesting depth (1001) exceeds the maximum allowed (1000);"),
                // Latin-1 written where UTF-8 belongs
                Arguments.of("{\n  \"room\": \"caf\u00e9\"\n}", "line 2, column 15: not UTF-8 text"),
                Arguments.of("{}", "key format: missing"),
                Arguments.of("{\"format\": 1}", "key format: 1 (a text in quotes)"),
                Arguments.of(
                        "{\"format\": \"handspan-room/2\"}", "key format: \"handspan-room/2\" is not readable here"),
                Arguments.of(
                        "{\"format\": \"handspan-instrument/1\"}",
                        "key format: \"handspan-instrument/1\" is not readable here"),
                Arguments.of("{\"format\": \"handspan-room/1\"}", "key room: missing"));
    }

    private Path damage(String latin1) throws IOException {
        Path file = folder.resolve(ROOM + ".json");
        Files.write(file, latin1.getBytes(StandardCharsets.ISO_8859_1));
        return file;
    }

    @ParameterizedTest
    @MethodSource("damaged")
    void aDamagedFileIsNamedWithThePlaceOfTheFault(String content, String place) throws IOException {
        Path file = damage(content);
        ProfileException e = assertThrows(ProfileException.class, () -> new ProfileFolder(folder).load(ROOM));
        assertEquals(ProfileException.Kind.DAMAGED, e.kind());
        String message = String.valueOf(e.getMessage());
        assertTrue(message.startsWith(file + ", "), message);
        assertTrue(message.contains(place), message);
    }

    @ParameterizedTest
    @MethodSource("damaged")
    void aDamagedFileIsNeverWrittenOver(String content, String place) throws IOException {
        Path file = damage(content);
        byte[] before = Files.readAllBytes(file);
        ProfileException e =
                assertThrows(ProfileException.class, () -> new ProfileFolder(folder).save(SampleRooms.twoHands(ROOM)));
        assertEquals(ProfileException.Kind.DAMAGED, e.kind());
        assertTrue(String.valueOf(e.getMessage()).contains(place), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains("nothing was saved"), e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void theNewestGoodVersionIsOffered() throws IOException, ProfileException {
        ProfileFolder profiles = new ProfileFolder(folder);
        RoomProfile first = SampleRooms.twoHands(ROOM);
        profiles.save(first);
        profiles.save(SampleRooms.onlyPitch(ROOM));
        profiles.save(first);
        List<Integer> versions = profiles.versions(ROOM);
        assertEquals(2, versions.size());
        Path history = folder.resolve(".history").resolve(ROOM);
        Files.writeString(history.resolve("000002.json"), "{");
        damage("{");

        ProfileException onLoad = assertThrows(ProfileException.class, () -> profiles.load(ROOM));
        assertTrue(
                String.valueOf(onLoad.getMessage())
                        .endsWith("handspan rooms restore --room \"Copper Attic\" --version 1 --profiles " + folder),
                onLoad.getMessage());
        ProfileException onSave = assertThrows(ProfileException.class, () -> profiles.save(first));
        assertTrue(
                String.valueOf(onSave.getMessage())
                        .endsWith("handspan rooms restore --room \"Copper Attic\" --version 1 --profiles " + folder),
                onSave.getMessage());
        assertEquals(first, profiles.version(ROOM, 1));
    }

    @Test
    void aFolderInPlaceOfTheFileIsNotWrittenOver() throws IOException {
        Files.createDirectory(folder.resolve(ROOM + ".json"));
        ProfileException e =
                assertThrows(ProfileException.class, () -> new ProfileFolder(folder).save(SampleRooms.twoHands(ROOM)));
        assertEquals(ProfileException.Kind.DAMAGED, e.kind());
        assertTrue(Files.isDirectory(folder.resolve(ROOM + ".json")));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreNoDamage() throws IOException, ProfileException {
        ProfileFolder profiles = new ProfileFolder(folder);
        RoomProfile profile = SampleRooms.twoHands(ROOM);
        profiles.save(profile);
        String text = Files.readString(profiles.fileOf(ROOM));
        Files.writeString(profiles.fileOf(ROOM), "\ufeff" + text.replace("\n", "\r\n"));
        assertEquals(profile, profiles.load(ROOM));
    }
}
