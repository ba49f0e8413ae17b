package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.number.units.Nanos;
import org.junit.jupiter.api.Test;

class GlideTest {
    private static final long INTERVAL = 20 * Nanos.PER_MS;
    private static final double TOLERANCE_MM = 1e-9;

    /** A ramp of 1 mm a reading must come out as the same ramp, exactly one reading later. */
    @Test
    void aSteadyMoveComesExactlyOneIntervalLater() {
        Glide glide = new Glide(true);
        for (int reading = 0; reading < 10; reading++) {
            glide.to(reading, reading * INTERVAL, INTERVAL);
            if (reading > 1) {
                for (double part : new double[] {0, 0.25, 0.5, 0.9}) {
                    long time = Math.round((reading + part) * INTERVAL);
                    assertEquals(reading + part - 1, glide.at(time), TOLERANCE_MM);
                }
            }
        }
    }

    @Test
    void theFirstPositionIsTakenAtOnce() {
        Glide glide = new Glide(true);
        glide.to(300, 0, INTERVAL);
        assertEquals(300, glide.at(1), TOLERANCE_MM);
    }

    @Test
    void afterAResetItDoesNotSweepFromWhereItWas() {
        Glide glide = new Glide(true);
        glide.to(300, 0, INTERVAL);
        glide.reset();
        glide.to(100, INTERVAL, INTERVAL);
        assertEquals(100, glide.at(INTERVAL + 1), TOLERANCE_MM);
    }

    @Test
    void aLateReadingGoesOnFromWhereTheGlideStands() {
        Glide glide = new Glide(true);
        glide.to(0, 0, INTERVAL);
        glide.to(10, INTERVAL, INTERVAL);
        glide.to(20, INTERVAL + INTERVAL / 2, INTERVAL);
        assertEquals(5, glide.at(INTERVAL + INTERVAL / 2), TOLERANCE_MM);
        assertEquals(12.5, glide.at(2 * INTERVAL), TOLERANCE_MM);
        assertEquals(20, glide.at(10 * INTERVAL), TOLERANCE_MM);
    }

    @Test
    void turnedOffItHoldsTheLatest() {
        Glide glide = new Glide(false);
        glide.to(0, 0, INTERVAL);
        glide.to(10, INTERVAL, INTERVAL);
        assertEquals(10, glide.at(INTERVAL), TOLERANCE_MM);
    }
}
