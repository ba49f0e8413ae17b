package handspan.bench;

import java.util.Arrays;

/** Figures in order: the values that shares of them do not pass. */
final class Quantiles {
    private final double[] sorted;

    Quantiles(double... values) {
        sorted = values.clone();
        Arrays.sort(sorted);
    }

    /** The smallest value that a share of all does not pass (nearest rank). */
    double at(double share01) {
        return sorted[(int) Math.max(0, Math.ceil(share01 * sorted.length) - 1)];
    }

    double median() {
        return at(0.5);
    }

    double most() {
        return sorted[sorted.length - 1];
    }

    int count() {
        return sorted.length;
    }
}
