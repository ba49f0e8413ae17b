package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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

    /**
     * Characters with CR LF at ten bits each: Distance: 23.47 cm is 20, 234,567 is 9; to the figures that are usually
     * told.
     */
    @Test
    void aLineTakesWhatItsCharactersTake() {
        assertEquals(21, LatencyBudget.of(33, 20, 20, 9600, 0, false).wireMs(), 0.5);
        assertEquals(9.4, LatencyBudget.of(33, 20, 9, 9600, 0, false).wireMs(), 0.05);
        assertEquals(1.7, LatencyBudget.of(33, 20, 20, 115_200, 0, false).wireMs(), 0.05);
        assertEquals(0.8, LatencyBudget.of(33, 20, 9, 115_200, 0, false).wireMs(), 0.05);
    }

    /** 9600 baud carries 960 characters a second: 45 lines of 20 are 900, or 94 %; 46 are 96 %. */
    @Test
    void aWireThatIsFullQueuesWithoutEnd() {
        LatencyBudget fits = LatencyBudget.of(20, 45, 20, 9600, 0, false);
        assertEquals(0, fits.queueMs());
        assertEquals(0.9375, fits.wireBusy01(), 1e-9);
        LatencyBudget full = LatencyBudget.of(20, 46, 20, 9600, 0, false);
        assertEquals(Double.POSITIVE_INFINITY, full.queueMs());
        assertTrue(Double.isFinite(full.totalMs()), "what has an end is still told");
        assertTrue(full.words().contains("a queue without end"), full.words());
        String first = full.advice().get(0);
        assertTrue(first.contains("fill 96 % of 9600 baud") && first.contains("115200"), first);
        LatencyBudget fast = LatencyBudget.of(1, 600, 20, 115_200, 0, false);
        assertTrue(fast.advice().get(0).endsWith("print less"), fast.advice().toString());
    }

    @Test
    void aTimerCostsHalfOfItWhereOneWasSeen() {
        LatencyBudget unknown = LatencyBudget.of(33, 50, 9, 115_200, 0, false);
        assertTrue(unknown.words().endsWith("; not known: timer of a USB serial chip"), unknown.words());
        LatencyBudget none = unknown.waitingFor(0);
        LatencyBudget timer = unknown.waitingFor(16);
        assertEquals(unknown.totalMs(), none.totalMs(), 1e-9);
        assertEquals(none.totalMs() + 8, timer.totalMs(), 1e-9);
        assertFalse(none.words().contains("timer"), none.words());
        LatencyBudget noBaud = LatencyBudget.of(33, 50, 9, 0, 0, false);
        assertTrue(noBaud.words().contains("not known: wire, timer"), noBaud.words());
        assertEquals(16.5 + 10, noBaud.totalMs(), 1e-9);
    }

    /**
     * 9 characters: 9.4 ms at 9600 baud, 0.8 at 115200; glide at 20 a second 50 ms, without it 25; a timer 8 ms on
     * average, 0.5 at 1 ms; smoothing of 60 ms for a still hand.
     */
    @Test
    void adviceNamesWhatHelpsMostFirstAndNothingUnderThreeMs() {
        List<String> advice = LatencyBudget.of(50, 20, 9, 9600, -5, true)
                .steadyingFor(60)
                .waitingFor(16)
                .advice();
        assertEquals(4, advice.size(), advice.toString());
        assertTrue(advice.get(0).startsWith("small steps of a still hand are smoothed over 60 ms more"), advice.get(0));
        assertTrue(advice.get(1).startsWith("glide costs 50 ms at 20 readings a second"), advice.get(1));
        assertTrue(advice.get(1).contains("--no-glide would leave 25"), advice.get(1));
        assertEquals(
                "9 characters a line cost 9.4 ms at 9600 baud; print fewer, or raise the rate: 115200 would cost 0.8",
                advice.get(2));
        assertTrue(advice.get(3).startsWith("a latency timer of 16 ms costs 8.0 on average"), advice.get(3));
        assertEquals(
                List.of(),
                LatencyBudget.of(5, 200, 9, 115_200, 4, false).waitingFor(1).advice());
    }

    @Test
    void aSlowBoardAndASlowSensorAreTold() {
        List<String> board =
                LatencyBudget.of(20, 10, 9, 115_200, 0, false).waitingFor(0).advice();
        assertTrue(
                board.get(0).startsWith("the board prints 10 times a second, the sensor can measure 50"), board.get(0));
        assertTrue(board.get(0).endsWith("10.0 ms between readings instead of 50.0"), board.get(0));
        List<String> sensor =
                LatencyBudget.of(33, 33, 9, 115_200, 0, false).waitingFor(0).advice();
        assertEquals(1, sensor.size(), sensor.toString());
        // 16.5 of 16.5 + 15.15 + 0.78
        assertTrue(sensor.get(0).contains("33 ms costs 16.5, 51 % of it all"), sensor.get(0));
    }

    /** An echo sensor measures in 3 ms but not again before 50 (data sheet): 18 a second is all that it can. */
    @Test
    void aSensorThatHasToPauseIsNotAskedForMore() {
        LatencyBudget echo = LatencyBudget.of(3, 18, 9, 115_200, 0, false).waitingFor(0);
        assertEquals(1, echo.advice().size(), echo.advice().toString());
        assertEquals(List.of(), echo.cyclingIn(50).advice());
    }

    /** 16.5 + 0.78 + 20 - 3. */
    @Test
    void aHandThatIsPlacedAheadOfItsReadingsGainsSo() {
        LatencyBudget ahead = LatencyBudget.of(33, 50, 9, 115_200, -3, true).waitingFor(0);
        assertEquals(34.28125, ahead.totalMs(), 1e-9);
        assertTrue(ahead.words().endsWith("20.0 glide - 3.0 placed ahead"), ahead.words());
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
