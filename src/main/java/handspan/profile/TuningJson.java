package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.hand.smooth.Quickness;
import handspan.music.tuning.Direction;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scale;
import handspan.music.tuning.ScaleStep;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Snapping;
import handspan.music.tuning.Temperament;
import handspan.music.tuning.Tonic;
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
        if (!tuning.temperament().equals(EqualDivision.TWELVE)) {
            tree.put("temperament", tuning.temperament().word());
        }
        Scale scale = tuning.scale();
        if (Scales.all().contains(scale)) {
            tree.put("scale", scale.name());
        } else {
            put(tree.putObject("scale").put("name", scale.name()), scale);
        }
        tree.put("tonic", tuning.tonic().name())
                .put("low", tuning.lowName())
                .put("high", tuning.highName())
                .put("direction", tuning.direction().word())
                .put("snap", tuning.snap().word());
        if (tuning.snap() == Snap.PULL) {
            tree.put("strength01", tuning.snapping().strength01());
        }
        tree.put("transpose", tuning.transpose()).put("trimCents", tuning.trimCents());
        if (tuning.range().warp() != 0) {
            tree.put("warp", tuning.range().warp());
        }
        if (tuning.quickness().steps() != 0) {
            tree.put("quickness", tuning.quickness().steps());
        }
        return tree;
    }

    private static void put(ObjectNode tree, Scale scale) {
        if (scale.steps().stream().allMatch(ScaleStep.InCents.class::isInstance)) {
            ArrayNode steps = tree.putArray("stepsCents");
            scale.stepsCents().forEach(steps::add);
        } else {
            ArrayNode steps = tree.putArray("steps");
            scale.steps().forEach(step -> steps.add(step.text()));
        }
    }

    static Tuning read(JsonFields fields) throws ProfileException {
        ReferencePitch reference = new ReferencePitch(fields.number("a4Hz", ReferencePitch::new));
        Temperament temperament =
                fields.has("temperament") ? fields.text("temperament", Temperament::parse) : EqualDivision.TWELVE;
        Scale scale = scale(fields, temperament);
        Tonic tonic = fields.text("tonic", Tonic::parse);
        PitchRange range = range(fields);
        Snapping snapping = snapping(fields);
        // each value is tried with the others sound, so that the error names its own key
        String name = fields.text("name", given -> Tuning.usual().named(given).name());
        int transpose = fields.whole(
                "transpose", given -> Tuning.usual().shifted(given, 0).transpose());
        double trimCents = fields.number("trimCents", given -> Tuning.usual().shifted(0, given));
        Quickness quickness =
                fields.has("quickness") ? new Quickness(fields.number("quickness", Quickness::new)) : Quickness.USUAL;
        return fields.made(
                "high",
                () -> new Tuning(
                        name, reference, temperament, scale, tonic, range, snapping, transpose, trimCents, quickness));
    }

    private static PitchRange range(JsonFields fields) throws ProfileException {
        Direction direction = fields.text("direction", Direction::parse);
        int lowKey = fields.text("low", NoteName::parse);
        int highKey =
                fields.text("high", given -> new PitchRange(lowKey, NoteName.parse(given), direction, 0).highKey());
        double warp = fields.has("warp")
                ? fields.number("warp", given -> new PitchRange(lowKey, highKey, direction, given))
                : 0;
        return new PitchRange(lowKey, highKey, direction, warp);
    }

    private static Snapping snapping(JsonFields fields) throws ProfileException {
        Snap snap = fields.text("snap", Snap::parse);
        return fields.has("strength01")
                ? new Snapping(snap, fields.number("strength01", given -> new Snapping(snap, given)))
                : Snapping.of(snap);
    }

    private static Scale scale(JsonFields fields, Temperament temperament) throws ProfileException {
        if (fields.isText("scale")) {
            Scale scale = fields.text("scale", Scales::named);
            fields.made("scale", () -> scale.stepsCents(temperament));
            return scale;
        }
        JsonFields own = fields.object("scale");
        String name = own.text("name");
        if (own.has("stepsCents")) {
            List<Double> steps = own.numbers("stepsCents");
            return own.made("stepsCents", () -> new Scale(name, steps));
        }
        List<ScaleStep> steps = own.texts("steps", ScaleStep::parse);
        return own.made("steps", () -> new Scale(name, steps, List.of()));
    }
}
