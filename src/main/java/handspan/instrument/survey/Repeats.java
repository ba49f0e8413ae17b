package handspan.instrument.survey;

import handspan.number.fit.Robust;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.Optional;

/**
 * A sensor slower than the lines: each of its values is printed several times. Values of such a sensor change at even
 * distances only, every p lines; values of a quiet sensor with a coarse step stay equal by chance and change at any
 * line. So p is sought for which (nearly) all changes fall upon the first line of a period; where two updates happen to
 * be equal no change is seen, which does no harm. How sure that is: if changes came at any line, the share of them that
 * falls upon those lines would be binomial with 1/p; the information (Kullback-Leibler) of the share seen must outweigh
 * the number of periods tried (W. Hoeffding, Probability inequalities for sums of bounded random variables, JASA 58
 * (1963) 13-30, theorem 1).
 *
 * @param linesPerValue p, 1 where each line is new
 * @param firstLine of a period, counted from the stretch's first line, 0..p
 * @param equal01 share of readings equal to the one before, by whatever cause
 */
public record Repeats(double linesPerValue, double firstLine, double equal01) {
    private static final double LEAST = 1.3;
    private static final double MOST = 20;

    /** Lines looked at: enough for 20 values printed 20 times each. */
    private static final int MOST_LINES = 400;

    private static final int LEAST_CHANGES = 12;

    /** A change is seen in the first line of a period: under one line wide, or every line of p = 2 would do. */
    private static final double WIDTH = 1 - 1e-6;

    /** Periods tried are so close that the best is off by half of this over the stretch. */
    private static final double OFF_LINES = 0.1;

    /** Lines that come a little early or late, and a period that is a little off, cost a few. */
    private static final double IN_TIME01 = 0.94;

    private static final double FALSE_ALARM01 = 1e-4;
    private static final double REVERSALS01 = 0.25;
    private static final double TOGGLES01 = 0.8;

    static Repeats in(Series series, StillStretch held) {
        double equal01 = equal01(series.readings(held.from(), held.to()));
        int to = Math.min(held.to(), held.from() + MOST_LINES);
        double[] changes = changes(series, held.from(), to);
        Repeats every = new Repeats(1, 0, equal01);
        if (changes.length < LEAST_CHANGES) {
            return every;
        }
        double lines = to - held.from();
        double ratio = 1 + OFF_LINES / lines;
        double periods = Math.log(MOST / LEAST) / Math.log(ratio);
        double most = Math.min(MOST, lines / LEAST_CHANGES);
        double found = 0;
        double best = 0;
        double sum = 0;
        int count = 0;
        for (double p = most; p >= LEAST && p > found - 2 * p / lines; p /= ratio) {
            double share = inTime(changes, p).share01;
            if (share < IN_TIME01 || !outweighs(share, changes.length, p, periods)) {
                continue;
            }
            found = found == 0 ? p : found;
            if (share > best) {
                best = share;
                sum = 0;
                count = 0;
            }
            sum += share == best ? p : 0;
            count += share == best ? 1 : 0;
        }
        if (count == 0 || isToggle(series, held.from(), to, changes, sum / count)) {
            return every;
        }
        double p = sum / count;
        return new Repeats(p, inTime(changes, p).from, equal01);
    }

    /** Values the sensor gives in a second. */
    public double newPerS(double linesPerS) {
        return linesPerS / linesPerValue;
    }

    Optional<Complaint> remark(double linesPerS) {
        if (linesPerValue == 1) {
            return Optional.empty();
        }
        boolean whole = Math.abs(linesPerValue - Math.rint(linesPerValue)) < 0.05;
        String times = whole
                ? Figures.text(linesPerValue, 0) + " times"
                : Figures.text(linesPerValue, 2) + " times on average";
        return Optional.of(Complaint.remark("each value comes " + times + ": the sensor gives "
                + Figures.text(newPerS(linesPerS), 1) + " a second"));
    }

    private record InTime(double share01, double from) {}

    /** The largest share of changes that fall within one line of each period, and where that line begins. */
    private static InTime inTime(double[] changes, double period) {
        int n = changes.length;
        double[] within = new double[2 * n];
        for (int i = 0; i < n; i++) {
            within[i] = changes[i] - period * Math.floor(changes[i] / period);
        }
        Arrays.sort(within, 0, n);
        for (int i = 0; i < n; i++) {
            within[n + i] = within[i] + period;
        }
        int most = 0;
        double from = 0;
        int end = 0;
        for (int i = 0; i < n; i++) {
            while (end < i + n && within[end] < within[i] + WIDTH) {
                end++;
            }
            if (end - i > most) {
                most = end - i;
                from = within[i];
            }
        }
        return new InTime(most / (double) n, from);
    }

    private static boolean outweighs(double share, int changes, double period, double tried) {
        double chance = WIDTH / period;
        if (share <= chance) {
            return false;
        }
        double late = share == 1 ? 0 : (1 - share) * Math.log((1 - share) / (1 - chance));
        double information = changes * (share * Math.log(share / chance) + late);
        return information > Math.log(tried * changes / FALSE_ALARM01);
    }

    /**
     * Lines with another value than the reading before, from the first line on; spikes are no change. Empty where they
     * run one way, as those of a slow drift through the steps of a quiet sensor do.
     */
    private static double[] changes(Series series, int from, int to) {
        double[] readings = series.readings(from, to);
        if (readings.length < LEAST_CHANGES) {
            return new double[0];
        }
        double median = Robust.median(readings);
        double limit = 5 * Robust.MAD_TO_SD * Robust.medianAbsoluteDeviation(readings, median)
                + 3 * Robust.smallestStep(readings);
        double[] changes = new double[to - from];
        int count = 0;
        int reversals = 0;
        double before = Double.NaN;
        double lastChange = 0;
        for (int i = from; i < to; i++) {
            double value = series.value(i);
            if (!series.isValid(i) || Math.abs(value - median) > limit) {
                continue;
            }
            if (!Double.isNaN(before) && value != before) {
                changes[count++] = i - from;
                reversals += lastChange * (value - before) < 0 ? 1 : 0;
                lastChange = value - before;
            }
            before = value;
        }
        return reversals < REVERSALS01 * count ? new double[0] : Arrays.copyOf(changes, count);
    }

    /** Two values in turn at even distances: a wobble across one step, not new values of the sensor. */
    private static boolean isToggle(Series series, int from, int to, double[] changes, double period) {
        int even = 0;
        for (int i = 1; i < changes.length; i++) {
            even += changes[i] - changes[i - 1] < period + 1 ? 1 : 0;
        }
        return even > TOGGLES01 * (changes.length - 1)
                && Arrays.stream(series.readings(from, to)).distinct().count() <= 2;
    }

    private static double equal01(double[] held) {
        int equal = 0;
        for (int i = 1; i < held.length; i++) {
            equal += held[i] == held[i - 1] ? 1 : 0;
        }
        return held.length < 2 ? 0 : equal / (held.length - 1.0);
    }
}
