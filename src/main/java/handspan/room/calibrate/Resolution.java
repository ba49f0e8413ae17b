package handspan.room.calibrate;

import handspan.instrument.sensor.Sensor;

/**
 * The step in which a sensor counts, seen from its readings: the smallest difference between two in a row. Owned by one
 * thread.
 */
final class Resolution {
    private final Sensor sensor;
    private double last = Double.NaN;
    private double smallest = Double.POSITIVE_INFINITY;

    Resolution(Sensor sensor) {
        this.sensor = sensor;
    }

    void onReading(double physical) {
        double difference = Math.abs(physical - last);
        if (difference > 1e-9 && difference < smallest) {
            smallest = difference;
        }
        last = physical;
    }

    /** In the sensor's physical unit; 0 where no step was seen, or where steps are not even in that unit. */
    double step() {
        return sensor.isLength() && Double.isFinite(smallest) ? smallest : 0;
    }
}
