package handspan.profile;

import handspan.hand.smooth.Quickness;
import handspan.hand.smooth.SensorNoise;
import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.NoReadings;
import handspan.instrument.sensor.PortIdentity;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.music.send.MidiForm;
import handspan.music.send.Packing;
import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SendValue;
import handspan.music.send.Sparing;
import handspan.music.tuning.Direction;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.JustIntonation;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Snapping;
import handspan.music.tuning.Tonic;
import handspan.music.tuning.Tuning;
import handspan.number.fit.MonotoneCurve;
import handspan.room.Aim;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.List;
import java.util.stream.Stream;

/** Invented rooms that between them use every part of the format. */
public final class SampleRooms {
    private static final ChannelSpec LASER = ChannelSpec.parse("dist:distance:mm");
    private static final ChannelSpec LIGHT = ChannelSpec.parse("2:photoresistor:counts10");

    private SampleRooms() {}

    /** All of them, each with a name of its own. */
    public static Stream<RoomProfile> all() {
        return Stream.of(
                twoHands("Copper Attic"),
                onlyPitch("Salle d'\u00e9t\u00e9"),
                oddBoard("\u90e8\u5c4b"),
                byRuler("Fennel Loft"),
                byInfrared("Fennel Stair"),
                otherTemperaments("Fennel Barn"));
    }

    /** Tunings outside the usual twelve, and every way of snapping. */
    static RoomProfile otherTemperaments(String name) {
        RoomProfile room = onlyPitch(name);
        Tuning flat = new Tuning(
                "in B flat",
                new ReferencePitch(466),
                new JustIntonation(),
                Scales.named("major"),
                Tonic.parse("Bb"),
                new PitchRange(46, 70, Direction.HIGH_FAR, 1.5),
                new Snapping(Snap.PULL, 0.25),
                -1,
                12.5);
        return new RoomProfile(
                room.room(),
                List.of(
                        flat,
                        flat.named("ratios")
                                .withScale(Scale.written("four fourths", List.of("1/1", "4/3", "16/9", "1100.25")))
                                .withSnap(Snap.ONSET)
                                .with(new Quickness(-0.5)),
                        new Tuning(
                                "nineteen",
                                ReferencePitch.A440,
                                new EqualDivision(19),
                                Scales.named("chromatic"),
                                Tonic.parse("C#"),
                                new PitchRange(60, 72, Direction.HIGH_NEAR, 0),
                                Snapping.of(Snap.STEPS),
                                0,
                                0)),
                room.level(),
                room.send());
    }

    /** Every optional part is there: line, level hand, curve, a scale of its own. */
    static RoomProfile twoHands(String name) {
        LineShape shape = new LineShape(
                '\t',
                true,
                LineShape.Matching.BY_LABEL,
                3,
                List.of(new LineShape.Slot("dist", "mm", 0), new LineShape.Slot("light", "", 1)));
        Instrument instrument = new Instrument("copper wing", 3, 57_600, shape, LASER, LIGHT, 3.3)
                .at(57_600, new PortIdentity(0x1209, 0x0001, "E6614", "1-1.4"));
        HandSetup pitch = new HandSetup(LASER, new Response.AsMeasured(), new Zone(80.5, 512.25, 0.3, 0.7), 2.1, false);
        HandSetup level = new HandSetup(
                LIGHT,
                new Response.Curve(List.of(
                        new MonotoneCurve.Point(2.25, 0),
                        new MonotoneCurve.Point(0.5, 60),
                        new MonotoneCurve.Point(-1.75, 120))),
                new Zone(0, 120, 0.9, 1.1),
                0.4,
                true);
        List<Hold> holds = List.of(
                Hold.of(StepKind.NEAR, HandRole.PITCH, 80.5, 0.3, 2.0, 141),
                Hold.of(StepKind.COVERED, HandRole.LEVEL, 2.25, 0.01, 0.02, 150));
        Room room =
                new Room(name, "2026-03-14T19:30:00Z", instrument, new Air(23.5, 0.42), 50.125, pitch, level, holds);
        Tuning slendro = new Tuning(
                "after the break",
                new ReferencePitch(442.5),
                new Scale("five about even", List.of(0.0, 231.0, 474.5, 717.0, 955.0)),
                2,
                50,
                74,
                Direction.HIGH_NEAR,
                Snap.STEPS,
                -12,
                -3.5);
        SendPlan send = SendPlan.byDefault(
                "copper wing", List.of(SendTarget.parse("udp:127.0.0.1:9000"), SendTarget.parse("udp:[::1]:57121")));
        return new RoomProfile(
                room, List.of(Tuning.usual(), slendro), new LevelCurve(-60, -6, 0.03, false, 0.75), send);
    }

    /** A response fitted to ruler holds, with all that a hold can carry. */
    static RoomProfile byRuler(String name) {
        Instrument instrument = new Instrument("copper wing", 4, 57_600, null, LASER, null, 3.3);
        List<MonotoneCurve.Point> residuals = List.of(
                new MonotoneCurve.Point(100, -0.25),
                new MonotoneCurve.Point(300, 0.5),
                new MonotoneCurve.Point(500, -0.25));
        List<MonotoneCurve.Point> uncertainty =
                List.of(new MonotoneCurve.Point(100, 0.75), new MonotoneCurve.Point(500, 1.25));
        HandSetup pitch = new HandSetup(
                LASER,
                new Response.Parabola(-4.5, 1.01, 1e-5, 95, 498),
                new Zone(100, 500, 0.75, 1.25),
                new SensorNoise(List.of(new SensorNoise.Point(100, 1.5), new SensorNoise.Point(500, 2.5))),
                false,
                1,
                new FitQuality(
                        "parabola",
                        3,
                        residuals,
                        0.4,
                        0.6,
                        1.5,
                        uncertainty,
                        List.of(new FitQuality.Coefficient("c0 mm", -4.5, 0.75))));
        List<Hold> holds = List.of(
                Hold.of(StepKind.RULER, HandRole.PITCH, 95, 0.25, 2, 190)
                        .at(100)
                        .inSteps(1)
                        .after(180),
                Hold.of(StepKind.NOTE, HandRole.PITCH, 300.5, 0.25, 2, 100).on(69),
                Hold.of(StepKind.AIM, HandRole.PITCH, 307.5, 0.5, 2, 40).on(69).reaching(StepKind.NOTE));
        Room room = new Room(
                name, "2026-03-14T19:30:00Z", instrument, Air.USUAL, 50, pitch, null, holds, new Aim(7.25, 10));
        return new RoomProfile(
                room, List.of(Tuning.usual().withWarp(-1.25)), LevelCurve.USUAL.with(new Leaving(true, 250)), fitted());
    }

    /** All that can be said of what is sent. */
    private static SendPlan fitted() {
        SendLine level = new SendLine(
                SendValue.LEVEL,
                "",
                "/keys/{key}/level",
                "i",
                new Scaling(0, 0.5, 0, 127, true),
                new Sparing(true, 60, 0.5),
                true);
        SendLine raw = SendLine.byDefault(SendValue.RAW, "2", "copper wing").turned(false);
        List<SendTarget> targets = List.of(
                SendTarget.parse("tcp-slip:stage:9000"),
                SendTarget.parse("udp-multicast:[ff02::1]:9000"),
                SendTarget.parse("midi:Blue Box"));
        return new SendPlan(
                List.of(level, raw),
                targets,
                Packing.USUAL.after(12.5),
                new MidiForm(3, 48, MidiForm.Loudness.PRESSURE));
    }

    /** A law for infrared, and the part it is. */
    static RoomProfile byInfrared(String name) {
        ChannelSpec infrared =
                ChannelSpec.parse("1:infrared:counts12:4-30cm").with(new NoReadings(List.of(4000.0, 312.5)));
        Instrument instrument = new Instrument("ember", 1, 115_200, null, infrared, null, 3.3);
        HandSetup pitch = new HandSetup(
                infrared, new Response.Triangulation(0.016, 131.5, 5.25), new Zone(70, 250, 0.5, 1.5), 2, true);
        Room room = new Room(name, "2026-03-14T19:30:00Z", instrument, Air.USUAL, 60, pitch, null, List.of());
        return new RoomProfile(room, List.of(Tuning.usual()), LevelCurve.USUAL, new SendPlan(List.of(), List.of()));
    }

    /** No optional part is there. */
    static RoomProfile onlyPitch(String name) {
        ChannelSpec echo = ChannelSpec.parse("1:echo:us");
        Instrument instrument = new Instrument("reed", 1, 9600, null, echo, null, 5);
        HandSetup pitch = new HandSetup(echo, new Response.AsMeasured(), new Zone(100, 500, 1, 1), 3, false);
        Room room = new Room(name, "2026-03-14T19:30:00+01:00", instrument, Air.USUAL, 16.5, pitch, null, List.of());
        return new RoomProfile(room, List.of(Tuning.usual()), LevelCurve.USUAL, new SendPlan(List.of(), List.of()));
    }

    /** Labels as a careless board prints them, and lines that go out twice or not at all. */
    static RoomProfile oddBoard(String name) {
        ChannelSpec hand = ChannelSpec.parse("Abst\u00e4nde \"A\"\\1:unscaled:none");
        LineShape shape = new LineShape(
                '|',
                false,
                LineShape.Matching.BY_FIELD,
                4,
                List.of(
                        new LineShape.Slot("Abst\u00e4nde \"A\"\\1", "\u00b5s", 3),
                        new LineShape.Slot("\u0001\u0085/{}[]", "\u00c2\u00b5", 0, LineShape.Nature.CONSTANT)),
                new LineShape.Layout('<', '\\', true, 16));
        Instrument instrument = new Instrument("Gl\u00fchw\u00fcrmchen", 2, 115_200, shape, hand, null, 5);
        HandSetup pitch = new HandSetup(
                hand,
                new Response.Curve(List.of(new MonotoneCurve.Point(-3, 1e-7), new MonotoneCurve.Point(900, 1.0 / 3))),
                new Zone(-0.0, 1.0 / 3, 0, Double.MIN_VALUE),
                1e-300,
                true);
        Room room = new Room(name, "2026-03-14", instrument, new Air(-20, 1), 10_000, pitch, null, List.of());
        SendPlan send = new SendPlan(
                List.of(
                        new SendLine(SendValue.PITCH, "/a/hz", true),
                        new SendLine(SendValue.PITCH, "/b/hz", false),
                        new SendLine(SendValue.STATE, "/!\"$%&'()+-.<=>@Z\\^_`z|~", true)),
                List.of());
        Tuning blues = new Tuning(
                "\ud834\udd1e late",
                ReferencePitch.A440,
                Scales.named("blues"),
                10,
                0,
                127,
                Direction.HIGH_FAR,
                Snap.FREE,
                48,
                -0.0);
        return new RoomProfile(room, List.of(blues), LevelCurve.USUAL, send);
    }
}
