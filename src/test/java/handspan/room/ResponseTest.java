package handspan.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ResponseTest {
    private static final double TOLERANCE_MM = 1e-9;

    /** By hand: 5 + 0.9 x + 0.0002 x^2 is 97 at 100 and 505 at 500; slopes there 0.94 and 1.1. */
    private final Response.Parabola parabola = new Response.Parabola(5, 0.9, 0.0002, 100, 500);

    @Test
    void aParabolaRunsThroughItsFigures() {
        assertEquals(97, parabola.mm(100), TOLERANCE_MM);
        assertEquals(505, parabola.mm(500), TOLERANCE_MM);
        assertEquals(293, parabola.mm(300), TOLERANCE_MM);
    }

    @Test
    void beyondItsEndsAParabolaGoesOnStraight() {
        assertEquals(97 - 0.94 * 50, parabola.mm(50), TOLERANCE_MM);
        assertEquals(505 + 1.1 * 50, parabola.mm(550), TOLERANCE_MM);
    }

    @Test
    void theInverseOfAParabolaIsItsInverse() {
        for (double x = 0; x <= 700; x += 12.5) {
            assertEquals(x, parabola.physical(parabola.mm(x)), 1e-7);
        }
        Response.Parabola line = new Response.Parabola(-3, 1.02, 0, 100, 500);
        assertEquals(300, line.physical(line.mm(300)), TOLERANCE_MM);
        Response.Parabola bentDown = new Response.Parabola(0, 1.2, -0.0005, 100, 500);
        assertEquals(400, bentDown.physical(bentDown.mm(400)), 1e-7);
    }

    /** 1.2 - 2 x 0.0012 x 500 is 0 at the far end: it turns back there; with 0.00119 it just does not. */
    @Test
    void aParabolaThatTurnsBackIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Response.Parabola(0, 1.2, -0.0012, 100, 500));
        assertTrue(new Response.Parabola(0, 1.2, -0.00119, 100, 500).mm(500) > 0);
        assertThrows(IllegalArgumentException.class, () -> new Response.Parabola(0, 1, 0, 500, 100));
        assertThrows(IllegalArgumentException.class, () -> new Response.Parabola(Double.NaN, 1, 0, 100, 500));
    }

    /** V = 0.1 + 250/(d + 20): 2.183 V at 100 mm, 0.581 at 500; by hand. */
    @Test
    void triangulationFollowsItsLawBothWays() {
        Response.Triangulation law = new Response.Triangulation(0.1, 250, 20);
        assertEquals(2.18333333, law.physical(100), 1e-7);
        assertEquals(500, law.mm(0.1 + 250.0 / 520), 1e-6);
        for (double mm = 80; mm < 800; mm += 40) {
            assertEquals(mm, law.mm(law.physical(mm)), 1e-6);
        }
    }

    @Test
    void nothingInSightIsVeryFarAndStaysANumber() {
        Response.Triangulation law = new Response.Triangulation(0.1, 250, 20);
        assertEquals(Response.Triangulation.FARTHEST_MM, law.mm(0.1));
        assertEquals(Response.Triangulation.FARTHEST_MM, law.mm(0.05));
        assertEquals(Response.Triangulation.FARTHEST_MM, law.mm(0.1000001));
        assertThrows(IllegalArgumentException.class, () -> new Response.Triangulation(0.1, 0, 20));
    }
}
