package handspan.room.calibrate;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
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
 * <p>States: asking step 0 .. asking step n-1, then done. A captured hold moves one on, {@link #undo} one back; so does
 * the hand itself by dipping twice. A reach that ends at the place of another is asked for again. After each asking
 * there is a moment in which nothing is judged; then, while the hand is still where it should be, the time that remains
 * is told.
 */
public final class Calibration {
    private static final long UNKNOWN = Long.MIN_VALUE;

    /** Why the last step is taken again. */
    static final String DOUBLE_DIP = "double dip";

    /** Why the last step is taken again. */
    static final String ASKED_FOR = "asked for";

    /** Looking for stillness is dear: not at every reading. */
    static final long LOOK_NANOS = Nanos.PER_SECOND / 10;

    private final CalibrationPlan plan;
    private final HoldRules rules;
    private final Map<HandRole, HandWatch> hands = new EnumMap<>(HandRole.class);
    private final Captures done = new Captures();
    private final List<CalibrationEvent> events = new ArrayList<>();
    private long readyNanos = UNKNOWN;
    private long judgedNanos;
    private final ReachJudge reaches;
    private final Reminders reminders = new Reminders();
    private final Countdown countdown = new Countdown();

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
        this.rules = rules;
        this.reaches = new ReachJudge(plan, pitch, pitchSensor);
        hands.put(HandRole.PITCH, new HandWatch(shape.indexOf(pitch.channel()), pitchSensor, rules));
        if (level != null && levelSensor != null) {
            hands.put(HandRole.LEVEL, new HandWatch(shape.indexOf(level.channel()), levelSensor, rules));
        }
        hands.values().forEach(hand -> hand.begin(rules.forStep(step())));
        events.add(new CalibrationEvent.Asked(step(), rules.readySeconds()));
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        if (isDone()) {
            return;
        }
        long timeNanos = reading.timeNanos();
        if (readyNanos == UNKNOWN) {
            readyNanos = timeNanos + Nanos.ofSeconds(rules.readySeconds());
        }
        Step step = step();
        HandWatch asked = hands.get(step.hand());
        if (asked == null) {
            throw new IllegalStateException("step " + step.id() + " asks for a hand that has no channel");
        }
        boolean ready = timeNanos >= readyNanos;
        boolean dipped = false;
        for (Map.Entry<HandRole, HandWatch> hand : hands.entrySet()) {
            boolean collects = ready && hand.getValue() == asked;
            dipped |= hand.getValue().onReading(reading, collects, done.lastOf(hand.getKey()));
        }
        if (dipped && done.lastIsAPlace()) {
            undo(DOUBLE_DIP);
        } else if (asked.window().isFull(timeNanos) && timeNanos - judgedNanos >= LOOK_NANOS) {
            judgedNanos = timeNanos;
            judge(step, asked, timeNanos);
        }
        countDown(timeNanos);
    }

    private void judge(Step step, HandWatch hand, long timeNanos) {
        if (step.kind() == StepKind.REST && hand.window().missing01() > HoldRules.ABSENT01) {
            capture(new Captures.Captured(step, Optional.empty(), Optional.empty()), hand, timeNanos);
            return;
        }
        HoldJudge.Verdict verdict = reaches.judge(step, hand.judge(done.lastOf(step.hand()), timeNanos), done.holds());
        if (verdict.why() == HoldJudge.Why.ELSEWHERE) {
            events.add(new CalibrationEvent.NotYet(step, verdict.reason()));
            startStep();
            return;
        }
        if (verdict.held().isEmpty()) {
            reminders.onVerdict(step, verdict, timeNanos).ifPresent(events::add);
            return;
        }
        Hold hold = hand.finished(Holds.of(step, verdict.held().get().value()));
        capture(new Captures.Captured(step, Optional.of(hold), verdict.held()), hand, timeNanos);
    }

    private void capture(Captures.Captured capture, HandWatch hand, long timeNanos) {
        done.add(capture);
        events.add(new CalibrationEvent.Captured(
                capture.step(),
                capture.hold(),
                capture.held().map(HoldJudge.Held::steadiness),
                hand.window().firstNanos(),
                timeNanos));
        startStep();
    }

    private void startStep() {
        hands.values().forEach(hand -> hand.window().clear());
        reminders.clear();
        countdown.clear();
        readyNanos = UNKNOWN;
        if (!isDone()) {
            hands.values().forEach(hand -> hand.begin(rules.forStep(step())));
            events.add(new CalibrationEvent.Asked(step(), rules.readySeconds()));
        }
    }

    private void countDown(long timeNanos) {
        if (isDone()) {
            return;
        }
        Step step = step();
        HandWatch asked = hands.get(step.hand());
        if (asked != null) {
            countdown.at(step, asked, done.lastOf(step.hand()), timeNanos).ifPresent(events::add);
        }
    }

    /** Drops the last captured step and asks for it again. */
    public void undo() {
        undo(ASKED_FOR);
    }

    private void undo(String why) {
        if (!done.isEmpty()) {
            Step step = done.removeLast().step();
            events.add(new CalibrationEvent.Undone(step, why));
            startStep();
        }
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
        return reminders.reason();
    }

    /** Captured holds in order; a rest without any reading has none. */
    public List<Hold> holds() {
        return done.holds();
    }

    /** What has happened since the last call. */
    public List<CalibrationEvent> takeEvents() {
        List<CalibrationEvent> taken = List.copyOf(events);
        events.clear();
        return taken;
    }
}
