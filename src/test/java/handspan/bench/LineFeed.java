package handspan.bench;

import handspan.Pty;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/**
 * A board that prints a line at an even rate into a pseudo-terminal, and knows when it printed each: two distances, of
 * which the first tells the number of the line.
 */
final class LineFeed {
    /** Distance of line 0, mm. */
    static final double FIRST_MM = 110;

    /** From line to line, mm: far under any step that a spike gate or presence would stumble over. */
    static final double STEP_MM = 0.02;

    private final Pty board;
    private final long intervalNanos;
    private final long[] writtenNanos;
    private int count;

    LineFeed(Pty board, double linesPerS, int most) {
        this.board = board;
        this.intervalNanos = Math.round(1e9 / linesPerS);
        this.writtenNanos = new long[most];
    }

    /** Prints lines while it is wanted; one that is late shifts all later ones, so that none come in a heap. */
    void print(BooleanSupplier goesOn) {
        long dueNanos = System.nanoTime();
        while (goesOn.getAsBoolean() && count < writtenNanos.length) {
            byte[] line = String.format(Locale.ROOT, "%.2f,200\n", FIRST_MM + STEP_MM * count)
                    .getBytes(StandardCharsets.US_ASCII);
            long nowNanos = System.nanoTime();
            while (nowNanos < dueNanos) {
                LockSupport.parkNanos(dueNanos - nowNanos);
                nowNanos = System.nanoTime();
            }
            writtenNanos[count++] = nowNanos;
            board.write(line);
            dueNanos = Math.max(dueNanos, nowNanos - intervalNanos / 2) + intervalNanos;
        }
    }

    int count() {
        return count;
    }

    long writtenNanos(int line) {
        return writtenNanos[line];
    }

    /** The number of the line that holds a distance, with a part where it lies between two. */
    static double lineOf(double mm) {
        return (mm - FIRST_MM) / STEP_MM;
    }
}
