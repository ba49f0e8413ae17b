package handspan.instrument.survey;

import handspan.number.units.Figures;
import java.util.Arrays;

/**
 * How a number followed a hand that moved to and fro.
 *
 * @param moved01 share of the lines in which it was not as at rest
 * @param swings how often it went from one end of its way to the other, or appeared
 * @param low what it swung from
 * @param high and to; both NaN where it was always as at rest
 */
record FollowedHand(double moved01, int swings, double low, double high) {
    /** A hand that moves to and fro in a sensor's sight is seen in every seventh line at least. */
    private static final double LEAST_MOVED01 = 0.15;

    /** To and fro once. */
    private static final int LEAST_SWINGS = 2;

    private static final int FEWEST = 5;

    static FollowedHand of(SlotInPart part, AtRest rest) {
        double[] moved = Arrays.stream(part.sorted()).filter(rest::isLeftBy).toArray();
        if (moved.length < FEWEST) {
            return new FollowedHand(0, 0, Double.NaN, Double.NaN);
        }
        // a hand on its way in or out is seen for a moment where it does not play
        double low = moved[moved.length / 20];
        double high = moved[moved.length - 1 - moved.length / 20];
        int swings = swings(part.lineByLine(), rest, low, high);
        return new FollowedHand(moved.length / (double) part.lines(), swings, low, high);
    }

    private static int swings(double[] values, AtRest rest, double low, double high) {
        double third = (high - low) / 3;
        Side side = Side.BETWEEN;
        int swings = 0;
        for (double value : values) {
            Side now = !rest.isLeftBy(value)
                    ? Side.REST
                    : value <= low + third ? Side.LOW : value >= high - third ? Side.HIGH : Side.BETWEEN;
            if (now != Side.BETWEEN) {
                swings += side != Side.BETWEEN && now != side ? 1 : 0;
                side = now;
            }
        }
        return swings;
    }

    private enum Side {
        REST,
        LOW,
        HIGH,
        BETWEEN
    }

    boolean isSure() {
        return moved01 >= LEAST_MOVED01 && swings >= LEAST_SWINGS;
    }

    String words() {
        if (Double.isNaN(low)) {
            return "as at rest";
        }
        int decimals = low == Math.rint(low) && high == Math.rint(high) ? 0 : 2;
        return Figures.text(low, decimals) + " to " + Figures.text(high, decimals) + " in "
                + Figures.text(100 * moved01, 0) + " % of the lines";
    }
}
