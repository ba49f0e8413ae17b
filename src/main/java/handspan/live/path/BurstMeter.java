package handspan.live.path;

import handspan.number.units.Nanos;
import java.util.Arrays;

/**
 * Tells whether lines come in bursts, and how long these are: several lines at one moment, or single lines at whole
 * multiples of one time, as through the latency timer of a USB serial chip. Pure: times come with the calls. Allocates
 * nothing after it is made. Owned by one thread.
 */
final class BurstMeter {
    /** Lines no further apart than this came together. */
    static final long TOGETHER_NANOS = Nanos.PER_MS;

    /** Bursts it looks back on. */
    private static final int BURSTS = 48;

    /** Fewest bursts that say something. */
    private static final int FEWEST = 16;

    /** Bursts between two looks. */
    private static final int EVERY = 8;

    /** A multiple is met within this, the hub's own pace of 1 ms and a half. */
    private static final double NEAR_NANOS = 1.5 * Nanos.PER_MS;

    /** Shortest timer looked for: most chips let it be set to 1 ms, which does no harm. */
    private static final double SHORTEST_NANOS = 4.0 * Nanos.PER_MS;

    /** What the timer of such chips is set to unless somebody changes it (common practice). */
    private static final double USUAL_NANOS = 16.0 * Nanos.PER_MS;

    /** Longest timer looked for; bursts further apart are the board's own way of printing. */
    private static final double MOST_NANOS = 40.0 * Nanos.PER_MS;

    private static final double MET01 = 0.9;

    /** A board that loses no more of its lines than this prints evenly all the same. */
    private static final double ODD01 = 0.1;

    /** Lines in a burst up to which they come alone. */
    private static final double ALONE = 1.05;

    private static final int MOST_PARTS = 8;

    /** So many intervals more must fit a part of a time that fits: those around one stall fit by chance. */
    private static final int FEW = 2;

    private final long[] intervals = new long[BURSTS];
    private final long[] sorted = new long[BURSTS];
    private final int[] lines = new int[BURSTS];
    private int next;
    private int count;
    private int sinceLook;
    private long startNanos;
    private long lastNanos;
    private int inBurst;
    private double timerNanos;
    private boolean even;

    void restart() {
        next = 0;
        count = 0;
        inBurst = 0;
        sinceLook = 0;
        timerNanos = 0;
        even = false;
    }

    /** A line came. */
    void onLine(long arrivalNanos) {
        if (inBurst > 0 && arrivalNanos - lastNanos <= TOGETHER_NANOS) {
            inBurst++;
        } else {
            if (inBurst > 0) {
                close(arrivalNanos - startNanos);
            }
            inBurst = 1;
            startNanos = arrivalNanos;
        }
        lastNanos = arrivalNanos;
    }

    private void close(long intervalNanos) {
        intervals[next] = intervalNanos;
        lines[next] = inBurst;
        next = (next + 1) % BURSTS;
        count = Math.min(count + 1, BURSTS);
        if (++sinceLook >= EVERY) {
            sinceLook = 0;
            timerNanos = count < FEWEST ? 0 : timer();
            even = looksEven();
        }
    }

    /**
     * The time of which most intervals are multiples, the longest of about equals, where these are of more than one
     * kind.
     */
    private double timer() {
        // a part of the median: after a stall the next burst may come at once
        System.arraycopy(intervals, 0, sorted, 0, count);
        Arrays.sort(sorted, 0, count);
        double median = sorted[count / 2];
        double best = 0;
        int most = (int) Math.ceil(MET01 * count) - 1;
        for (int parts = 1; parts <= MOST_PARTS; parts++) {
            double candidate = refined(median / parts);
            int met = candidate < SHORTEST_NANOS || candidate > MOST_NANOS ? 0 : met(candidate);
            if (met > most) {
                most = met + FEW;
                best = candidate;
            }
        }
        return best;
    }

    private double refined(double guessNanos) {
        double sum = 0;
        long times = 0;
        for (int i = 0; i < count; i++) {
            long multiple = Math.round(intervals[i] / guessNanos);
            if (multiple <= MOST_PARTS) {
                sum += intervals[i];
                times += multiple;
            }
        }
        return times == 0 ? 0 : sum / times;
    }

    /**
     * How many intervals are multiples; 0 where all are the same one with as many lines each: so does a board print by
     * itself, unless it is the time that the chips have.
     */
    private int met(double timer) {
        double near = Math.min(NEAR_NANOS, timer / 8);
        int met = 0;
        boolean kinds = Math.abs(sorted[count / 2] - USUAL_NANOS) <= Nanos.PER_MS && isLumped();
        int otherLines = 0;
        long first = Math.round(intervals[0] / timer);
        for (int i = 0; i < count; i++) {
            long multiple = Math.round(intervals[i] / timer);
            met += Math.abs(intervals[i] - multiple * timer) <= near ? 1 : 0;
            kinds |= multiple != first;
            otherLines += lines[i] != lines[0] ? 1 : 0;
        }
        return kinds || isVaried(otherLines) ? met : 0;
    }

    /** The timer that lines seem to wait for; 0 where none is seen. */
    double timerNanos() {
        return timerNanos;
    }

    /** Lines in a burst, on average; 0 until enough have been seen. */
    double linesPerBurst() {
        if (count < FEWEST) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += lines[i];
        }
        return sum / count;
    }

    /** From burst to burst, on average; 0 until enough have been seen. */
    double periodNanos() {
        if (count < FEWEST) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += intervals[i];
        }
        return sum / count;
    }

    /** Whether bursts have now so many lines, now so many; not just once, by a line that was lost. */
    private boolean isVaried(int otherLines) {
        return otherLines > FEW && count - otherLines > FEW;
    }

    /**
     * Whether bursts come so often, and of so different sizes, that a timer must be behind them, if not an exact one.
     */
    boolean isBlurred() {
        int otherLines = 0;
        for (int i = 0; i < count; i++) {
            otherLines += lines[i] != lines[0] ? 1 : 0;
        }
        return isVaried(otherLines) && periodNanos() >= SHORTEST_NANOS && periodNanos() <= MOST_NANOS;
    }

    /**
     * Whether single lines come evenly, but for a few that make whole multiples of their interval, as lost lines do:
     * then nothing gathers them.
     */
    boolean isEven() {
        return even;
    }

    private boolean looksEven() {
        if (count < FEWEST || linesPerBurst() > ALONE) {
            return false;
        }
        System.arraycopy(intervals, 0, sorted, 0, count);
        Arrays.sort(sorted, 0, count);
        long median = sorted[count / 2];
        int longer = 0;
        for (int i = 0; i < count; i++) {
            long times = Math.max(1, Math.round((double) intervals[i] / median));
            if (Math.abs(intervals[i] - times * median) > times * NEAR_NANOS) {
                return false;
            }
            longer += times > 1 ? 1 : 0;
        }
        return longer <= ODD01 * count;
    }

    /** Whether at least an eighth of the lines came together with the one before. */
    boolean isLumped() {
        return linesPerBurst() >= 8.0 / 7;
    }
}
