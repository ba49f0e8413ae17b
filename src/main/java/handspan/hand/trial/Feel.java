package handspan.hand.trial;

import handspan.number.fit.Delay;
import org.hipparchus.stat.StatUtils;

/**
 * What a player feels, measured on traces of the true hand and of what came out. Traces are in mm, or in cents if both
 * are.
 *
 * <p>Wobble and lag belong together: they are only worth comparing at the same settings.
 */
public final class Feel {
    /** Left out at the start of a trace, s: a smoother has to get going. */
    public static final double SETTLE_S = 1;

    private static final int JITTER_S = 10;

    private static final int SETTLE = (int) (SETTLE_S * Trace.PER_S);

    private Feel() {}

    /**
     * Jitter: standard deviation of what came out of a still hand about its mean over {@value #JITTER_S} s, without
     * taking a trend off; the root mean square over as many such stretches as there are, or over what there is of one.
     */
    public static double jitter(Trace out) {
        int length = Math.min(JITTER_S * Trace.PER_S, out.size() - SETTLE);
        double sum = 0;
        int stretches = 0;
        for (int from = SETTLE; from + length <= out.size(); from += length) {
            sum += StatUtils.populationVariance(out.between(from, from + length));
            stretches++;
        }
        return Math.sqrt(sum / stretches);
    }

    /**
     * Lag: the shift in time at which what came out fits the true hand best, to a part of a sample.
     *
     * @param longestMs looked for; less than half a period, where the hand goes to and fro
     * @return ms, 0..longest
     */
    public static double lagMs(Trace hand, Trace out, double longestMs) {
        return Trace.STEP_MS * Delay.ofFollower(hand.from(0), out.from(0), (int) Math.round(longestMs / Trace.STEP_MS));
    }

    /**
     * Root mean square of what came out against the true hand at the same moment: lag counts, as it does for the ear.
     */
    public static double rmsError(Trace hand, Trace out) {
        double sum = 0;
        for (int i = SETTLE; i < out.size(); i++) {
            double error = out.mm(i) - hand.mm(i);
            sum += error * error;
        }
        return Math.sqrt(sum / (out.size() - SETTLE));
    }

    /** How far what came out ran over the end of a move, as a share of its length; below 0 when it never got there. */
    public static double overshoot01(Trace out, double fromMm, double toMm) {
        double farthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < out.size(); i++) {
            farthest = Math.max(farthest, (out.mm(i) - fromMm) / (toMm - fromMm));
        }
        return farthest - 1;
    }

    /**
     * What is left of a sine: its amplitude in what came out, by correlation with the sine and its cosine over whole
     * periods.
     *
     * @param hz of the sine
     * @param half its true amplitude
     */
    public static double gain01(Trace out, double hz, double half) {
        int periods = (int) Math.floor((out.size() - SETTLE) * hz / Trace.PER_S);
        int count = (int) Math.round(periods * Trace.PER_S / hz);
        double mean = StatUtils.mean(out.from(out.size() - count));
        double sine = 0;
        double cosine = 0;
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * hz * i / Trace.PER_S;
            double value = out.mm(out.size() - count + i) - mean;
            sine += value * Math.sin(angle);
            cosine += value * Math.cos(angle);
        }
        return 2 * Math.hypot(sine, cosine) / count / half;
    }

    /**
     * Flutter: how often a minute a choice between what lies below and above a boundary changes.
     *
     * @param play the choice changes only so far beyond the boundary
     */
    public static double flutterPerMinute(Trace out, double boundary, double play) {
        int changes = 0;
        boolean above = out.mm(SETTLE) > boundary;
        for (int i = SETTLE; i < out.size(); i++) {
            if (above ? out.mm(i) < boundary - play : out.mm(i) > boundary + play) {
                above = !above;
                changes++;
            }
        }
        return 60.0 * changes * Trace.PER_S / (out.size() - SETTLE);
    }

    /** How often what came out was further than a limit from where the hand was: spikes that got through. */
    public static int spikesThrough(Trace hand, Trace out, double limit) {
        int through = 0;
        boolean off = false;
        for (int i = SETTLE; i < out.size(); i++) {
            boolean now = Math.abs(out.mm(i) - hand.mm(i)) > limit;
            through += now && !off ? 1 : 0;
            off = now;
        }
        return through;
    }

    /**
     * When what came out has first gone a share of a step, ms after the step; infinite when it never does. For a mean
     * over several tries: noise on a single one arrives early.
     *
     * @param atS when the hand stepped
     */
    public static double arrivalMs(Trace out, double from, double to, double share01, double atS) {
        int first = (int) Math.round(atS * Trace.PER_S);
        for (int i = first; i < out.size(); i++) {
            if ((out.mm(i) - from) / (to - from) >= share01) {
                return (i - first) * Trace.STEP_MS;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
