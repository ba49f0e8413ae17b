package handspan.hand.trial;

import java.util.Random;

/** What a hand does, as a {@link Trace}. */
public final class Gesture {
    /** Shortest and longest of the moves, mm. */
    private static final double SHORTEST_MM = 15;

    private static final double LONGEST_MM = 250;

    /** Fastest of them, mm/s. */
    private static final double FASTEST_MM_PER_S = 1500;

    /** Peak speed of a minimum-jerk move over its mean speed. */
    private static final double PEAK_OVER_MEAN = 1.875;

    private Gesture() {}

    /**
     * How far a minimum-jerk move has come: {@code 10 s^3 - 15 s^4 + 6 s^5}. Source: T. Flash, N. Hogan, The
     * coordination of arm movements, J. Neurosci. 5 (1985) 1688-1703.
     *
     * @param time01 share of its duration; before 0 it has not begun, after 1 it is over
     * @return 0..1
     */
    public static double minimumJerk(double time01) {
        double s = Math.max(0, Math.min(1, time01));
        return s * s * s * (10 - s * (15 - 6 * s));
    }

    /** A hand that is still. */
    public static Trace still(double seconds, double atMm) {
        return Trace.of(seconds, time -> atMm);
    }

    /** Still, then a minimum-jerk move, then still. */
    public static Trace move(double seconds, double fromMm, double toMm, double startS, double durationS) {
        return Trace.of(seconds, time -> fromMm + (toMm - fromMm) * minimumJerk((time - startS) / durationS));
    }

    /** Still, then at once elsewhere, still. */
    public static Trace step(double seconds, double fromMm, double toMm, double atS) {
        return Trace.of(seconds, time -> time < atS ? fromMm : toMm);
    }

    /** A steady slide. */
    public static Trace slide(double seconds, double fromMm, double mmPerS) {
        return Trace.of(seconds, time -> fromMm + mmPerS * time);
    }

    /** To and fro as a sine: a sway at 0.5 to 3 Hz, a vibrato around 6. */
    public static Trace sway(double seconds, double aboutMm, double halfMm, double hz, double startTurns) {
        return Trace.of(seconds, time -> aboutMm + halfMm * Math.sin(2 * Math.PI * (hz * time + startTurns)));
    }

    /**
     * Stays of 0.2 to 0.7 s and minimum-jerk moves of 15 to 250 mm between them, up to 1.5 m/s.
     *
     * @param nearMm never nearer
     * @param farMm never farther, more than 50 mm beyond the near end
     */
    public static Trace moves(double seconds, double nearMm, double farMm, Random random) {
        int count = (int) Math.ceil(seconds / 0.4) + 1;
        double[] start = new double[count];
        double[] duration = new double[count];
        double[] place = new double[count + 1];
        double time = 0;
        place[0] = nearMm + random.nextDouble() * (farMm - nearMm);
        for (int i = 0; i < count; i++) {
            double most = Math.min(LONGEST_MM, (farMm - nearMm) / 2);
            double length = SHORTEST_MM * Math.pow(most / SHORTEST_MM, random.nextDouble());
            boolean outward = place[i] + length <= farMm && (place[i] - length < nearMm || random.nextBoolean());
            place[i + 1] = outward ? place[i] + length : place[i] - length;
            start[i] = time + 0.2 + 0.5 * random.nextDouble();
            duration[i] = Math.max(0.2 + 0.6 * random.nextDouble(), PEAK_OVER_MEAN * length / FASTEST_MM_PER_S);
            time = start[i] + duration[i];
        }
        return Trace.of(seconds, at -> {
            double mm = place[0];
            for (int i = 0; i < count && start[i] < at; i++) {
                mm = place[i] + (place[i + 1] - place[i]) * minimumJerk((at - start[i]) / duration[i]);
            }
            return mm;
        });
    }
}
