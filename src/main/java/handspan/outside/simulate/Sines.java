package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.Random;

/**
 * A wobble as a pure function of time: a sum of sines of equal size, their frequencies spread over a band (evenly in
 * its logarithm, one in each part of it), their phases drawn from the seed.
 *
 * <p>{@code w(t) = rms * sqrt(2/n) * sum sin(2 pi f_i t + p_i)}; each sine of amplitude a has rms {@code a / sqrt 2},
 * and sines of different frequency add in power.
 */
final class Sines {
    private final double amplitude;
    private final double[] radiansPerS;
    private final double[] phase;

    /**
     * Draws a wobble.
     *
     * @param rms root mean square over a long time, in the unit of the result
     * @param lowHz lower end of the band, above 0
     * @param highHz upper end of the band
     * @param count how many sines, 1 or more
     */
    Sines(double rms, double lowHz, double highHz, int count, Random random) {
        amplitude = rms * Math.sqrt(2.0 / count);
        radiansPerS = new double[count];
        phase = new double[count];
        for (int i = 0; i < count; i++) {
            double place01 = (i + random.nextDouble()) / count;
            radiansPerS[i] = 2 * Math.PI * lowHz * Math.pow(highHz / lowHz, place01);
            phase[i] = 2 * Math.PI * random.nextDouble();
        }
    }

    double at(long timeNanos) {
        if (amplitude == 0) {
            return 0;
        }
        double seconds = Nanos.toSeconds(timeNanos);
        double sum = 0;
        for (int i = 0; i < phase.length; i++) {
            sum += Math.sin(radiansPerS[i] * seconds + phase[i]);
        }
        return amplitude * sum;
    }
}
