package handspan.number.fit;

/**
 * How far one signal runs behind another: the lag at which their mean squared difference is least, refined to a part of
 * a sample by the parabola through the lowest three.
 */
public final class Delay {
    private Delay() {}

    /**
     * Measures the delay.
     *
     * @param leader evenly sampled
     * @param follower sampled at the same moments, same unit
     * @param longest largest delay looked for, in samples, less than half the length
     * @return in samples, 0..longest
     */
    public static double ofFollower(double[] leader, double[] follower, int longest) {
        if (leader.length != follower.length || longest < 1 || longest * 2 >= leader.length) {
            throw new IllegalArgumentException("lengths " + leader.length + " and " + follower.length
                    + ", longest delay " + longest + " (equal lengths, more than twice the longest delay)");
        }
        double[] difference = new double[longest + 1];
        int best = 0;
        for (int lag = 0; lag <= longest; lag++) {
            difference[lag] = meanSquare(leader, follower, lag, longest);
            if (difference[lag] < difference[best]) {
                best = lag;
            }
        }
        if (best == longest) {
            return best;
        }
        // one sample ahead serves only to refine a delay of less than half a sample
        double before = best == 0 ? meanSquare(leader, follower, -1, longest) : difference[best - 1];
        double at = difference[best];
        double after = difference[best + 1];
        double bend = before - 2 * at + after;
        return bend <= 0 ? best : Math.max(0, best + 0.5 * (before - after) / bend);
    }

    private static double meanSquare(double[] leader, double[] follower, int lag, int longest) {
        double sum = 0;
        for (int i = longest; i < follower.length - 1; i++) {
            double difference = follower[i] - leader[i - lag];
            sum += difference * difference;
        }
        return sum / (follower.length - 1 - longest);
    }
}
