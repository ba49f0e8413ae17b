package handspan.room.calibrate;

import handspan.instrument.sensor.InfraredSensor;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Noise;
import handspan.number.fit.Robust;
import handspan.number.fit.SensorUpdates;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Figures;
import java.util.Arrays;

/**
 * How much a still hand may sway over a sensor, and how far it must go to have moved.
 *
 * @param rules when a hold counts
 * @param sensor in whose physical unit the limits are
 */
record HoldLimits(HoldRules rules, Sensor sensor) {
    /**
     * Over a photoresistor there are no mm: a still hand may change log resistance by so much. A hand 8 mm over the
     * cell that wanders by 1 mm does most of it (this project's own choice, as a share of the 2..3 from open to
     * covered).
     */
    private static final double STILL_LN = 0.06;

    /**
     * Volts of a triangulation sensor run about as 1/d, so a share of the volts is that share of the distance: 2 mm at
     * 100 mm, 8 mm at 400 mm (this project's own choice).
     */
    private static final double STILL_SHARE = 0.02;

    /**
     * Four standard deviations of the difference of two medians: normal values' medians scatter {@code sqrt(pi/2)}
     * times as much as their means, a difference {@code sqrt(2)} times as much as each.
     */
    private static final double SCATTER_TIMES = 4 * Math.sqrt(Math.PI / 2) * Math.sqrt(2);

    /**
     * What noise alone may do to the medians of thirds, or what a still hand may do.
     *
     * @param readings in the sensor's physical unit
     * @param lines number of the line of each, rising
     * @param step in which the sensor counts, as far as it has been seen; else 0
     * @param linesPerUpdate lines to one measurement of the sensor, as far as it is known; else 1
     */
    double sway(double[] readings, int[] lines, double step, double linesPerUpdate) {
        double[] updates = updates(readings, lines, linesPerUpdate);
        if (updates.length < 3) {
            return stillLimit(readings);
        }
        double white = Noise.of(updates, step).white();
        return Math.max(stillLimit(readings), SCATTER_TIMES * white / Math.sqrt(updates.length / 3.0));
    }

    /** One reading of each update of the sensor. */
    static double[] updates(double[] readings, int[] lines, double linesPerUpdate) {
        int[] firsts = SensorUpdates.firsts(readings, lines, linesPerUpdate);
        double[] updates = new double[firsts.length];
        Arrays.setAll(updates, i -> readings[firsts[i]]);
        return updates.length < 2 ? readings : updates;
    }

    /** How far readings are from a hold. */
    static double way(double[] readings, SteadyValue last) {
        return Math.abs(Robust.median(readings) - last.value());
    }

    /** How far from the last hold a hand must be to hold another. */
    double neededWay(SteadyValue last) {
        return Math.max(moveLimit(), rules.moveNoiseTimes() * last.noise().white());
    }

    /** What a still hand may do, whatever the noise; 0 where nothing is known of the sensor's response. */
    private double stillLimit(double[] readings) {
        if (sensor.isLength()) {
            return rules.stillMm();
        } else if (sensor instanceof Photoresistor) {
            return STILL_LN;
        }
        return sensor instanceof InfraredSensor ? STILL_SHARE * Math.abs(Robust.median(readings)) : 0;
    }

    private double moveLimit() {
        return sensor.isLength() ? rules.moveMm() : sensor instanceof Photoresistor ? rules.moveLn() : 0;
    }

    /** In words, with the unit. */
    String text(double physical) {
        return sensor.isLength()
                ? Figures.text(physical, 0) + " mm"
                : Figures.text(physical, 3) + (sensor instanceof Photoresistor ? " in log light" : "");
    }
}
