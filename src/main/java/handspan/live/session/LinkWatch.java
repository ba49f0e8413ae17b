package handspan.live.session;

import handspan.number.units.Nanos;

/**
 * How a link stands, judged by what comes over it. Silence of 1 s while open is a loss; the port is then closed and
 * opened again, which mends a driver that fell silent. But most boards start anew when their port is opened: one that
 * stays silent gets {@link #BOOT_NANOS} and more before the next try, and each further try comes later, so that a board
 * which hangs is not kept from starting. A port that was opened and never gave a line is left alone. Pure; owned by the
 * path thread.
 */
final class LinkWatch {
    /** What is said of a link that ended by itself. */
    static final String ENDED = "the link ended";

    /** Silence of an open link that counts as a loss. */
    private static final long SILENCE_NANOS = Nanos.PER_SECOND;

    /** So long a board may take to speak before the player is told (usual start: 0.8..3 s). */
    private static final long BOOT_NANOS = 2_500 * Nanos.PER_MS;

    /** A tick later than its deadline by more than this means that the machine slept: a loss too. */
    private static final long JUMP_NANOS = 2 * Nanos.PER_SECOND;

    /** Silence before each opening of a silent port, s. */
    private static final int[] REOPEN_S = {1, 5, 10, 20, 40, 60};

    /** Lines for so long show that the board is well: the next silence is its first again. */
    private static final long WELL_NANOS = 10 * Nanos.PER_SECOND;

    private LinkState state = LinkState.CLOSED;
    private String reason = "";
    private boolean news;
    private boolean lost;
    private boolean reopen;
    private boolean open;
    private boolean closing;
    private boolean toldWaiting;
    private int silentOpenings;
    private long heardNanos;
    private long openedNanos;
    private long upNanos;

    /** The link was opened; with what is to be known of how. */
    void onUp(String note, long timeNanos) {
        open = true;
        closing = false;
        reopen = false;
        toldWaiting = false;
        openedNanos = timeNanos;
        heardNanos = timeNanos;
        become(LinkState.WAITING, note);
    }

    /** It ended, or could not be opened again. */
    void onDown(String why) {
        open = false;
        if (state != LinkState.LOST) {
            lose(why);
        } else if (!why.equals(ENDED) && !why.equals(reason)) {
            become(LinkState.LOST, why);
        }
        // a port that went away is no silent port
        if (why.equals(ENDED) && !closing) {
            silentOpenings = 0;
        }
        reopen = false;
    }

    /** Lines stop for now, on purpose: nothing is waited for. */
    void onBreak(String words) {
        silentOpenings = 0;
        become(LinkState.PAUSED, words);
    }

    /** Bytes came. */
    void onBytes(long timeNanos) {
        heardNanos = timeNanos;
        if (state != LinkState.UP) {
            upNanos = timeNanos;
            become(LinkState.UP, "");
        } else if (timeNanos - upNanos > WELL_NANOS) {
            silentOpenings = 0;
        }
    }

    /** Time passes. */
    void onTick(long timeNanos) {
        notice(timeNanos);
        if (state == LinkState.UP && timeNanos - heardNanos >= SILENCE_NANOS) {
            lose("no line for 1 s");
        }
        if (timeNanos >= reopenNanos()) {
            if (state == LinkState.WAITING) {
                lose("still no line: the port is opened again");
            }
            silentOpenings++;
            heardNanos = timeNanos;
            closeAndReopen();
        }
        if (state == LinkState.WAITING && !toldWaiting && timeNanos - openedNanos >= BOOT_NANOS) {
            toldWaiting = true;
            become(
                    LinkState.WAITING,
                    "the port is open, but no line came for 2.5 s: is the board's program running, and is it the right"
                            + " port?");
        }
    }

    /** Notices that the machine slept, before bytes are taken: what was waited for starts anew. */
    void notice(long timeNanos) {
        long deadlineNanos = deadlineNanos();
        long lateNanos = timeNanos - deadlineNanos;
        if (deadlineNanos == Long.MAX_VALUE || lateNanos <= JUMP_NANOS) {
            return;
        }
        if (state == LinkState.UP) {
            lose("the clock jumped by " + lateNanos / Nanos.PER_SECOND + " s: the machine slept");
            closeAndReopen();
        }
        heardNanos = timeNanos;
        openedNanos = timeNanos;
    }

    /** A recording is over. */
    void onEnd() {
        become(LinkState.ENDED, "");
    }

    private void closeAndReopen() {
        reopen = open;
        closing = open;
    }

    private void lose(String why) {
        lost = true;
        become(LinkState.LOST, why);
    }

    private void become(LinkState next, String why) {
        state = next;
        reason = why;
        news = true;
    }

    /** When a silent port has to be opened again; {@link Long#MAX_VALUE} for never. */
    private long reopenNanos() {
        boolean silentAgain = state == LinkState.WAITING && silentOpenings > 0;
        if (!open || !(state == LinkState.LOST || silentAgain)) {
            return Long.MAX_VALUE;
        }
        int index = Math.min(silentOpenings, REOPEN_S.length - 1);
        return heardNanos + REOPEN_S[index] * Nanos.PER_SECOND;
    }

    /** When {@link #onTick} has to be called; {@link Long#MAX_VALUE} for never. */
    long deadlineNanos() {
        long deadline = reopenNanos();
        if (state == LinkState.UP) {
            deadline = Math.min(deadline, heardNanos + SILENCE_NANOS);
        } else if (state == LinkState.WAITING && !toldWaiting) {
            deadline = Math.min(deadline, openedNanos + BOOT_NANOS);
        }
        return deadline;
    }

    LinkState state() {
        return state;
    }

    String reason() {
        return reason;
    }

    /** Whether state or reason have changed; asked for once. */
    boolean takeNews() {
        boolean was = news;
        news = false;
        return was;
    }

    /** Whether the link was lost; asked for once. */
    boolean takeLost() {
        boolean was = lost;
        lost = false;
        return was;
    }

    /** Whether the port has to be closed and opened again; asked for once. */
    boolean takeReopen() {
        boolean was = reopen;
        reopen = false;
        return was;
    }
}
