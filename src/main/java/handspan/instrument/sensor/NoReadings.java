package handspan.instrument.sensor;

import java.util.List;

/**
 * Numbers of which the player says that they mean no reading, besides those that the sensor's kind refuses anyway. Each
 * stands for itself and what is within 0.1 % of it, as boards print time-outs.
 *
 * @param values finite, at most {@value #MOST}
 */
public record NoReadings(List<Double> values) {
    /** Most numbers in the list. */
    public static final int MOST = 16;

    /** An empty list. */
    public static final NoReadings NONE = new NoReadings(List.of());

    private static final double SAME = 0.001;

    /** Copies and checks the list. */
    public NoReadings {
        values = List.copyOf(values);
        if (values.size() > MOST) {
            throw new IllegalArgumentException(values.size() + " numbers that mean no reading (at most " + MOST + ")");
        }
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("number for no reading " + value + " (finite)");
            }
        }
    }

    /** Whether a number is one of them. */
    public boolean hold(double raw) {
        for (int i = 0; i < values.size(); i++) {
            double value = values.get(i);
            if (Math.abs(raw - value) <= SAME * Math.abs(value)) {
                return true;
            }
        }
        return false;
    }
}
