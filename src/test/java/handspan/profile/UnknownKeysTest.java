package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.Instrument;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Tuning;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a later version, or a person, has written into a file outlives a save by this one. */
class UnknownKeysTest {
    private static final String ROOM = "Copper Attic";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    @TempDir
    Path folder;

    private ProfileFolder profiles = new ProfileFolder(Path.of(""));
    private RoomProfile profile = SampleRooms.twoHands(ROOM);

    @BeforeEach
    void setUp() throws ProfileException {
        profiles = new ProfileFolder(folder);
        profiles.save(profile);
    }

    private JsonNode file() throws IOException, ProfileException {
        return MAPPER.readTree(Files.readAllBytes(profiles.fileOf(ROOM)));
    }

    private void putIntoFile(String pointer, String value) throws IOException, ProfileException {
        JsonNode tree = file();
        JsonPointer at = JsonPointer.compile(pointer);
        ((ObjectNode) tree.at(at.head())).set(at.last().getMatchingProperty(), MAPPER.readTree(value));
        Files.write(profiles.fileOf(ROOM), MAPPER.writeValueAsBytes(tree));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/lamp",
                "/line",
                "/air/lamp",
                "/instrument/lamp",
                "/instrument/line/lamp",
                "/instrument/level/lamp",
                "/pitch/zone/lamp",
                "/level/response/lamp",
                "/tunings/1/lamp",
                "/tunings/1/scale/lamp",
                "/levelCurve/lamp",
                "/send/lamp",
                "/send/lines/3/lamp"
            })
    void anUnknownKeySurvivesASave(String pointer) throws IOException, ProfileException {
        putIntoFile(pointer, "{\"colour\": [\"amber\", null, {\"deep\": true}]}");
        JsonNode put = file().at(pointer);
        Tuning trimmed = Tuning.usual().shifted(0, 7);
        profiles.save(profile.with(trimmed));
        assertEquals(put, file().at(pointer));
        assertEquals(7, file().at("/tunings/0/trimCents").asDouble());
        assertEquals(profile.with(trimmed), profiles.load(ROOM));
    }

    @Test
    void anUnknownNumberKeepsAllItsDigits() throws IOException, ProfileException {
        String digits =
                "{ \"exact\": [ 0.10000000000000000000000000000000000001, 12345678901234567890, 1.50, 2e400 ] }";
        Path file = profiles.fileOf(ROOM);
        Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{ \"lamp\": " + digits + ","));
        profiles.save(profile);
        String kept = Files.readString(file);
        assertTrue(
                kept.contains("[ 0.10000000000000000000000000000000000001, 12345678901234567890, 1.50, 2E+400 ]"),
                kept);
    }

    @Test
    void keptKeysFollowTheirTuningAndTheirLineWhenThoseMove() throws IOException, ProfileException {
        putIntoFile("/tunings/0/lamp", "\"first\"");
        putIntoFile("/tunings/1/lamp", "\"after the break\"");
        putIntoFile("/send/lines/0/lamp", "\"pitch\"");
        putIntoFile("/send/lines/6/lamp", "\"state\"");
        SendPlan plan = profile.send();
        profiles.save(new RoomProfile(
                profile.room(),
                List.of(profile.tunings().get(1), profile.tunings().get(0)),
                profile.level(),
                new SendPlan(List.of(plan.lines().get(6), plan.lines().get(0)), plan.targets())));
        for (JsonNode tuning : file().at("/tunings")) {
            assertEquals(tuning.get("name"), tuning.get("lamp"));
        }
        for (JsonNode line : file().at("/send/lines")) {
            assertEquals(line.get("value"), line.get("lamp"));
        }
        assertEquals(2, file().at("/send/lines").size());
    }

    @Test
    void ofTwoLinesForOneValueEachKeepsItsOwn() throws IOException, ProfileException {
        SendPlan twice = SampleRooms.oddBoard(ROOM).send();
        profiles.save(profile.with(twice));
        putIntoFile("/send/lines/0/lamp", "\"a\"");
        putIntoFile("/send/lines/1/lamp", "\"b\"");
        profiles.save(profile.with(twice.to(profile.send().targets())));
        assertEquals("a", file().at("/send/lines/0/lamp").asText());
        assertEquals("b", file().at("/send/lines/1/lamp").asText());
    }

    @Test
    void anOptionalPartThatIsGoneIsGoneFromTheFile() throws IOException, ProfileException {
        RoomProfile less = SampleRooms.onlyPitch(ROOM);
        putIntoFile("/lamp", "\"amber\"");
        profiles.save(less);
        assertEquals(less, profiles.load(ROOM));
        assertEquals("amber", file().at("/lamp").asText());
        for (String gone : List.of("/level", "/instrument/line", "/instrument/level")) {
            assertTrue(file().at(gone).isMissingNode(), gone);
        }
    }

    /** A room by ruler whose player's aim was measured, then the same room by its two ends. */
    @Test
    void theFitTheStepAndTheAimGoWhenARoomIsMadeOtherwise() throws IOException, ProfileException {
        profiles.save(SampleRooms.byRuler(ROOM));
        assertFalse(file().at("/pitch/fit").isMissingNode());
        profiles.save(SampleRooms.onlyPitch(ROOM));
        for (String gone : List.of(
                "/pitch/fit",
                "/pitch/stepMm",
                "/pitch/noiseByPlace",
                "/aim",
                "/tunings/0/warp",
                "/levelCurve/onLeaving",
                "/levelCurve/fadeMs")) {
            assertTrue(file().at(gone).isMissingNode(), gone);
        }
        assertEquals(SampleRooms.onlyPitch(ROOM), profiles.load(ROOM));
    }

    @Test
    void theOldPointsGoWhenAResponseIsNoLongerACurve() throws IOException, ProfileException {
        profiles.save(SampleRooms.oddBoard(ROOM));
        assertFalse(file().at("/pitch/response/points").isMissingNode());
        profiles.save(SampleRooms.onlyPitch(ROOM));
        assertTrue(file().at("/pitch/response/points").isMissingNode());
        assertEquals(SampleRooms.onlyPitch(ROOM), profiles.load(ROOM));
    }

    @Test
    void anInstrumentFileKeepsThemToo() throws IOException, ProfileException {
        Instrument instrument = profile.room().instrument();
        Path file = profiles.saveInstrument(instrument);
        Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{ \"builtBy\": \"hand\","));
        Instrument rebuilt = new Instrument("copper wing", 4, 115_200, null, instrument.pitch(), null, 5);
        profiles.saveInstrument(rebuilt);
        assertEquals(rebuilt, profiles.loadInstrument(file));
        assertEquals(
                "hand",
                MAPPER.readTree(Files.readAllBytes(file)).path("builtBy").asText());
    }

    /** Whatever stood in the file before, what is saved is what is loaded: keys that went are gone. */
    @Test
    void anyRoomCanTakeThePlaceOfAnyOther() throws ProfileException {
        List<RoomProfile> rooms = SampleRooms.all().toList();
        for (RoomProfile before : rooms) {
            for (RoomProfile after : rooms) {
                FileForm<RoomProfile> form = RoomJson.form(after.room().name());
                byte[] old =
                        RoomJson.form(before.room().name()).bytes(before, Optional.empty(), Path.of("before.json"));
                assertEquals(
                        after, form.read(form.bytes(after, Optional.of(old), Path.of("x.json")), Path.of("x.json")));
            }
        }
    }

    @Test
    void anyTuningCanTakeThePlaceOfAnyOther() throws ProfileException {
        RoomProfile room = SampleRooms.onlyPitch(ROOM);
        List<Tuning> tunings = new ArrayList<>();
        SampleRooms.all().forEach(each -> each.tunings().forEach(tuning -> tunings.add(tuning.named("x"))));
        for (Tuning before : tunings) {
            for (Tuning after : tunings) {
                profiles.save(alone(room, before));
                profiles.save(alone(room, after));
                assertEquals(alone(room, after), profiles.load(ROOM));
            }
        }
    }

    private static RoomProfile alone(RoomProfile room, Tuning tuning) {
        return new RoomProfile(room.room(), List.of(tuning), room.level(), room.send());
    }
}
