package handspan.instrument.survey;

import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.Optional;

/**
 * Readings missing while the hand was there.
 *
 * @param share01 of the lines
 * @param runs how many gaps
 * @param longest lines missing in a row, at most
 * @param usual median length of a gap, lines
 * @param longestMs from the last reading before the longest gap to the first after it
 */
public record DropoutRuns(double share01, int runs, int longest, double usual, double longestMs) {
    /** The hand is taken for gone after {@code max(180 ms, 3.5 periods)}. */
    private static final double FADES_MS = 180;

    private static final double FADES_PERIODS = 3.5;
    private static final double GOOD01 = 0.05;
    private static final double USABLE01 = 0.15;

    /** Nothing missing. */
    public static final DropoutRuns NONE = new DropoutRuns(0, 0, 0, 0, 0);

    /** Everything missing. */
    static final DropoutRuns ALL = new DropoutRuns(1, 0, 0, 0, 0);

    static DropoutRuns in(Series series, int from, int to) {
        double[] lengths = new double[to - from];
        int runs = 0;
        int missing = 0;
        int run = 0;
        double longestMs = 0;
        for (int i = from; i < to; i++) {
            if (!series.isValid(i)) {
                run++;
                missing++;
            }
            boolean ends = run > 0 && (i + 1 == to || series.isValid(i + 1));
            if (ends) {
                lengths[runs++] = run;
                int before = Math.max(0, i - run);
                int after = Math.min(series.size() - 1, i + 1);
                longestMs = Math.max(longestMs, 1000 * (series.timeS(after) - series.timeS(before)));
                run = 0;
            }
        }
        if (runs == 0) {
            return NONE;
        }
        double[] sorted = Arrays.copyOf(lengths, runs);
        Arrays.sort(sorted);
        return new DropoutRuns(
                missing / (double) (to - from), runs, (int) sorted[runs - 1], sorted[(runs - 1) / 2], longestMs);
    }

    Optional<Complaint> complaint(double ratePerS) {
        if (share01 == 0) {
            return Optional.empty();
        }
        String reason = Figures.percent(share01) + " of readings missing" + (runs == 0 ? "" : ", " + lengths());
        boolean fades = ratePerS > 0 && longestMs > Math.max(FADES_MS, FADES_PERIODS * 1000 / ratePerS);
        if (share01 <= GOOD01 && !fades) {
            return Optional.of(Complaint.remark(reason));
        }
        return Optional.of(new Complaint(
                share01 <= USABLE01 ? Verdict.USABLE : Verdict.POOR,
                fades ? reason + ": sound fades in such a gap" : reason,
                "roll the sleeve up, palm flat"));
    }

    private String lengths() {
        if (longest == 1) {
            return "one at a time";
        }
        return "usually " + Figures.text(usual, 0) + " and at most " + longest + " in a row ("
                + Figures.text(longestMs, 0) + " ms)";
    }
}
