package handspan.instrument.survey;

import handspan.number.fit.AllanDeviation;
import handspan.number.fit.Autocorrelation;
import handspan.number.fit.TheilSen;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.Optional;

/**
 * The slow part of what a hold shows. The slope is Theil and Sen's through means of half a second or more, spikes left
 * out; its interval is widened by the root of how many of these means there are to how many independent ones they are
 * worth, since a hand wanders.
 *
 * @param perMin slope, channel's unit a minute
 * @param lowPerMin lower end of the 95 % interval
 * @param highPerMin upper end
 * @param seconds over which it was seen
 * @param slowAt3S what means over 3 s scatter beyond white noise, from one to the next (Allan deviation), channel's
 *     unit; NaN where the hold is under 15 s
 */
public record Drift(double perMin, double lowPerMin, double highPerMin, double seconds, double slowAt3S) {
    /** In a shorter hold the wander of a hand looks like drift. */
    private static final double JUDGED_SECONDS = 30;

    private static final double BLOCK_SECONDS = 0.5;
    private static final int MOST_BLOCKS = 300;
    private static final int LEAST_BLOCKS = 8;
    private static final double SLOW_SECONDS = 3;
    private static final double SLOW_MEANS = 5;

    /** 1 mm a minute is 6 cents a minute; in ten minutes a semitone goes by half. */
    private static final double MOST_MM_PER_MIN = 1;

    private static final double MOST_COUNTS_PER_MIN = 2;
    private static final double SEEN_MM = 2;
    private static final double SEEN_COUNTS = 2.5;

    static Optional<Drift> in(Held all, double step) {
        Held held = all.size() < LEAST_BLOCKS ? all : all.sane(all.size(), step);
        int blocks = (int) Math.min(MOST_BLOCKS, held.seconds() / BLOCK_SECONDS);
        if (blocks < LEAST_BLOCKS || held.size() < 3 * blocks) {
            return Optional.empty();
        }
        double[] minutes = new double[blocks];
        double[] means = new double[blocks];
        for (int b = 0; b < blocks; b++) {
            int from = (int) ((long) b * held.size() / blocks);
            int to = (int) ((long) (b + 1) * held.size() / blocks);
            // medians of whole numbers would stand in steps
            minutes[b] = mean(held.timesS, from, to) / 60;
            means[b] = mean(held.values, from, to);
        }
        TheilSen line = TheilSen.of(minutes, means);
        TheilSen.Interval interval = line.slopeInterval().orElse(new TheilSen.Interval(line.slope(), line.slope()));
        double[] rest = new double[blocks];
        Arrays.setAll(rest, b -> means[b] - line.at(minutes[b]));
        double wider = Math.sqrt(blocks / Autocorrelation.effectiveSize(rest));
        return Optional.of(new Drift(
                line.slope(),
                line.slope() - wider * (line.slope() - interval.low()),
                line.slope() + wider * (interval.high() - line.slope()),
                held.seconds(),
                slow(held)));
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }

    private static double slow(Held held) {
        return held.seconds() < SLOW_MEANS * SLOW_SECONDS
                ? Double.NaN
                : AllanDeviation.of(held.values, 1 / held.ratePerS()).driftOver(SLOW_SECONDS);
    }

    /** Whether the hold was long enough to tell drift from the wander of a hand. */
    public boolean isTelling() {
        return seconds >= JUDGED_SECONDS;
    }

    Optional<Complaint> complaint(Measure measure) {
        boolean certain = isTelling() && lowPerMin * highPerMin > 0;
        boolean large = Math.abs(perMin) > measure.inUnit(MOST_MM_PER_MIN, MOST_COUNTS_PER_MIN)
                && Math.abs(perMin) * seconds / 60 > measure.inUnit(SEEN_MM, SEEN_COUNTS);
        if (!certain || !large) {
            return Optional.empty();
        }
        String cents = measure.isLength() ? ", " + measure.cents(perMin) : "";
        return Optional.of(new Complaint(
                Verdict.USABLE,
                "drifts by " + measure.words(perMin) + " a minute (" + measure.words(lowPerMin) + " to "
                        + measure.words(highPerMin) + ")" + cents + ", seen over " + Figures.text(seconds, 0) + " s",
                measure.isLength()
                        ? "let the sensor warm up for ten minutes, then take one end again"
                        : "wait for the light to settle, or take the open light again before the set"));
    }
}
