package handspan.instrument.survey;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.units.Nanos;
import java.util.List;
import java.util.Random;

/** Plays a hand over one channel to a survey: noise, steps, dropouts and rate are known. */
final class Scene {
    final Survey survey;

    private final Random random;
    private final double intervalMs;
    private final double step;
    private double dropouts01;
    private double timeMs;

    Scene(String spec, double ratePerS, double step) {
        this(spec, ratePerS, step, 82);
    }

    Scene(String spec, double ratePerS, double step, long seed) {
        this.random = new Random(seed);
        ChannelSpec channel = ChannelSpec.parse(spec);
        Sensor sensor = Sensor.of(channel, Air.USUAL, 5);
        this.survey = new Survey(LineShape.numbers(',', 1), List.of(channel), List.of(sensor));
        this.intervalMs = 1000 / ratePerS;
        this.step = step;
    }

    /** From now on this share of readings prints -1. */
    Scene losing(double share01) {
        dropouts01 = share01;
        return this;
    }

    /** A hand held still. */
    Scene hold(double centre, double deviation, double seconds) {
        return move(centre, centre, deviation, seconds);
    }

    /** A hand on its way, in a straight line. */
    Scene move(double from, double to, double deviation, double seconds) {
        long count = Math.round(1000 * seconds / intervalMs);
        for (int i = 0; i < count; i++) {
            double true01 = i / (double) count;
            double value = from + (to - from) * true01 + deviation * random.nextGaussian();
            print(random.nextDouble() < dropouts01 ? -1 : step * Math.rint(value / step));
        }
        return this;
    }

    Scene print(double value) {
        survey.onReading(new Reading(Nanos.ofMs(timeMs), new double[] {value}, 1));
        timeMs += intervalMs;
        return this;
    }

    /** A line in which this number is missing. */
    Scene printNothing() {
        survey.onReading(new Reading(Nanos.ofMs(timeMs), new double[] {0}, 0));
        timeMs += intervalMs;
        return this;
    }

    /** Seconds since the first line. */
    double seconds() {
        return timeMs / 1000;
    }

    /** White noise for whoever prints numbers of his own. */
    double gauss() {
        return random.nextGaussian();
    }

    ChannelReport report() {
        return survey.reports().get(0);
    }
}
