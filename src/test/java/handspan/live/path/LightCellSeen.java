package handspan.live.path;

import handspan.number.units.Nanos;
import java.util.function.DoubleUnaryOperator;

/**
 * What a light cell shows of changing light, for tests: resistance falls with the power 0.65 of light, and it follows
 * with a first-order lag of 20 ms upward and 30 ms downward (data sheet, part GL5528 at 10 lux; the power between its
 * curves for 0.6 and 0.7). A hand at d mm leaves {@code 0.02 + 0.98 d^2 / (d^2 + 60^2)} of the light: an invented law,
 * smooth, 2 % when covered.
 */
final class LightCellSeen {
    static final double POWER = 0.65;

    /** From 8 mm to no hand. */
    static final double SPAN_LN = POWER * Math.log(1 / light01(8));

    private static final double STEP_SECONDS = 0.0005;

    private LightCellSeen() {}

    interface Sink {
        void take(double overOpenLn, long timeNanos);
    }

    static double light01(double handMm) {
        return 0.02 + 0.98 * handMm * handMm / (handMm * handMm + 3600);
    }

    /** A smooth reach, minimum jerk: place at time t of a move from a to b that begins at 0. */
    static double reachMm(double fromMm, double toMm, double seconds, double t) {
        double u = Math.max(0, Math.min(1, t / seconds));
        return fromMm + (toMm - fromMm) * (10 * Math.pow(u, 3) - 15 * Math.pow(u, 4) + 6 * Math.pow(u, 5));
    }

    /**
     * Shows readings of light.
     *
     * @param light share of the open level at a time in seconds; settled at the first
     * @param from first second
     * @param to last second
     * @param ratePerS readings a second
     * @param phase01 where within the interval the first reading falls
     */
    static void show(DoubleUnaryOperator light, double from, double to, double ratePerS, double phase01, Sink sink) {
        double followed = light.applyAsDouble(from);
        double next = from + phase01 / ratePerS;
        for (double t = from; t < to; t += STEP_SECONDS) {
            double now = light.applyAsDouble(t);
            double lag = now > followed ? 0.020 : 0.030;
            followed += (now - followed) * -Math.expm1(-STEP_SECONDS / lag);
            if (t >= next) {
                sink.take(POWER * Math.log(followed), Nanos.ofSeconds(100 + t));
                next += 1 / ratePerS;
            }
        }
    }
}
