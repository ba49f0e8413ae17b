package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.hand.smooth.SensorNoise;
import handspan.instrument.sensor.ChannelSpec;
import handspan.music.tuning.NoteName;
import handspan.number.fit.MonotoneCurve;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What was captured for the hands, as JSON: channel, response, zone, holds. */
final class HandJson {
    private static final String AS_MEASURED = "asMeasured";
    private static final String CURVE = "curve";
    private static final String PARABOLA = "parabola";
    private static final String TRIANGULATION = "triangulation";

    private static final Words<String> RESPONSES =
            Words.of("response", List.of(AS_MEASURED, CURVE, PARABOLA, TRIANGULATION), kind -> kind);
    private static final Words<StepKind> STEPS = Words.of("step", List.of(StepKind.values()), StepKind::word);
    private static final Words<StepKind> TARGETS = Words.of(
            "target", Arrays.stream(StepKind.values()).filter(StepKind::isPlace).toList(), StepKind::word);
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
        tree.put("noiseMm", hand.noiseMm()).put("scaledTravel", hand.scaledTravel());
        if (hand.noise().points().size() > 1) {
            ArrayNode places = tree.putArray("noiseByPlace");
            for (SensorNoise.Point point : hand.noise().points()) {
                places.addObject().put("mm", point.mm()).put("noiseMm", point.noiseMm());
            }
        }
        FitQuality fit = hand.fit();
        if (hand.stepMm() > 0) {
            tree.put("stepMm", hand.stepMm());
        }
        if (fit != null) {
            tree.set("fit", FitJson.tree(fit));
        }
        return tree;
    }

    private static ObjectNode responseTree(Response response) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        if (response instanceof Response.Curve curve) {
            ArrayNode points = tree.put("kind", CURVE).putArray("points");
            for (MonotoneCurve.Point point : curve.points()) {
                points.addObject().put("physical", point.x()).put("mm", point.y());
            }
            return tree;
        } else if (response instanceof Response.Parabola parabola) {
            return tree.put("kind", PARABOLA)
                    .put("c0", parabola.c0())
                    .put("c1", parabola.c1())
                    .put("c2", parabola.c2())
                    .put("fromPhysical", parabola.fromPhysical())
                    .put("toPhysical", parabola.toPhysical());
        } else if (response instanceof Response.Triangulation law) {
            return tree.put("kind", TRIANGULATION)
                    .put("aVolts", law.aVolts())
                    .put("bVoltMm", law.bVoltMm())
                    .put("kMm", law.kMm());
        }
        return tree.put("kind", AS_MEASURED);
    }

    static ArrayNode holdsTree(List<Hold> holds) {
        ArrayNode tree = JsonNodeFactory.instance.arrayNode();
        for (Hold hold : holds) {
            ObjectNode one = tree.addObject()
                    .put("step", hold.kind().word())
                    .put("hand", hold.hand().word())
                    .put("physical", hold.physical())
                    .put("standardUncertainty", hold.standardUncertainty())
                    .put("noise", hold.noise())
                    .put("count", hold.count());
            hold.mm().ifPresent(mm -> one.put("mm", mm));
            hold.key().ifPresent(key -> one.put("note", NoteName.of(key)));
            hold.target().ifPresent(target -> one.put("target", target.word()));
            hold.peak().ifPresent(peak -> one.put("peak", peak));
            if (hold.step() > 0) {
                one.put("countingStep", hold.step());
            }
        }
        return tree;
    }

    static HandSetup read(JsonFields fields) throws ProfileException {
        ChannelSpec channel = InstrumentJson.channel(fields.object("channel"));
        Response response = response(fields.object("response"));
        Zone zone = zone(fields.object("zone"));
        double noiseMm = fields.number("noiseMm", given -> new HandSetup(channel, response, zone, given, false));
        boolean scaledTravel = fields.flag("scaledTravel");
        FitQuality fit = fields.has("fit") ? FitJson.read(fields.object("fit")) : null;
        SensorNoise noise = fields.has("noiseByPlace") ? noise(fields) : SensorNoise.even(noiseMm);
        HandSetup setup = new HandSetup(channel, response, zone, noise, scaledTravel, 0, fit);
        return fields.has("stepMm") ? setup.inSteps(fields.number("stepMm", setup::inSteps)) : setup;
    }

    private static SensorNoise noise(JsonFields fields) throws ProfileException {
        List<SensorNoise.Point> points = new ArrayList<>();
        for (JsonFields point : fields.objects("noiseByPlace")) {
            double mm = point.number("mm");
            points.add(new SensorNoise.Point(
                    mm, point.number("noiseMm", given -> new SensorNoise.Point(mm, given).noiseMm())));
        }
        return fields.made("noiseByPlace", () -> new SensorNoise(points));
    }

    private static Response response(JsonFields fields) throws ProfileException {
        String kind = fields.text("kind", RESPONSES::meaning);
        if (kind.equals(AS_MEASURED)) {
            return new Response.AsMeasured();
        } else if (kind.equals(PARABOLA)) {
            double c0 = fields.number("c0");
            double c1 = fields.number("c1");
            double c2 = fields.number("c2");
            double from = fields.number("fromPhysical");
            double to = fields.number("toPhysical");
            return fields.made("c1", () -> new Response.Parabola(c0, c1, c2, from, to));
        } else if (kind.equals(TRIANGULATION)) {
            double a = fields.number("aVolts");
            double b = fields.number("bVoltMm");
            double k = fields.number("kMm");
            return fields.made("bVoltMm", () -> new Response.Triangulation(a, b, k));
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
                    fields.number("standardUncertainty", given -> Hold.of(step, hand, physical, given, 0, 0));
            double noise = fields.number("noise", given -> Hold.of(step, hand, physical, uncertainty, given, 0));
            int count = fields.whole("count", 0, Integer.MAX_VALUE);
            Hold hold = Hold.of(step, hand, physical, uncertainty, noise, count);
            if (fields.has("mm")) {
                hold = hold.at(fields.number("mm", hold::at));
            }
            if (fields.has("note")) {
                hold = hold.on(fields.text("note", NoteName::parse));
            }
            if (fields.has("target")) {
                hold = hold.reaching(fields.text("target", TARGETS::meaning));
            }
            if (fields.has("countingStep")) {
                hold = hold.inSteps(fields.number("countingStep", hold::inSteps));
            }
            if (fields.has("peak")) {
                hold = hold.after(fields.number("peak"));
            }
            holds.add(hold);
        }
        return holds;
    }
}
