package handspan.outside.osc;

import java.time.Instant;

/** Which time of day a moment of the monotonic clock was, for time tags. */
@FunctionalInterface
public interface WallTime {
    /**
     * The time of day.
     *
     * @param timeNanos on the clock that frames are dated by
     */
    Instant at(long timeNanos);
}
