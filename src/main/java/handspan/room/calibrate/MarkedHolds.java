package handspan.room.calibrate;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.InfraredSensor;
import handspan.instrument.sensor.Sensor;
import handspan.room.HandRole;
import handspan.room.Hold;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
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

    private record Channel(int slot, Sensor sensor, Resolution resolution, Peak peak) {}

    private final List<Mark> marks;
    private final List<HoldWindow> windows = new ArrayList<>();
    private final double[] steps;
    private final double[] peaks;
    private final boolean[] closed;
    private final Map<HandRole, Channel> channels = new EnumMap<>(HandRole.class);

    /**
     * Collects for some marks.
     *
     * @param marks of the recording; a step that was captured again later counts as captured then
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
        this.marks = lastOfEach(marks);
        this.steps = new double[this.marks.size()];
        this.peaks = new double[this.marks.size()];
        this.closed = new boolean[this.marks.size()];
        this.marks.forEach(mark -> windows.add(HoldWindow.endless()));
        channels.put(
                HandRole.PITCH,
                new Channel(shape.indexOf(pitch.channel()), pitchSensor, new Resolution(pitchSensor), new Peak()));
        if (level != null && levelSensor != null) {
            channels.put(
                    HandRole.LEVEL,
                    new Channel(shape.indexOf(level.channel()), levelSensor, new Resolution(levelSensor), new Peak()));
        }
    }

    private static List<Mark> lastOfEach(List<Mark> marks) {
        Map<String, Mark> last = new LinkedHashMap<>();
        for (Mark mark : marks) {
            last.remove(mark.step().id());
            last.put(mark.step().id(), mark);
        }
        return List.copyOf(last.values());
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        channels.forEach((hand, channel) -> {
            if (!reading.tells(channel.slot)) {
                return;
            }
            boolean present = reading.has(channel.slot);
            double raw = present ? reading.value(channel.slot) : 0;
            boolean valid = present && channel.sensor.hasReading(raw);
            double physical = valid ? channel.sensor.physical(raw) : 0;
            if (valid) {
                channel.resolution.onReading(physical);
                if (channel.sensor instanceof InfraredSensor) {
                    channel.peak.onReading(physical);
                }
            }
            take(hand, channel, valid, physical, reading.timeNanos());
        });
    }

    private void take(HandRole hand, Channel channel, boolean valid, double physical, long timeNanos) {
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            if (mark.step().hand() == hand && timeNanos >= mark.fromNanos() && timeNanos <= mark.toNanos()) {
                windows.get(i).add(timeNanos, physical, valid);
                steps[i] = channel.resolution.step();
                peaks[i] = channel.peak.highest().orElse(physical);
            } else if (mark.step().hand() == hand && windows.get(i).size() > 0 && !closed[i]) {
                closed[i] = true;
                channel.peak.clear();
            }
        }
    }

    /** The holds, in the order of the marks; marks in which nobody was there (a rest) give none. */
    public List<Hold> holds() {
        List<Hold> holds = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            HoldWindow window = windows.get(i);
            boolean nobody = window.readings().length < 2 || window.missing01() > HoldRules.ABSENT01;
            if (!nobody) {
                Step step = marks.get(i).step();
                Hold hold =
                        Holds.of(step, HoldJudge.held(window, steps[i]).value()).inSteps(steps[i]);
                boolean folds = sensorOf(step.hand()) instanceof InfraredSensor;
                holds.add(folds ? hold.after(peaks[i]) : hold);
            }
        }
        return holds;
    }

    private @Nullable Sensor sensorOf(HandRole hand) {
        Channel channel = channels.get(hand);
        return channel == null ? null : channel.sensor;
    }
}
