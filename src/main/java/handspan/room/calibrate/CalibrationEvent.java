package handspan.room.calibrate;

import handspan.room.Hold;
import java.util.Optional;

/** What a calibration has to tell. */
public sealed interface CalibrationEvent {
    /**
     * The player is asked for a step.
     *
     * @param step which
     * @param readySeconds time to get the hand there, before anything is judged
     */
    record Asked(Step step, double readySeconds) implements CalibrationEvent {}

    /**
     * A step is done.
     *
     * @param step which
     * @param hold what was captured; empty for a rest without any reading
     * @param steadiness how still it was; as present as the hold
     * @param fromNanos start of the hold
     * @param toNanos end of the hold
     */
    record Captured(Step step, Optional<Hold> hold, Optional<Steadiness> steadiness, long fromNanos, long toNanos)
            implements CalibrationEvent {}

    /**
     * All is as it should be; it only has to last.
     *
     * @param step which
     * @param remainingSeconds how much longer, above 0
     */
    record Holding(Step step, double remainingSeconds) implements CalibrationEvent {}

    /**
     * The last captured step was dropped; it is asked for again next.
     *
     * @param step which
     * @param reason in words
     */
    record Undone(Step step, String reason) implements CalibrationEvent {}

    /**
     * A step can't be done yet.
     *
     * @param step which
     * @param reason in words, with figures
     */
    record NotYet(Step step, String reason) implements CalibrationEvent {}
}
