package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Direction;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.util.List;

/** A tuning as JSON. A known scale stands there by its name, any other with its steps. */
final class TuningJson {
    private TuningJson() {}

    static ObjectNode tree(Tuning tuning) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("name", tuning.name())
                .put("a4Hz", tuning.reference().a4Hz());
        Scale scale = tuning.scale();
        if (Scales.all().contains(scale)) {
            tree.put("scale", scale.name());
        } else {
            ArrayNode steps = tree.putObject("scale").put("name", scale.name()).putArray("stepsCents");
            scale.stepsCents().forEach(steps::add);
        }
        tree.put("tonic", NoteName.pitchClass(tuning.tonic()))
                .put("low", NoteName.of(tuning.lowKey()))
                .put("high", NoteName.of(tuning.highKey()))
                .put("direction", tuning.direction().word())
                .put("snap", tuning.snap().word())
                .put("transpose", tuning.transpose())
                .put("trimCents", tuning.trimCents());
        if (tuning.warp() != 0) {
            tree.put("warp", tuning.warp());
        }
        return tree;
    }

    static Tuning read(JsonFields fields) throws ProfileException {
        ReferencePitch reference = new ReferencePitch(fields.number("a4Hz", ReferencePitch::new));
        Scale scale = scale(fields);
        int tonic = fields.text("tonic", NoteName::parsePitchClass);
        Direction direction = fields.text("direction", Direction::parse);
        Snap snap = fields.text("snap", Snap::parse);
        int lowKey = fields.text("low", NoteName::parse);
        // each value is tried with the others sound, so that the error names its own key
        int highKey = fields.text(
                "high",
                given -> trial("high", lowKey, NoteName.parse(given), 0, 0).highKey());
        String name =
                fields.text("name", given -> trial(given, lowKey, highKey, 0, 0).name());
        int transpose = fields.whole("transpose", given -> trial(name, lowKey, highKey, given, 0));
        double trimCents = fields.number("trimCents", given -> trial(name, lowKey, highKey, 0, given));
        double warp = fields.has("warp")
                ? fields.number(
                        "warp", given -> trial(name, lowKey, highKey, 0, 0).withWarp(given))
                : 0;
        return fields.made(
                "high",
                () -> new Tuning(
                        name, reference, scale, tonic, lowKey, highKey, direction, snap, transpose, trimCents, warp));
    }

    private static Tuning trial(String name, int lowKey, int highKey, int transpose, double trimCents) {
        return new Tuning(
                name,
                ReferencePitch.A440,
                Scales.named("chromatic"),
                0,
                lowKey,
                highKey,
                Direction.HIGH_FAR,
                Snap.FREE,
                transpose,
                trimCents);
    }

    private static Scale scale(JsonFields fields) throws ProfileException {
        if (fields.isText("scale")) {
            return fields.text("scale", Scales::named);
        }
        JsonFields own = fields.object("scale");
        String name = own.text("name");
        List<Double> steps = own.numbers("stepsCents");
        return own.made("stepsCents", () -> new Scale(name, steps));
    }
}
