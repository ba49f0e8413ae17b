package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.Tuning;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;
import org.junit.jupiter.api.Test;

class AirChangeTest {
    private static Room room(String channel) {
        ChannelSpec pitch = ChannelSpec.parse(channel);
        return new Room(
                "hall",
                "2026-01-01",
                new Instrument("reed", 1, 115_200, null, pitch, null, 5),
                new Air(20, 0),
                18,
                new HandSetup(pitch, new Response.AsMeasured(), new Zone(100, 500, 0.3, 0.3), 2, false),
                null,
                List.of());
    }

    /**
     * ISO 9613-1: c goes with the root of the absolute temperature, so that 5 C on 20 C are sqrt(298.15 / 293.15) =
     * 1.00849: 0.84 mm at 100 mm and 4.2 mm at 500 mm, towards the sensor; at 6 cents a mm 5 and 25 cents.
     */
    @Test
    void fiveDegreesMoreBringEveryPlaceNearer() {
        AirChange change = AirChange.of(room("1:echo:us"), Tuning.usual(), 5).orElseThrow();
        assertEquals(-0.84, change.nearMm(), 0.02);
        assertEquals(-4.2, change.farMm(), 0.06);
        assertEquals(-6 * 0.84, change.nearCents(), 0.12);
        assertEquals(-6 * 4.2, change.farCents(), 0.36);
        assertTrue(
                change.words().startsWith("5 C warmer moves pitch by -5 cents at the near end and -25"),
                change.words());
    }

    /** Where the high end is near, a hand that seems nearer sounds higher. */
    @Test
    void theOtherDirectionTurnsTheSign() {
        Tuning usual = Tuning.usual();
        Tuning turned = usual.with(new PitchRange(usual.lowKey(), usual.highKey(), Direction.HIGH_NEAR, 0));
        assertEquals(
                6 * 4.2,
                AirChange.of(room("1:echo:us"), turned, 5).orElseThrow().farCents(),
                0.36);
    }

    /** What the board made of the echo does not matter. */
    @Test
    void centimetresFromAnEchoAreEchoes() {
        assertEquals(
                -4.2,
                AirChange.of(room("1:echo:cm"), Tuning.usual(), 5).orElseThrow().farMm(),
                0.06);
    }

    @Test
    void lightDoesNotMindTheAir() {
        assertTrue(AirChange.of(room("1:distance:mm"), Tuning.usual(), 5).isEmpty());
    }

    /** Told the air of the night, the room finds the hand where it is: 400 mm at 346.3 m/s (25 C, dry) take 2310 us. */
    @Test
    void theNightsAirPutsItRight() {
        Room evening = room("1:echo:us");
        Room night = evening.in(new Air(25, 0));
        double us = 2 * 400 / 0.3463;
        assertEquals(400, night.sensor(night.pitch()).physical(us), 0.3);
        assertEquals(400 / 1.00849, evening.sensor(evening.pitch()).physical(us), 0.3);
    }
}
