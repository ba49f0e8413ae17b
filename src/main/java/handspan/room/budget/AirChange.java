package handspan.room.budget;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Room;
import java.util.Optional;

/**
 * What another temperature does to a room whose pitch comes from echoes and whose air is not told anew: sound runs
 * faster in warm air, so that every place seems nearer. By the speed of sound of {@link Air}.
 *
 * @param degrees how much warmer
 * @param nearMm by how much the near end seems to move, mm, below 0 towards the sensor
 * @param farMm the same for the far end
 * @param nearCents what that does to the pitch there
 * @param farCents the same at the far end
 */
public record AirChange(double degrees, double nearMm, double farMm, double nearCents, double farCents) {
    /** A warm evening more than the sound check. */
    public static final double USUAL_DEGREES = 5;

    /**
     * For a room and a tuning.
     *
     * @param degrees how much warmer, below 0 for colder
     * @return empty where the pitch does not come from echoes: light does not mind the air
     */
    public static Optional<AirChange> of(Room room, Tuning tuning, double degrees) {
        HandSetup hand = room.pitch();
        if (hand.channel().kind() != SensorKind.ECHO) {
            return Optional.empty();
        }
        Air warm = new Air(room.air().temperatureC() + degrees, room.air().humidity01());
        Sensor told = room.sensor(hand);
        Sensor inTrueAir = Sensor.of(hand.channel(), warm, room.instrument().referenceVolts());
        double nearMm = movedMm(hand, told, inTrueAir, hand.zone().nearMm());
        double farMm = movedMm(hand, told, inTrueAir, hand.zone().farMm());
        double zoneMm = hand.zone().lengthMm();
        boolean rising = tuning.curve().key(1) > tuning.curve().key(0);
        double sign = rising ? 1 : -1;
        return Optional.of(new AirChange(
                degrees,
                nearMm,
                farMm,
                sign * nearMm * tuning.centsPerMm(zoneMm, 0),
                sign * farMm * tuning.centsPerMm(zoneMm, 1)));
    }

    /** A hand at a place sends an echo by the true air; the room reads it by the air it was told. */
    private static double movedMm(HandSetup hand, Sensor told, Sensor inTrueAir, double mm) {
        double raw = inTrueAir.raw(hand.response().physical(mm));
        return hand.response().mm(told.physical(raw)) - mm;
    }

    /** In words. */
    public String words() {
        return Figures.text(degrees, 0) + " C warmer moves pitch by " + Figures.text(nearCents, 0)
                + " cents at the near end and " + Figures.text(farCents, 0)
                + " at the far end, unless --temperature tells";
    }
}
