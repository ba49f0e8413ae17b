package handspan.instrument.survey;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;

/**
 * Collects readings and judges each channel. Noise comes from the longest stretch in which the hand was still, never
 * from rest. Owned by one thread.
 */
public final class Survey {
    private final List<Sensor> sensors;
    private final List<ChannelSurvey> channels = new ArrayList<>();
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
        this.sensors = List.copyOf(sensors);
        for (int i = 0; i < specs.size(); i++) {
            channels.add(ChannelSurvey.of(specs.get(i), sensors.get(i)));
            slots.add(shape.indexOf(specs.get(i).channel()));
            series.add(new Series());
        }
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        intervals.onReading(reading.timeNanos());
        for (int i = 0; i < sensors.size(); i++) {
            int slot = slots.get(i);
            if (slot >= 0 && !reading.tells(slot)) {
                continue;
            }
            if (slot >= 0 && reading.has(slot)) {
                double raw = reading.value(slot);
                series.get(i).add(reading.printedNanos(), raw, sensors.get(i).hasReading(raw));
            } else {
                series.get(i).addMissing(reading.printedNanos());
            }
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
        for (int i = 0; i < channels.size(); i++) {
            Pace pace = Pace.of(series.get(i), intervals);
            reports.add(channels.get(i).report(series.get(i), pace));
        }
        return reports;
    }
}
