package handspan.live.path;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.number.units.Nanos;
import org.jspecify.annotations.Nullable;

/**
 * Dates readings: by the board's own time where lines carry it ({@link BoardClock}), else by an even clock
 * ({@link ArrivalClock}). Never backward, never after the arrival, never more than {@link ArrivalClock#FURTHEST_NANOS}
 * before it. Pure: times come with the calls. Owned by one thread.
 */
final class LineDates {
    private final ArrivalClock even = new ArrivalClock();
    private final BoardClock board = new BoardClock();
    private long lastNanos = Long.MIN_VALUE;

    /** The link is there again: all is learned anew. */
    void restart() {
        even.restart();
        board.restart();
    }

    /** So many lines have come at one moment; {@link #onLine} follows for each. */
    void onChunk(int lines, long arrivalNanos) {
        even.onChunk(lines, arrivalNanos);
    }

    /** The next line, whatever it holds: when it was printed by an even clock. */
    long onLine() {
        return even.onLine();
    }

    /** The same reading with the time at which it was printed. */
    Reading dated(Reading reading, long evenNanos) {
        long printed = board.onReading(reading) ? board.printedNanos() : evenNanos;
        long earliest = Math.max(lastNanos, reading.timeNanos() - ArrivalClock.FURTHEST_NANOS);
        lastNanos = Math.min(reading.timeNanos(), Math.max(earliest, printed));
        return lastNanos == reading.timeNanos() ? reading : reading.printedAt(lastNanos);
    }

    /**
     * How lines arrive.
     *
     * @param shape that names the board's time; null while it is being learned
     */
    Arrivals arrivals(@Nullable LineShape shape) {
        BurstMeter bursts = even.bursts();
        String boardTime =
                board.slot() < 0 || shape == null ? "" : board.unitWord() + " in channel " + shape.nameOf(board.slot());
        double timer = timerNanos();
        return new Arrivals(
                bursts.linesPerBurst(),
                bursts.periodNanos() / Nanos.PER_MS,
                timer / Nanos.PER_MS,
                even.gathers(),
                boardTime);
    }

    /** What lines wait for: a timer, or as good as one where a busy computer blurs its beat. */
    private double timerNanos() {
        BurstMeter bursts = even.bursts();
        double timer = bursts.timerNanos();
        if (board.slot() >= 0) {
            return board.meanLateNanos() >= ArrivalClock.TIMER_WAIT01 * timer ? timer : 0;
        }
        boolean blurred = timer == 0 && even.gathers() && bursts.isBlurred();
        return blurred ? bursts.periodNanos() : even.timerNanos();
    }
}
