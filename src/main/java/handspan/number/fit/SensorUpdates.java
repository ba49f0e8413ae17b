package handspan.number.fit;

import java.util.Arrays;

/**
 * Which lines carry a new measurement, where a board prints faster than its sensor measures and repeats the old value
 * in between. Equal neighbours alone do not tell: a quiet sensor with coarse steps gives them too. Repeats are told by
 * their beat: the value changes only on lines that one steady period marks; where two updates happen to be equal no
 * change is seen, which does no harm.
 *
 * <p>With the period {@code P} in lines an update shows on every line {@code t} with {@code (t - phase) mod P < 1}.
 * Were the changes spread without a beat, each would fall on such a line with probability {@code 1 / P}; {@code n}
 * changes of which a share {@code v} misses have then a chance of at most {@code exp(-n KL)} with {@code KL = (1-v)
 * ln((1-v) P) + v ln(v / (1 - 1/P))} (W. Hoeffding, Probability inequalities for sums of bounded random variables, JASA
 * 58 (1963) 13-30, theorem 1). The beat counts when that, times the periods and phases tried, is under one in a
 * thousand.
 */
public final class SensorUpdates {
    /** The shortest period looked for, in lines: below, one line in four or more is new and a fifth are repeats. */
    private static final double SHORTEST = 1.3;

    private static final int LONGEST = 64;
    private static final double LEAST_EQUAL01 = 0.2;
    private static final int LEAST_CHANGES = 8;

    /**
     * Two in three changes of white noise go the other way than the change before; those of a slow drift, or of a slow
     * swing, through the steps of a quiet sensor hardly ever do.
     */
    private static final double LEAST_REVERSALS01 = 0.25;

    /** A wobble across one step: two values in turn, so many of the changes one period apart. */
    private static final double TOGGLES01 = 0.8;

    /** Share of changes that may miss the beat: a line late by itself. */
    private static final double MOST_MISSES01 = 0.06;

    private static final double DOUBT = Math.log(1000);

    /** Most lines in which the period is looked for. */
    private static final int MOST_LINES = 512;

    /** How far the beat may slip over all lines between two periods tried, in lines. */
    private static final double SLIP = 0.1;

    private SensorUpdates() {}

    /**
     * Lines to an update of the sensor, learned from something held still.
     *
     * @param readings in the order they came
     * @param lines number of the line of each, rising; lines without a reading are left out
     * @return 1 where each line is taken for an update of its own
     */
    public static double linesPerUpdate(double[] readings, int[] lines) {
        int from = 0;
        while (from < lines.length && lines[lines.length - 1] - lines[from] > MOST_LINES) {
            from++;
        }
        int[] changes = changes(readings, lines, from);
        if (changes.length < LEAST_CHANGES || !mayBeRepeats(readings, lines, from, changes.length)) {
            return 1;
        }
        int shortest = shortestRun(changes);
        double low = Math.max(SHORTEST, shortest - 1);
        double high = Math.min(LONGEST, shortest + 1.001);
        double slip = SLIP / Math.max(1, lines[lines.length - 1] - lines[from]);
        Beat best = Beat.of(changes, low);
        int tried = 0;
        for (double period = low; period <= high; period += slip * period) {
            Beat beat = Beat.of(changes, period);
            tried++;
            best = information(beat, changes) > information(best, changes) ? beat : best;
        }
        boolean sure = information(best, changes) - Math.log((double) tried * changes.length) >= DOUBT;
        return sure && !isToggle(readings, from, changes, best.periodLines()) ? middle(changes, best, slip) : 1;
    }

    /**
     * The first reading of each update.
     *
     * @param readings in the order they came
     * @param lines number of the line of each, rising
     * @param linesPerUpdate 1 or more; 1 keeps all
     * @return indices into the readings, rising
     */
    public static int[] firsts(double[] readings, int[] lines, double linesPerUpdate) {
        int[] all = new int[readings.length];
        Arrays.setAll(all, i -> i);
        int[] changes = changes(readings, lines, 0);
        if (linesPerUpdate <= 1 || changes.length == 0) {
            return all;
        }
        Beat beat = Beat.of(changes, linesPerUpdate);
        int count = 0;
        long last = Long.MIN_VALUE;
        for (int i = 0; i < lines.length; i++) {
            long update = beat.update(lines[i]);
            if (update != last) {
                all[count++] = i;
                last = update;
            }
        }
        return Arrays.copyOf(all, count);
    }

    /**
     * Where the first line of an update begins.
     *
     * @param readings in the order they came
     * @param lines number of the line of each, rising
     * @param linesPerUpdate 1 or more
     * @return 0..linesPerUpdate, in lines
     */
    public static double firstLine(double[] readings, int[] lines, double linesPerUpdate) {
        return Beat.of(changes(readings, lines, 0), linesPerUpdate).phaseLines();
    }

    /** Lines on which the value changed from one line to the next. */
    private static int[] changes(double[] readings, int[] lines, int from) {
        int[] changes = new int[readings.length];
        int count = 0;
        for (int i = from + 1; i < readings.length; i++) {
            if (lines[i] == lines[i - 1] + 1 && readings[i] != readings[i - 1]) {
                changes[count++] = lines[i];
            }
        }
        return Arrays.copyOf(changes, count);
    }

    /** Not where equal neighbours are rare, nor where changes go on one way for long. */
    private static boolean mayBeRepeats(double[] readings, int[] lines, int from, int changes) {
        int pairs = 0;
        int reversals = 0;
        double way = 0;
        for (int i = from + 1; i < lines.length; i++) {
            double by = readings[i] - readings[i - 1];
            boolean isPair = lines[i] == lines[i - 1] + 1;
            pairs += isPair ? 1 : 0;
            if (isPair && by != 0) {
                reversals += way * by < 0 ? 1 : 0;
                way = by;
            }
        }
        return pairs - changes >= LEAST_EQUAL01 * pairs && reversals >= LEAST_REVERSALS01 * changes;
    }

    private static double information(Beat beat, int[] changes) {
        return beat.information(changes.length, MOST_MISSES01);
    }

    /**
     * Periods a little below the best, which is the longest of its kind, may suit as many changes: the mean of them.
     */
    private static double middle(int[] changes, Beat best, double slip) {
        double least = best.periodLines() * (1 - 2 * slip / SLIP);
        double sum = 0;
        int count = 0;
        for (double period = best.periodLines(); period > least; period -= slip * period) {
            boolean suits = Beat.of(changes, period).onBeat() >= best.onBeat();
            sum += suits ? period : 0;
            count += suits ? 1 : 0;
        }
        return sum / count;
    }

    /** The shortest run between changes, but for the share that may miss the beat. */
    private static int shortestRun(int[] changes) {
        int[] runs = new int[changes.length - 1];
        Arrays.setAll(runs, i -> changes[i + 1] - changes[i]);
        Arrays.sort(runs);
        return runs[(int) (MOST_MISSES01 * runs.length)];
    }

    /** Two values in turn at even distances: a wobble across one step, not new values of the sensor. */
    private static boolean isToggle(double[] readings, int from, int[] changes, double period) {
        int even = 0;
        for (int i = 1; i < changes.length; i++) {
            even += changes[i] - changes[i - 1] < period + 1 ? 1 : 0;
        }
        return even > TOGGLES01 * (changes.length - 1)
                && Arrays.stream(readings, from, readings.length).distinct().count() <= 2;
    }
}
