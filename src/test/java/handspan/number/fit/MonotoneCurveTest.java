package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.fit.MonotoneCurve.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MonotoneCurveTest {
    /** Data set RPN 14 of F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246. */
    private static final List<Point> RPN_14 = List.of(
            new Point(7.99, 0),
            new Point(8.09, 2.76429e-5),
            new Point(8.19, 4.37498e-2),
            new Point(8.7, 0.169183),
            new Point(9.2, 0.469428),
            new Point(10, 0.943740),
            new Point(12, 0.998636),
            new Point(15, 0.999919),
            new Point(20, 0.999994));

    private static final double SAME_RULE = 1e-10;

    private static final double PUBLISHED = 1e-4;

    private static final double EXACT = 1e-12;

    /**
     * Third column: the same data through SciPy 1.17.1, class PchipInterpolator (slopes after Fritsch and Butland 1984,
     * three-point ends). Second column: NAG C Library manual, function e01bec, example results to four decimals.
     */
    @ParameterizedTest(name = "at {0}")
    @CsvSource(textBlock = """
                    7.99,   0.0000, 0
                    9.191,  0.4640, 0.464014305278
                    10.392, 0.9645, 0.964469609722
                    11.593, 0.9965, 0.996488087305
                    12.794, 0.9992, 0.999239752945
                    13.995, 0.9998, 0.999771137952
                    15.196, 0.9999, 0.999925022527
                    16.397, 1.0000, 0.999956088656
                    17.598, 1.0000, 0.999977545396
                    18.799, 1.0000, 0.999989985069
                    20,     1.0000, 0.999994
                    """)
    void theCurveGoesWhereTheReferenceGoes(double x, double published, double reference) {
        MonotoneCurve curve = MonotoneCurve.through(RPN_14);
        assertEquals(reference, curve.at(x), SAME_RULE);
        assertEquals(published, curve.at(x), PUBLISHED);
    }

    @Test
    void theCurveNeverTurnsBackAndStaysWithinItsPoints() {
        MonotoneCurve curve = MonotoneCurve.through(RPN_14);
        double before = curve.at(7.99);
        for (int i = 1; i <= 12_010; i++) {
            double y = curve.at(7.99 + 0.001 * i);
            assertTrue(y >= before, "falls at " + (7.99 + 0.001 * i));
            assertTrue(y >= 0 && y <= 0.999994, "leaves the data at " + (7.99 + 0.001 * i));
            before = y;
        }
    }

    @Test
    void theInverseFindsThePositionAgain() {
        MonotoneCurve rising = MonotoneCurve.through(RPN_14);
        MonotoneCurve falling = MonotoneCurve.through(
                List.of(new Point(80, 2.9), new Point(150, 1.6), new Point(300, 0.8), new Point(600, 0.4)));
        for (int i = 0; i <= 100; i++) {
            double x = 8.1 + 0.05 * i;
            assertEquals(x, rising.inverse(rising.at(x)), 1e-8);
            double d = 60 + 5.3 * i;
            assertEquals(d, falling.inverse(falling.at(d)), 1e-6, "inside and before the points");
        }
    }

    @Test
    void twoPointsMakeALineThatGoesOnBeyondThem() {
        MonotoneCurve line = MonotoneCurve.through(List.of(new Point(100, 50), new Point(300, 450)));
        assertEquals(150, line.at(150), EXACT);
        assertEquals(-150, line.at(0), EXACT);
        assertEquals(650, line.at(400), EXACT);
        assertEquals(400, line.inverse(650), EXACT);
        assertEquals(0, line.inverse(-150), EXACT);
        assertEquals(150, line.inverse(150), 1e-7);
    }

    @Test
    void beyondTheOuterPointsTheCurveGoesOnWithItsSlopeThere() {
        MonotoneCurve curve =
                MonotoneCurve.through(List.of(new Point(0, 0), new Point(1, 1), new Point(2, 4), new Point(3, 9)));
        for (double end : new double[] {0, 3}) {
            double outward = end == 0 ? -1 : 1;
            double slopeInside = (curve.at(end) - curve.at(end - outward * 1e-6)) / 1e-6;
            double slopeOutside = (curve.at(end + outward * 2) - curve.at(end)) / 2;
            assertEquals(slopeInside, slopeOutside, 1e-5);
        }
    }

    @Test
    void pointsMayComeWithFallingX() {
        List<Point> backward = new ArrayList<>(RPN_14);
        Collections.reverse(backward);
        MonotoneCurve curve = MonotoneCurve.through(backward);
        assertEquals(0.464014305278, curve.at(9.191), SAME_RULE);
    }

    /** Slope at an end held to three times the secant where the next piece turns (Fritsch and Butland 1984). */
    @Test
    void anEndBeforeATurnDoesNotOvershoot() {
        MonotoneCurve curve = MonotoneCurve.through(List.of(new Point(0, 0), new Point(1, 1), new Point(1.1, -20)));
        double before = 0;
        for (int i = 1; i <= 100; i++) {
            double y = curve.at(0.01 * i);
            assertTrue(y >= before && y <= 1, "at " + 0.01 * i);
            before = y;
        }
        assertEquals(3, (curve.at(1e-7) - curve.at(0)) / 1e-7, 1e-5);
    }

    @Test
    void onlyACurveThatRunsOneWayHasAnInverse() {
        MonotoneCurve turning = MonotoneCurve.through(List.of(new Point(0, 0), new Point(1, 1), new Point(2, 0.5)));
        MonotoneCurve flat = MonotoneCurve.through(List.of(new Point(0, 0), new Point(1, 1), new Point(2, 1)));
        assertFalse(turning.isInvertible());
        assertFalse(flat.isInvertible());
        assertTrue(MonotoneCurve.through(RPN_14).isInvertible());
        assertThrows(IllegalStateException.class, () -> turning.inverse(0.7));
    }

    /** The three-point slope at 600 would point upward here: it is held at nothing, and so is all beyond. */
    @Test
    void anEndThatLevelsOffStaysLevel() {
        MonotoneCurve curve = MonotoneCurve.through(
                List.of(new Point(80, 2.9), new Point(150, 1.6), new Point(300, 0.8), new Point(600, 0.4)));
        assertEquals(0.4, curve.at(900), EXACT);
        assertEquals(600, curve.inverse(0.3), EXACT);
    }

    @Test
    void pointsThatMakeNoCurveAreRefused() {
        for (List<Point> points : List.of(
                List.of(new Point(1, 1)),
                List.of(new Point(1, 1), new Point(1, 2)),
                List.of(new Point(1, 1), new Point(3, 2), new Point(2, 3)),
                List.of(new Point(3, 1), new Point(1, 2), new Point(2, 3)),
                List.of(new Point(1, 1), new Point(2, Double.NaN)),
                List.of(new Point(1, 1), new Point(Double.POSITIVE_INFINITY, 2)))) {
            assertThrows(IllegalArgumentException.class, () -> MonotoneCurve.through(points), points.toString());
        }
    }
}
