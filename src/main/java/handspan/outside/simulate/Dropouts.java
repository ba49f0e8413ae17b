package handspan.outside.simulate;

import java.util.Random;

/**
 * Decides which readings of a present hand are lost, in runs of one to a longest, all lengths alike, with at least one
 * good reading between runs.
 *
 * <p>With a mean run of m and a share p of lost readings, a run begins after a good reading with the chance {@code q =
 * p / (m (1 - p))}: 1/q good readings and m lost ones make one round.
 */
final class Dropouts {
    /** The largest share that runs of one or two with a good reading between them can reach. */
    static final double MOST_01 = 0.6;

    private static final int USUAL_LONGEST_RUN = 2;

    private final double startChance01;
    private final int longestRun;
    private final Random random;
    private int left;
    private boolean justLost;

    /** Runs of one or two. */
    Dropouts(double share01, Random random) {
        this(share01, USUAL_LONGEST_RUN, random);
    }

    Dropouts(double share01, int longestRun, Random random) {
        Allowed.within("share of dropouts", share01, 0, most01(longestRun), "of 1");
        this.startChance01 = share01 / (meanRun(longestRun) * (1 - share01));
        this.longestRun = longestRun;
        this.random = random;
    }

    /** The largest share that runs up to a longest can reach, m / (m + 1). */
    static double most01(int longestRun) {
        return meanRun(longestRun) / (meanRun(longestRun) + 1);
    }

    /** Whether the next reading is lost. */
    boolean next() {
        if (left == 0 && !justLost && random.nextDouble() < startChance01) {
            left = 1 + random.nextInt(longestRun);
        }
        justLost = left > 0;
        if (justLost) {
            left--;
        }
        return justLost;
    }

    private static double meanRun(int longestRun) {
        return (1 + longestRun) / 2.0;
    }
}
