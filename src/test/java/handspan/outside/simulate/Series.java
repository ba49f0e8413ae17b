package handspan.outside.simulate;

import java.util.Arrays;

/** Textbook statistics of a series, for checks. */
final class Series {
    private Series() {}

    static double mean(double[] x) {
        return Arrays.stream(x).average().orElseThrow();
    }

    static double sd(double[] x) {
        double mean = mean(x);
        return Math.sqrt(Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / (x.length - 1));
    }

    static double rms(double[] x) {
        return Math.sqrt(Arrays.stream(x).map(v -> v * v).average().orElseThrow());
    }

    static double autocorrelation(double[] x, int lag) {
        double mean = mean(x);
        double sum = 0;
        double all = 0;
        for (int i = 0; i < x.length; i++) {
            all += (x[i] - mean) * (x[i] - mean);
            sum += i + lag < x.length ? (x[i] - mean) * (x[i + lag] - mean) : 0;
        }
        return sum / all;
    }

    static double median(double[] x, int from, int to) {
        double[] sorted = Arrays.copyOfRange(x, from, to);
        Arrays.sort(sorted);
        int n = sorted.length;
        return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    /** Amplitude of one frequency by the discrete Fourier sum. */
    static double amplitude(double[] x, double samplesPerS, double hz) {
        double mean = mean(x);
        double re = 0;
        double im = 0;
        for (int i = 0; i < x.length; i++) {
            double angle = 2 * Math.PI * hz * i / samplesPerS;
            re += (x[i] - mean) * Math.cos(angle);
            im += (x[i] - mean) * Math.sin(angle);
        }
        return 2 * Math.hypot(re, im) / x.length;
    }

    /** Changes of sign in a second, halved: the mean frequency of a narrow-band wobble. */
    static double meanHz(double[] x, double samplesPerS) {
        int changes = 0;
        for (int i = 1; i < x.length; i++) {
            changes += (x[i] > 0) != (x[i - 1] > 0) ? 1 : 0;
        }
        return changes * samplesPerS / (2.0 * x.length);
    }
}
