package handspan.outside.simulate;

/**
 * A second echo sensor beside the first, whose ping is sometimes heard too. Its sound runs up to its own hand and
 * slantwise down to the listener: {@code (d + sqrt(d^2 + s^2)) / 2} is the distance that the listener takes it for,
 * when both ping together.
 *
 * @param hand the hand above the other sensor
 * @param spacingMm from sensor to sensor, s, 10..1000 mm
 * @param heard01 share of pings in which the other one is heard, in runs of one or two
 */
public record Neighbour(SimulatedHand hand, double spacingMm, double heard01) {
    public Neighbour {
        Allowed.within("spacing of two echo sensors", spacingMm, 10, 1000, "mm");
        Allowed.within("share of pings heard from a neighbour", heard01, 0, Dropouts.MOST_01, "of 1");
    }

    /** Distance that the listener takes the other one's sound for, mm; the other hand must be there. */
    double heardMm(long timeNanos) {
        double mm = hand.trueMm(timeNanos);
        return (mm + Math.hypot(mm, spacingMm)) / 2;
    }
}
