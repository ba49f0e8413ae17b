package handspan.show.report;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Direction;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Snapping;
import handspan.music.tuning.Temperament;
import handspan.music.tuning.Tonic;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;

/** Invented rooms and tunings to print. */
final class Samples {
    static final Temperament TWELVE = EqualDivision.TWELVE;

    private Samples() {}

    /** A room whose hands play by distance, the level hand over 80..280 mm. */
    static RoomProfile room(double nearMm, double farMm, Tuning tuning, LevelCurve curve) {
        ChannelSpec pitch = ChannelSpec.parse("1:distance:mm");
        ChannelSpec level = ChannelSpec.parse("2:distance:mm");
        HandSetup pitchHand =
                new HandSetup(pitch, new Response.AsMeasured(), new Zone(nearMm, farMm, 0.5, 0.5), 2, false);
        HandSetup levelHand = new HandSetup(level, new Response.AsMeasured(), new Zone(80, 280, 0.5, 0.5), 2, false);
        return room(pitchHand, levelHand, tuning, curve);
    }

    static RoomProfile room(double nearMm, double farMm, Tuning tuning) {
        return room(nearMm, farMm, tuning, LevelCurve.USUAL);
    }

    static RoomProfile room(HandSetup pitch, HandSetup level, Tuning tuning, LevelCurve curve) {
        Instrument instrument = new Instrument("Hazel rod", 2, 115_200, null, pitch.channel(), level.channel(), 5);
        Room room =
                new Room("pilchard-loft", "2026-05-09T18:40:00Z", instrument, Air.USUAL, 50, pitch, level, List.of());
        return new RoomProfile(room, List.of(tuning), curve, SendPlan.byDefault(instrument.name(), List.of()));
    }

    /** A hand whose sensor gives no true mm. */
    static HandSetup scaled(String channel, Response response) {
        return new HandSetup(ChannelSpec.parse(channel), response, new Zone(100, 400, 1, 1), 2, true);
    }

    static Tuning tuning(
            String scale, String tonic, Temperament temperament, int low, int high, Direction direction, double warp) {
        return new Tuning(
                "late set",
                new ReferencePitch(442),
                temperament,
                Scales.named(scale),
                Tonic.parse(tonic),
                new PitchRange(low, high, direction, warp),
                Snapping.of(Snap.FREE),
                0,
                0);
    }
}
