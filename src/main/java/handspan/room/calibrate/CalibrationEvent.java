package handspan.room.calibrate;

import handspan.room.Hold;
import java.util.Optional;

/** What a calibration has to tell. */
public sealed interface CalibrationEvent {
    /** The player is asked for a step. */
    record Asked(Step step) implements CalibrationEvent {}

    /**
     * A step is done.
     *
     * @param step which
     * @param hold what was captured; empty for a rest without any reading
     * @param fromNanos start of the hold
     * @param toNanos end of the hold
     */
    record Captured(Step step, Optional<Hold> hold, long fromNanos, long toNanos) implements CalibrationEvent {}

    /**
     * A step can't be done yet.
     *
     * @param step which
     * @param reason in words, with figures
     */
    record NotYet(Step step, String reason) implements CalibrationEvent {}
}
