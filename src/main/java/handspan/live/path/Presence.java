package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * Whether a hand plays. Pure: time comes with the calls. Owned by one thread.
 *
 * <pre>
 * AWAY      reading                    -> ARRIVING
 * ARRIVING  reading that agrees        -> PLAYING      (two agreeing readings: half-way ghosts never sound)
 * ARRIVING  reading that does not      -> ARRIVING     (with the new one)
 * ARRIVING  no reading for a while     -> AWAY
 * PLAYING   no reading for a while     -> LEAVING
 * LEAVING   reading                    -> ARRIVING
 * LEAVING   the fade's time has passed -> AWAY
 * any       lost                       -> AWAY
 * </pre>
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

    private final long leaveNanos;
    private final long fadeNanos;
    private State state = State.AWAY;
    private double lastMm;
    private long lastNanos;
    private long leftNanos;

    /**
     * A presence.
     *
     * @param ratePerS readings a second, above 0
     * @param fadeNanos how long the fade takes
     */
    public Presence(double ratePerS, long fadeNanos) {
        this.leaveNanos = Nanos.ofMs(Math.max(LEAST_LEAVE_MS, LEAVE_READINGS * 1000 / ratePerS));
        this.fadeNanos = fadeNanos;
    }

    /** A reading with the hand in the zone. */
    public State onHand(double mm, long timeNanos) {
        onTick(timeNanos);
        boolean agrees = Math.abs(mm - lastMm) <= AGREE_MM + AGREE_MM_PER_S * Nanos.toSeconds(timeNanos - lastNanos);
        state = switch (state) {
            case AWAY, LEAVING -> State.ARRIVING;
            case ARRIVING -> agrees ? State.PLAYING : State.ARRIVING;
            case PLAYING -> State.PLAYING;
        };
        lastMm = mm;
        lastNanos = timeNanos;
        return state;
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
