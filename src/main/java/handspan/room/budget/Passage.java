package handspan.room.budget;

import handspan.music.passage.Wobble;
import handspan.number.fit.Delay;
import org.hipparchus.stat.StatUtils;

/**
 * What was sent, held against the true hand.
 *
 * @param totalLagMs true hand to what was sent
 * @param rmsErrorCents of what was sent against the true hand at the same moment less the lag, over the whole passage
 * @param stillErrorCents rms error over the moments at which the true hand stood still
 * @param jitterCents rms wobble about its mean while the hand stood still
 */
public record Passage(double totalLagMs, double rmsErrorCents, double stillErrorCents, double jitterCents) {
    private static final double LONGEST_LAG_MS = 400;

    /**
     * Measures a passage.
     *
     * @param trueCents pitch meant by the true hand, evenly sampled
     * @param sentCents pitch sent, at the same moments
     * @param still whether the true hand stood still at that moment, and had for a while
     * @param sampleMs time between samples
     */
    public static Passage of(double[] trueCents, double[] sentCents, boolean[] still, double sampleMs) {
        int longest = (int) Math.min(LONGEST_LAG_MS / sampleMs, (trueCents.length - 1) / 2.0);
        double lag = Delay.ofFollower(trueCents, sentCents, longest);
        int whole = (int) Math.round(lag);
        double sum = 0;
        int count = 0;
        for (int i = whole; i < sentCents.length; i++) {
            double error = sentCents[i] - trueCents[i - whole];
            sum += error * error;
            count++;
        }
        double[] errors = stillErrors(trueCents, sentCents, still);
        return new Passage(
                lag * sampleMs,
                Math.sqrt(sum / count),
                errors.length == 0 ? 0 : Math.sqrt(StatUtils.sumSq(errors) / errors.length),
                wobble(sentCents, still));
    }

    private static double[] stillErrors(double[] trueCents, double[] sentCents, boolean[] still) {
        double[] errors = new double[still.length];
        int count = 0;
        for (int i = 0; i < still.length; i++) {
            if (still[i]) {
                errors[count++] = sentCents[i] - trueCents[i];
            }
        }
        return java.util.Arrays.copyOf(errors, count);
    }

    /**
     * Root of the mean variance within each stretch of stillness, so that one note's pitch does not count against
     * another's.
     */
    private static double wobble(double[] sentCents, boolean[] still) {
        Wobble wobble = Wobble.NONE;
        int from = 0;
        while (from < still.length) {
            int to = from;
            while (to < still.length && still[to]) {
                to++;
            }
            if (to - from > 1) {
                wobble = wobble.and(Wobble.of(java.util.Arrays.copyOfRange(sentCents, from, to)));
            }
            from = to + 1;
        }
        return wobble.count() == 0 ? 0 : wobble.rmsCents();
    }
}
