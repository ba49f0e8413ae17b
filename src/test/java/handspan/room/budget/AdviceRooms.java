package handspan.room.budget;

import handspan.TestRooms;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.number.fit.MonotoneCurve.Point;
import handspan.room.FitQuality;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;

/** Rooms for the adviser's tests. */
final class AdviceRooms {
    private AdviceRooms() {}

    /** Pitch over 100..500 mm by a map without any uncertainty and a sensor without noise or drift. */
    static Room exact() {
        return exact(400);
    }

    /** The same over a zone of another length. */
    static Room exact(double lengthMm) {
        Zone zone = new Zone(100, 100 + lengthMm, 0, 0);
        FitQuality fit = new FitQuality(
                "straight line", 2, List.of(), 0, 0, 1, List.of(new Point(100, 0), new Point(100 + lengthMm, 0)));
        ChannelSpec channel = ChannelSpec.parse("1:echo:us");
        return room(new HandSetup(channel, new Response.AsMeasured(), zone, 0, false, fit));
    }

    /** Pitch over 100..500 mm by its two ends alone, with 2 mm of noise. */
    static Room plain() {
        return plain(new Zone(100, 500, 0.5, 0.7));
    }

    /** The same over another zone. */
    static Room plain(Zone zone) {
        ChannelSpec channel = ChannelSpec.parse("1:distance:mm");
        return room(new HandSetup(channel, new Response.AsMeasured(), zone, 2, false));
    }

    /** A sensor without unit whose zone was held without a ruler. */
    static Room nominal() {
        ChannelSpec channel = ChannelSpec.parse("1:unscaled");
        return room(new HandSetup(channel, new Response.AsMeasured(), new Zone(0, 400, 0.5, 0.5), 2, true));
    }

    private static Room room(HandSetup hand) {
        Instrument instrument = new Instrument("Test reed", 1, 115_200, TestRooms.SHAPE, hand.channel(), null, 5);
        return new Room("test", "2026-01-01T00:00:00Z", instrument, Air.USUAL, 50, hand, null, List.of());
    }
}
