package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import handspan.instrument.sensor.Instrument;
import handspan.music.tuning.Direction;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProfileFolderTest {
    private static final String ROOM = "Copper Attic";

    @TempDir
    Path parent;

    private Path folder = Path.of("");
    private ProfileFolder profiles = new ProfileFolder(folder);

    @BeforeEach
    void setUp() {
        folder = parent.resolve("profiles");
        profiles = new ProfileFolder(folder);
    }

    private static ProfileException.Kind kindOf(Executable action) {
        return assertThrows(ProfileException.class, action).kind();
    }

    /** The sample room, its tuning trimmed so that each is another. */
    private static RoomProfile trimmed(int cents) {
        Tuning tuning = new Tuning(
                "first",
                ReferencePitch.A440,
                Scales.named("major"),
                0,
                48,
                72,
                Direction.HIGH_FAR,
                Snap.FREE,
                0,
                cents);
        return SampleRooms.twoHands(ROOM).with(tuning);
    }

    @ParameterizedTest
    @MethodSource("handspan.profile.SampleRooms#all")
    void aSavedRoomIsLoadedAsItWas(RoomProfile profile) throws ProfileException {
        String room = profile.room().name();
        assumeTrue(isFileName(room));
        assertFalse(profiles.has(room));
        profiles.save(profile);
        assertTrue(profiles.has(room));
        assertEquals(profile, profiles.load(room));
        assertEquals(folder.resolve(room + ".json"), profiles.fileOf(room));
    }

    @Test
    void roomsAreTheJsonFilesInTheFolderItselfInOrder() throws IOException, ProfileException {
        assertEquals(List.of(), profiles.rooms());
        profiles.save(SampleRooms.onlyPitch("b"));
        profiles.save(SampleRooms.twoHands("a"));
        profiles.save(SampleRooms.onlyPitch("a"));
        profiles.saveInstrument(SampleRooms.twoHands("a").room().instrument());
        Files.createDirectory(folder.resolve("c.json"));
        Files.writeString(folder.resolve("notes.txt"), "x");
        Files.writeString(folder.resolve("._b.json"), "x");
        // left over from a save that a power cut ended
        Files.writeString(folder.resolve("a.json.4f1c.tmp"), "{\"format\": \"hands");
        assertEquals(List.of("a", "b"), profiles.rooms());
        assertEquals(SampleRooms.onlyPitch("a"), profiles.load("a"));
    }

    @Test
    void anUnknownRoomIsRefusedNamingThoseThereAre() throws ProfileException {
        assertTrue(message(() -> profiles.load("Cellar")).contains("no room is there yet"));
        profiles.save(SampleRooms.onlyPitch("Attic"));
        profiles.save(SampleRooms.onlyPitch("Barn"));
        assertTrue(message(() -> profiles.load("Cellar")).contains("'Cellar' is not in " + folder + " (Attic, Barn)"));
        assertEquals(ProfileException.Kind.UNKNOWN_ROOM, kindOf(() -> profiles.load("Cellar")));
    }

    /** A system set to ASCII has no files with other letters; there such a name is refused. */
    private static boolean isFileName(String name) {
        try {
            return !Path.of(name).toString().isEmpty();
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private static String message(Executable action) {
        return String.valueOf(assertThrows(ProfileException.class, action).getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../Attic", "/Attic", "con", ""})
    void aNameThatLeavesTheFolderOrBreaksElsewhereIsRefused(String name) throws IOException {
        assertEquals(ProfileException.Kind.BAD_NAME, kindOf(() -> profiles.save(SampleRooms.onlyPitch(name))));
        assertEquals(ProfileException.Kind.BAD_NAME, kindOf(() -> profiles.load(name)));
        assertEquals(ProfileException.Kind.BAD_NAME, kindOf(() -> profiles.fileOf(name)));
        assertEquals(ProfileException.Kind.BAD_NAME, kindOf(() -> profiles.versions(name)));
        assertFalse(profiles.has(name));
        try (Stream<Path> files = Files.list(parent)) {
            assertEquals(List.of(), files.toList());
        }
    }

    @Test
    void aCopiedFileIsARoomOfItsOwn() throws IOException, ProfileException {
        profiles.save(SampleRooms.twoHands(ROOM));
        Files.copy(profiles.fileOf(ROOM), profiles.fileOf("Copper Attic 2"));
        assertEquals(SampleRooms.twoHands("Copper Attic 2"), profiles.load("Copper Attic 2"));
        assertEquals(ROOM, profiles.load(ROOM).room().name());
    }

    @Test
    void theTwentyVersionsBeforeTheLastAreKept() throws ProfileException {
        for (int i = 1; i <= 25; i++) {
            profiles.save(trimmed(i));
        }
        // 24 were replaced, the oldest four of them dropped
        assertEquals(IntStream.rangeClosed(5, 24).mapToObj(i -> 29 - i).toList(), profiles.versions(ROOM));
        assertEquals(trimmed(24), profiles.version(ROOM, 24));
        assertEquals(trimmed(5), profiles.version(ROOM, 5));
        assertEquals(trimmed(25), profiles.load(ROOM));
        assertEquals(ProfileException.Kind.NOT_FOUND, kindOf(() -> profiles.version(ROOM, 4)));
        assertEquals(List.of(), profiles.versions("Cellar"));
    }

    @Test
    void aVersionIsTheReplacedFileByteForByte() throws IOException, ProfileException {
        profiles.save(trimmed(1));
        // as a person would edit it
        String edited = Files.readString(profiles.fileOf(ROOM)).replace("\n", "\r\n");
        Files.writeString(profiles.fileOf(ROOM), edited);
        profiles.save(trimmed(2));
        assertEquals(edited, Files.readString(folder.resolve(".history/" + ROOM + "/000001.json")));
    }

    @Test
    void aSaveThatChangesNothingFillsNoHistory() throws ProfileException {
        profiles.save(trimmed(1));
        profiles.save(trimmed(1));
        assertEquals(List.of(), profiles.versions(ROOM));
    }

    /** On a POSIX file system an open file lives on after its name is given to another (POSIX.1 rename). */
    @Test
    void aSaveReplacesTheFileAndNeverWritesIntoIt() throws IOException, ProfileException {
        profiles.save(trimmed(1));
        byte[] before = Files.readAllBytes(profiles.fileOf(ROOM));
        try (InputStream reader = Files.newInputStream(profiles.fileOf(ROOM))) {
            profiles.save(SampleRooms.onlyPitch(ROOM));
            assertArrayEquals(before, reader.readAllBytes());
        }
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(
                    List.of(),
                    files.filter(file -> file.toString().endsWith(".tmp")).toList());
        }
    }

    @Test
    void aSaveFollowsLinksToTheFolderAndToTheFile() throws IOException, ProfileException {
        Path elsewhere = Files.createDirectory(parent.resolve("elsewhere"));
        Path kept = parent.resolve("kept.json");
        try {
            Files.createSymbolicLink(folder, elsewhere);
            Files.createSymbolicLink(elsewhere.resolve(ROOM + ".json"), kept);
        } catch (IOException | UnsupportedOperationException e) {
            assumeTrue(false, "no links here: " + e.getMessage());
        }
        // a link that leads nowhere yet is no room
        assertEquals(List.of(), profiles.rooms());
        new ProfileFolder(parent).save(SampleRooms.onlyPitch("kept"));
        profiles.save(trimmed(1));
        assertTrue(Files.isSymbolicLink(folder));
        assertTrue(Files.isSymbolicLink(profiles.fileOf(ROOM)));
        assertEquals(trimmed(1), new ProfileFolder(elsewhere).load(ROOM));
        assertEquals(Files.readString(kept), Files.readString(profiles.fileOf(ROOM)));
    }

    @Test
    void aFolderThatCannotBeMadeIsNamed() throws IOException, ProfileException {
        Files.writeString(folder, "in the way");
        RoomProfile profile = SampleRooms.onlyPitch(ROOM);
        assertEquals(ProfileException.Kind.NOT_WRITABLE, kindOf(() -> profiles.save(profile)));
        assertTrue(message(() -> profiles.save(profile))
                .startsWith(profiles.fileOf(ROOM)
                        + " cannot be written: a file stands where a folder should be; allow writing there"));
        assertEquals(ProfileException.Kind.NOT_FOUND, kindOf(() -> profiles.rooms()));
        assertEquals(ProfileException.Kind.NOT_FOUND, kindOf(() -> profiles.load(ROOM)));
        assertEquals("in the way", Files.readString(folder));
    }

    @Test
    void aWriteProtectedFolderIsLeftAsItIs() throws IOException, ProfileException {
        profiles.save(trimmed(1));
        Files.createDirectories(folder.resolve(".history").resolve(ROOM));
        assertTrue(folder.toFile().setWritable(false));
        try {
            // an administrator may write all the same
            assumeFalse(Files.isWritable(folder));
            assertEquals(ProfileException.Kind.NOT_WRITABLE, kindOf(() -> profiles.save(trimmed(2))));
            assertTrue(message(() -> profiles.save(trimmed(2))).contains("access denied"));
            assertEquals(trimmed(1), profiles.load(ROOM));
        } finally {
            assertTrue(folder.toFile().setWritable(true));
        }
    }

    @Test
    void aRoomWhoseOldVersionCannotBeKeptIsNotReplaced() throws IOException, ProfileException {
        profiles.save(trimmed(1));
        Files.writeString(folder.resolve(".history"), "in the way");
        assertEquals(ProfileException.Kind.NOT_WRITABLE, kindOf(() -> profiles.save(trimmed(2))));
        assertEquals(trimmed(1), profiles.load(ROOM));
    }

    @Test
    void aWriteProtectedFileIsNotReplaced() throws IOException, ProfileException {
        profiles.save(trimmed(1));
        assertTrue(profiles.fileOf(ROOM).toFile().setReadOnly());
        // an administrator may write all the same
        assumeFalse(Files.isWritable(profiles.fileOf(ROOM)));
        assertTrue(message(() -> profiles.save(trimmed(2))).contains("access denied"));
        assertEquals(trimmed(1), profiles.load(ROOM));
    }

    @Test
    void anInstrumentHasAFileOfItsOwn() throws ProfileException {
        Instrument instrument = SampleRooms.oddBoard(ROOM).room().instrument();
        assumeTrue(isFileName(instrument.name()));
        Path file = profiles.saveInstrument(instrument);
        assertEquals(folder.resolve("instruments").resolve(instrument.name() + ".json"), file);
        assertEquals(instrument, profiles.loadInstrument(file));
    }

    @Test
    void anInstrumentFileThatIsNoneIsRefused() throws IOException, ProfileException {
        Path missing = parent.resolve("none.json");
        assertEquals(ProfileException.Kind.NOT_FOUND, kindOf(() -> profiles.loadInstrument(missing)));
        profiles.save(trimmed(1));
        Path room = profiles.fileOf(ROOM);
        assertEquals(ProfileException.Kind.DAMAGED, kindOf(() -> profiles.loadInstrument(room)));
        assertTrue(message(() -> profiles.loadInstrument(room)).contains("key format"));

        Instrument instrument = trimmed(1).room().instrument();
        Path file = profiles.saveInstrument(instrument);
        String damaged = Files.readString(file).replace("57600", "5");
        Files.writeString(file, damaged);
        assertTrue(message(() -> profiles.loadInstrument(file)).contains("key baud: link speed 5 baud"));
        assertTrue(message(() -> profiles.saveInstrument(instrument)).contains("nothing was saved"));
        assertEquals(damaged, Files.readString(file));
        Instrument leaving = new Instrument("../x", 1, 9600, null, instrument.pitch(), null, 5);
        assertEquals(ProfileException.Kind.BAD_NAME, kindOf(() -> profiles.saveInstrument(leaving)));
    }
}
