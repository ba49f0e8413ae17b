package handspan.instrument.survey;

import handspan.number.fit.Robust;
import java.util.Arrays;
import java.util.Optional;

/**
 * Readings that go to and fro between two levels: two echo sensors that hear each other, over still hands.
 *
 * @param low nearer level, channel's unit
 * @param high farther level
 * @param high01 share of readings at the farther one
 * @param switches from one to the other and back
 */
public record Beating(double low, double high, double high01, int switches) {
    private static final double LEAST_SHARE01 = 0.12;
    private static final int LEAST_SWITCHES = 8;
    private static final double SWITCHES01 = 0.08;

    /** Between the levels there is next to nothing: they lie this many of their own scales apart. */
    private static final double SCALES_APART = 6;

    /** A coarse sensor toggles between neighbouring steps; even three steps are no second level. */
    private static final double STEPS_APART = 3.5;

    private static final double APART_MM = 10;
    private static final double APART_COUNTS = 20;

    static Optional<Beating> in(double[] readings, double step, Measure measure) {
        if (readings.length < 4 * LEAST_SWITCHES) {
            return Optional.empty();
        }
        double[] sorted = readings.clone();
        Arrays.sort(sorted);
        int split = widestGap(sorted);
        double[] lower = Arrays.copyOf(sorted, split);
        double[] upper = Arrays.copyOfRange(sorted, split, sorted.length);
        double low = Robust.median(lower);
        double high = Robust.median(upper);
        double scale = Math.max(
                step / Math.sqrt(12),
                Robust.MAD_TO_SD
                        * Math.max(
                                Robust.medianAbsoluteDeviation(lower, low),
                                Robust.medianAbsoluteDeviation(upper, high)));
        double apart =
                Math.max(Math.max(SCALES_APART * scale, STEPS_APART * step), measure.inUnit(APART_MM, APART_COUNTS));
        int switches = switches(readings, (low + high) / 2);
        boolean often = switches >= Math.max(LEAST_SWITCHES, SWITCHES01 * readings.length);
        return high - low < apart || !often
                ? Optional.empty()
                : Optional.of(new Beating(low, high, upper.length / (double) sorted.length, switches));
    }

    /** Index of the value above the widest gap, with a fair share on each side. */
    private static int widestGap(double[] sorted) {
        int least = Math.max(1, (int) Math.ceil(LEAST_SHARE01 * sorted.length));
        int best = least;
        for (int i = least; i <= sorted.length - least; i++) {
            if (sorted[i] - sorted[i - 1] > sorted[best] - sorted[best - 1]) {
                best = i;
            }
        }
        return best;
    }

    private static int switches(double[] readings, double middle) {
        int switches = 0;
        for (int i = 1; i < readings.length; i++) {
            switches += readings[i] > middle != readings[i - 1] > middle ? 1 : 0;
        }
        return switches;
    }

    Complaint complaint(Measure measure, boolean isEcho) {
        String levels = "goes to and fro between " + measure.place(low) + " and " + measure.place(high) + " ("
                + switches + " times)";
        return isEcho
                ? new Complaint(
                        Verdict.POOR,
                        levels + ", as two echo sensors do that hear each other",
                        "ping in turn, 30 to 50 ms apart")
                : new Complaint(Verdict.POOR, levels, "look for a second thing at the edge of the beam");
    }
}
