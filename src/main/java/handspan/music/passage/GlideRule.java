package handspan.music.passage;

/**
 * Tells gliding from staying: a hand glides where its pitch moves by more than 200 cents a second over 0.06 s, and in
 * the same direction from the mean of the 0.2 s before to the mean of the 0.2 s after. The second keeps vibrato from
 * counting as gliding (the means of 0.2 s hold a whole turn of 5 Hz; of 4 to 8 Hz and 25 cents less than 52 cents a
 * second is left), the first keeps the time just before and after a glide for its notes. The figures are this project's
 * own choice.
 */
final class GlideRule {
    /** Faster than this is gliding. */
    static final double CENTS_PER_S = 200;

    private static final int MEAN = (int) Math.round(0.2 / Sounding.STEP_S);
    private static final int NEAR = (int) Math.round(0.03 / Sounding.STEP_S);

    /** Shorter movements are noise, not glides. */
    private static final int SHORTEST = (int) Math.round(0.05 / Sounding.STEP_S);

    private GlideRule() {}

    /**
     * Which samples are gliding.
     *
     * @param cents of the hand, every {@link Sounding#STEP_S}
     */
    static boolean[] gliding(double[] cents) {
        boolean[] gliding = new boolean[cents.length];
        double[] sums = new double[cents.length + 1];
        for (int i = 0; i < cents.length; i++) {
            sums[i + 1] = sums[i] + cents[i];
        }
        for (int i = 0; i < cents.length; i++) {
            double slow = slowSpeed(sums, i);
            double near = nearSpeed(cents, i);
            gliding[i] = Math.abs(slow) > CENTS_PER_S && near * Math.signum(slow) > CENTS_PER_S;
        }
        dropShort(gliding);
        return gliding;
    }

    private static double slowSpeed(double[] sums, int i) {
        int count = sums.length - 1;
        int width = Math.min(MEAN, count / 2);
        if (width == 0) {
            return 0;
        }
        int at = Math.max(width, Math.min(count - width, i));
        double before = (sums[at] - sums[at - width]) / width;
        double after = (sums[at + width] - sums[at]) / width;
        return (after - before) / (width * Sounding.STEP_S);
    }

    private static double nearSpeed(double[] cents, int i) {
        int from = Math.max(0, i - NEAR);
        int to = Math.min(cents.length - 1, i + NEAR);
        return to == from ? 0 : (cents[to] - cents[from]) / ((to - from) * Sounding.STEP_S);
    }

    private static void dropShort(boolean[] gliding) {
        int from = 0;
        while (from < gliding.length) {
            int to = from;
            while (to < gliding.length && gliding[to]) {
                to++;
            }
            if (to - from < SHORTEST) {
                java.util.Arrays.fill(gliding, from, to, false);
            }
            from = to + 1;
        }
    }
}
