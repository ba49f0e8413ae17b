package handspan;

import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;

/** Invented rooms for tests. */
public final class TestRooms {
    /** Two numbers with a comma between. */
    public static final LineShape SHAPE = LineShape.numbers(',', 2);

    private TestRooms() {}

    /** Pitch by distance over 100..500 mm, level by distance over 100..300 mm, without noise, at a rate. */
    public static RoomProfile twoDistances(double ratePerS) {
        return twoDistances(ratePerS, Tuning.usual(), 0);
    }

    /** The same with a tuning and noise. */
    public static RoomProfile twoDistances(double ratePerS, Tuning tuning, double noiseMm) {
        ChannelSpec pitch = ChannelSpec.parse("1:distance:mm");
        ChannelSpec level = ChannelSpec.parse("2:distance:mm");
        Instrument instrument = new Instrument("Test reed", 1, 115_200, SHAPE, pitch, level, 5);
        Room room = new Room(
                "test",
                "2026-01-01T00:00:00Z",
                instrument,
                Air.USUAL,
                ratePerS,
                new HandSetup(pitch, new Response.AsMeasured(), new Zone(100, 500, 0, 0), noiseMm, false),
                new HandSetup(level, new Response.AsMeasured(), new Zone(100, 300, 0, 0), noiseMm, false),
                List.of());
        return new RoomProfile(
                room, List.of(tuning), LevelCurve.USUAL, SendPlan.byDefault(instrument.name(), List.of()));
    }
}
