package handspan.show.chart;

/**
 * A played passage, moment by moment.
 *
 * @param timesS s, never falling
 * @param trueKeys what the hand meant, as key numbers with 69 = A4, transposition and trim included; NaN where no hand
 *     was there
 * @param sentKeys what was sent, likewise; counts only where it sounded
 * @param levelDb level that was sent, dB below full; negative infinity for silence
 * @param sounding whether anything was to be heard
 */
@SuppressWarnings("ArrayRecordComponent") // long series; nobody compares two of them
public record PassageTrace(
        double[] timesS, double[] trueKeys, double[] sentKeys, double[] levelDb, boolean[] sounding) {
    /** Copies the arrays; checks lengths and numbers. */
    public PassageTrace {
        timesS = timesS.clone();
        trueKeys = trueKeys.clone();
        sentKeys = sentKeys.clone();
        levelDb = levelDb.clone();
        sounding = sounding.clone();
        int count = timesS.length;
        if (count == 0
                || trueKeys.length != count
                || sentKeys.length != count
                || levelDb.length != count
                || sounding.length != count) {
            throw new IllegalArgumentException("passage of " + count + " times, " + trueKeys.length + " true keys, "
                    + sentKeys.length + " sent keys, " + levelDb.length + " levels and " + sounding.length
                    + " marks (1 or more, of each the same)");
        }
        Times.check(timesS);
        for (int i = 0; i < count; i++) {
            boolean keysFit = !Double.isInfinite(trueKeys[i]) && (!sounding[i] || Double.isFinite(sentKeys[i]));
            if (!keysFit || Double.isNaN(levelDb[i]) || levelDb[i] == Double.POSITIVE_INFINITY) {
                throw new IllegalArgumentException("moment " + i + ": true key " + trueKeys[i] + ", sent key "
                        + sentKeys[i] + ", level " + levelDb[i] + " dB (numbers; level may be silence)");
            }
        }
    }

    /** Whether moment i has both a hand and a sound. */
    private boolean compares(int i) {
        return sounding[i] && !Double.isNaN(trueKeys[i]);
    }

    /** How many moments have both a hand and a sound. */
    public int comparedCount() {
        int count = 0;
        for (int i = 0; i < timesS.length; i++) {
            count += compares(i) ? 1 : 0;
        }
        return count;
    }

    /**
     * Root of the mean square of sent minus meant at the same moments, cents: lag, wobble and snapping together. NaN
     * when no moment has both.
     */
    public double rmsCents() {
        double sum = 0;
        for (int i = 0; i < timesS.length; i++) {
            double keys = compares(i) ? sentKeys[i] - trueKeys[i] : 0;
            sum += keys * keys;
        }
        return 100 * Math.sqrt(sum / comparedCount());
    }
}
