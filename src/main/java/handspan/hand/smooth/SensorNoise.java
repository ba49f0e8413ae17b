package handspan.hand.smooth;

import java.util.Comparator;
import java.util.List;

/**
 * Standard deviation of one reading of a sensor along the distance of the hand: a straight line between the places
 * where it was measured, even beyond them. Immutable.
 *
 * @param points from near to far, at least one
 */
public record SensorNoise(List<Point> points) {
    /**
     * Noise measured at a place.
     *
     * @param mm of the hand
     * @param noiseMm standard deviation of one reading, mm, 0 or more
     */
    public record Point(double mm, double noiseMm) {
        /** Checks both. */
        public Point {
            if (!Double.isFinite(mm) || !(noiseMm >= 0) || !Double.isFinite(noiseMm)) {
                throw new IllegalArgumentException(
                        "noise of " + noiseMm + " mm at " + mm + " mm (numbers, the noise 0 or more)");
            }
        }
    }

    /** Puts the points in order. */
    public SensorNoise {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("noise at 0 places (at least 1)");
        }
        points = points.stream().sorted(Comparator.comparingDouble(Point::mm)).toList();
    }

    /** The same noise everywhere, mm. */
    public static SensorNoise even(double noiseMm) {
        return new SensorNoise(List.of(new Point(0, noiseMm)));
    }

    /** The noise where the hand is, mm. */
    public double at(double mm) {
        Point before = points.get(0);
        for (int i = 1; i < points.size() && before.mm() < mm; i++) {
            Point here = points.get(i);
            if (here.mm() >= mm) {
                double share = (mm - before.mm()) / (here.mm() - before.mm());
                return before.noiseMm() + share * (here.noiseMm() - before.noiseMm());
            }
            before = here;
        }
        return before.noiseMm();
    }

    /** The largest, mm. */
    public double worstMm() {
        double worst = 0;
        for (Point point : points) {
            worst = Math.max(worst, point.noiseMm());
        }
        return worst;
    }

    /** As much, so many times. */
    public SensorNoise times(double factor) {
        return new SensorNoise(points.stream()
                .map(point -> new Point(point.mm(), point.noiseMm() * factor))
                .toList());
    }
}
