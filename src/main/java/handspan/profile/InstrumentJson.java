package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineSplitter;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.InfraredPart;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.NoReadings;
import handspan.instrument.sensor.PortIdentity;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.sensor.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** An instrument as JSON: a file of its own, and the copy inside a room. */
public final class InstrumentJson {
    /** What an instrument file says of itself. */
    public static final String FORMAT = "handspan-instrument/1";

    /** How an instrument's own file is written and read. */
    static final FileForm<Instrument> FORM = new FileForm<>(
            InstrumentJson::fileTree,
            InstrumentJson::readFile,
            new TreeMerge(
                    Set.of(
                            "line",
                            "line.opening",
                            "line.closing",
                            "line.labelAbove",
                            "line.linesPerReading",
                            "line.slots.nature",
                            "level",
                            "port",
                            "pitch.noReading",
                            "level.noReading"),
                    Map.of()));

    private static final Words<Character> SEPARATORS =
            Words.of("separator", List.of(',', ';', '|', ':', '\t', ' '), separator -> switch (separator) {
                case ',' -> "comma";
                case ';' -> "semicolon";
                case '|' -> "bar";
                case ':' -> "colon";
                case '\t' -> "tab";
                default -> "blank";
            });

    private static final Words<LineShape.Matching> MATCHINGS =
            Words.of("matching", List.of(LineShape.Matching.values()), matching -> switch (matching) {
                case BY_LABEL -> "label";
                case BY_FIELD -> "field";
                case BY_ORDER -> "order";
            });

    private static final Words<LineShape.Nature> NATURES =
            Words.of("nature", List.of(LineShape.Nature.values()), nature -> switch (nature) {
                case LIVE -> "live";
                case CONSTANT -> "constant";
                case COUNTER -> "counter";
                case TIME -> "time";
            });

    private InstrumentJson() {}

    /** The tree of an instrument's own file. */
    public static ObjectNode fileTree(Instrument instrument) {
        return JsonNodeFactory.instance.objectNode().put("format", FORMAT).setAll(tree(instrument));
    }

    /** The tree of an instrument inside a room. */
    static ObjectNode tree(Instrument instrument) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("name", instrument.name())
                .put("revision", instrument.revision())
                .put("baud", instrument.baud())
                .put("referenceVolts", instrument.referenceVolts());
        LineShape shape = instrument.shape();
        if (shape != null) {
            tree.set("line", lineTree(shape));
        }
        tree.set("pitch", channelTree(instrument.pitch()));
        ChannelSpec level = instrument.level();
        if (level != null) {
            tree.set("level", channelTree(level));
        }
        PortIdentity port = instrument.port();
        if (port != null) {
            tree.putObject("port")
                    .put("vendorId", port.vendorId())
                    .put("productId", port.productId())
                    .put("serialNumber", port.serialNumber())
                    .put("location", port.location());
        }
        return tree;
    }

    static ObjectNode channelTree(ChannelSpec channel) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("channel", channel.channel())
                .put("kind", channel.kind().word())
                .put("unit", channel.unit().word());
        InfraredPart part = channel.part();
        if (part != null) {
            tree.put("part", part.word());
        }
        if (!channel.noReadings().values().isEmpty()) {
            ArrayNode values = tree.putArray("noReading");
            channel.noReadings().values().forEach(values::add);
        }
        return tree;
    }

    private static ObjectNode lineTree(LineShape shape) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("separator", SEPARATORS.word(shape.separator()))
                .put("decimalComma", shape.decimalComma())
                .put("matching", MATCHINGS.word(shape.matching()))
                .put("fieldCount", shape.fieldCount());
        LineShape.Layout layout = shape.layout();
        if (layout.opening() != 0) {
            tree.put("opening", String.valueOf(layout.opening()));
        }
        if (layout.closing() != 0) {
            tree.put("closing", String.valueOf(layout.closing()));
        }
        if (layout.labelAbove()) {
            tree.put("labelAbove", true);
        }
        if (layout.linesPerReading() > 1) {
            tree.put("linesPerReading", layout.linesPerReading());
        }
        ArrayNode slots = tree.putArray("slots");
        for (LineShape.Slot slot : shape.slots()) {
            ObjectNode one = slots.addObject()
                    .put("label", slot.label())
                    .put("unit", slot.unit())
                    .put("position", slot.position());
            if (slot.nature() != LineShape.Nature.LIVE) {
                one.put("nature", NATURES.word(slot.nature()));
            }
        }
        return tree;
    }

    private static Instrument readFile(JsonFields fields) throws ProfileException {
        fields.requireFormat(FORMAT);
        return read(fields);
    }

    static Instrument read(JsonFields fields) throws ProfileException {
        String name = fields.text(
                "name", given -> trial(given, 1, Instrument.USUAL_BAUD, 1).name());
        int revision = fields.whole("revision", given -> trial(name, given, Instrument.USUAL_BAUD, 1));
        int baud = fields.whole("baud", given -> trial(name, 1, given, 1));
        double referenceVolts = fields.number("referenceVolts", given -> trial(name, 1, Instrument.USUAL_BAUD, given));
        return new Instrument(
                name,
                revision,
                baud,
                fields.has("line") ? line(fields.object("line")) : null,
                channel(fields.object("pitch")),
                fields.has("level") ? channel(fields.object("level")) : null,
                referenceVolts,
                fields.has("port") ? port(fields.object("port")) : null);
    }

    private static PortIdentity port(JsonFields fields) throws ProfileException {
        int vendorId = fields.whole("vendorId", given -> new PortIdentity(given, 0, "", ""));
        int productId = fields.whole("productId", given -> new PortIdentity(0, given, "", ""));
        return new PortIdentity(vendorId, productId, fields.text("serialNumber"), fields.text("location"));
    }

    private static Instrument trial(String name, int revision, int baud, double referenceVolts) {
        ChannelSpec pitch = new ChannelSpec("1", SensorKind.UNSCALED, Unit.NONE);
        return new Instrument(name, revision, baud, null, pitch, null, referenceVolts);
    }

    static ChannelSpec channel(JsonFields fields) throws ProfileException {
        SensorKind kind = fields.text("kind", SensorKind::parse);
        String channel = fields.text("channel", given -> new ChannelSpec(given, kind, kind.usualUnit()).channel());
        ChannelSpec spec = fields.text("unit", given -> new ChannelSpec(channel, kind, Unit.parse(given)));
        ChannelSpec exact = fields.has("part")
                ? fields.text("part", given -> new ChannelSpec(channel, kind, spec.unit(), InfraredPart.parse(given)))
                : spec;
        if (!fields.has("noReading")) {
            return exact;
        }
        List<Double> listed = fields.numbers("noReading");
        return exact.with(fields.made("noReading", () -> new NoReadings(listed)));
    }

    private static LineShape line(JsonFields fields) throws ProfileException {
        char separator = fields.text("separator", SEPARATORS::meaning);
        boolean decimalComma = fields.flag("decimalComma");
        LineShape.Matching matching = fields.text("matching", MATCHINGS::meaning);
        // one field more than separators can stand in the longest line
        int fieldCount = fields.whole("fieldCount", 1, LineSplitter.LONGEST + 1);
        List<LineShape.Slot> slots = new ArrayList<>();
        for (JsonFields slot : fields.objects("slots")) {
            slots.add(new LineShape.Slot(
                    slot.text("label"),
                    slot.text("unit"),
                    slot.whole("position", given -> new LineShape.Slot("", "", given)),
                    slot.has("nature") ? slot.text("nature", NATURES::meaning) : LineShape.Nature.LIVE));
        }
        LineShape.Layout layout = layout(fields);
        return fields.made("slots", () -> new LineShape(separator, decimalComma, matching, fieldCount, slots, layout));
    }

    private static LineShape.Layout layout(JsonFields fields) throws ProfileException {
        char opening = fields.has("opening") ? fields.text("opening", InstrumentJson::frame) : 0;
        char closing = fields.has("closing") ? fields.text("closing", InstrumentJson::frame) : 0;
        boolean above = fields.has("labelAbove") && fields.flag("labelAbove");
        int lines = fields.has("linesPerReading") ? fields.whole("linesPerReading", 1, LineShape.Layout.MOST_LINES) : 1;
        return new LineShape.Layout(opening, closing, above, lines);
    }

    private static char frame(String text) {
        if (text.length() != 1) {
            throw new IllegalArgumentException("frame '" + text + "' (one character)");
        }
        return new LineShape.Layout(text.charAt(0), '\0', false, 1).opening();
    }
}
