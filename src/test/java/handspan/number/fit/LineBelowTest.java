package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineBelowTest {
    private static final double TOLERANCE = 1e-9;

    /**
     * Of all lines through two of the points that have none below them, the one nearest to the points on average: tried
     * one by one.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void itIsTheNearestOfAllLinesThatHaveNoPointBelowThem(long seed) {
        Random random = new Random(seed);
        int count = 24;
        double[] x = new double[count];
        double[] y = new double[count];
        LineBelow line = new LineBelow(count);
        for (int i = 0; i < count; i++) {
            x[i] = i + random.nextDouble();
            y[i] = 3 * x[i] + 5 * random.nextDouble();
            line.add(x[i], y[i]);
        }
        assertEquals(leastMeanAbove(x, y), line.meanAbove(), TOLERANCE);
        for (int i = 0; i < count; i++) {
            assertTrue(line.at(x[i]) <= y[i] + TOLERANCE, "point " + i);
        }
    }

    private static double leastMeanAbove(double[] x, double[] y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                double slope = (y[j] - y[i]) / (x[j] - x[i]);
                double sum = 0;
                boolean below = false;
                for (int k = 0; k < x.length; k++) {
                    double above = y[k] - y[i] - slope * (x[k] - x[i]);
                    below |= above < -TOLERANCE;
                    sum += above;
                }
                least = below ? least : Math.min(least, sum / x.length);
            }
        }
        return least;
    }

    /** The old points go: after a change of slope by half, all that it looks back on lies on the new one. */
    @Test
    void whatIsLongAgoIsForgotten() {
        LineBelow line = new LineBelow(32);
        for (int i = 0; i < 100; i++) {
            line.add(i, i < 50 ? 4.0 * i : 200 + 2.0 * (i - 50));
        }
        assertEquals(2, line.slope(), TOLERANCE);
        assertEquals(298, line.at(99), TOLERANCE);
        assertEquals(0, line.meanAbove(), TOLERANCE);
    }

    /** Once it looks back on enough, a point below moves it at once; one above at the latest eight points later. */
    @Test
    void aPointBelowIsNeverLeftBelow() {
        LineBelow line = new LineBelow(16);
        Random random = new Random(9);
        for (int i = 0; i < 400; i++) {
            double y = i + 3 * random.nextDouble();
            line.add(i, y);
            assertTrue(line.at(i) <= y + TOLERANCE, "point " + i);
        }
        line.clear();
        assertEquals(0, line.count());
        assertEquals(0, line.at(5), 0);
    }

    @Test
    void aLineNeedsRoomForTwoPoints() {
        assertThrows(IllegalArgumentException.class, () -> new LineBelow(1));
    }
}
