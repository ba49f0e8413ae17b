package handspan.room;

/**
 * A few seconds with the hand held still, and what they were worth.
 *
 * @param kind what was asked for
 * @param hand which hand
 * @param physical robust value in the sensor's physical unit (mm for lengths)
 * @param standardUncertainty of it, same unit
 * @param noise fast part of the scatter of single readings, same unit
 * @param count readings that were kept
 */
public record Hold(StepKind kind, HandRole hand, double physical, double standardUncertainty, double noise, int count) {
    /** Checks that the figures are numbers. */
    public Hold {
        if (!Double.isFinite(physical)
                || !Double.isFinite(standardUncertainty)
                || !Double.isFinite(noise)
                || !(standardUncertainty >= 0 && noise >= 0)
                || count < 0) {
            throw new IllegalArgumentException(
                    "hold " + kind.word() + ": value " + physical + ", uncertainty " + standardUncertainty + ", noise "
                            + noise + ", count " + count + " (finite; all but the value 0 or more)");
        }
    }
}
