package handspan.number.fit;

import java.util.Arrays;

/**
 * Which lines carry a new measurement, where a board prints faster than its sensor measures and repeats the old value
 * in between. Equal neighbours alone do not tell: a quiet sensor with coarse steps gives them too. Repeats are told by
 * their beat: the value changes only on lines that one steady period marks.
 *
 * <p>With the period {@code P} in lines an update shows on every line {@code t} with {@code (t - phase) mod P < 1}.
 * Were the changes spread without a beat, each would fall on such a line with probability {@code 1 / P}; {@code n}
 * changes of which a share {@code v} misses have then a chance of about {@code exp(-n KL)} with {@code KL = (1-v)
 * ln((1-v) P) + v ln(v / (1 - 1/P))} (large deviations of a binomial count: T. M. Cover, J. A. Thomas, Elements of
 * Information Theory, 2nd ed. 2006, section 11.1, from memory). The beat counts when that, times the periods and phases
 * tried, is under one in a thousand.
 */
public final class SensorUpdates {
    /** The shortest period looked for, in lines: below, one line in four or more is new and a fifth are repeats. */
    private static final double SHORTEST = 1.3;

    private static final int LONGEST = 64;
    private static final double LEAST_EQUAL01 = 0.2;
    private static final int LEAST_CHANGES = 8;

    /** A sensor held still goes up about as often as down; steps that all go one way are a slow drift. */
    private static final double LEAST_EACH_WAY01 = 0.2;

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
        if (changes.length < LEAST_CHANGES) {
            return 1;
        }
        int shortest = shortestRun(changes);
        double low = Math.max(SHORTEST, shortest - 1);
        double high = Math.min(LONGEST, shortest + 1.001);
        int span = Math.max(1, lines[lines.length - 1] - lines[from]);
        double best = 1;
        double bestScore = 0;
        int tried = 0;
        for (double period = low; period <= high; period += SLIP * period / span) {
            double score = score(changes.length, onBeat(changes, period, phase(changes, period)), period);
            tried++;
            if (score > bestScore) {
                bestScore = score;
                best = period;
            }
        }
        boolean sure = bestScore - Math.log((double) Math.max(1, tried) * changes.length) >= DOUBT;
        return sure ? best : 1;
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
        int[] changes = allChanges(readings, lines, 0);
        if (linesPerUpdate <= 1 || changes.length == 0) {
            return all;
        }
        double phase = phase(changes, linesPerUpdate);
        int count = 0;
        long last = Long.MIN_VALUE;
        for (int i = 0; i < lines.length; i++) {
            long update = (long) Math.floor((lines[i] - phase) / linesPerUpdate + 1e-9);
            if (update != last) {
                all[count++] = i;
                last = update;
            }
        }
        return Arrays.copyOf(all, count);
    }

    /** Lines on which the value changed; none where equal neighbours are rare or all changes go one way. */
    private static int[] changes(double[] readings, int[] lines, int from) {
        int[] changes = allChanges(readings, lines, from);
        int pairs = 0;
        int up = 0;
        for (int i = from + 1; i < lines.length; i++) {
            if (lines[i] == lines[i - 1] + 1) {
                pairs++;
                up += readings[i] > readings[i - 1] ? 1 : 0;
            }
        }
        int fewer = Math.min(up, changes.length - up);
        boolean mostlyNew = pairs - changes.length < LEAST_EQUAL01 * pairs;
        return mostlyNew || fewer < LEAST_EACH_WAY01 * changes.length ? new int[0] : changes;
    }

    private static int[] allChanges(double[] readings, int[] lines, int from) {
        int[] changes = new int[readings.length];
        int count = 0;
        for (int i = from + 1; i < readings.length; i++) {
            if (lines[i] == lines[i - 1] + 1 && readings[i] != readings[i - 1]) {
                changes[count++] = lines[i];
            }
        }
        return Arrays.copyOf(changes, count);
    }

    /** The shortest run between changes, but for the share that may miss the beat. */
    private static int shortestRun(int[] changes) {
        int[] runs = new int[changes.length - 1];
        Arrays.setAll(runs, i -> changes[i + 1] - changes[i]);
        Arrays.sort(runs);
        return runs[(int) (MOST_MISSES01 * runs.length)];
    }

    /** Where the stretch of one line begins that most changes fall into, in lines, 0..period. */
    private static double phase(int[] changes, double period) {
        double[] phases = new double[changes.length];
        Arrays.setAll(phases, i -> changes[i] % period);
        Arrays.sort(phases);
        int best = 0;
        double phase = 0;
        int end = 0;
        for (int start = 0; start < phases.length; start++) {
            end = Math.max(end, start);
            while (end < start + phases.length && beyond(phases, end, period) - phases[start] < 1 - 1e-6) {
                end++;
            }
            if (end - start > best) {
                best = end - start;
                phase = phases[start];
            }
        }
        return phase;
    }

    private static double beyond(double[] phases, int index, double period) {
        return index < phases.length ? phases[index] : phases[index - phases.length] + period;
    }

    private static int onBeat(int[] changes, double period, double phase) {
        int count = 0;
        for (int change : changes) {
            double after = (change - phase) % period;
            double since = after < -1e-9 ? after + period : after;
            count += since < 1 - 1e-6 ? 1 : 0;
        }
        return count;
    }

    private static double score(int count, int onBeat, double period) {
        double missed = 1 - onBeat / (double) count;
        if (missed > MOST_MISSES01) {
            return 0;
        }
        double misses = missed == 0 ? 0 : missed * Math.log(missed / (1 - 1 / period));
        return count * ((1 - missed) * Math.log((1 - missed) * period) + misses);
    }
}
