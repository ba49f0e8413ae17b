package handspan.hand.trial;

import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.SmoothSettings;
import java.util.Random;

/**
 * What a hand can expect of a sensor and its smoothing, tried out on simulated hands. The same settings give the same
 * figures.
 *
 * @param jitterMm wobble of a still hand where the sensor is noisiest, rms
 * @param movingLagMs filter lag of a hand that moves: from reading to output; below 0 where it is placed ahead
 * @param movingErrorMm rms error of a moving hand, lag and all
 * @param overshoot01 largest share of a quick move by which its end is run over
 * @param stepMs until a small step of a still hand has come to four fifths, from its reading on
 */
public record Trial(double jitterMm, double movingLagMs, double movingErrorMm, double overshoot01, double stepMs) {
    private static final double STILL_S = 21;
    private static final double MOVES_S = 31;
    private static final double LONGEST_LAG_MS = 160;
    private static final int REPEATS = 100;
    private static final long SEED = 20;

    /**
     * Tries a smoother.
     *
     * @param settings of it
     * @param measuringMs of the sensor
     * @param nearMm near end of where hands move
     * @param farMm far end
     * @param stepMm the small step
     */
    public static Trial of(SmoothSettings settings, double measuringMs, double nearMm, double farMm, double stepMm) {
        Eye eye = new Eye(settings.noise(), settings.ratePerS(), measuringMs);
        double worstMm = noisiest(settings, nearMm, farMm);
        Trace still = Gesture.still(STILL_S, worstMm);
        Trace moves = Gesture.moves(MOVES_S, nearMm, farMm, new Random(SEED));
        Trace followed = eye.follow(moves, new HandSmoother(settings)::next, new Random(SEED + 1));
        return new Trial(
                Feel.jitter(eye.follow(still, new HandSmoother(settings)::next, new Random(SEED + 2))),
                Feel.lagMs(moves, followed, LONGEST_LAG_MS) - eye.ownLagMs(),
                Feel.rmsError(moves, followed),
                overshoot01(eye, settings, nearMm, farMm),
                stepMs(eye, settings, worstMm, stepMm));
    }

    private static double noisiest(SmoothSettings settings, double nearMm, double farMm) {
        return settings.noise().at(nearMm) > settings.noise().at(farMm) ? nearMm : farMm;
    }

    /** Of the mean of several moves, so that noise does not count as running over. */
    private static double overshoot01(Eye eye, SmoothSettings settings, double nearMm, double farMm) {
        double lengthMm = Math.min(250, (farMm - nearMm) / 2);
        Trace move = Gesture.move(2.5, nearMm, nearMm + lengthMm, 1, Math.max(0.25, 1.875 * lengthMm / 1500));
        return Feel.overshoot01(mean(eye, settings, move), nearMm, nearMm + lengthMm);
    }

    private static double stepMs(Eye eye, SmoothSettings settings, double atMm, double stepMm) {
        Trace step = Gesture.step(3, atMm, atMm + stepMm, 1.5);
        double arrival = Feel.arrivalMs(mean(eye, settings, step), atMm, atMm + stepMm, 0.8, 1.5);
        return arrival - eye.ownLagMs();
    }

    private static Trace mean(Eye eye, SmoothSettings settings, Trace hand) {
        double[] sum = new double[hand.size()];
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            Trace out = eye.follow(hand, new HandSmoother(settings)::next, new Random(SEED + 3 + repeat));
            for (int i = 0; i < sum.length; i++) {
                sum[i] += out.mm(i) / REPEATS;
            }
        }
        return Trace.of(hand.seconds(), time -> sum[(int) Math.round(time * Trace.PER_S)]);
    }
}
