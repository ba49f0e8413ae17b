package handspan.instrument.survey;

import handspan.number.fit.Robust;
import java.util.Arrays;

/**
 * What the sensor gave in the still stretch: each of its own values once, with its time. Owned by one thread, not
 * changed once made.
 */
final class Held {
    final double[] timesS;
    final double[] values;

    private Held(double[] timesS, double[] values) {
        this.timesS = timesS;
        this.values = values;
    }

    /**
     * One reading of each of the sensor's periods: that in its middle, lest a line that came early takes the old one.
     */
    static Held of(Series series, StillStretch stretch, Repeats repeats) {
        int lines = stretch.to() - stretch.from();
        double period = repeats.linesPerValue();
        double[] timesS = new double[lines + 1];
        double[] values = new double[lines + 1];
        int count = 0;
        double first = repeats.firstLine() % period;
        for (int update = first > 0 && period > 1 ? -1 : 0; first + update * period < lines; update++) {
            double middle = period == 1 ? update : first + (update + 0.5) * period;
            int line = stretch.from() + (int) Math.floor(middle);
            if (line >= stretch.from() && line < stretch.to() && series.isValid(line)) {
                timesS[count] = series.timeS(line);
                values[count++] = series.value(line);
            }
        }
        return new Held(Arrays.copyOf(timesS, count), Arrays.copyOf(values, count));
    }

    int size() {
        return values.length;
    }

    double seconds() {
        return size() < 2 ? 0 : timesS[size() - 1] - timesS[0];
    }

    double ratePerS() {
        return seconds() <= 0 ? 0 : (size() - 1) / seconds();
    }

    /** The first of them up to a count, spikes left out: within 5 scales of the median, a sine's swing stays. */
    Held sane(int most, double step) {
        int n = Math.min(most, size());
        double[] first = Arrays.copyOf(values, n);
        double median = Robust.median(first);
        double limit = spikeLimit(first, median, step);
        double[] keptTimesS = new double[n];
        double[] kept = new double[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (Math.abs(values[i] - median) <= limit) {
                keptTimesS[count] = timesS[i];
                kept[count++] = values[i];
            }
        }
        return new Held(Arrays.copyOf(keptTimesS, count), Arrays.copyOf(kept, count));
    }

    /** How far from the median a value is a spike. */
    static double spikeLimit(double[] values, double median, double step) {
        return 5 * Robust.MAD_TO_SD * Robust.medianAbsoluteDeviation(values, median) + 3 * step;
    }
}
