package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.Instrument;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What version 1.0 wrote is read for ever. The golden files are never written anew, and none is taken away: to add an
 * optional key, add a file that has it. Their sums stand here so that they can't change unseen.
 */
class FormatOneTest {
    private static final Path FOLDER = Path.of("src/test/resources/golden/format-1");

    private static final Map<String, RoomProfile> ROOMS = new TreeMap<>(Map.of(
            "two-hands", SampleRooms.twoHands("two-hands"),
            "only-pitch", SampleRooms.onlyPitch("only-pitch"),
            "odd-board", SampleRooms.oddBoard("odd-board"),
            "by-ruler", SampleRooms.byRuler("by-ruler"),
            "by-infrared", SampleRooms.byInfrared("by-infrared"),
            "other-temperaments", SampleRooms.otherTemperaments("other-temperaments")));

    private static final Map<String, String> SUMS = Map.of(
            "by-infrared.json", "f75318b27c6d0400",
            "by-ruler.json", "6137a5f298e12999",
            "instrument.json", "534eee47bf77926e",
            "odd-board.json", "1a71fe3f156e4441",
            "only-pitch.json", "bde021abe726a206",
            "other-temperaments.json", "6c8da2fcff3c21ce",
            "two-hands.json", "5994b8b2e0e76931");

    static Iterable<String> rooms() {
        return ROOMS.keySet();
    }

    private static Path golden(String name) {
        return FOLDER.resolve(name + ".json");
    }

    private static byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(golden(name));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomOfVersionOneMeansWhatItMeant(String name) throws Exception {
        assertEquals(ROOMS.get(name), RoomJson.form(name).read(bytes(name), golden(name)));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void savedAgainItLosesNothing(String name) throws Exception {
        byte[] again = RoomJson.form(name)
                .bytes(RoomJson.form(name).read(bytes(name), golden(name)), Optional.of(bytes(name)), golden(name));
        assertArrayEquals(bytes(name), again, () -> new String(again, StandardCharsets.UTF_8));
    }

    @Test
    void anInstrumentOfVersionOneMeansWhatItMeant() throws Exception {
        Instrument instrument = InstrumentJson.FORM.read(bytes("instrument"), golden("instrument"));
        assertEquals(SampleRooms.twoHands("two-hands").room().instrument(), instrument);
    }

    @Test
    void noGoldenFileIsChangedTakenAwayOrUnknownHere() throws Exception {
        Map<String, String> found = new TreeMap<>();
        try (var files = Files.list(FOLDER)) {
            for (Path file : files.sorted().toList()) {
                found.put(file.getFileName().toString(), sum(Files.readAllBytes(file)));
            }
        }
        assertEquals(new TreeMap<>(SUMS), found);
    }

    private static String sum(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes))
                .substring(0, 16);
    }

    @Test
    void aFormatThatIsNotKnownIsRefusedInWordsAndTheFileIsLeft() throws Exception {
        ObjectNode tree = JsonText.read(bytes("only-pitch"), "only-pitch.json");
        byte[] later = JsonText.bytes(tree.put("format", "handspan-room/2"));
        ProfileException refused = assertThrows(
                ProfileException.class, () -> RoomJson.form("only-pitch").read(later, golden("only-pitch")));
        String words = String.valueOf(refused.getMessage());
        assertTrue(words.contains("handspan-room/2"), words);
        assertTrue(words.contains("use the version of the program that wrote it"), words);
        assertThrows(
                ProfileException.class,
                () -> RoomJson.form("only-pitch")
                        .bytes(SampleRooms.onlyPitch("only-pitch"), Optional.of(later), golden("only-pitch")));
    }
}
