package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Files cut off at every byte, and files with bits turned: each reads as a valid room, or fails with a word about the
 * line and the key. No other failure, whatever the bytes.
 */
class ProfileFuzzTest {
    private static final Path FILE = Path.of("Copper Attic.json");
    private static final int FLIPPED_FILES = 2000;
    private static final int MOST_FLIPS = 2;

    /** Where no key has begun, there is none to name. */
    private static final Pattern PLACED = Pattern.compile(
            "Copper Attic\\.json, (line [0-9]+, (column [0-9]+: |key .+: ).*|the file is empty; .*)", Pattern.DOTALL);

    private static byte[] whole(RoomProfile profile) throws ProfileException {
        return RoomJson.form(profile.room().name()).bytes(profile, Optional.empty(), FILE);
    }

    /** What is said of a file, looked at; empty when it reads. */
    private static String fault(byte[] bytes, boolean save) {
        FileForm<RoomProfile> form = RoomJson.form("Copper Attic");
        try {
            RoomProfile profile = form.read(bytes, FILE);
            if (save) {
                form.bytes(profile, Optional.of(bytes), FILE);
            }
            return "";
        } catch (ProfileException e) {
            String words = String.valueOf(e.getMessage());
            assertEquals(ProfileException.Kind.DAMAGED, e.kind());
            assertTrue(PLACED.matcher(words).matches(), words);
            return words;
        } catch (RuntimeException | StackOverflowError e) {
            return fail("not a word about the file but " + e + " for: " + new String(bytes, StandardCharsets.UTF_8), e);
        }
    }

    @Test
    void aFileCutOffAtAnyByteIsRefusedWithItsPlace() throws ProfileException {
        byte[] bytes = whole(SampleRooms.twoHands("Copper Attic"));
        int named = 0;
        for (int length = 0; length < bytes.length - 2; length++) {
            String fault = fault(Arrays.copyOf(bytes, length), false);
            assertFalse(fault.isEmpty(), "reads although it ends at byte " + length);
            named += fault.contains("key ") ? 1 : 0;
        }
        // all but those that end before the first key or after the last
        assertTrue(named > 0.95 * bytes.length, named + " of " + bytes.length + " name a key");
    }

    @Test
    void turnedBitsAreReadOrRefusedAndNothingElse() throws ProfileException {
        Random random = new Random(20260314);
        List<RoomProfile> rooms = SampleRooms.all().toList();
        int read = 0;
        for (int i = 0; i < FLIPPED_FILES; i++) {
            byte[] older = whole(rooms.get(i % rooms.size()));
            byte[] bytes = older.clone();
            for (int flips = 1 + random.nextInt(MOST_FLIPS); flips > 0; flips--) {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            read += fault(bytes, true).isEmpty() ? 1 : 0;
        }
        // a turned bit in a digit or a name is another valid file
        assertTrue(read > FLIPPED_FILES / 100 && read < FLIPPED_FILES / 2, read + " read as valid");
    }
}
