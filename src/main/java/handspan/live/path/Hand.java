package handspan.live.path;

/**
 * Where a hand is.
 *
 * @param timeNanos of the reading
 * @param mm smoothed distance
 * @param speedMmPerS smoothed speed, away from the sensor positive
 */
public record Hand(long timeNanos, double mm, double speedMmPerS) {}
