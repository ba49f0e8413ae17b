package handspan.live.path;

import handspan.number.units.Nanos;
import java.util.Arrays;
import java.util.Random;

/** Lines of a board with the true times of printing, and how they arrive. */
final class TimedBoard {
    private final long[] printed;
    private final long[] arrived;
    private int count;

    TimedBoard(int most) {
        printed = new long[most];
        arrived = new long[most];
    }

    /** Prints evenly from 3 s on. */
    static TimedBoard even(int lines, double ratePerS) {
        TimedBoard board = new TimedBoard(lines);
        for (int i = 0; i < lines; i++) {
            board.print(Nanos.ofSeconds(3 + i / ratePerS) + 3_300_000);
        }
        return board;
    }

    void print(long nanos) {
        printed[count] = nanos;
        arrived[count++] = nanos;
    }

    /** All wait for the next whole multiple of a time, and come together, up to 0.3 ms late. */
    TimedBoard throughTimer(double timerMs, long seed) {
        Random random = new Random(seed);
        long timer = Nanos.ofMs(timerMs);
        for (int i = 0; i < count; i++) {
            boolean together = i > 0
                    && Math.floorDiv(printed[i] + timer - 1, timer) == Math.floorDiv(printed[i - 1] + timer - 1, timer);
            long late = Nanos.ofMs(0.3 * random.nextDouble());
            arrived[i] = together ? arrived[i - 1] : Math.floorDiv(printed[i] + timer - 1, timer) * timer + late;
        }
        return this;
    }

    /** Up to so much late each, in their order. */
    TimedBoard late(double mostMs, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            long late = printed[i] + Nanos.ofMs(mostMs * random.nextDouble());
            arrived[i] = i == 0 ? late : Math.max(arrived[i - 1], late);
        }
        return this;
    }

    /** Every burst comes up to so much later as a whole. */
    TimedBoard lateBursts(double mostMs, long seed) {
        Random random = new Random(seed);
        long late = 0;
        long before = 0;
        for (int i = 0; i < count; i++) {
            late = arrived[i] == before ? late : Nanos.ofMs(mostMs * random.nextDouble());
            before = arrived[i];
            arrived[i] += late;
        }
        return this;
    }

    /** Nothing comes from one time to another; then all at once. */
    TimedBoard stalled(long fromNanos, long toNanos) {
        for (int i = 0; i < count; i++) {
            arrived[i] = arrived[i] > fromNanos && arrived[i] < toNanos ? toNanos : arrived[i];
        }
        return this;
    }

    /** Some lines are lost. */
    TimedBoard losing(double share01, long seed) {
        Random random = new Random(seed);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (i < 64 || random.nextDouble() >= share01) {
                printed[kept] = printed[i];
                arrived[kept++] = arrived[i];
            }
        }
        count = kept;
        return this;
    }

    int count() {
        return count;
    }

    long printed(int i) {
        return printed[i];
    }

    long arrived(int i) {
        return arrived[i];
    }

    /** Dates every line, as chunks of what came at one moment. */
    long[] dated(ArrivalClock clock) {
        long[] dated = new long[count];
        for (int from = 0; from < count; ) {
            int to = from;
            while (to < count && arrived[to] == arrived[from]) {
                to++;
            }
            clock.onChunk(to - from, arrived[from]);
            for (int i = from; i < to; i++) {
                dated[i] = clock.onLine();
            }
            from = to;
        }
        return dated;
    }

    long[] arrivals() {
        return Arrays.copyOf(arrived, count);
    }

    /** Root mean square of how far times are off the true ones, but for a constant, ms. */
    double errorMs(long[] times, int from, int to) {
        double sum = 0;
        double squares = 0;
        for (int i = from; i < to; i++) {
            double off = Nanos.toMs(times[i] - printed[i]);
            sum += off;
            squares += off * off;
        }
        double mean = sum / (to - from);
        return Math.sqrt(Math.max(0, squares / (to - from) - mean * mean));
    }
}
