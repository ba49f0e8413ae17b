package handspan.show.chart;

import java.util.Arrays;
import org.jfree.data.xy.DefaultXYDataset;

/** The data behind a chart of raw readings. */
final class RawSeries {
    /** Series of the taken readings, broken where some were not taken or the board fell silent. */
    static final String TAKEN = "reading taken";

    /** Series of the others: when they came, all at one height. */
    static final String NOT_TAKEN = "not taken: no reading, or refused";

    /** A pause of so many usual intervals is a silence. */
    private static final double SILENCE_INTERVALS = 5;

    private RawSeries() {}

    static DefaultXYDataset taken(RawTrace trace) {
        double[] timesS = trace.timesS();
        double silenceS = SILENCE_INTERVALS * usualIntervalS(timesS);
        double[] xs = new double[2 * timesS.length];
        double[] ys = new double[2 * timesS.length];
        int count = 0;
        for (int i = 0; i < timesS.length; i++) {
            if (i > 0 && timesS[i] - timesS[i - 1] > silenceS) {
                xs[count] = timesS[i];
                ys[count++] = Double.NaN;
            }
            xs[count] = timesS[i];
            ys[count++] = trace.taken()[i] ? trace.values()[i] : Double.NaN;
        }
        return series(TAKEN, Arrays.copyOf(xs, count), Arrays.copyOf(ys, count));
    }

    static DefaultXYDataset notTaken(RawTrace trace) {
        double[] timesS = trace.timesS();
        double[] missedS = new double[timesS.length - trace.takenCount()];
        int next = 0;
        for (int i = 0; i < timesS.length; i++) {
            if (!trace.taken()[i]) {
                missedS[next++] = timesS[i];
            }
        }
        double[] row = new double[missedS.length];
        Arrays.fill(row, 0.5);
        return series(NOT_TAKEN, missedS, row);
    }

    private static DefaultXYDataset series(String name, double[] xs, double[] ys) {
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(name, new double[][] {xs, ys});
        return data;
    }

    /** Median of the intervals, s; infinite where there is none or all readings came at once. */
    private static double usualIntervalS(double[] timesS) {
        if (timesS.length < 2) {
            return Double.POSITIVE_INFINITY;
        }
        double[] intervalsS = new double[timesS.length - 1];
        for (int i = 0; i < intervalsS.length; i++) {
            intervalsS[i] = timesS[i + 1] - timesS[i];
        }
        Arrays.sort(intervalsS);
        double median = intervalsS[intervalsS.length / 2];
        return median > 0 ? median : Double.POSITIVE_INFINITY;
    }
}
