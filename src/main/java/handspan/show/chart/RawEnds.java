package handspan.show.chart;

import handspan.instrument.sensor.Sensor;
import handspan.room.HandSetup;

/**
 * The play zone's ends in the board's own numbers.
 *
 * @param near what the board prints at the near end
 * @param far what it prints at the far end
 */
record RawEnds(double near, double far) {
    static RawEnds of(HandSetup hand, Sensor sensor) {
        return new RawEnds(
                sensor.raw(hand.response().physical(hand.zone().nearMm())),
                sensor.raw(hand.response().physical(hand.zone().farMm())));
    }

    double least() {
        return Math.min(near, far);
    }

    double most() {
        return Math.max(near, far);
    }
}
