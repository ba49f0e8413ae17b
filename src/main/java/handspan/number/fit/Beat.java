package handspan.number.fit;

import java.util.Arrays;

/**
 * One steady period laid over the lines on which a value changed: an update may show on every line {@code t} with
 * {@code (t - phase) mod P < 1}, and nowhere else.
 *
 * @param periodLines P, above 1
 * @param phaseLines where the line that most changes fall upon begins, 0..P
 * @param onBeat changes that fall upon such lines
 */
record Beat(double periodLines, double phaseLines, int onBeat) {
    /** Under one line wide, or every line of P = 2 would do. */
    private static final double WIDTH = 1 - 1e-6;

    /** The phase that suits most changes. */
    static Beat of(int[] changes, double periodLines) {
        double[] phases = new double[changes.length];
        Arrays.setAll(phases, i -> changes[i] % periodLines);
        Arrays.sort(phases);
        int most = 0;
        double phase = 0;
        int end = 0;
        for (int start = 0; start < phases.length; start++) {
            end = Math.max(end, start);
            while (end < start + phases.length && beyond(phases, end, periodLines) - phases[start] < WIDTH) {
                end++;
            }
            if (end - start > most) {
                most = end - start;
                phase = phases[start];
            }
        }
        return new Beat(periodLines, phase, most);
    }

    private static double beyond(double[] phases, int index, double periodLines) {
        return index < phases.length ? phases[index] : phases[index - phases.length] + periodLines;
    }

    /**
     * How much so many changes on the beat speak against chance: {@code n KL}.
     *
     * @param changes n, those on the beat and those that miss it
     * @param mostMisses01 share of misses from which on it is 0
     */
    double information(int changes, double mostMisses01) {
        double missed = 1 - onBeat / (double) changes;
        if (missed > mostMisses01) {
            return 0;
        }
        double misses = missed == 0 ? 0 : missed * Math.log(missed / (1 - 1 / periodLines));
        return changes * ((1 - missed) * Math.log((1 - missed) * periodLines) + misses);
    }

    /** Number of the update that a line belongs to, rising. */
    long update(int line) {
        return (long) Math.floor((line - phaseLines) / periodLines + 1e-9);
    }
}
