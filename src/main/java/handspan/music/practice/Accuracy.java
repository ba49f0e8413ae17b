package handspan.music.practice;

import handspan.number.fit.Robust;
import java.util.List;

/**
 * How well a hand found notes: over all stops, hits or not.
 *
 * @param meanCents signed mean; positive = too high
 * @param rmsCents root of the mean square
 * @param meanMm signed mean; positive = too far
 * @param rmsMm root of the mean square
 * @param medianSeconds from asking to rest
 */
public record Accuracy(double meanCents, double rmsCents, double meanMm, double rmsMm, double medianSeconds) {
    /** Checks that the figures are numbers, and no mean is larger than its root mean square. */
    public Accuracy {
        if (!Double.isFinite(meanCents + meanMm) || !(rmsCents >= 0 && rmsMm >= 0 && medianSeconds >= 0)) {
            throw new IllegalArgumentException("accuracy of " + meanCents + " and " + rmsCents + " cents, " + meanMm
                    + " and " + rmsMm + " mm, " + medianSeconds + " s (numbers; rms and seconds 0 or more)");
        }
    }

    /**
     * Of some stops.
     *
     * @param stops at least one
     */
    public static Accuracy of(List<Stop> stops) {
        if (stops.isEmpty()) {
            throw new IllegalArgumentException("accuracy of no stop (at least one)");
        }
        double[] cents = stops.stream().mapToDouble(Stop::offCents).toArray();
        double[] mm = stops.stream().mapToDouble(Stop::offMm).toArray();
        double[] seconds = stops.stream().mapToDouble(Stop::seconds).toArray();
        return new Accuracy(mean(cents), rms(cents), mean(mm), rms(mm), Robust.median(seconds));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double rms(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return Math.sqrt(sum / values.length);
    }
}
