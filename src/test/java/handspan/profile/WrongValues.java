package handspan.profile;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Values just outside what is allowed, each in an otherwise sound file of {@link SampleRooms#twoHands}, and values just
 * inside. The ranges are those of the design and of the sources named at the records.
 */
final class WrongValues {
    private WrongValues() {}

    /** Where, what, a part of what the message must say is allowed. One value breaks a rule of its own. */
    static Stream<Arguments> outOfRange() {
        return Stream.of(
                Arguments.of("/format", "\"handspan-room/2\"", "handspan-room/1"),
                Arguments.of("/calibratedAt", "\"last Friday\"", "ISO 8601"),
                Arguments.of("/air/temperatureC", "50.5", "-20..50"),
                Arguments.of("/air/temperatureC", "-20.5", "-20..50"),
                Arguments.of("/air/humidity01", "1.01", "0..1"),
                Arguments.of("/ratePerS", "0", "above 0"),
                Arguments.of("/ratePerS", "10000.5", "at most 10000"),
                Arguments.of("/instrument/name", "\" \"", "at least one character"),
                Arguments.of("/instrument/revision", "0", "1 or more"),
                Arguments.of("/instrument/revision", "1.5", "a whole number"),
                Arguments.of("/instrument/revision", "3000000000", "a whole number"),
                Arguments.of("/instrument/baud", "299", "300..4000000"),
                Arguments.of("/instrument/referenceVolts", "0", "above 0"),
                Arguments.of("/instrument/referenceVolts", "10.5", "at most 10"),
                Arguments.of("/instrument/line/separator", "\"dot\"", "comma, semicolon, bar, colon, tab, blank"),
                Arguments.of("/instrument/line/matching", "\"smell\"", "label, field, order"),
                Arguments.of("/instrument/line/fieldCount", "0", "1..257"),
                Arguments.of("/instrument/line/slots", "[]", "1..64"),
                Arguments.of("/instrument/line/slots/1/position", "257", "0..256"),
                Arguments.of("/instrument/line/slots/1/position", "-1", "0..256"),
                Arguments.of(
                        "/instrument/pitch/kind", "\"smell\"", "distance, echo, infrared, photoresistor, unscaled"),
                Arguments.of("/instrument/level/unit", "\"mm\"", "usual: counts10"),
                Arguments.of("/pitch/channel/channel", "\"\"", "a label of the line"),
                Arguments.of("/pitch/channel/unit", "\"miles\"", "mm, cm, in"),
                Arguments.of("/pitch/response/kind", "\"bent\"", "asMeasured, curve"),
                Arguments.of("/pitch/zone/nearUncertaintyMm", "-0.1", "0 or more"),
                Arguments.of("/pitch/zone/farUncertaintyMm", "-0.1", "0 or more"),
                Arguments.of("/pitch/noiseMm", "-0.1", "0 or more"),
                Arguments.of("/level/response/points", "[{\"physical\": 1, \"mm\": 2}]", "at least 2"),
                Arguments.of("/holds/1/step", "\"jump\"", "rest, near, far, open, mid, covered"),
                Arguments.of("/holds/1/hand", "\"left\"", "pitch, level"),
                Arguments.of("/holds/0/standardUncertainty", "-1", "0 or more"),
                Arguments.of("/holds/0/noise", "-1", "0 or more"),
                Arguments.of("/holds/0/count", "-1", "0.."),
                Arguments.of("/tunings", "[]", "at least one"),
                Arguments.of("/tunings/0/name", "\"\"", "at least one character"),
                Arguments.of("/tunings/0/a4Hz", "414.9", "415..466"),
                Arguments.of("/tunings/0/a4Hz", "466.1", "415..466"),
                Arguments.of("/tunings/0/scale", "\"seven of nine\"", "choose one of chromatic"),
                Arguments.of("/tunings/1/scale/stepsCents", "[]", "first step must be 0"),
                Arguments.of("/tunings/1/scale/stepsCents", "[100, 200]", "first step must be 0"),
                Arguments.of("/tunings/1/scale/stepsCents", "[0, 1200]", "under 1200"),
                Arguments.of("/tunings/0/tonic", "\"H\"", "write it like"),
                Arguments.of("/tunings/0/low", "\"A\"", "C-1..G9"),
                Arguments.of("/tunings/0/high", "\"5\"", "C-1..G9"),
                Arguments.of("/tunings/0/direction", "\"up\"", "high-near, high-far"),
                Arguments.of("/tunings/0/temperament", "\"4-equal\"", "5..53"),
                Arguments.of("/tunings/0/temperament", "\"mean\"", "write it like 19-equal"),
                Arguments.of("/tunings/0/strength01", "1.5", "0..1"),
                Arguments.of("/tunings/0/snap", "\"hard\"", "free, pull, steps, onset"),
                Arguments.of("/tunings/0/transpose", "49", "-48..48"),
                Arguments.of("/tunings/0/trimCents", "-100.5", "-100..100"),
                Arguments.of("/levelCurve/floorDb", "-19.5", "-120..-20"),
                Arguments.of("/levelCurve/floorDb", "-121", "-120..-20"),
                Arguments.of("/levelCurve/ceilingDb", "0.5", "at most 0"),
                Arguments.of("/levelCurve/knee01", "0.51", "0..0.5"),
                Arguments.of("/levelCurve/loudEnd", "\"left\"", "near, far"),
                Arguments.of("/levelCurve/riseDbPerMs", "0", "above 0"),
                Arguments.of("/send/targets/1", "\"127.0.0.1\"", "udp, udp-broadcast"),
                Arguments.of("/send/lines/0/value", "\"colour\"", "pitch, note, degree, level, hand, place, state"),
                Arguments.of("/send/lines/0/address", "\"pitch\"", "it must start with /"),
                Arguments.of("/send/lines/0/address", "\"/a b\"", "character 3"),
                Arguments.of("/send/lines/0/address", "\"/a//b\"", "a name between each two /"));
    }

    /** The same in the file of a room that was calibrated by ruler. */
    static Stream<Arguments> outOfRangeByRuler() {
        return Stream.of(
                Arguments.of("/pitch/stepMm", "-1", "0 or more"),
                Arguments.of("/pitch/fit/parameters", "0", "1..9"),
                Arguments.of("/pitch/fit/rmsMm", "-0.1", "0 or more"),
                Arguments.of("/pitch/fit/leftOutMm", "-0.1", "0 or more"),
                Arguments.of("/pitch/fit/widened", "0.9", "1 or more"),
                Arguments.of("/pitch/fit/uncertainty", "[]", "at least 2"),
                Arguments.of("/pitch/fit/coefficients/0/standardUncertainty", "-1", "0 or more"),
                Arguments.of("/holds/0/mm", "5001", "0..5000"),
                Arguments.of("/holds/0/countingStep", "-1", "0 or more"),
                Arguments.of("/holds/1/note", "\"H9\"", "write it like"),
                Arguments.of("/holds/2/target", "\"open\"", "near, far, mid, ruler, note"),
                Arguments.of("/aim/mm", "0", "above 0"),
                Arguments.of("/aim/mm", "100.5", "at most 100"),
                Arguments.of("/aim/reaches", "0", "1.."),
                Arguments.of("/levelCurve/onLeaving", "\"hang\"", "fade, hold"),
                Arguments.of("/levelCurve/fadeMs", "4.5", "5..2000"),
                Arguments.of("/levelCurve/fadeMs", "2001", "5..2000"),
                Arguments.of("/send/latencyMs", "-1", "0..10000"),
                Arguments.of("/send/latencyMs", "10001", "0..10000"),
                Arguments.of("/send/midi/channel", "17", "1..16"),
                Arguments.of("/send/midi/bendSemitones", "0", "1..96"),
                Arguments.of("/send/midi/loudness", "\"velocity\"", "expression, fine-expression, pressure"),
                Arguments.of("/send/lines/0/types", "\"x\"", "one of i, f, s, h, d, T"),
                Arguments.of("/send/lines/0/from", "[0]", "(two)"),
                Arguments.of("/send/lines/0/to", "[0, 2e9]", "-1e9..1e9"),
                Arguments.of("/send/lines/0/mostPerS", "0.5", "1..1000"),
                Arguments.of("/send/lines/0/deadBand", "-1", "0 or more"),
                Arguments.of("/send/lines/0/address", "\"/a/{pitch}\"", "{key}, {degree}, {octave}"),
                Arguments.of("/send/lines/1/channel", "\"\"", "without a channel"),
                Arguments.of("/tunings/0/warp", "3.1", "-3..3"),
                Arguments.of("/tunings/0/quickness", "2.5", "-2 = steadier"));
    }

    /** Rules between values, which the schema can only state in words. */
    static Stream<Arguments> outOfOrder() {
        return Stream.of(
                Arguments.of("/pitch/zone/farMm", "80.5", "beyond the near"),
                Arguments.of("/levelCurve/ceilingDb", "-60", "above the floor"),
                Arguments.of("/tunings/0/high", "\"A3\"", "the high end above the low"),
                Arguments.of("/tunings/0/low", "\"C12\"", "C-1..G9"),
                Arguments.of("/tunings/1/scale/stepsCents", "[0, 200, 200]", "must rise"),
                Arguments.of("/send/targets/0", "\"udp:here:65536\"", "1..65535"),
                Arguments.of(
                        "/level/response/points",
                        "[{\"physical\": 1, \"mm\": 2}, {\"physical\": 1, \"mm\": 3}]",
                        "without repeats"),
                Arguments.of(
                        "/level/response/points",
                        "[{\"physical\": 1, \"mm\": 2}, {\"physical\": 2, \"mm\": 2}]",
                        "must run one way"));
    }

    /** Rules between values of what is sent, in the file of a room that was calibrated by ruler. */
    static Stream<Arguments> outOfOrderByRuler() {
        return Stream.of(
                Arguments.of("/send/lines/0/types", "\"ii\"", "one of i, f, s, h, d, T"),
                Arguments.of("/send/lines/0/from", "[3, 3]", "two different values"));
    }

    /** Values at the very edge of what is allowed. */
    static Stream<Arguments> atTheEdge() {
        return Stream.of(
                Arguments.of("/calibratedAt", "\"2026-03-14T19:30\""),
                Arguments.of("/air/temperatureC", "50"),
                Arguments.of("/air/temperatureC", "-20"),
                Arguments.of("/air/humidity01", "0"),
                Arguments.of("/ratePerS", "10000"),
                Arguments.of("/instrument/revision", "4.0"),
                Arguments.of("/instrument/baud", "300"),
                Arguments.of("/instrument/baud", "4000000"),
                Arguments.of("/instrument/referenceVolts", "10"),
                Arguments.of("/instrument/line/fieldCount", "257"),
                Arguments.of("/instrument/line/slots/1/position", "256"),
                Arguments.of("/instrument/level/unit", "\"V\""),
                Arguments.of("/pitch/zone/nearUncertaintyMm", "0"),
                Arguments.of("/pitch/noiseMm", "0"),
                Arguments.of("/holds", "[]"),
                Arguments.of("/tunings/0/a4Hz", "415"),
                Arguments.of("/tunings/0/a4Hz", "466"),
                Arguments.of("/tunings/0/tonic", "\"Bb\""),
                Arguments.of("/tunings/0/temperament", "\"53-equal\""),
                Arguments.of("/tunings/0/temperament", "\"just\""),
                Arguments.of("/tunings/0/strength01", "0"),
                Arguments.of("/tunings/0/snap", "\"onset\""),
                Arguments.of("/tunings/0/low", "\"C-1\""),
                Arguments.of("/tunings/0/high", "\"G9\""),
                Arguments.of("/tunings/0/transpose", "-48"),
                Arguments.of("/tunings/0/trimCents", "100"),
                Arguments.of("/tunings/1/scale/stepsCents", "[0]"),
                Arguments.of("/tunings/1/scale/stepsCents", "[0, 1199.999]"),
                Arguments.of("/levelCurve/floorDb", "-20"),
                Arguments.of("/levelCurve/ceilingDb", "0"),
                Arguments.of("/levelCurve/knee01", "0.5"),
                Arguments.of("/send/targets", "[]"),
                Arguments.of("/send/lines", "[]"));
    }

    static ObjectNode sample() {
        return RoomJson.tree(SampleRooms.twoHands("Copper Attic"));
    }

    /** The sample file with one value changed. */
    static ObjectNode sampleWith(String pointer, String value) throws IOException {
        return changed(sample(), pointer, value);
    }

    /** The file of a room by ruler with one value changed. */
    static ObjectNode byRulerWith(String pointer, String value) throws IOException {
        return changed(RoomJson.tree(SampleRooms.byRuler("Copper Attic")), pointer, value);
    }

    private static ObjectNode changed(ObjectNode tree, String pointer, String value) throws IOException {
        JsonNode changed = JsonMapper.builder().build().readTree(value);
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = tree.at(at.head());
        if (parent instanceof ObjectNode object) {
            object.set(at.last().getMatchingProperty(), changed);
        } else {
            ((ArrayNode) parent).set(at.last().getMatchingIndex(), changed);
        }
        return tree;
    }

    /** A pointer such as {@code /tunings/0/a4Hz} as messages write it: {@code tunings[0].a4Hz}. */
    static String key(String pointer) {
        return pointer.substring(1).replaceAll("/([0-9]+)", "[$1]").replace('/', '.');
    }
}
