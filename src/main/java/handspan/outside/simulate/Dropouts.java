package handspan.outside.simulate;

import java.util.Random;

/**
 * Decides which readings of a present hand are lost, in runs of one or two, with at least one good reading between
 * runs.
 *
 * <p>With a mean run of 1.5 and a share p of lost readings, a run begins after a good reading with the chance {@code q
 * = p / (1.5 (1 - p))}: 1/q good readings and 1.5 lost ones make one round.
 */
final class Dropouts {
    /** The largest share that runs of one or two with a good reading between them can reach. */
    static final double MOST_01 = 0.6;

    private static final double MEAN_RUN = 1.5;

    private final double startChance01;
    private final Random random;
    private int left;
    private boolean justLost;

    Dropouts(double share01, Random random) {
        Allowed.within("share of dropouts", share01, 0, MOST_01, "of 1");
        this.startChance01 = share01 / (MEAN_RUN * (1 - share01));
        this.random = random;
    }

    /** Whether the next reading is lost. */
    boolean next() {
        if (left == 0 && !justLost && random.nextDouble() < startChance01) {
            left = random.nextBoolean() ? 2 : 1;
        }
        justLost = left > 0;
        if (justLost) {
            left--;
        }
        return justLost;
    }
}
