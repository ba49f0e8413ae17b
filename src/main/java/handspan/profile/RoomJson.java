package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Tuning;
import handspan.room.Aim;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import java.time.DateTimeException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A room's file as JSON. The resource {@code handspan/room-1.schema.json} describes the same for other programs. */
public final class RoomJson {
    /** What a room's file says of itself. */
    public static final String FORMAT = "handspan-room/1";

    private static final TreeMerge MERGE = new TreeMerge(
            Set.of(
                    "level",
                    "aim",
                    "instrument.line",
                    "instrument.line.opening",
                    "instrument.line.closing",
                    "instrument.line.labelAbove",
                    "instrument.line.linesPerReading",
                    "instrument.line.slots.nature",
                    "instrument.level",
                    "instrument.port",
                    "instrument.pitch.part",
                    "instrument.level.part",
                    "pitch.channel.part",
                    "level.channel.part",
                    "instrument.pitch.noReading",
                    "instrument.level.noReading",
                    "pitch.channel.noReading",
                    "level.channel.noReading",
                    "pitch.response.points",
                    "pitch.stepMm",
                    "pitch.noiseByPlace",
                    "level.noiseByPlace",
                    "pitch.fit",
                    "level.response.points",
                    "level.stepMm",
                    "level.fit",
                    "levelCurve.onLeaving",
                    "levelCurve.fadeMs",
                    "send.bundled",
                    "send.latencyMs",
                    "send.midi",
                    "send.lines.channel",
                    "send.lines.types",
                    "send.lines.from",
                    "send.lines.to",
                    "send.lines.clip",
                    "send.lines.onChange",
                    "send.lines.mostPerS",
                    "send.lines.deadBand",
                    "tunings.temperament",
                    "tunings.scale.steps",
                    "tunings.scale.stepsCents",
                    "tunings.strength01",
                    "tunings.quickness",
                    "tunings.warp"),
            Map.of("tunings", "name", "send.lines", "value"));

    private RoomJson() {}

    /** The tree of a room's file, keys in their fixed order. */
    public static ObjectNode tree(RoomProfile profile) {
        Room room = profile.room();
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("format", FORMAT)
                .put("room", room.name())
                .put("calibratedAt", room.calibratedAt());
        tree.putObject("air")
                .put("temperatureC", room.air().temperatureC())
                .put("humidity01", room.air().humidity01());
        tree.put("ratePerS", room.ratePerS());
        tree.set("instrument", InstrumentJson.tree(room.instrument()));
        tree.set("pitch", HandJson.tree(room.pitch()));
        HandSetup level = room.level();
        if (level != null) {
            tree.set("level", HandJson.tree(level));
        }
        if (room.aim().isMeasured()) {
            tree.putObject("aim")
                    .put("mm", room.aim().mm())
                    .put("reaches", room.aim().reaches());
        }
        tree.set("holds", HandJson.holdsTree(room.holds()));
        ArrayNode tunings = tree.putArray("tunings");
        profile.tunings().forEach(tuning -> tunings.add(TuningJson.tree(tuning)));
        tree.set("levelCurve", LevelJson.tree(profile.level()));
        tree.set("send", SendJson.tree(profile.send()));
        return tree;
    }

    /**
     * How a room's file is written and read.
     *
     * @param name of the room: the file's base name, whatever stands inside, so that a copied file is a room of its own
     */
    static FileForm<RoomProfile> form(String name) {
        return new FileForm<>(RoomJson::tree, fields -> read(fields, name), MERGE);
    }

    private static RoomProfile read(JsonFields fields, String name) throws ProfileException {
        fields.requireFormat(FORMAT);
        fields.text("room");
        Room room = room(fields, name);
        List<Tuning> tunings = new ArrayList<>();
        for (JsonFields tuning : fields.objects("tunings")) {
            tunings.add(TuningJson.read(tuning));
        }
        LevelCurve level = LevelJson.read(fields.object("levelCurve"));
        SendPlan send = SendJson.read(fields.object("send"));
        return fields.made("tunings", () -> new RoomProfile(room, tunings, level, send));
    }

    private static Room room(JsonFields fields, String name) throws ProfileException {
        String calibratedAt = fields.text("calibratedAt", RoomJson::isoTime);
        Instrument instrument = InstrumentJson.read(fields.object("instrument"));
        Air air = air(fields.object("air"));
        HandSetup pitch = HandJson.read(fields.object("pitch"));
        HandSetup level = fields.has("level") ? HandJson.read(fields.object("level")) : null;
        List<Hold> holds = HandJson.holds(fields.objects("holds"));
        double ratePerS = fields.number("ratePerS");
        Aim aim = fields.has("aim") ? aim(fields.object("aim")) : Aim.ASSUMED;
        return fields.made(
                "ratePerS", () -> new Room(name, calibratedAt, instrument, air, ratePerS, pitch, level, holds, aim));
    }

    private static Aim aim(JsonFields fields) throws ProfileException {
        double mm = fields.number("mm", given -> new Aim(given, 1));
        return new Aim(mm, fields.whole("reaches", 1, Integer.MAX_VALUE));
    }

    private static Air air(JsonFields fields) throws ProfileException {
        double temperatureC = fields.number("temperatureC", Air::at);
        return new Air(temperatureC, fields.number("humidity01", given -> new Air(temperatureC, given)));
    }

    /** A day, or a day and time with or without its distance from UTC. */
    private static String isoTime(String text) {
        try {
            (text.indexOf('T') < 0 ? DateTimeFormatter.ISO_DATE : DateTimeFormatter.ISO_DATE_TIME).parse(text);
            return text;
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("time '" + text + "' (ISO 8601): write it like 2026-03-14T19:30:00Z", e);
        }
    }
}
