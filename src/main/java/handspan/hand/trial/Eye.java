package handspan.hand.trial;

import handspan.hand.smooth.SensorNoise;
import java.util.Random;

/**
 * A sensor that sees a hand: takes the mean of where it was over its measuring time, adds noise, and says so at an even
 * rate. A plain stand-in for measuring smoothers; it knows no real part.
 *
 * @param noise of one reading
 * @param ratePerS readings a second
 * @param measuringMs over which it takes the mean
 */
public record Eye(SensorNoise noise, double ratePerS, double measuringMs) {
    /**
     * What comes out, held between readings.
     *
     * @param hand the true one
     * @param follower gets the readings
     * @param random for the noise
     */
    public Trace follow(Trace hand, Follower follower, Random random) {
        double intervalS = 1 / ratePerS;
        int count = (int) Math.ceil(hand.seconds() * ratePerS) + 1;
        double[] said = new double[count];
        for (int i = 0; i < count; i++) {
            double mm = mean(hand, i * intervalS);
            said[i] = follower.next(mm + noise.at(mm) * random.nextGaussian(), intervalS);
        }
        return Trace.of(hand.seconds(), time -> said[(int) Math.floor(time * ratePerS + 1e-9)]);
    }

    /** Mean over the measuring time that ends at a time. */
    private double mean(Trace hand, double endS) {
        int samples = Math.max(1, (int) Math.round(measuringMs / Trace.STEP_MS));
        double sum = 0;
        for (int i = 0; i < samples; i++) {
            sum += hand.mmAt(endS - i * Trace.STEP_MS / 1000);
        }
        return sum / samples;
    }

    /**
     * What lies between hand and follower in any case, ms: half the measuring time and half a reading's age, as
     * sampled.
     */
    public double ownLagMs() {
        double samples = Math.max(1, Math.round(measuringMs / Trace.STEP_MS));
        return (samples - 1) / 2 * Trace.STEP_MS + 500 / ratePerS - Trace.STEP_MS / 2;
    }
}
