package handspan.show.chart;

import handspan.room.Hold;
import handspan.room.calibrate.Steadiness;
import java.util.Optional;

/**
 * The readings of one hold and what they were worth. Immutable.
 *
 * @param hold what was captured
 * @param steadiness how still it was, where that is known
 * @param readings in the sensor's physical unit; times count from the start of the hold, s
 */
record HoldRun(Hold hold, Optional<Steadiness> steadiness, TimeRun readings) {
    /** A stretch is never narrower, physical unit. */
    private static final double LEAST = 1e-6;

    /**
     * Width of a stretch in which readings are counted, physical unit: half the noise, in whole steps of the sensor.
     */
    double stretch() {
        double half = Math.max(0.5 * hold.noise(), LEAST);
        return hold.step() > 0 ? hold.step() * Math.ceil(half / hold.step()) : half;
    }

    /**
     * Where stretch 0 begins, less the hold's value: between two steps of the sensor, so that none of its numbers lies
     * on a border.
     */
    double start() {
        double step = hold.step();
        return step > 0 ? (Math.floor(hold.physical() / step) - 0.5) * step - hold.physical() : -0.5 * stretch();
    }

    /** How many readings lie in a stretch; 0 is that of the hold's value or next to it, others count from there. */
    int count(int number) {
        double from = start() + number * stretch();
        int count = 0;
        for (int i = 0; i < readings.size(); i++) {
            double off = readings.value(i) - hold.physical();
            count += off >= from && off < from + stretch() ? 1 : 0;
        }
        return count;
    }

    /** From the first reading to the last, s. */
    double lengthS() {
        int size = readings.size();
        return size == 0 ? 0 : readings.timeS(size - 1) - readings.timeS(0);
    }
}
