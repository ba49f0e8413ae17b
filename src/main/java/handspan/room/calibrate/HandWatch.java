package handspan.room.calibrate;

import handspan.instrument.line.Reading;
import handspan.instrument.sensor.InfraredSensor;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Nanos;
import handspan.room.Hold;
import java.util.Optional;
import java.util.OptionalDouble;

/** All that a calibration sees of one hand through its sensor. Owned by one thread. */
final class HandWatch {
    /** Shortest stillness that begins the countdown, and the steps in which it is measured. */
    private static final long LEAST_STILL_NANOS = 500 * Nanos.PER_MS;

    private static final long STILL_STEP_NANOS = 250 * Nanos.PER_MS;

    private final int slot;
    private final Sensor sensor;
    private HoldJudge judge;
    private HoldWindow window;
    private final Peak peak = new Peak();
    private final Resolution resolution;
    private final SensorPace pace = new SensorPace();
    private final DoubleDip dip = new DoubleDip();

    HandWatch(int slot, Sensor sensor, HoldRules rules) {
        this.slot = slot;
        this.sensor = sensor;
        this.judge = new HoldJudge(rules, sensor);
        this.window = new HoldWindow(Nanos.ofSeconds(rules.holdSeconds()));
        this.resolution = new Resolution(sensor);
    }

    /**
     * Takes a reading.
     *
     * @param collects whether it counts for the hold that is asked for
     * @param last this hand's last hold
     * @return whether the hand has dipped twice; sensors that measure no length can't tell
     */
    boolean onReading(Reading reading, boolean collects, Optional<SteadyValue> last) {
        if (!reading.tells(slot)) {
            return false;
        }
        boolean present = reading.has(slot);
        double raw = present ? reading.value(slot) : 0;
        boolean valid = present && sensor.hasReading(raw);
        double physical = valid ? sensor.physical(raw) : 0;
        if (valid) {
            resolution.onReading(physical);
            if (sensor instanceof InfraredSensor) {
                peak.onReading(physical);
            }
        }
        if (collects) {
            window.add(reading.timeNanos(), physical, valid);
        }
        double noise = last.map(value -> value.noise().white()).orElse(0.0);
        return sensor.isLength() && dip.onReading(reading.timeNanos(), physical, valid, noise);
    }

    /** A step begins that this hand is asked for. */
    void begin(HoldRules rules) {
        judge = new HoldJudge(rules, sensor);
        window = new HoldWindow(Nanos.ofSeconds(rules.holdSeconds()));
    }

    HoldWindow window() {
        return window;
    }

    /** A hold with the sensor's step and the highest reading on the way to it; the way to the next begins. */
    Hold finished(Hold hold) {
        Hold complete = hold.inSteps(resolution.step());
        OptionalDouble highest = peak.highest();
        peak.clear();
        return highest.isPresent() ? complete.after(highest.getAsDouble()) : complete;
    }

    HoldJudge.Verdict judge(Optional<SteadyValue> last, long timeNanos) {
        return judge.judge(window, last, resolution.step(), pace.of(window, timeNanos));
    }

    /** How much longer the hand has to stay as it is, s; empty while it is not still where it should be. */
    OptionalDouble remaining(Optional<SteadyValue> last, boolean nobodyAsked, long timeNanos) {
        long hold = judge.holdNanos();
        double linesPerUpdate = pace.of(window, timeNanos);
        long stillNanos = 0;
        for (long part = LEAST_STILL_NANOS; part <= hold - STILL_STEP_NANOS; part += STILL_STEP_NANOS) {
            if (!isStill(part, last, nobodyAsked, linesPerUpdate, timeNanos)) {
                break;
            }
            stillNanos = part;
        }
        return stillNanos == 0 ? OptionalDouble.empty() : OptionalDouble.of(Nanos.toSeconds(hold - stillNanos));
    }

    private boolean isStill(
            long partNanos, Optional<SteadyValue> last, boolean nobodyAsked, double linesPerUpdate, long timeNanos) {
        boolean seenLongEnough = window.size() > 0 && timeNanos - window.firstNanos() >= partNanos;
        if (!seenLongEnough) {
            return false;
        }
        HoldWindow part = window.latest(partNanos, timeNanos);
        boolean away = nobodyAsked && part.missing01() > HoldRules.ABSENT01;
        return away || judge.isOnTheWay(part, last, resolution.step(), linesPerUpdate);
    }
}
