package handspan.room.calibrate;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Nanos;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Leads through a plan: asks for a step, watches for a move and then for stillness, captures by itself, asks for the
 * next. Pure: time comes with the readings. Owned by one thread.
 *
 * <p>States: asking step 0 .. asking step n-1, then done. A captured hold moves one on, {@link #undo} one back.
 */
public final class Calibration {
    private static final long REMIND_NANOS = 6 * Nanos.PER_SECOND;

    /** One hand's channel. */
    private record Channel(int slot, Sensor sensor, HoldJudge judge, HoldWindow window, Resolution resolution) {}

    private record Done(Step step, Optional<Hold> hold, Optional<SteadyValue> value) {}

    private final CalibrationPlan plan;
    private final Map<HandRole, Channel> channels = new EnumMap<>(HandRole.class);
    private final List<Done> done = new ArrayList<>();
    private final List<CalibrationEvent> events = new ArrayList<>();
    private long remindedNanos;
    private HoldJudge.Why reminded = HoldJudge.Why.NONE;
    private String reason = "";

    /**
     * A calibration.
     *
     * @param plan the steps
     * @param shape the learned line shape
     * @param pitch the pitch hand's channel
     * @param pitchSensor its sensor
     * @param level the level hand's channel; null when there is none
     * @param levelSensor its sensor; null when there is none
     * @param rules when a hold counts
     */
    public Calibration(
            CalibrationPlan plan,
            LineShape shape,
            ChannelSpec pitch,
            Sensor pitchSensor,
            @Nullable ChannelSpec level,
            @Nullable Sensor levelSensor,
            HoldRules rules) {
        this.plan = plan;
        channels.put(HandRole.PITCH, channel(shape, pitch, pitchSensor, rules));
        if (level != null && levelSensor != null) {
            channels.put(HandRole.LEVEL, channel(shape, level, levelSensor, rules));
        }
        events.add(new CalibrationEvent.Asked(step()));
    }

    private static Channel channel(LineShape shape, ChannelSpec spec, Sensor sensor, HoldRules rules) {
        return new Channel(
                shape.indexOf(spec.channel()),
                sensor,
                new HoldJudge(rules, sensor),
                new HoldWindow(Nanos.ofSeconds(rules.holdSeconds())),
                new Resolution(sensor));
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        if (isDone()) {
            return;
        }
        Step step = step();
        Channel channel = channels.get(step.hand());
        if (channel == null) {
            throw new IllegalStateException("step " + step.id() + " asks for a hand that has no channel");
        }
        boolean present = reading.has(channel.slot);
        double raw = present ? reading.value(channel.slot) : 0;
        boolean valid = present && channel.sensor.hasReading(raw);
        if (valid) {
            channel.resolution.onReading(channel.sensor.physical(raw));
        }
        channel.window.add(reading.timeNanos(), valid ? channel.sensor.physical(raw) : 0, valid);
        if (channel.window.isFull(reading.timeNanos())) {
            judge(step, channel, reading.timeNanos());
        }
    }

    private void judge(Step step, Channel channel, long timeNanos) {
        if (step.kind() == StepKind.REST && channel.window.missing01() > HoldRules.ABSENT01) {
            capture(new Done(step, Optional.empty(), Optional.empty()), channel, timeNanos);
            return;
        }
        HoldJudge.Verdict verdict = channel.judge.judge(channel.window, lastOf(step.hand()), channel.resolution.step());
        if (verdict.held().isEmpty()) {
            remind(step, verdict, timeNanos);
            return;
        }
        Hold hold = Holds.of(step, verdict.held().get());
        capture(new Done(step, Optional.of(hold), verdict.held()), channel, timeNanos);
    }

    private void capture(Done capture, Channel channel, long timeNanos) {
        done.add(capture);
        events.add(new CalibrationEvent.Captured(capture.step, capture.hold, channel.window.firstNanos(), timeNanos));
        startStep();
    }

    private void startStep() {
        channels.values().forEach(channel -> channel.window.clear());
        reason = "";
        reminded = HoldJudge.Why.NONE;
        remindedNanos = 0;
        if (!isDone()) {
            events.add(new CalibrationEvent.Asked(step()));
        }
    }

    private void remind(Step step, HoldJudge.Verdict verdict, long timeNanos) {
        reason = step.kind() == StepKind.REST ? "a hand, or something else, is still moving there" : verdict.reason();
        boolean news = verdict.why() != reminded && verdict.why() != HoldJudge.Why.ARRIVING;
        if (news || (timeNanos - remindedNanos >= REMIND_NANOS && remindedNanos != 0)) {
            reminded = verdict.why();
            remindedNanos = timeNanos;
            events.add(new CalibrationEvent.NotYet(step, reason));
        }
    }

    /** Drops the last captured step and asks for it again. */
    public void undo() {
        if (!done.isEmpty()) {
            done.remove(done.size() - 1);
            startStep();
        }
    }

    private Optional<SteadyValue> lastOf(HandRole hand) {
        for (int i = done.size() - 1; i >= 0; i--) {
            if (done.get(i).step.hand() == hand) {
                return done.get(i).value;
            }
        }
        return Optional.empty();
    }

    /** Whether all steps are captured. */
    public boolean isDone() {
        return done.size() == plan.steps().size();
    }

    /** The step being asked for; only while not done. */
    public Step step() {
        return plan.steps().get(done.size());
    }

    /** Number of steps captured. */
    public int captured() {
        return done.size();
    }

    /** Number of steps in all. */
    public int steps() {
        return plan.steps().size();
    }

    /** Why the step can't be captured yet; empty when nothing is wrong. */
    public String reason() {
        return reason;
    }

    /** Captured holds in order; a rest without any reading has none. */
    public List<Hold> holds() {
        return done.stream().flatMap(d -> d.hold.stream()).toList();
    }

    /** What has happened since the last call. */
    public List<CalibrationEvent> takeEvents() {
        List<CalibrationEvent> taken = List.copyOf(events);
        events.clear();
        return taken;
    }
}
