package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.Reading;
import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A board that prints when it likes and says when, through a timer of 16 ms: the dates against the true times. What the
 * board counts in whole milliseconds can't be told better than 1 ms over the root of 12, 0.29 ms.
 */
class BoardClockTest {
    private static final double TIMER_MS = 16;
    private static final int LEARNED = 400;

    /** Anything from 12 to 38 ms from line to line. */
    private static TimedBoard uneven(int lines) {
        Random random = new Random(8);
        TimedBoard board = new TimedBoard(lines);
        long at = 3_000_000_000L;
        for (int i = 0; i < lines; i++) {
            board.print(at);
            at += Nanos.ofMs(12 + 26 * random.nextDouble());
        }
        return board.throughTimer(TIMER_MS, 5);
    }

    /** What a counter of so many bits shows that was so far from its wrap at the first line. */
    private static double counter(long sinceNanos, double unitNanos, int bits, double beforeWrap, double clock) {
        double wrap = Math.pow(2, bits);
        double ran = Math.floor(sinceNanos * clock / unitNanos);
        return (wrap - beforeWrap + ran) % wrap;
    }

    @ParameterizedTest(name = "{1} bits of {0} ns, {2} before the wrap")
    @CsvSource({
        "1000000, 32, 20000, 0.8",
        "1000, 32, 20000000, 0.5",
        "1000000, 16, 20000, 0.8",
        "1000, 16, 20000, 0.5",
        "1000000, 32, 4000000000, 0.8"
    })
    void itsOwnCountDatesTheLinesOverItsWrap(double unitNanos, int bits, double beforeWrap, double mostMs) {
        TimedBoard board = uneven(4000);
        long[] dated = new long[board.count()];
        LineDates dates = new LineDates();
        Random hand = new Random(2);
        for (int from = 0; from < board.count(); ) {
            int to = from;
            while (to < board.count() && board.arrived(to) == board.arrived(from)) {
                to++;
            }
            dates.onChunk(to - from, board.arrived(from));
            for (int i = from; i < to; i++) {
                // the board's resonator is 0.3 % fast
                double count = counter(board.printed(i) - board.printed(0), unitNanos, bits, beforeWrap, 1.003);
                double[] values = {300 + 40 * hand.nextGaussian(), count, 8190};
                Reading reading = new Reading(board.arrived(i), values, 0b111);
                dated[i] = dates.dated(reading, dates.onLine()).printedNanos();
                assertTrue(dated[i] <= board.arrived(i) && (i == 0 || dated[i] >= dated[i - 1]));
            }
            from = to;
        }
        assertEquals(16 / Math.sqrt(12), board.errorMs(board.arrivals(), LEARNED, board.count()), 0.2);
        double after = board.errorMs(dated, LEARNED, board.count());
        assertTrue(after < mostMs, after + " ms");
    }

    private static boolean everDates(int bits, double noise, double per) {
        BoardClock clock = new BoardClock();
        Random random = new Random(bits);
        boolean dates = false;
        for (int i = 0; i < 20_000; i++) {
            double value = Math.rint(per * i + Math.pow(2, bits) * 0.5 + noise * random.nextGaussian());
            dates |= clock.onReading(new Reading(Nanos.ofMs(20.0 * i), new double[] {value}, 1));
        }
        return dates;
    }

    @Test
    void noiseAndLineNumbersAreNoTime() {
        for (int bits = 8; bits <= 16; bits++) {
            assertFalse(everDates(bits, 3, 0), bits + " bits of little noise");
            assertFalse(everDates(bits, 0.2 * Math.pow(2, bits), 0), bits + " bits of much noise");
        }
        assertFalse(everDates(8, 0, 1), "a line number");
        assertTrue(everDates(8, 0, 20), "milliseconds");
        assertTrue(everDates(8, 0, 20_000), "microseconds");
    }

    @Test
    void aBoardThatStartsAnewIsLearnedAnew() {
        BoardClock clock = new BoardClock();
        for (int i = 0; i < 200; i++) {
            clock.onReading(new Reading(Nanos.ofMs(20.0 * i), new double[] {100_000 + 20.0 * i}, 1));
        }
        assertEquals(0, clock.slot());
        assertFalse(clock.onReading(new Reading(Nanos.ofMs(4100), new double[] {7}, 1)), "the count fell");
        for (int i = 1; i < 100; i++) {
            clock.onReading(new Reading(Nanos.ofMs(4100 + 20.0 * i), new double[] {7 + 20.0 * i}, 1));
        }
        assertEquals(0, clock.slot());
        assertEquals("milliseconds", clock.unitWord());
        assertEquals(4100 + 20 * 99, Nanos.toMs(clock.printedNanos()), 0.01);
    }
}
