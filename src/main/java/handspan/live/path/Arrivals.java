package handspan.live.path;

import handspan.number.units.Figures;

/**
 * How lines arrive.
 *
 * @param linesPerBurst lines that come together, on average; 0 until enough have been seen
 * @param burstMs time between one and the next, on average; 0 until enough have been seen
 * @param timerMs what lines wait for, up to this long: a latency timer, or whatever gathers them; 0 where none is seen
 * @param datedBack whether lines are dated back to an even clock
 * @param boardTime the number of the line that is the board's own time, and what it counts in; empty where there is
 *     none
 */
public record Arrivals(double linesPerBurst, double burstMs, double timerMs, boolean datedBack, String boardTime) {
    /** Before anything has come. */
    public static final Arrivals NONE = new Arrivals(0, 0, 0, false, "");

    /** Lines together that are worth a word. */
    private static final double WORTH_LINES = 1.2;

    /** Whether enough has come to tell. */
    public boolean known() {
        return linesPerBurst > 0;
    }

    /** What is worth a word; empty where lines simply come. */
    public String words() {
        String dated = boardTime.isEmpty()
                ? datedBack ? "; they are dated back to an even clock" : ""
                : "; they are dated by the board's own time, " + boardTime;
        if (timerMs > 0) {
            return "lines come in bursts of " + Figures.text(timerMs, 0) + " ms"
                    + (linesPerBurst > WORTH_LINES ? ", " + Figures.text(linesPerBurst, 1) + " lines each" : "")
                    + ": a latency timer" + dated;
        }
        if (datedBack && linesPerBurst > WORTH_LINES) {
            return Figures.text(linesPerBurst, 1) + " lines come at a time, every " + Figures.text(burstMs, 0) + " ms"
                    + dated;
        }
        return boardTime.isEmpty() ? "" : "lines are dated by the board's own time, " + boardTime;
    }
}
