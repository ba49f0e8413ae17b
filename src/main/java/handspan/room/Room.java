package handspan.room;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything measured in one venue.
 *
 * @param name of the room, also the base name of its file
 * @param calibratedAt when, as ISO 8601 text
 * @param instrument a copy of the instrument as it was
 * @param air of the evening
 * @param ratePerS readings a second
 * @param pitch the pitch hand
 * @param level the level hand; null when there is none
 * @param holds what was captured, in order
 * @param aim how well the player reaches for a place unaided
 */
public record Room(
        String name,
        String calibratedAt,
        Instrument instrument,
        Air air,
        double ratePerS,
        HandSetup pitch,
        @Nullable HandSetup level,
        List<Hold> holds,
        Aim aim) {
    /** Copies the holds, checks the rate. */
    public Room {
        holds = List.copyOf(holds);
        if (!(ratePerS > 0 && ratePerS <= 10_000)) {
            throw new IllegalArgumentException("rate of " + ratePerS + " readings a second (above 0, at most 10000)");
        }
    }

    /** A room whose player's aim has not been measured. */
    public Room(
            String name,
            String calibratedAt,
            Instrument instrument,
            Air air,
            double ratePerS,
            HandSetup pitch,
            @Nullable HandSetup level,
            List<Hold> holds) {
        this(name, calibratedAt, instrument, air, ratePerS, pitch, level, holds, Aim.ASSUMED);
    }

    /** The sensor of a hand, in this room's air. */
    public Sensor sensor(HandSetup hand) {
        return Sensor.of(hand.channel(), air, instrument.referenceVolts());
    }

    /** The same room on a night with other air. */
    public Room in(Air other) {
        return new Room(name, calibratedAt, instrument, other, ratePerS, pitch, level, holds, aim);
    }

    /** The same room with another aim. */
    public Room with(Aim other) {
        return new Room(name, calibratedAt, instrument, air, ratePerS, pitch, level, holds, other);
    }
}
