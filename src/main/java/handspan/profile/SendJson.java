package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.send.MidiForm;
import handspan.music.send.Packing;
import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SendValue;
import handspan.music.send.Sparing;
import java.util.ArrayList;
import java.util.List;

/** What is sent, as JSON. Keys that say what is usual are left out. */
final class SendJson {
    private SendJson() {}

    static ObjectNode tree(SendPlan plan) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        ArrayNode targets = tree.putArray("targets");
        plan.targets().forEach(target -> targets.add(target.text()));
        if (!plan.packing().bundled()) {
            tree.put("bundled", false);
        }
        if (plan.packing().isTimed()) {
            tree.put("latencyMs", plan.packing().latencyMs());
        }
        MidiForm midi = plan.midi();
        if (!midi.equals(MidiForm.USUAL)) {
            tree.putObject("midi")
                    .put("channel", midi.channel())
                    .put("bendSemitones", midi.bendSemitones())
                    .put("loudness", midi.loudness().word());
        }
        ArrayNode lines = tree.putArray("lines");
        plan.lines().forEach(line -> lines.add(lineTree(line)));
        return tree;
    }

    private static ObjectNode lineTree(SendLine line) {
        ObjectNode tree =
                JsonNodeFactory.instance.objectNode().put("value", line.value().word());
        if (!line.channel().isEmpty()) {
            tree.put("channel", line.channel());
        }
        tree.put("address", line.address());
        if (!line.types().equals(line.value().types())) {
            tree.put("types", line.types());
        }
        Scaling scaling = line.scaling();
        if (!scaling.equals(Scaling.NONE)) {
            tree.putArray("from").add(scaling.fromLow()).add(scaling.fromHigh());
            tree.putArray("to").add(scaling.toLow()).add(scaling.toHigh());
            tree.put("clip", scaling.clip());
        }
        Sparing sparing = line.sparing();
        if (sparing.onChange()) {
            tree.put("onChange", true);
        }
        if (sparing.mostPerS() > 0) {
            tree.put("mostPerS", sparing.mostPerS());
        }
        if (sparing.deadBand() > 0) {
            tree.put("deadBand", sparing.deadBand());
        }
        return tree.put("on", line.on());
    }

    static SendPlan read(JsonFields fields) throws ProfileException {
        List<SendLine> lines = new ArrayList<>();
        for (JsonFields line : fields.objects("lines")) {
            lines.add(line(line));
        }
        List<SendTarget> targets = fields.texts("targets", SendTarget::parse);
        Packing bundled = Packing.USUAL.bundled(!fields.has("bundled") || fields.flag("bundled"));
        Packing packing = fields.has("latencyMs") ? bundled.after(fields.number("latencyMs", bundled::after)) : bundled;
        return new SendPlan(lines, targets, packing, fields.has("midi") ? midi(fields.object("midi")) : MidiForm.USUAL);
    }

    private static MidiForm midi(JsonFields fields) throws ProfileException {
        MidiForm usual = MidiForm.USUAL;
        int channel = fields.whole("channel", given -> new MidiForm(given, 2, usual.loudness()));
        int bend = fields.whole("bendSemitones", given -> new MidiForm(1, given, usual.loudness()));
        return new MidiForm(channel, bend, fields.text("loudness", MidiForm.Loudness::parse));
    }

    private static SendLine line(JsonFields fields) throws ProfileException {
        SendValue value = fields.text("value", SendValue::parse);
        // each part is tried with the others sound, so that the error names its own key
        SendLine plain = fields.has("channel")
                ? fields.text("channel", given -> SendLine.byDefault(value, given, "name"))
                : fields.made("value", () -> SendLine.byDefault(value, "name"));
        SendLine placed = fields.text("address", plain::at);
        SendLine typed = fields.has("types") ? fields.text("types", placed::typed) : placed;
        SendLine scaled = fields.has("from") ? scaled(fields, typed) : typed;
        return scaled.with(sparing(fields)).turned(fields.flag("on"));
    }

    private static SendLine scaled(JsonFields fields, SendLine line) throws ProfileException {
        List<Double> from = two(fields, "from");
        List<Double> to = two(fields, "to");
        boolean clip = fields.has("clip") && fields.flag("clip");
        fields.made("to", () -> new Scaling(0, 1, to.get(0), to.get(1), clip));
        return fields.made("from", () -> line.with(new Scaling(from.get(0), from.get(1), to.get(0), to.get(1), clip)));
    }

    private static List<Double> two(JsonFields fields, String key) throws ProfileException {
        List<Double> numbers = fields.numbers(key);
        return fields.made(key, () -> {
            if (numbers.size() != 2) {
                throw new IllegalArgumentException(numbers.size() + " numbers (two): write them like [0, 1]");
            }
            return numbers;
        });
    }

    private static Sparing sparing(JsonFields fields) throws ProfileException {
        boolean onChange = fields.has("onChange") && fields.flag("onChange");
        double mostPerS = fields.has("mostPerS") ? fields.number("mostPerS", given -> new Sparing(false, given, 0)) : 0;
        double deadBand = fields.has("deadBand") ? fields.number("deadBand", given -> new Sparing(false, 0, given)) : 0;
        return new Sparing(onChange, mostPerS, deadBand);
    }
}
