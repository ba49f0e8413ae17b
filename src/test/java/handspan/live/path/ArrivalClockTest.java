package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dated times against the true times of printing of a simulated board. A time that waits for the next multiple of 16 ms
 * is late by anything from 0 to 16: 16 over the root of 12, 4.62 ms rms (an even spread).
 */
class ArrivalClockTest {
    private static final double TIMER_MS = 16;
    private static final double UNIFORM_MS = 16 / Math.sqrt(12);

    /** Lines until all has been learned: 128 to look back on, 48 bursts. */
    private static final int LEARNED = 300;

    private static void neverBackwardNorLateNorTooFarBack(TimedBoard board, long[] dated) {
        for (int i = 0; i < dated.length; i++) {
            assertTrue(dated[i] <= board.arrived(i), "line " + i + " is dated after it came");
            assertTrue(i == 0 || dated[i] >= dated[i - 1], "line " + i + " is dated before the one before");
            assertTrue(board.arrived(i) - dated[i] <= ArrivalClock.FURTHEST_NANOS, "line " + i);
        }
    }

    /**
     * Where the period and 16 ms have a common part, the least wait is not 0 but creeps: a constant as far as it
     * matters.
     */
    @ParameterizedTest(name = "{0} lines a second: under {1} ms")
    @CsvSource({"50, 1.6", "49.3, 0.8", "100, 1", "20, 1", "30, 0.8", "48.7, 0.8", "77, 0.8", "200, 0.6", "1000, 0.5"})
    void aTimerIsTakenOut(double ratePerS, double mostMs) {
        TimedBoard board =
                TimedBoard.even((int) (40 * ratePerS), 1.0002 * ratePerS).throughTimer(TIMER_MS, 5);
        ArrivalClock clock = new ArrivalClock();
        long[] dated = board.dated(clock);
        neverBackwardNorLateNorTooFarBack(board, dated);
        assertEquals(UNIFORM_MS, board.errorMs(board.arrivals(), LEARNED, board.count()), 0.2, "as they come");
        double after = board.errorMs(dated, LEARNED, board.count());
        assertTrue(after < mostMs, after + " ms");
        assertEquals(TIMER_MS, clock.timerNanos() / Nanos.PER_MS, 0.1);
        double perBurst = Math.max(1, TIMER_MS / 1000 * ratePerS);
        assertEquals(perBurst, clock.bursts().linesPerBurst(), 0.05 * perBurst);
    }

    @Test
    void lostLinesDoNotMakeTheClockLate() {
        TimedBoard fifty =
                TimedBoard.even(3000, 50.01).throughTimer(TIMER_MS, 5).losing(0.02, 1);
        double ofFifty = fifty.errorMs(fifty.dated(new ArrivalClock()), LEARNED, fifty.count());
        assertTrue(ofFifty < 1.6, ofFifty + " ms");
        // one line in fifty lost, twice a second: until its bursts show it, dates are a line off
        TimedBoard hundred =
                TimedBoard.even(6000, 100.02).throughTimer(TIMER_MS, 5).losing(0.02, 1);
        double after = hundred.errorMs(hundred.dated(new ArrivalClock()), LEARNED, hundred.count());
        assertTrue(after < 2, after + " ms");
        TimedBoard even = TimedBoard.even(3000, 50.01).losing(0.05, 1);
        assertArrayEquals(even.arrivals(), even.dated(new ArrivalClock()));
    }

    /** Lost lines make whole multiples of the interval, as a timer would: on many boards, none may be dated by one. */
    @ParameterizedTest(name = "{0} lines a second")
    @CsvSource({"28", "37", "45", "61", "62.5", "90"})
    void aBoardThatLosesLinesHasNoTimer(double ratePerS) {
        for (long seed = 900; seed < 960; seed++) {
            TimedBoard board = TimedBoard.even(800, ratePerS).late(0.2, seed).losing(0.01, seed + 1);
            ArrivalClock clock = new ArrivalClock();
            double most = board.errorMs(board.dated(clock), LEARNED, board.count());
            assertTrue(most < 0.5, most + " ms with seed " + seed);
            assertEquals(0, clock.timerNanos(), 0, "seed " + seed);
        }
    }

    /** A board's resonator drifts as it warms: here by 200 ppm within a minute, and it is 0.3 % off. */
    @Test
    void aClockThatDriftsIsFollowed() {
        TimedBoard board = new TimedBoard(6000);
        double at = 3e9;
        for (int i = 0; i < 6000; i++) {
            board.print(Math.round(at));
            at += 1e7 * (1.003 + 200e-6 * i / 6000);
        }
        board.throughTimer(TIMER_MS, 5);
        double after = board.errorMs(board.dated(new ArrivalClock()), LEARNED, board.count());
        assertTrue(after < 1, after + " ms");
    }

    @Test
    void anotherRateIsLearnedWithinTwoSeconds() {
        for (double second : new double[] {100, 30, 70}) {
            TimedBoard board = new TimedBoard(4000);
            long at = 3_003_300_000L;
            for (int i = 0; i < 1000; i++) {
                board.print(at);
                at += 20_010_000;
            }
            int after = board.count();
            for (int i = 0; i < 2000; i++) {
                board.print(at);
                at += Math.round(1e9 / second);
            }
            long[] dated = board.throughTimer(TIMER_MS, 5).dated(new ArrivalClock());
            neverBackwardNorLateNorTooFarBack(board, dated);
            // at worst as wrong as they came, until it is learned
            double learning = board.errorMs(dated, after, after + (int) (2 * second));
            assertTrue(learning < 1.5 * UNIFORM_MS, second + ": " + learning + " ms while learning");
            double then = board.errorMs(dated, after + (int) (4 * second), board.count());
            assertTrue(then < 1.5, second + ": " + then + " ms");
        }
    }

    @ParameterizedTest
    @CsvSource({"50, 0", "49.3, 16", "98.7, 16", "20, 0"})
    void aBacklogIsDatedLineByLine(double ratePerS, double timerMs) {
        TimedBoard board = TimedBoard.even((int) (20 * ratePerS), 1.0002 * ratePerS);
        if (timerMs > 0) {
            board.throughTimer(timerMs, 5);
        }
        board.stalled(Nanos.ofSeconds(13), Nanos.ofSeconds(13.5));
        long[] dated = board.dated(new ArrivalClock());
        neverBackwardNorLateNorTooFarBack(board, dated);
        int from = (int) (9.9 * ratePerS);
        int to = (int) (10.6 * ratePerS);
        // 0.5 s spread evenly, among the fifth of the lines that are on time: some 150 ms
        assertTrue(board.errorMs(board.arrivals(), from, to) > 100);
        double after = board.errorMs(dated, from, to);
        assertTrue(after < 1.4, after + " ms");
        double then = board.errorMs(dated, to, board.count());
        assertTrue(then < 1.6, then + " ms: it goes on as before");
    }

    /** The backlog's chunks come some tenths of a millisecond apart. */
    @Test
    void aBacklogInPiecesIsDatedAsOne() {
        TimedBoard board = TimedBoard.even(1000, 50);
        ArrivalClock clock = new ArrivalClock();
        double worstMs = 0;
        for (int i = 0; i < 1000; ) {
            int lines = i == 500 ? 8 : i == 508 || i == 516 ? 8 : 1;
            long arrival =
                    i < 500 || i >= 524 ? board.printed(i) : board.printed(524) - 5_000_000 + (i - 500) * 40_000L;
            clock.onChunk(lines, arrival);
            for (int j = 0; j < lines; j++) {
                long dated = clock.onLine();
                worstMs = i < 20 ? 0 : Math.max(worstMs, Math.abs(Nanos.toMs(dated - board.printed(i + j))));
            }
            i += lines;
        }
        assertTrue(worstMs < 1, worstMs + " ms");
    }

    /** An echo board waits for its echo: 1 ms at 17 cm, 38 ms for none (the sensor's data sheet), and 50 ms more. */
    @Test
    void aBoardThatPrintsUnevenlyIsTakenAtItsWord() {
        Random random = new Random(4);
        TimedBoard board = new TimedBoard(2000);
        long at = 3_000_000_000L;
        for (int i = 0; i < 2000; i++) {
            board.print(at);
            at += Nanos.ofMs(50 + (random.nextDouble() < 0.2 ? 38 : 1 + 2 * random.nextDouble()));
        }
        assertArrayEquals(board.arrivals(), board.dated(new ArrivalClock()));
        // a pause of 80 ms brings two lines, a mean interval apart
        board.stalled(board.printed(1000) - 1, board.printed(1001) + 1);
        long[] dated = board.dated(new ArrivalClock());
        assertEquals(58, Nanos.toMs(dated[1001] - dated[1000]), 6);
    }

    @Test
    void whatIsEvenAlreadyIsLeftAsItIs() {
        ArrivalClock clock = new ArrivalClock();
        TimedBoard board = TimedBoard.even(2000, 50).late(1, 2);
        assertArrayEquals(board.arrivals(), board.dated(clock));
        assertEquals(0, clock.timerNanos());
        assertEquals(1, clock.bursts().linesPerBurst(), 0.001);
    }

    /**
     * Two lines for each measurement, one after the other, are no timer's doing; each hand's are as far apart as ever.
     */
    @Test
    void aBoardThatPrintsTwoLinesAtATimeHasNoTimer() {
        TimedBoard board = new TimedBoard(3000);
        for (int i = 0; i < 3000; i++) {
            board.print(Nanos.ofMs(3000 + 33.3 * Math.floorDiv(i, 2)));
        }
        LineDates dates = new LineDates();
        long[] dated = new long[3000];
        for (int i = 0; i < 3000; i++) {
            if (i % 2 == 0) {
                dates.onChunk(2, board.printed(i));
            }
            dated[i] = dates.onLine();
            assertTrue(i < 200 || Math.abs(dated[i] - dated[i - 2] - 33_300_000) < 1000, "line " + i);
        }
        assertEquals(0, dates.arrivals(null).timerMs());
        assertEquals(2, dates.arrivals(null).linesPerBurst(), 0.01);
        assertTrue(dates.arrivals(null).words().startsWith("2.0 lines come at a time, every 33 ms"));
    }

    /** As a busy computer reads them: each burst up to 6 ms late. */
    @Test
    void burstsThatABusyComputerBlursAreToldAndDatedNoWorseThanTheyCame() {
        TimedBoard board = TimedBoard.even(4000, 98.7).throughTimer(TIMER_MS, 5).lateBursts(6, 9);
        LineDates dates = new LineDates();
        long[] dated = new long[board.count()];
        for (int from = 0; from < board.count(); ) {
            int to = from;
            while (to < board.count() && board.arrived(to) == board.arrived(from)) {
                to++;
            }
            dates.onChunk(to - from, board.arrived(from));
            for (int i = from; i < to; i++) {
                dated[i] = dates.onLine();
            }
            from = to;
        }
        assertEquals(TIMER_MS, dates.arrivals(null).timerMs(), 1);
        double before = board.errorMs(board.arrivals(), LEARNED, board.count());
        double after = board.errorMs(dated, LEARNED, board.count());
        assertTrue(after < before / 2, after + " ms, as they came " + before);
    }

    @Test
    void afterAReconnectAllIsLearnedAnew() {
        ArrivalClock clock = new ArrivalClock();
        TimedBoard.even(2000, 50.01).throughTimer(TIMER_MS, 5).dated(clock);
        assertTrue(clock.timerNanos() > 0);
        clock.restart();
        assertEquals(0, clock.timerNanos());
        TimedBoard other = TimedBoard.even(500, 30);
        assertArrayEquals(other.arrivals(), other.dated(clock));
    }
}
