package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.ChannelSpec;
import handspan.number.fit.MonotoneCurve;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;

/** What was captured for the hands, as JSON: channel, response, zone, holds. */
final class HandJson {
    private static final String AS_MEASURED = "asMeasured";
    private static final String CURVE = "curve";

    private static final Words<String> RESPONSES = Words.of("response", List.of(AS_MEASURED, CURVE), kind -> kind);
    private static final Words<StepKind> STEPS = Words.of("step", List.of(StepKind.values()), StepKind::word);
    private static final Words<HandRole> HANDS = Words.of("hand", List.of(HandRole.values()), HandRole::word);

    private HandJson() {}

    static ObjectNode tree(HandSetup hand) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        tree.set("channel", InstrumentJson.channelTree(hand.channel()));
        tree.set("response", responseTree(hand.response()));
        tree.putObject("zone")
                .put("nearMm", hand.zone().nearMm())
                .put("farMm", hand.zone().farMm())
                .put("nearUncertaintyMm", hand.zone().nearUncertaintyMm())
                .put("farUncertaintyMm", hand.zone().farUncertaintyMm());
        return tree.put("noiseMm", hand.noiseMm()).put("scaledTravel", hand.scaledTravel());
    }

    private static ObjectNode responseTree(Response response) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        if (response instanceof Response.Curve curve) {
            ArrayNode points = tree.put("kind", CURVE).putArray("points");
            for (MonotoneCurve.Point point : curve.points()) {
                points.addObject().put("physical", point.x()).put("mm", point.y());
            }
            return tree;
        }
        return tree.put("kind", AS_MEASURED);
    }

    static ArrayNode holdsTree(List<Hold> holds) {
        ArrayNode tree = JsonNodeFactory.instance.arrayNode();
        for (Hold hold : holds) {
            tree.addObject()
                    .put("step", hold.kind().word())
                    .put("hand", hold.hand().word())
                    .put("physical", hold.physical())
                    .put("standardUncertainty", hold.standardUncertainty())
                    .put("noise", hold.noise())
                    .put("count", hold.count());
        }
        return tree;
    }

    static HandSetup read(JsonFields fields) throws ProfileException {
        ChannelSpec channel = InstrumentJson.channel(fields.object("channel"));
        Response response = response(fields.object("response"));
        Zone zone = zone(fields.object("zone"));
        double noiseMm = fields.number("noiseMm", given -> new HandSetup(channel, response, zone, given, false));
        return new HandSetup(channel, response, zone, noiseMm, fields.flag("scaledTravel"));
    }

    private static Response response(JsonFields fields) throws ProfileException {
        if (fields.text("kind", RESPONSES::meaning).equals(AS_MEASURED)) {
            return new Response.AsMeasured();
        }
        List<MonotoneCurve.Point> points = new ArrayList<>();
        for (JsonFields point : fields.objects("points")) {
            points.add(new MonotoneCurve.Point(point.number("physical"), point.number("mm")));
        }
        return fields.made("points", () -> new Response.Curve(points));
    }

    private static Zone zone(JsonFields fields) throws ProfileException {
        double nearMm = fields.number("nearMm");
        double farMm = fields.number("farMm", given -> new Zone(nearMm, given, 0, 0));
        double nearUncertaintyMm = fields.number("nearUncertaintyMm", given -> new Zone(0, 1, given, 0));
        double farUncertaintyMm = fields.number("farUncertaintyMm", given -> new Zone(0, 1, 0, given));
        return new Zone(nearMm, farMm, nearUncertaintyMm, farUncertaintyMm);
    }

    static List<Hold> holds(List<JsonFields> all) throws ProfileException {
        List<Hold> holds = new ArrayList<>();
        for (JsonFields fields : all) {
            StepKind step = fields.text("step", STEPS::meaning);
            HandRole hand = fields.text("hand", HANDS::meaning);
            double physical = fields.number("physical");
            double uncertainty =
                    fields.number("standardUncertainty", given -> new Hold(step, hand, physical, given, 0, 0));
            double noise = fields.number("noise", given -> new Hold(step, hand, physical, uncertainty, given, 0));
            int count = fields.whole("count", 0, Integer.MAX_VALUE);
            holds.add(new Hold(step, hand, physical, uncertainty, noise, count));
        }
        return holds;
    }
}
