package handspan.show.chart;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Direction;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.fit.MonotoneCurve;
import handspan.profile.RoomProfile;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import handspan.room.budget.NoteChance;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;

/** Invented rooms and passages, of the size such instruments have. */
public final class Samples {
    /** Ends of the pitch zone, mm. */
    public static final double NEAR_MM = 100;

    /** Far end. */
    public static final double FAR_MM = 500;

    private Samples() {}

    /** Two octaves, A3 to A5. */
    public static Tuning twoOctaves(String scale, Direction direction, Snap snap) {
        return new Tuning("evening", ReferencePitch.A440, Scales.named(scale), 9, 57, 81, direction, snap, 0, 0);
    }

    /** Five octaves of all twelve notes at another reference, shifted: more names than there is room for. */
    public static Tuning wide() {
        return new Tuning(
                "wide",
                new ReferencePitch(442.5),
                Scales.named("chromatic"),
                0,
                36,
                96,
                Direction.HIGH_NEAR,
                Snap.FREE,
                -2,
                12.5);
    }

    /** An echo channel that sees nothing: zero all the time. */
    public static RawTrace nothingSeen() {
        double[] timesS = new double[60];
        for (int i = 0; i < timesS.length; i++) {
            timesS[i] = 0.06 * i;
        }
        return new RawTrace(
                "echo", "us", timesS, new double[60], new boolean[60], OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A room with two distance hands. */
    public static RoomProfile granary(Tuning tuning) {
        HandSetup level = new HandSetup(
                ChannelSpec.parse("2:distance:mm"), new Response.AsMeasured(), new Zone(80, 380, 0.5, 0.7), 1.9, false);
        return room("Old Granary", "2:distance:mm", level, tuning, LevelCurve.USUAL);
    }

    /** A room with a light sensor for level, loud when covered. */
    public static RoomProfile boathouse(Tuning tuning) {
        HandSetup level = new HandSetup(
                ChannelSpec.parse("2:photoresistor:counts10"),
                new Response.AsMeasured(),
                new Zone(0, 200, 0.4, 0.4),
                1.1,
                true);
        return room("Boathouse", "2:photoresistor:counts10", level, tuning, new LevelCurve(-54, -9, 0.06, false, 1));
    }

    /** A room with a pitch hand only. */
    public static RoomProfile attic(Tuning tuning) {
        return room("Attic", null, null, tuning, LevelCurve.USUAL);
    }

    /** A room whose pitch comes from a sensor without true mm. */
    public static RoomProfile shed(Tuning tuning) {
        RoomProfile attic = attic(tuning);
        HandSetup unscaled = new HandSetup(
                ChannelSpec.parse("1:unscaled"), new Response.AsMeasured(), new Zone(100, 300, 0.4, 1.0), 1.2, true);
        Room like = attic.room();
        Room room = new Room("Shed", like.calibratedAt(), like.instrument(), like.air(), 50, unscaled, null, List.of());
        return new RoomProfile(room, attic.tunings(), attic.level(), attic.send());
    }

    /** A pitch hand set by seven ruler holds on a sensor that bends: a parabola, with what it leaves over. */
    public static RoomProfile bent(Tuning tuning) {
        RoomProfile attic = attic(tuning);
        Room like = attic.room();
        double[] leftMm = {0.8, -1.1, 0.2, 1.4, -0.9, -1.2, 0.8};
        Response.Parabola response = new Response.Parabola(-12, 0.9, 2e-4, 110, 520);
        List<Hold> holds = new ArrayList<>();
        List<MonotoneCurve.Point> residuals = new ArrayList<>();
        for (int i = 0; i < leftMm.length; i++) {
            double rulerMm = 100 + 60 * i;
            double said = response.physical(rulerMm + leftMm[i]);
            holds.add(
                    Hold.of(StepKind.RULER, HandRole.PITCH, said, 0.3, 2.1, 150).at(rulerMm));
            residuals.add(new MonotoneCurve.Point(rulerMm, leftMm[i]));
        }
        FitQuality fit = new FitQuality(
                "parabola",
                3,
                residuals,
                1.27,
                1.61,
                1,
                FitQuality.along(100, 460, mm -> 0.55 + 0.5 * Math.pow((mm - 280) / 180, 2)));
        HandSetup hand = new HandSetup(
                ChannelSpec.parse("1:distance:mm"), response, new Zone(100, 460, 0.9, 0.9), 2.1, false, fit);
        Room room = new Room("Ropewalk", like.calibratedAt(), like.instrument(), like.air(), 50, hand, null, holds);
        return new RoomProfile(room, attic.tunings(), attic.level(), attic.send());
    }

    private static RoomProfile room(
            String name,
            @org.jspecify.annotations.Nullable String levelChannel,
            @org.jspecify.annotations.Nullable HandSetup level,
            Tuning tuning,
            LevelCurve curve) {
        ChannelSpec pitchChannel = ChannelSpec.parse("1:distance:mm");
        Instrument instrument = new Instrument(
                "lantern",
                1,
                115_200,
                null,
                pitchChannel,
                levelChannel == null ? null : ChannelSpec.parse(levelChannel),
                5);
        HandSetup pitch =
                new HandSetup(pitchChannel, new Response.AsMeasured(), new Zone(NEAR_MM, FAR_MM, 0.4, 1.1), 2.1, false);
        Room room = new Room(name, "2026-03-14T18:30:00Z", instrument, Air.USUAL, 50, pitch, level, List.of());
        return new RoomProfile(room, List.of(tuning), curve, SendPlan.byDefault("lantern", List.of()));
    }

    /** A hand that comes, plays up and down and goes; 8190 where nothing is seen, one spike in a hundred refused. */
    public static RawTrace raw() {
        Random chance = new Random(17);
        int count = 1000;
        double[] timesS = new double[count];
        double[] values = new double[count];
        boolean[] taken = new boolean[count];
        for (int i = 0; i < count; i++) {
            timesS[i] = i / 50.0 + 0.002 * chance.nextDouble();
            boolean away = timesS[i] < 2 || timesS[i] > 17.5 || (timesS[i] > 9 && timesS[i] < 10.2);
            boolean spike = chance.nextInt(100) == 0;
            double mm = 300 + 185 * Math.sin(0.9 * timesS[i]) + 2.1 * chance.nextGaussian();
            values[i] = away ? 8190 : Math.rint(spike ? mm + 700 : mm);
            taken[i] = !away && !spike;
        }
        return new RawTrace("1", "mm", timesS, values, taken, OptionalDouble.of(NEAR_MM), OptionalDouble.of(FAR_MM));
    }

    /** A melody in steps with slides and vibrato; what is sent lags by 40 ms and wobbles; a gap in the middle. */
    public static PassageTrace passage() {
        Random chance = new Random(23);
        double[] melody = {57, 60, 62, 64, 67, 69, 72, 69, 67, 74, 76, 72, 69, 64, 60, 57};
        int count = 2400;
        double stepS = 0.005;
        double[] timesS = new double[count];
        double[] meant = new double[count];
        double[] sent = new double[count];
        double[] level = new double[count];
        boolean[] sounding = new boolean[count];
        double wobble = 0;
        for (int i = 0; i < count; i++) {
            timesS[i] = i * stepS;
            meant[i] = melodyAt(melody, timesS[i]);
            wobble = 0.95 * wobble + 0.015 * chance.nextGaussian();
            sent[i] = melodyAt(melody, timesS[i] - 0.04) + wobble;
            sounding[i] = timesS[i] > 0.35 && !(timesS[i] > 6 && timesS[i] < 6.7);
            level[i] = sounding[i] ? -20 + 9 * Math.sin(1.3 * timesS[i]) : Double.NEGATIVE_INFINITY;
        }
        return new PassageTrace(timesS, meant, sent, level, sounding);
    }

    private static double melodyAt(double[] melody, double timeS) {
        double noteS = 0.75;
        double at = Math.max(0, Math.min(melody.length - 1.001, timeS / noteS));
        int note = (int) at;
        double from = melody[note];
        double to = melody[Math.min(note + 1, melody.length - 1)];
        double slide = Math.max(0, (at - note - 0.7) / 0.3);
        double vibrato = 0.25 * Math.sin(2 * Math.PI * 6 * timeS) * (note % 3 == 2 ? 1 : 0);
        return from + (to - from) * slide * slide * (3 - 2 * slide) + vibrato;
    }

    /** Chances that rise along the ladder by a step a note: all classes occur. */
    public static List<NoteChance> chances(Tuning tuning, double step01) {
        return IntStream.range(0, tuning.ladder().size())
                .mapToObj(
                        note -> new NoteChance(note, 100 + note, 99 + note, 101 + note, 6, Math.min(1, step01 * note)))
                .toList();
    }

    /** Errors of three notes, each played twice; all shifted. */
    static NoteErrors.Layer errors(String name, double shiftCents) {
        return new NoteErrors.Layer(
                name,
                List.of(
                        new NoteErrors(57, "A3", shiftCents - 10, 6, List.of(shiftCents - 12, shiftCents - 8)),
                        new NoteErrors(60, "C4", shiftCents + 4, 12, List.of(shiftCents - 2, shiftCents + 9)),
                        new NoteErrors(64, "E4", shiftCents + 16, 8, List.of(shiftCents + 12, shiftCents + 21))));
    }
}
