package handspan.room.calibrate;

import handspan.number.fit.SteadyValue;
import handspan.number.units.Nanos;
import handspan.room.StepKind;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tells now and then how much longer a still hand has to stay. Owned by one thread. */
final class Countdown {
    private static final long COUNT_NANOS = Nanos.PER_SECOND / 2;
    private static final long UNKNOWN = Long.MIN_VALUE;

    private long lookedNanos = UNKNOWN;
    private long countedNanos = UNKNOWN;

    /** A step is asked for: nobody is still yet. */
    void clear() {
        lookedNanos = UNKNOWN;
        countedNanos = UNKNOWN;
    }

    /**
     * What to tell now; mostly nothing.
     *
     * @param step asked for
     * @param hand that it asks for
     * @param last this hand's last hold
     * @param timeNanos not before the last call's
     */
    Optional<CalibrationEvent> at(Step step, HandWatch hand, Optional<SteadyValue> last, long timeNanos) {
        if (step.kind() == StepKind.AIM) {
            // a stop is over before a word about it is heard
            return Optional.empty();
        }
        boolean counted = countedNanos != UNKNOWN && timeNanos - countedNanos < COUNT_NANOS;
        boolean looked = lookedNanos != UNKNOWN && timeNanos - lookedNanos < Calibration.LOOK_NANOS;
        if (counted || looked) {
            return Optional.empty();
        }
        lookedNanos = timeNanos;
        OptionalDouble seconds = hand.remaining(last, step.kind() == StepKind.REST, timeNanos);
        if (seconds.isEmpty()) {
            return Optional.empty();
        }
        countedNanos = timeNanos;
        return Optional.of(new CalibrationEvent.Holding(step, seconds.getAsDouble()));
    }
}
