package handspan.instrument.survey;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Noise;
import handspan.number.fit.Robust;
import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;

/**
 * Collects readings and judges each channel. Noise comes from the longest stretch in which the hand was still, never
 * from rest. Owned by one thread.
 */
public final class Survey {
    /** Least that half-second medians of a still hand may differ, mm. */
    private static final double SLACK_MM = 4;

    /** The same for channels that are no length, in their own unit (counts). */
    private static final double SLACK_COUNTS = 6;

    private final List<ChannelSpec> specs;
    private final List<Sensor> sensors;
    private final List<Integer> slots = new ArrayList<>();
    private final List<Series> series = new ArrayList<>();
    private final Intervals intervals = new Intervals();

    /**
     * A survey of some channels.
     *
     * @param shape the learned line shape
     * @param specs the channels; each must be in the shape
     * @param sensors one for each channel
     */
    public Survey(LineShape shape, List<ChannelSpec> specs, List<Sensor> sensors) {
        this.specs = List.copyOf(specs);
        this.sensors = List.copyOf(sensors);
        for (ChannelSpec spec : specs) {
            slots.add(shape.indexOf(spec.channel()));
            series.add(new Series());
        }
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        intervals.onReading(reading.timeNanos());
        for (int i = 0; i < specs.size(); i++) {
            int slot = slots.get(i);
            boolean present = slot >= 0 && reading.has(slot);
            double raw = present ? reading.value(slot) : 0;
            series.get(i).add(raw, present && sensors.get(i).hasReading(raw));
        }
    }

    /** Seconds between the first reading and the last. */
    public double seconds() {
        return Nanos.toSeconds(intervals.spanNanos());
    }

    /** Readings so far. */
    public long count() {
        return intervals.count();
    }

    /** Readings a second so far. */
    public double ratePerS() {
        return intervals.ratePerS();
    }

    /** Standard deviation of the time between readings, ms. */
    public double rateJitterMs() {
        return intervals.jitterMs();
    }

    /** What the numbers so far say about each channel. */
    public List<ChannelReport> reports() {
        List<ChannelReport> reports = new ArrayList<>();
        for (int i = 0; i < specs.size(); i++) {
            reports.add(report(specs.get(i), sensors.get(i), series.get(i)));
        }
        return reports;
    }

    private ChannelReport report(ChannelSpec spec, Sensor sensor, Series numbers) {
        double mmPerUnit = sensor.isLength() ? sensor.physical(1) : Double.NaN;
        double slack = sensor.isLength() ? SLACK_MM / mmPerUnit : SLACK_COUNTS;
        StillStretch still = StillStretch.in(numbers, Math.max(1, ratePerS()), slack);
        double[] held = numbers.readings(still.from(), still.to());
        if (held.length < 2) {
            return Judgement.nothingHeld(spec, numbers.size(), ratePerS());
        }
        double step = Robust.smallestStep(numbers.readings(0, numbers.size()));
        Noise noise = Noise.of(held, step);
        double dropouts01 = 1 - held.length / (double) (still.to() - still.from());
        return Judgement.of(
                spec, sensor, numbers.size(), held.length, noise, mmPerUnit, ratePerS(), dropouts01, repeats01(held));
    }

    private static double repeats01(double[] held) {
        int equal = 0;
        for (int i = 1; i < held.length; i++) {
            equal += held[i] == held[i - 1] ? 1 : 0;
        }
        return equal / (double) (held.length - 1);
    }
}
