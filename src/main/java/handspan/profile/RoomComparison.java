package handspan.profile;

import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.SensorKind;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What differs between two rooms, or two versions of one: from the first to the second.
 *
 * @param nearMm how much farther the pitch zone's near end lies, mm
 * @param farMm how much farther its far end lies, mm
 * @param centsByPlace what the same hand plays higher at the {@link #PLACES} of the first zone, in the first one's
 *     first tuning, cents: what the zone's move alone does
 * @param noiseMm how much more the pitch hand's noise is at its worst place, mm
 * @param light what has become of the open light; empty unless both have a level hand by light
 * @param differences each with one word for what differs; empty when nothing does
 */
public record RoomComparison(
        double nearMm,
        double farMm,
        List<Double> centsByPlace,
        double noiseMm,
        Optional<Light> light,
        List<Difference> differences) {
    /** Places in the first room's zone, 0..1. */
    public static final List<Double> PLACES = List.of(0.0, 0.25, 0.5, 0.75, 1.0);

    /** Less is rounding. */
    private static final double SAME = 1e-9;

    /**
     * The open light.
     *
     * @param factor by which the light cell's resistance differs, 1 or more; which way, the level tells
     * @param levelDb what the first room's level curve makes of the second one's open light, dB above the ceiling
     */
    public record Light(double factor, double levelDb) {}

    /**
     * One difference.
     *
     * @param what in a word
     * @param words from what to what
     */
    public record Difference(String what, String words) {}

    /** Copies the lists. */
    public RoomComparison {
        centsByPlace = List.copyOf(centsByPlace);
        differences = List.copyOf(differences);
    }

    /** Compares. */
    public static RoomComparison of(RoomProfile before, RoomProfile after) {
        HandSetup one = before.room().pitch();
        HandSetup other = after.room().pitch();
        Tuning tuning = before.tunings().get(0);
        List<Double> cents = new ArrayList<>();
        for (double place : PLACES) {
            double elsewhere = other.zone().place(one.zone().mm(place));
            cents.add(100 * (key(tuning, elsewhere) - key(tuning, place)));
        }
        double nearMm = other.zone().nearMm() - one.zone().nearMm();
        double farMm = other.zone().farMm() - one.zone().farMm();
        Optional<Light> light = light(before, after);
        List<Difference> all = new ArrayList<>();
        measured(before.room(), after.room(), all);
        if (differ(nearMm) || differ(farMm)) {
            all.add(new Difference(
                    "zone",
                    "near end " + signed(nearMm, "mm") + ", far end " + signed(farMm, "mm") + "; the same hand plays "
                            + String.join(
                                    ", ", cents.stream().map(c -> signed(c, "")).toList())
                            + " cents higher at places 0, 0.25, 0.5, 0.75, 1"));
        }
        double noiseMm = other.noiseMm() - one.noiseMm();
        if (differ(noiseMm)) {
            all.add(new Difference("noise", fromTo(one.noiseMm(), other.noiseMm(), 2, " mm")));
        }
        level(before.room().level(), after.room().level(), light, all);
        all.addAll(SoundComparison.of(before, after));
        return new RoomComparison(nearMm, farMm, cents, noiseMm, light, all);
    }

    /** The keyboard ends with the zone: beyond it the end's note goes on. */
    private static double key(Tuning tuning, double place) {
        return tuning.curve().key(Math.max(0, Math.min(1, place)));
    }

    /** What differs, each in a word. */
    public List<String> words() {
        return differences.stream().map(Difference::what).distinct().toList();
    }

    private static void measured(Room one, Room other, List<Difference> all) {
        if (!one.instrument().equals(other.instrument())) {
            all.add(new Difference(
                    "instrument",
                    "'" + one.instrument().name() + "' revision "
                            + one.instrument().revision() + ", then '"
                            + other.instrument().name() + "' revision "
                            + other.instrument().revision()));
        }
        if (!one.calibratedAt().equals(other.calibratedAt()) || !one.holds().equals(other.holds())) {
            all.add(new Difference("calibration", "of " + one.calibratedAt() + ", then of " + other.calibratedAt()));
        }
        if (!one.pitch().response().equals(other.pitch().response())) {
            all.add(new Difference("response", "of the pitch hand: from reading to mm another one"));
        }
        if (!one.air().equals(other.air())) {
            all.add(new Difference(
                    "air", fromTo(one.air().temperatureC(), other.air().temperatureC(), 1, " C")));
        }
        if (differ(one.ratePerS() - other.ratePerS())) {
            all.add(new Difference("rate", fromTo(one.ratePerS(), other.ratePerS(), 1, " readings a second")));
        }
        if (!one.aim().equals(other.aim())) {
            all.add(new Difference(
                    "aim", one.aim().words() + ", then " + other.aim().words()));
        }
    }

    private static void level(
            @Nullable HandSetup one, @Nullable HandSetup other, Optional<Light> light, List<Difference> all) {
        if (one == null || other == null) {
            if (one != null || other != null) {
                all.add(new Difference("level hand", one == null ? "none, then one" : "one, then none"));
            }
            return;
        }
        double near = other.zone().nearMm() - one.zone().nearMm();
        double far = other.zone().farMm() - one.zone().farMm();
        if (differ(near) || differ(far)) {
            all.add(new Difference("level zone", "near end " + signed(near, "mm") + ", far end " + signed(far, "mm")));
        }
        light.filter(change -> differ(change.factor() - 1))
                .ifPresent(change -> all.add(new Difference(
                        "light",
                        "open light: a factor of " + Figures.text(change.factor(), 2)
                                + " in resistance; the level would be " + signed(change.levelDb(), "dB"))));
    }

    private static Optional<Light> light(RoomProfile before, RoomProfile after) {
        OptionalDouble one = openLight(before.room());
        OptionalDouble other = openLight(after.room());
        HandSetup hand = before.room().level();
        if (hand == null || one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        LevelCurve level = before.level();
        double dbForZone = (level.ceilingDb() - level.floorDb()) / (1 - level.knee01());
        double place = hand.zone().place(hand.response().mm(other.getAsDouble()));
        return Optional.of(
                new Light(Math.exp(Math.abs(other.getAsDouble() - one.getAsDouble())), (place - 1) * dbForZone));
    }

    /** Log of the cell's resistance in open light, which stands at the far end. */
    private static OptionalDouble openLight(Room room) {
        HandSetup level = room.level();
        if (level == null
                || level.channel().kind() != SensorKind.PHOTORESISTOR
                || !(room.sensor(level) instanceof Photoresistor)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(level.response().physical(level.zone().farMm()));
    }

    private static String fromTo(double one, double other, int digits, String unit) {
        return "from " + Figures.text(one, digits) + " to " + Figures.text(other, digits) + unit;
    }

    private static String signed(double value, String unit) {
        return (value >= 0 ? "+" : "") + Figures.text(value, 1) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static boolean differ(double difference) {
        return Math.abs(difference) > SAME;
    }
}
