package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * Whether a hand plays. Pure: time comes with the calls. Owned by one thread.
 *
 * <pre>
 * AWAY      reading                                      -> ARRIVING
 * ARRIVING  reading that agrees, the hand is slow        -> PLAYING   (two agreeing readings: half-way ghosts never sound)
 * ARRIVING  reading that agrees, fast for 150 ms         -> PLAYING   (it means to slide)
 * ARRIVING  reading that agrees, fast                    -> ARRIVING  (on its way in: its way is not heard)
 * ARRIVING  reading that does not agree                  -> ARRIVING  (with the new one)
 * ARRIVING  no reading for a while                       -> AWAY
 * PLAYING   reading, too fast to stop within reach       -> LEAVING
 * PLAYING   reading out of bounds, where a fast hand went -> LEAVING
 * PLAYING   no reading, after a fast one past an end     -> LEAVING
 * PLAYING   three without the hand, after a fast one     -> LEAVING   (two are a dropout)
 * PLAYING   no reading for a while                       -> LEAVING
 * LEAVING   reading                                      -> ARRIVING
 * LEAVING   the fade's time has passed                   -> AWAY
 * any       lost                                         -> AWAY
 * </pre>
 *
 * <p>"For a while" is 180 ms, or 3.5 readings where they take longer: a hand that lies still is given that time, for
 * nothing is heard of it. A hand that was held back as a spike counts as fast.
 */
public final class Presence {
    /** States. */
    public enum State {
        /** No hand. */
        AWAY,
        /** One reading, not yet confirmed. */
        ARRIVING,
        /** A hand plays. */
        PLAYING,
        /** The hand has gone, sound fades. */
        LEAVING
    }

    /** How far apart two readings may lie and still agree, mm. */
    private static final double AGREE_MM = 30;

    /** And how much further for each second between them: a hand that comes in fast. */
    private static final double AGREE_MM_PER_S = 1500;

    private static final double LEAST_LEAVE_MS = 180;
    private static final double LEAVE_READINGS = 3.5;

    /** Readings lost in a row that are no dropout. */
    private static final int LOST = 3;

    /** And at least this long, for boards that print faster than their sensor measures. */
    private static final long LOST_NANOS = 50 * Nanos.PER_MS;

    /** A hand that is fast for longer than this means to slide. */
    private static final long ARRIVE_NANOS = 150 * Nanos.PER_MS;

    private final long leaveNanos;
    private long fadeNanos;
    private final PlayBounds bounds;
    private final HandMotion motion;
    private State state = State.AWAY;
    private int missed;
    private double leapMm;
    private long cameNanos;
    private double lastMm;
    private long lastNanos;
    private long lastPrintedNanos;
    private long leftNanos;

    /**
     * A presence.
     *
     * @param ratePerS readings a second, above 0
     * @param fadeNanos how long the fade takes
     * @param bounds where a hand plays
     */
    Presence(double ratePerS, long fadeNanos, PlayBounds bounds) {
        this.leaveNanos = Nanos.ofMs(Math.max(LEAST_LEAVE_MS, LEAVE_READINGS * 1000 / ratePerS));
        this.fadeNanos = fadeNanos;
        this.bounds = bounds;
        this.motion = new HandMotion(bounds.noiseMm());
    }

    /** A hand that leaves fades for so long from now on. */
    void fadingFor(long nanos) {
        fadeNanos = nanos;
    }

    /** A reading with the hand within bounds, printed as it came. */
    public State onHand(double mm, long timeNanos) {
        return onHand(mm, timeNanos, timeNanos);
    }

    /**
     * A reading with the hand in the zone.
     *
     * @param mm position
     * @param printedNanos when the board printed it: whether two agree depends on the time between them
     * @param timeNanos when it came: from then on it lasts
     */
    public State onHand(double mm, long printedNanos, long timeNanos) {
        onTick(timeNanos);
        double apartS = Nanos.toSeconds(printedNanos - lastPrintedNanos);
        boolean agrees = Math.abs(mm - lastMm) <= AGREE_MM + AGREE_MM_PER_S * apartS;
        if (state == State.AWAY || state == State.LEAVING || (state == State.ARRIVING && !agrees)) {
            cameNanos = timeNanos;
            motion.reset();
        }
        motion.add(mm, printedNanos);
        lastMm = mm;
        lastPrintedNanos = printedNanos;
        lastNanos = timeNanos;
        missed = 0;
        leapMm = 0;
        switch (state) {
            case AWAY, LEAVING -> state = State.ARRIVING;
            case ARRIVING -> state = agrees && mayPlay(timeNanos) ? State.PLAYING : State.ARRIVING;
            case PLAYING ->
                leaveIf(motion.isFast() && motion.isNews() && bounds.isLeft(mm, motion.speedMmPerS()), timeNanos);
        }
        return state;
    }

    /** The reading before once more, from a board that is faster than its sensor: the hand is still there. */
    public State onRepeat(long timeNanos) {
        if (onTick(timeNanos) == State.ARRIVING || state == State.PLAYING) {
            lastNanos = timeNanos;
        }
        return state;
    }

    private boolean mayPlay(long timeNanos) {
        return !motion.isFast() || timeNanos - cameNanos >= ARRIVE_NANOS;
    }

    /** A reading of something out of reach: the hand on its way, or whatever is behind it. */
    public State onOutside(double mm, long timeNanos) {
        double way = leapMm == 0 ? motion.speedMmPerS() : leapMm;
        boolean onItsWay = way > 0 ? mm > bounds.mostMm() : mm < bounds.leastMm();
        boolean goesOn = (leapMm != 0 || motion.isFast()) && onItsWay;
        onNothing(timeNanos);
        leaveIf(goesOn, timeNanos);
        return state;
    }

    /** A reading that a hand can't have made, or not yet: held back. */
    public State onLeap(double mm, long timeNanos) {
        leapMm = mm - lastMm;
        missed = 0;
        return onTick(timeNanos);
    }

    /** A reading of nothing. */
    public State onNothing(long timeNanos) {
        onTick(timeNanos);
        missed++;
        boolean past = motion.isFast() && bounds.isPast(lastMm, motion.speedMmPerS());
        boolean gone = missed >= LOST && timeNanos - lastNanos >= LOST_NANOS && (leapMm != 0 || motion.isFast());
        leaveIf(past || gone, timeNanos);
        return state;
    }

    private void leaveIf(boolean leaves, long timeNanos) {
        if (leaves && state == State.PLAYING) {
            leftNanos = timeNanos;
            state = State.LEAVING;
        }
    }

    /** Time passes. */
    public State onTick(long timeNanos) {
        if ((state == State.PLAYING || state == State.ARRIVING) && timeNanos - lastNanos > leaveNanos) {
            leftNanos = timeNanos;
            state = state == State.PLAYING ? State.LEAVING : State.AWAY;
        } else if (state == State.LEAVING && timeNanos - leftNanos >= fadeNanos) {
            state = State.AWAY;
        }
        return state;
    }

    /** The link is gone: at once away. */
    public void onLost() {
        state = State.AWAY;
    }

    /** The state after the last call. */
    public State state() {
        return state;
    }

    /** When the next change can come without a reading; {@link Long#MAX_VALUE} when none can. */
    public long nextDeadlineNanos() {
        return switch (state) {
            case AWAY -> Long.MAX_VALUE;
            case ARRIVING, PLAYING -> lastNanos + leaveNanos + 1;
            case LEAVING -> leftNanos + fadeNanos;
        };
    }
}
