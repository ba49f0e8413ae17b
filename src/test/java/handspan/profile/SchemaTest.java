package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.sensor.Unit;
import handspan.music.send.SendValue;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.room.HandRole;
import handspan.room.StepKind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas against an independent validator, and against the reader: both must refuse the same files. */
class SchemaTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final JsonSchemaFactory FACTORY = offline();
    private static final JsonNode ROOM_TEXT = resource("room-1.schema.json");
    private static final JsonNode INSTRUMENT_TEXT = resource("instrument-1.schema.json");
    private static final JsonSchema ROOM = FACTORY.getSchema(ROOM_TEXT);
    private static final JsonSchema INSTRUMENT = FACTORY.getSchema(INSTRUMENT_TEXT);

    /** A validator that knows draft 2020-12 from its own resources and would fail rather than ask a network. */
    private static JsonSchemaFactory offline() {
        return JsonSchemaFactory.getInstance(
                SpecVersion.VersionFlag.V202012,
                builder -> builder.schemaLoaders(loaders -> loaders.add(iri -> {
                    if (iri.toString().startsWith("http")) {
                        throw new IllegalStateException("asks the network for " + iri);
                    }
                    return null;
                })));
    }

    @Test
    void theValidatorHereAsksNoNetwork() {
        ObjectNode far = MAPPER.createObjectNode().put("$ref", "http://schema.invalid/far.json");
        assertThrows(RuntimeException.class, () -> FACTORY.getSchema(far).validate(MAPPER.createObjectNode()));
    }

    private static JsonNode resource(String name) {
        try (InputStream in = RoomJson.class.getResourceAsStream("/handspan/" + name)) {
            return MAPPER.readTree(Objects.requireNonNull(in, name));
        } catch (IOException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static boolean readerRefuses(ObjectNode tree) {
        try {
            RoomJson.form("Copper Attic").read(JsonText.bytes(tree), Path.of("Copper Attic.json"));
            return false;
        } catch (ProfileException e) {
            return true;
        }
    }

    private static boolean schemaRefuses(ObjectNode tree) {
        return !ROOM.validate(tree).isEmpty();
    }

    @Test
    void theSchemasAreSchemasOfDraft202012() {
        JsonSchema metaSchema = FACTORY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(Set.of(), metaSchema.validate(ROOM_TEXT));
        assertEquals(Set.of(), metaSchema.validate(INSTRUMENT_TEXT));
        // and the meta-schema does look: a type that is none
        ObjectNode wrong = MAPPER.createObjectNode().put("type", "numbre");
        assertFalse(metaSchema.validate(wrong).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("handspan.profile.SampleRooms#all")
    void aWrittenRoomIsValid(RoomProfile profile) throws IOException {
        assertEquals(Set.of(), ROOM.validate(MAPPER.readTree(JsonText.bytes(RoomJson.tree(profile)))));
        JsonNode instrument = MAPPER.readTree(
                JsonText.bytes(InstrumentJson.fileTree(profile.room().instrument())));
        assertEquals(Set.of(), INSTRUMENT.validate(instrument));
    }

    @Test
    void aRoomFileIsNoInstrumentFile() {
        assertFalse(INSTRUMENT.validate(WrongValues.sample()).isEmpty());
    }

    @Test
    void readerAndSchemaCallTheSameKeysRequired() {
        Set<String> optional = new TreeSet<>();
        for (String pointer : pointers(WrongValues.sample())) {
            ObjectNode tree = WrongValues.sample();
            JsonPointer at = JsonPointer.compile(pointer);
            if (tree.at(at.head()) instanceof ObjectNode parent) {
                parent.remove(at.last().getMatchingProperty());
                assertEquals(readerRefuses(tree), schemaRefuses(tree), pointer);
                if (!readerRefuses(tree)) {
                    optional.add(pointer);
                }
            }
        }
        assertEquals(Set.of("/instrument/level", "/instrument/line", "/instrument/port", "/level"), optional);
    }

    @Test
    void readerAndSchemaRefuseEveryValueOfAnotherType() throws IOException {
        for (String pointer : pointers(WrongValues.sample())) {
            for (String other : List.of("null", "true", "7", "\"x y\"", "[[]]", "{}")) {
                ObjectNode tree = WrongValues.sampleWith(pointer, other);
                if (tree.at(pointer).getNodeType()
                        != WrongValues.sample().at(pointer).getNodeType()) {
                    assertTrue(readerRefuses(tree), "reader at " + pointer + " with " + other);
                    assertTrue(schemaRefuses(tree), "schema at " + pointer + " with " + other);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("handspan.profile.WrongValues#outOfRange")
    void theSchemaRefusesWhatTheReaderRefuses(String pointer, String value, String allowed) throws IOException {
        assertTrue(schemaRefuses(WrongValues.sampleWith(pointer, value)));
    }

    @ParameterizedTest
    @MethodSource("handspan.profile.WrongValues#outOfRangeByRuler")
    void theSchemaRefusesAWrongFitToo(String pointer, String value, String allowed) throws IOException {
        assertTrue(schemaRefuses(WrongValues.byRulerWith(pointer, value)));
    }

    @ParameterizedTest
    @MethodSource("handspan.profile.WrongValues#atTheEdge")
    void theSchemaAllowsWhatTheReaderReads(String pointer, String value) throws IOException {
        assertEquals(Set.of(), ROOM.validate(WrongValues.sampleWith(pointer, value)));
    }

    @Test
    void keysThatNobodyKnowsAreAllowedEverywhere() {
        ObjectNode tree = WrongValues.sample();
        for (String pointer : pointers(tree)) {
            if (tree.at(pointer) instanceof ObjectNode object) {
                object.put("lampColour", "amber");
            }
        }
        assertEquals(Set.of(), ROOM.validate(tree.put("lampColour", "amber")));
        assertFalse(readerRefuses(tree));
    }

    @Test
    void theSchemaListsTheWordsThatTheProgramKnows() {
        assertWords("/$defs/channel/properties/kind/enum", SensorKind.values(), SensorKind::word);
        assertWords("/$defs/channel/properties/unit/enum", Unit.values(), Unit::word);
        assertWords("/$defs/hold/properties/step/enum", StepKind.values(), StepKind::word);
        StepKind[] places =
                Arrays.stream(StepKind.values()).filter(StepKind::isPlace).toArray(StepKind[]::new);
        assertWords("/$defs/hold/properties/target/enum", places, StepKind::word);
        assertWords("/$defs/hold/properties/hand/enum", HandRole.values(), HandRole::word);
        assertWords("/$defs/tuning/properties/direction/enum", Direction.values(), Direction::word);
        assertWords("/$defs/tuning/properties/snap/enum", Snap.values(), Snap::word);
        assertWords("/$defs/tuning/properties/scale/oneOf/0/enum", Scales.all().toArray(Scale[]::new), Scale::name);
        assertWords("/$defs/send/properties/lines/items/properties/value/enum", SendValue.values(), SendValue::word);
    }

    private static <T> void assertWords(String pointer, T[] values, Function<T, String> word) {
        Set<String> listed = new TreeSet<>();
        ROOM_TEXT.at(pointer).forEach(item -> listed.add(item.asText()));
        assertEquals(Arrays.stream(values).map(word).collect(Collectors.toCollection(TreeSet::new)), listed);
    }

    @Test
    void kindsTakeTheSameUnitsInSchemaAndProgram() throws IOException {
        for (SensorKind kind : SensorKind.values()) {
            for (Unit unit : Unit.values()) {
                ObjectNode tree = WrongValues.sampleWith("/pitch/channel/kind", "\"" + kind.word() + "\"");
                ((ObjectNode) tree.at("/pitch/channel")).put("unit", unit.word());
                assertEquals(!kind.allows(unit), schemaRefuses(tree), kind + " in " + unit);
            }
        }
    }

    @Test
    void bothSchemasDescribeAnInstrumentAlike() {
        for (String shared : List.of("instrument", "line", "channel")) {
            assertEquals(ROOM_TEXT.at("/$defs/" + shared), INSTRUMENT_TEXT.at("/$defs/" + shared), shared);
            assertTrue(ROOM_TEXT.at("/$defs/" + shared).isObject(), shared);
        }
    }

    /** Pointers to every value in a tree, the whole tree left out. */
    private static List<String> pointers(JsonNode tree) {
        List<String> all = new ArrayList<>();
        collect(tree, "", all);
        return all;
    }

    private static void collect(JsonNode node, String pointer, List<String> all) {
        Stream<String> names = node.isObject()
                ? node.properties().stream().map(field -> field.getKey())
                : Stream.iterate(0, i -> i < node.size(), i -> i + 1).map(String::valueOf);
        for (String name : names.toList()) {
            String below = pointer + "/" + name;
            all.add(below);
            collect(node.at("/" + name), below, all);
        }
    }
}
