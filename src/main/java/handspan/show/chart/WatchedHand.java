package handspan.show.chart;

import handspan.instrument.sensor.Sensor;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.room.HandSetup;
import handspan.room.Room;

/**
 * Where a hand is while nothing plays: by the latest reading and the room's own response, not smoothed. While a room is
 * played the path knows better.
 */
final class WatchedHand {
    private WatchedHand() {}

    /** Its place in the zone, held to 0..1; NaN where none is seen. */
    static double place01(Room room, HandSetup hand, Snapshot snapshot) {
        int slot = snapshot.shape()
                .map(shape -> shape.indexOf(hand.channel().channel()))
                .orElse(-1);
        if (!(snapshot.activity() instanceof ActivityView.Watching watching)
                || slot < 0
                || slot >= watching.values().size()) {
            return Double.NaN;
        }
        double raw = watching.values().get(slot);
        Sensor sensor = room.sensor(hand);
        if (Double.isNaN(raw) || !sensor.hasReading(raw)) {
            return Double.NaN;
        }
        double mm = hand.response().mm(sensor.physical(raw));
        return hand.zone().holds(mm) ? hand.zone().place01(mm) : Double.NaN;
    }
}
