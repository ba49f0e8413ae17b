package handspan.room.calibrate;

import handspan.room.HandRole;
import handspan.room.StepKind;

/**
 * When a hold counts.
 *
 * @param holdSeconds how long the hand must be still, 0.5..10
 * @param moveNoiseTimes a new step needs a move of this many times the noise
 * @param moveMm and of this many mm
 * @param moveLn the same over a photoresistor, in the log of its resistance
 * @param stillMm the hand is still when it drifts and swings by no more than this during the hold, mm, or by the noise
 * @param mostMissing01 share of readings that may be missing
 * @param readySeconds after a step is asked for nothing is judged for this long, 0..10: time to hear it and to set out;
 *     from then on the moving hand itself prevents a hold
 */
public record HoldRules(
        double holdSeconds,
        double moveNoiseTimes,
        double moveMm,
        double moveLn,
        double stillMm,
        double mostMissing01,
        double readySeconds) {
    /** Share of readings missing from which on nobody is there. */
    static final double ABSENT01 = 0.9;

    /**
     * Two seconds of stillness after a move of 20 mm and 20 times the noise. Setting out takes 0.25..0.45 s (common
     * practice for reactions to a sound); 0.7 s are given.
     */
    public static final HoldRules USUAL = new HoldRules(2, 20, 20, 0.2, 4, 0.25, 0.7);

    private static final double LONGEST_SECONDS = 10;

    /** Shortest stop that counts as the end of a reach, s (this project's own choice). */
    private static final double SHORTEST_STOP_SECONDS = 0.6;

    /** A reach is over when the hand stops for this share of a hold. */
    private static final double STOP01 = 0.4;

    /** Share of the usual move that counts between places that lie close together. */
    private static final double CLOSE01 = 0.4;

    /** Checks the durations. */
    public HoldRules {
        if (!(holdSeconds >= 0.5 && holdSeconds <= LONGEST_SECONDS)) {
            throw new IllegalArgumentException("hold of " + holdSeconds + " s (0.5..10)");
        }
        if (!(readySeconds >= 0 && readySeconds <= 10)) {
            throw new IllegalArgumentException("ready time of " + readySeconds + " s (0..10)");
        }
    }

    /** The same rules with another duration. */
    public HoldRules lasting(double seconds) {
        return new HoldRules(seconds, moveNoiseTimes, moveMm, moveLn, stillMm, mostMissing01, readySeconds);
    }

    /**
     * The rules for a step. Places by ruler and by ear, and half-way, lie close together: four tenths of the usual move
     * counts there, for the usual one would be 100 mm before an infrared sensor at 40 cm. Places by ruler are held
     * twice as long: the slow wander of the hand is what they are uncertain by, and a longer mean leaves less of it. A
     * reach is over as soon as the hand stops: before long it would be corrected.
     */
    public HoldRules forStep(Step step) {
        boolean close = switch (step.kind()) {
            case RULER, NOTE, AIM -> true;
            case MID -> step.hand() == HandRole.PITCH;
            case REST, NEAR, FAR, OPEN, COVERED -> false;
        };
        if (!close) {
            return this;
        }
        if (step.kind() == StepKind.AIM) {
            return forReach();
        }
        return close(step.kind() == StepKind.RULER ? Math.min(LONGEST_SECONDS, 2 * holdSeconds) : holdSeconds);
    }

    /** The rules for the end of a reach. */
    public HoldRules forReach() {
        return close(Math.max(SHORTEST_STOP_SECONDS, STOP01 * holdSeconds));
    }

    private HoldRules close(double seconds) {
        return new HoldRules(
                seconds,
                CLOSE01 * moveNoiseTimes,
                CLOSE01 * moveMm,
                CLOSE01 * moveLn,
                stillMm,
                mostMissing01,
                readySeconds);
    }
}
