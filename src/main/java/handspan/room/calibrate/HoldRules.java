package handspan.room.calibrate;

/**
 * When a hold counts.
 *
 * @param holdSeconds how long the hand must be still, 0.5..10
 * @param moveNoiseTimes a new step needs a move of this many times the noise
 * @param moveMm and of this many mm
 * @param stillMm the hand is still when the first and last third of the hold differ by no more than this, mm, or by the
 *     noise
 * @param mostMissing01 share of readings that may be missing
 */
public record HoldRules(
        double holdSeconds, double moveNoiseTimes, double moveMm, double stillMm, double mostMissing01) {
    /** Share of readings missing from which on nobody is there. */
    static final double ABSENT01 = 0.9;

    /** Two seconds of stillness after a move of 20 mm. */
    public static final HoldRules USUAL = new HoldRules(2, 20, 20, 4, 0.25);

    /** Checks the duration. */
    public HoldRules {
        if (!(holdSeconds >= 0.5 && holdSeconds <= 10)) {
            throw new IllegalArgumentException("hold of " + holdSeconds + " s (0.5..10)");
        }
    }

    /** The same rules with another duration. */
    public HoldRules lasting(double seconds) {
        return new HoldRules(seconds, moveNoiseTimes, moveMm, stillMm, mostMissing01);
    }
}
