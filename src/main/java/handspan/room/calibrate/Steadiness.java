package handspan.room.calibrate;

import handspan.number.fit.SteadyValue;

/**
 * How still a hold was, apart from the fast noise of the sensor.
 *
 * @param slow hand wander or drift, standard deviation in the sensor's physical unit; 0 where it can't be told from
 *     noise
 * @param driftPerS straight-line drift during the hold, physical unit a second
 * @param effectiveCount independent readings that the hold is worth
 * @param linesPerUpdate lines of the board to one measurement of the sensor; 1 where each line is a new one
 */
public record Steadiness(double slow, double driftPerS, double effectiveCount, double linesPerUpdate) {
    /** Checks that the figures are numbers. */
    public Steadiness {
        if (!(slow >= 0 && Double.isFinite(driftPerS) && effectiveCount >= 1 && linesPerUpdate >= 1)) {
            throw new IllegalArgumentException("slow part " + slow + " (0 or more), drift " + driftPerS
                    + " a second (finite), effective count " + effectiveCount + ", lines an update " + linesPerUpdate
                    + " (1 or more)");
        }
    }

    static Steadiness of(SteadyValue value, Sway sway, double linesPerUpdate) {
        return new Steadiness(
                value.noise().slow(), sway.driftPerS(), Math.max(1, value.effectiveCount()), linesPerUpdate);
    }
}
