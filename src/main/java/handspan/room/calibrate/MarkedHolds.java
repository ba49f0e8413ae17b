package handspan.room.calibrate;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.SteadyValue;
import handspan.room.HandRole;
import handspan.room.Hold;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes holds again from a recording in which they were marked: the same arithmetic as when they were captured. */
public final class MarkedHolds {
    /**
     * A marked hold.
     *
     * @param step what was captured
     * @param fromNanos start
     * @param toNanos end
     */
    public record Mark(Step step, long fromNanos, long toNanos) {}

    private record Channel(int slot, Sensor sensor, Resolution resolution) {}

    private final List<Mark> marks;
    private final List<List<Double>> values = new ArrayList<>();
    private final int[] seen;
    private final double[] steps;
    private final Map<HandRole, Channel> channels = new EnumMap<>(HandRole.class);

    /**
     * Collects for some marks.
     *
     * @param marks of the recording
     * @param shape of its lines
     * @param pitch the pitch hand's channel
     * @param pitchSensor its sensor
     * @param level the level hand's channel; null when there is none
     * @param levelSensor its sensor; null when there is none
     */
    public MarkedHolds(
            List<Mark> marks,
            LineShape shape,
            ChannelSpec pitch,
            Sensor pitchSensor,
            @Nullable ChannelSpec level,
            @Nullable Sensor levelSensor) {
        this.marks = List.copyOf(marks);
        this.seen = new int[marks.size()];
        this.steps = new double[marks.size()];
        marks.forEach(mark -> values.add(new ArrayList<>()));
        channels.put(
                HandRole.PITCH, new Channel(shape.indexOf(pitch.channel()), pitchSensor, new Resolution(pitchSensor)));
        if (level != null && levelSensor != null) {
            channels.put(
                    HandRole.LEVEL,
                    new Channel(shape.indexOf(level.channel()), levelSensor, new Resolution(levelSensor)));
        }
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        channels.forEach((hand, channel) -> {
            boolean present = reading.has(channel.slot);
            double raw = present ? reading.value(channel.slot) : 0;
            boolean valid = present && channel.sensor.hasReading(raw);
            double physical = valid ? channel.sensor.physical(raw) : 0;
            if (valid) {
                channel.resolution.onReading(physical);
            }
            take(hand, valid, physical, channel.resolution.step(), reading.timeNanos());
        });
    }

    private void take(HandRole hand, boolean valid, double physical, double step, long timeNanos) {
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            if (mark.step().hand() == hand && timeNanos >= mark.fromNanos() && timeNanos <= mark.toNanos()) {
                seen[i]++;
                if (valid) {
                    values.get(i).add(physical);
                    steps[i] = step;
                }
            }
        }
    }

    /** The holds, in the order of the marks; marks in which nobody was there (a rest) give none. */
    public List<Hold> holds() {
        List<Hold> holds = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            double[] readings =
                    values.get(i).stream().mapToDouble(Double::doubleValue).toArray();
            boolean nobody = readings.length < 2 || readings.length < (1 - HoldRules.ABSENT01) * seen[i];
            if (!nobody) {
                Step step = marks.get(i).step();
                holds.add(Holds.of(step, SteadyValue.of(readings, steps[i])));
            }
        }
        return holds;
    }
}
