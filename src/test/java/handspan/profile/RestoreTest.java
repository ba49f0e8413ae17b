package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.text.Normalizer;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bringing an earlier version back, and names that differ without looking so. */
class RestoreTest {
    private static final String ROOM = "Copper Attic";

    @TempDir
    Path folder;

    private ProfileFolder profiles = new ProfileFolder(Path.of(""));

    @BeforeEach
    void threeVersions() throws ProfileException {
        profiles = new ProfileFolder(folder);
        for (int i = 1; i <= 3; i++) {
            profiles.save(SavingProgram.version(ROOM, i));
        }
    }

    @Test
    void anEarlierVersionComesBackByteForByteAndTodaysIsKept() throws IOException, ProfileException {
        byte[] first =
                Files.readAllBytes(folder.resolve(".history").resolve(ROOM).resolve("000001.json"));
        byte[] third = Files.readAllBytes(profiles.fileOf(ROOM));
        Restored restored = profiles.restore(ROOM, 1);
        assertEquals(SavingProgram.version(ROOM, 1), restored.now());
        assertEquals(Optional.of(SavingProgram.version(ROOM, 3)), restored.before());
        assertEquals(Optional.empty(), restored.setAside());
        assertArrayEquals(first, Files.readAllBytes(profiles.fileOf(ROOM)));
        assertArrayEquals(
                third,
                Files.readAllBytes(folder.resolve(".history").resolve(ROOM).resolve("000003.json")));
        assertEquals(List.of(3, 2, 1), profiles.versions(ROOM));
        // once more changes nothing
        profiles.restore(ROOM, 1);
        assertEquals(List.of(3, 2, 1), profiles.versions(ROOM));
    }

    @Test
    void aDamagedFileIsSetAsideAndNeverLost() throws IOException, ProfileException {
        Path history = folder.resolve(".history").resolve(ROOM);
        for (int time = 1; time <= 2; time++) {
            byte[] damaged = ("{ damaged " + time).getBytes(java.nio.charset.StandardCharsets.UTF_8);
            Files.write(profiles.fileOf(ROOM), damaged);
            Restored restored = profiles.restore(ROOM, 2);
            Path aside = history.resolve("set-aside-" + time + ".json");
            assertEquals(Optional.of(aside), restored.setAside());
            assertEquals(Optional.empty(), restored.before());
            assertArrayEquals(damaged, Files.readAllBytes(aside));
            assertEquals(SavingProgram.version(ROOM, 2), profiles.load(ROOM));
        }
        assertEquals(List.of(2, 1), profiles.versions(ROOM));
        for (int i = 10; i < 40; i++) {
            profiles.save(SavingProgram.version(ROOM, i));
        }
        assertTrue(Files.exists(history.resolve("set-aside-1.json")), "dropped with the old versions");
    }

    @Test
    void aVersionThatIsNotThereOrDamagedChangesNothing() throws IOException, ProfileException {
        byte[] before = Files.readAllBytes(profiles.fileOf(ROOM));
        ProfileException none = assertThrows(ProfileException.class, () -> profiles.restore(ROOM, 7));
        assertEquals(ProfileException.Kind.NOT_FOUND, none.kind());
        assertTrue(String.valueOf(none.getMessage()).contains("version 7 of room 'Copper Attic' is not there (2, 1)"));
        assertEquals(
                ProfileException.Kind.UNKNOWN_ROOM,
                assertThrows(ProfileException.class, () -> profiles.restore("Cellar", 1))
                        .kind());
        Files.writeString(folder.resolve(".history").resolve(ROOM).resolve("000002.json"), "{");
        assertEquals(
                ProfileException.Kind.DAMAGED,
                assertThrows(ProfileException.class, () -> profiles.restore(ROOM, 2))
                        .kind());
        assertArrayEquals(before, Files.readAllBytes(profiles.fileOf(ROOM)));
        List<Version> versions = profiles.history(ROOM);
        assertEquals(List.of(2, 1), versions.stream().map(Version::number).toList());
        assertTrue(versions.get(0).profile().isEmpty());
        assertTrue(
                versions.get(0).fault().contains("000002.json, line 1"),
                versions.get(0).fault());
    }

    @Test
    void aRoomThatWasDeletedComesBackFromItsHistory() throws IOException, ProfileException {
        Files.delete(profiles.fileOf(ROOM));
        assertFalse(profiles.has(ROOM));
        profiles.restore(ROOM, 2);
        assertEquals(SavingProgram.version(ROOM, 2), profiles.load(ROOM));
    }

    @Test
    void aVersionIsDatedAsItWasSaved() throws IOException, ProfileException {
        Instant march = Instant.parse("2026-03-14T19:30:00Z");
        Files.setLastModifiedTime(profiles.fileOf(ROOM), FileTime.from(march));
        profiles.save(SavingProgram.version(ROOM, 4));
        assertEquals(march, profiles.history(ROOM).get(0).savedAt());
    }

    /** Composed and decomposed letters are the same text: Unicode Standard Annex 15, "Unicode Normalization Forms". */
    @Test
    void aNameIsTheSameHoweverItsAccentsAreWritten() throws IOException, ProfileException {
        String composed = "Salle d'\u00e9t\u00e9";
        String decomposed = "Salle d'e\u0301te\u0301";
        assertEquals(composed, Normalizer.normalize(decomposed, Normalizer.Form.NFC));
        profiles.save(SampleRooms.onlyPitch(decomposed));
        assertEquals(List.of(ROOM, composed), profiles.rooms());
        assertEquals(profiles.load(composed), profiles.load(decomposed));
        profiles.save(SavingProgram.version(composed, 1));
        assertEquals(List.of(1), profiles.versions(decomposed));
        // copied from a system that writes names decomposed
        String barn = "Sche\u0301ma";
        Files.move(profiles.fileOf(composed), folder.resolve(barn + ".json"));
        assertEquals("Sch\u00e9ma", profiles.load("Sch\u00e9ma").room().name());
        profiles.save(SavingProgram.version("Sch\u00e9ma", 2));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    1, files.filter(file -> file.toString().contains("ma.json")).count());
        }
    }

    @Test
    void namesThatDifferByCapitalsAloneAreNotKeptSideBySide() throws ProfileException {
        ProfileException twin =
                assertThrows(ProfileException.class, () -> profiles.save(SampleRooms.onlyPitch("copper ATTIC")));
        assertEquals(ProfileException.Kind.BAD_NAME, twin.kind());
        assertTrue(String.valueOf(twin.getMessage()).contains("'Copper Attic'"), twin.getMessage());
        profiles.save(SampleRooms.onlyPitch("Copper Attics"));
        assertEquals(List.of(ROOM, "Copper Attics"), profiles.rooms());
    }

    @Test
    void whatAKilledSaveLeftBehindIsClearedByTheNextOnceItIsOld() throws IOException, ProfileException {
        String id = "123e4567-e89b-12d3-a456-426614174000";
        Path old = Files.writeString(folder.resolve(ROOM + ".json." + id + ".tmp"), "{");
        Path young = Files.writeString(folder.resolve("Barn.json." + id + ".tmp"), "{");
        Path other = Files.writeString(folder.resolve("notes.tmp"), "mine");
        Instant hourAgo = Files.getLastModifiedTime(young).toInstant().minusSeconds(3600);
        Files.setLastModifiedTime(old, FileTime.from(hourAgo));
        Files.setLastModifiedTime(other, FileTime.from(hourAgo));
        profiles.save(SavingProgram.version(ROOM, 9));
        assertFalse(Files.exists(old));
        assertTrue(Files.exists(young), "may be of a program that saves just now");
        assertTrue(Files.exists(other), "not ours");
    }
}
