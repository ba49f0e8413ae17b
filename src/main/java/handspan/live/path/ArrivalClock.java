package handspan.live.path;

import handspan.number.fit.LineBelow;
import handspan.number.units.Nanos;

/**
 * When each line was probably printed, told from when lines arrived: a board prints evenly, and what lies between it
 * and here (a latency timer, a scheduler, a stall) can only delay. The even clock is the line nearest below the
 * arrivals over the count of lines. Pure: time comes with the calls. Allocates nothing after it is made. Owned by one
 * thread.
 *
 * <ul>
 *   <li>Arrivals that are even already, and those of a board that prints unevenly with nothing that gathers its lines,
 *       are left as they are.
 *   <li>A chunk that brings more lines than bursts usually do after a pause is a backlog: it was printed during the
 *       pause. Fewer lines after a pause are all that was printed: the board left some out, or they were lost.
 *   <li>A rate that changes is learned anew.
 * </ul>
 *
 * <p>What it gives never runs backward, never lies after the arrival, nor more than {@link #FURTHEST_NANOS} before it.
 */
final class ArrivalClock {
    /** Furthest that a line is dated back: an open link that is silent for longer counts as lost. */
    static final long FURTHEST_NANOS = Nanos.PER_SECOND;

    /** Lines looked back on. */
    private static final int LINES = 128;

    /** Lines before anything is dated back. */
    private static final int FEWEST = 16;

    /** Lateness that no one needs to be told of, on average. */
    private static final double EVEN_NANOS = Nanos.PER_MS;

    /** Lateness allowed above what is usual: a scheduler's turn. */
    private static final double SLACK_NANOS = 1.5 * Nanos.PER_MS;

    /** Most lateness in means of it: 2 for one that is spread evenly, as a timer's is. */
    private static final double MOST_MEANS = 2.5;

    /** Share of a timer that lines wait for it at least, on average; half of it where they come at any time. */
    static final double TIMER_WAIT01 = 0.2;

    /** Share of the interval within which a pause counts as a whole number of lines. */
    private static final double WHOLE01 = 0.15;

    private static final double MISFIT_FADE = 7.0 / 8;
    private static final double MOST_MISFITS = 2.5;
    private static final double PAUSE_FADE = 31.0 / 32;

    /** A pause after every fourth line is another rate. */
    private static final double MOST_PAUSES = 8;

    private static final double INTERVAL_SHARE = 1.0 / 32;

    private final LineBelow below = new LineBelow(LINES);
    private final BurstMeter bursts = new BurstMeter();
    private long zeroNanos;
    private boolean any;
    private double index;
    private long chunkNanos;
    private int left;
    private long lastArrivalNanos;
    private long lastNanos;
    private double usualIntervalNanos;
    private double misfits;
    private double pauses;
    private boolean lateBefore;
    private boolean backlog;

    /** The link is there again: all is learned anew. */
    void restart() {
        any = false;
        usualIntervalNanos = 0;
        bursts.restart();
        forget();
    }

    private void forget() {
        below.clear();
        index = 0;
        misfits = 0;
        pauses = 0;
        lateBefore = false;
        backlog = false;
    }

    /** So many lines have come at one moment; {@link #onLine} follows for each. */
    void onChunk(int lines, long arrivalNanos) {
        left = lines;
        backlog &= arrivalNanos - chunkNanos <= BurstMeter.TOGETHER_NANOS;
        chunkNanos = arrivalNanos;
    }

    /** The next line of the chunk: when it was probably printed. */
    long onLine() {
        left = Math.max(0, left - 1);
        long arrival = chunkNanos;
        if (!any) {
            any = true;
            zeroNanos = arrival;
            lastArrivalNanos = arrival;
            lastNanos = arrival;
        }
        bursts.onLine(arrival);
        pace(arrival);
        double sinceNanos = (double) (arrival - zeroNanos);
        double printed = isLearned() ? dated(sinceNanos) : learn(sinceNanos);
        long earliest = Math.max(lastNanos, arrival - FURTHEST_NANOS);
        lastNanos = Math.min(arrival, Math.max(earliest, zeroNanos + Math.round(printed)));
        lastArrivalNanos = arrival;
        return lastNanos;
    }

    private void pace(long arrival) {
        double interval = Math.min(arrival - lastArrivalNanos, FURTHEST_NANOS);
        usualIntervalNanos += (interval - usualIntervalNanos) * (usualIntervalNanos == 0 ? 1 : INTERVAL_SHARE);
    }

    private boolean isLearned() {
        return below.count() >= FEWEST;
    }

    private double learn(double arrival) {
        index++;
        below.add(index, arrival);
        return spacedBack(arrival);
    }

    /** Without an even clock: lines of one chunk are as far apart as lines usually are. */
    private double spacedBack(double arrival) {
        double roomNanos = arrival - (double) (lastNanos - zeroNanos);
        double apart = Math.min(usualIntervalNanos, roomNanos / (left + 1));
        return arrival - left * apart;
    }

    private double dated(double arrival) {
        double interval = below.slope();
        misfits *= MISFIT_FADE;
        pauses *= PAUSE_FADE;
        double lateNanos = arrival - below.at(index + 1);
        double mostNanos = mostNanos();
        index++;
        if (interval <= 0) {
            forget();
            return learn(arrival);
        }
        if (lateNanos > mostNanos || backlog) {
            if (!backlog) {
                backlog = isBacklog(lateNanos, mostNanos, interval);
            }
            if (backlog) {
                return backlog(arrival, lateNanos, mostNanos);
            }
            if (!afterPause(lateNanos, mostNanos, interval)) {
                return spacedBack(arrival);
            }
        } else {
            lateBefore = false;
            misfits += lateNanos < -Math.max(SLACK_NANOS, interval / 4) ? 1 : 0;
        }
        below.add(index, arrival);
        if (misfits > MOST_MISFITS || pauses > MOST_PAUSES) {
            forget();
            return learn(arrival);
        }
        return gathers() ? below.at(index) : spacedBack(arrival);
    }

    /** Latest that a line may be without a reason. */
    private double mostNanos() {
        double most = MOST_MEANS * below.meanAbove();
        double timer = timerNanos();
        return SLACK_NANOS + (timer > 0 ? Math.min(most, timer) : most);
    }

    private double backlog(double arrival, double lateNanos, double mostNanos) {
        if (lateNanos <= mostNanos) {
            below.add(index, arrival);
        }
        return below.at(index);
    }

    /**
     * Whether lines that are late have waited. Bursts that came as often as ever had none waiting, so that lines are
     * missing; else there are as many as a backlog must have, or more than a burst has.
     */
    private boolean isBacklog(double lateNanos, double mostNanos, double interval) {
        double timer = timerNanos();
        if (timer > 0 && chunkNanos - lastArrivalNanos <= timer + SLACK_NANOS) {
            return false;
        }
        boolean explained = left > 0 && lateNanos - left * interval <= mostNanos;
        return explained || left > mostNanos / interval;
    }

    /** Lines are missing: counts them, so that the clock runs on. Returns whether the clock still holds. */
    private boolean afterPause(double lateNanos, double mostNanos, double interval) {
        double spread = mostNanos - SLACK_NANOS;
        double whole = Math.ceil((lateNanos - spread) / interval - WHOLE01);
        boolean fits = whole >= 1 && whole * interval <= lateNanos + WHOLE01 * interval;
        if (fits) {
            index += whole;
            pauses++;
            lateBefore = false;
            return true;
        }
        // once may be one late line, twice is another beat
        misfits++;
        if (lateBefore) {
            index += lateNanos / interval;
        }
        boolean known = lateBefore;
        lateBefore = !lateBefore;
        return known;
    }

    /** Whether something on the way gathers lines, so that they are better dated by the even clock. */
    boolean gathers() {
        if (!isLearned() || bursts.isEven()) {
            return false;
        }
        double lateNanos = below.meanAbove();
        if (lateNanos <= EVEN_NANOS) {
            return false;
        }
        double timer = bursts.timerNanos();
        boolean byTimer = timer > 0 && lateNanos >= TIMER_WAIT01 * timer && lateNanos <= timer;
        return byTimer || (bursts.isLumped() && lateNanos <= bursts.periodNanos());
    }

    /** What lines wait for, on average half of it; 0 where they come as they are printed. */
    double timerNanos() {
        return gathers() ? bursts.timerNanos() : 0;
    }

    BurstMeter bursts() {
        return bursts;
    }
}
