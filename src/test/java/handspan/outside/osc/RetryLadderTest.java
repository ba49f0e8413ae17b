package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RetryLadderTest {
    private static final double S = 1e9;

    private final RetryLadder ladder = new RetryLadder();

    @Test
    void waitsGrowToThreeSecondsAndStayThere() {
        for (double seconds : new double[] {0.5, 1, 2, 3, 3, 3}) {
            assertEquals(seconds, ladder.after(0) / S);
        }
    }

    @Test
    void onlyAConnectionThatHeldStartsFromTheBeginning() {
        ladder.after(0);
        assertEquals(1, ladder.after(RetryLadder.HELD_NANOS - 1) / S);
        assertEquals(0.5, ladder.after(RetryLadder.HELD_NANOS) / S);
        assertEquals(1, ladder.after(0) / S);
    }
}
