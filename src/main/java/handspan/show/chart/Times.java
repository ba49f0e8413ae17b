package handspan.show.chart;

/** Rules for the times of a trace. */
final class Times {
    private Times() {}

    /** Refuses times that are no numbers or run backwards. */
    static void check(double[] timesS) {
        for (int i = 0; i < timesS.length; i++) {
            if (!Double.isFinite(timesS[i]) || (i > 0 && timesS[i] < timesS[i - 1])) {
                throw new IllegalArgumentException(
                        "time " + i + " of " + timesS[i] + " s (a number, never before the one ahead of it)");
            }
        }
    }
}
