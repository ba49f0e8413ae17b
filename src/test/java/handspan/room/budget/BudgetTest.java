package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BudgetTest {
    /** Ten bits a character: a line of 9 characters takes 9.375 ms at 9600 baud and 0.78 at 115200. */
    @Test
    void theWireTakesTenBitsACharacter() {
        assertEquals(9.375, LatencyBudget.of(33, 50, 9, 9600, 0, false).wireMs(), 1e-9);
        assertEquals(0.78125, LatencyBudget.of(33, 50, 9, 115_200, 0, false).wireMs(), 1e-9);
    }

    @Test
    void glideCostsAWholeIntervalAndItsAbsenceHalfOne() {
        LatencyBudget off = LatencyBudget.of(33, 50, 9, 115_200, 40, false);
        LatencyBudget on = LatencyBudget.of(33, 50, 9, 115_200, 40, true);
        assertEquals(10, off.waitMs() + off.glideMs(), 1e-9);
        assertEquals(20, on.waitMs() + on.glideMs(), 1e-9);
        assertEquals(16.5 + 20 + 0.78125 + 40, on.totalMs(), 1e-9);
    }

    /** A passage made by delaying a sway by 63 ms and adding a known error and wobble. */
    @Test
    void aPassageIsMeasuredBackToWhatItWasMadeOf() {
        int count = 5000;
        double sampleMs = 2;
        double[] meant = new double[count];
        double[] sent = new double[count];
        boolean[] still = new boolean[count];
        Random random = new Random(3);
        for (int i = 0; i < count; i++) {
            meant[i] = cents(i * sampleMs);
            sent[i] = cents(i * sampleMs - 63) + 4 + 3 * random.nextGaussian();
            still[i] = i * sampleMs > 6300 && i * sampleMs < 9800;
        }
        Passage passage = Passage.of(meant, sent, still, sampleMs);
        assertEquals(63, passage.totalLagMs(), 1.5);
        assertEquals(5, passage.stillErrorCents(), 0.3, "root of 4^2 + 3^2");
        assertEquals(3, passage.jitterCents(), 0.2);
        assertEquals(5, passage.rmsErrorCents(), 0.3, "root of 4^2 + 3^2");
    }

    /** A sway for 6 s, then still. */
    private static double cents(double ms) {
        return ms < 6000 ? 300 * Math.sin(2 * Math.PI * ms / 1000) : 0;
    }

    @Test
    void aPassageWithoutStillnessHasNoStillError() {
        double[] meant = new double[1000];
        for (int i = 0; i < meant.length; i++) {
            meant[i] = 100 * Math.sin(i / 30.0);
        }
        Passage passage = Passage.of(meant, meant, new boolean[1000], 2);
        assertEquals(0, passage.totalLagMs(), 0.1);
        assertTrue(passage.stillErrorCents() == 0 && passage.jitterCents() == 0);
    }
}
