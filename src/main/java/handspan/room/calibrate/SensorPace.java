package handspan.room.calibrate;

import handspan.number.fit.SensorUpdates;
import handspan.number.units.Nanos;

/**
 * How many lines there are to one measurement of a sensor, remembered between looks: looking is dear, and the board
 * does not change its pace. Owned by one thread.
 */
final class SensorPace {
    private static final long LOOK_NANOS = Nanos.PER_SECOND / 2;

    private double linesPerUpdate = 1;
    private long lookedNanos = Long.MIN_VALUE;

    double of(HoldWindow window, long timeNanos) {
        if (lookedNanos == Long.MIN_VALUE || timeNanos - lookedNanos >= LOOK_NANOS) {
            lookedNanos = timeNanos;
            linesPerUpdate = SensorUpdates.linesPerUpdate(window.readings(), window.lines());
        }
        return linesPerUpdate;
    }
}
