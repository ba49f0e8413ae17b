package handspan.live.path;

/**
 * What goes on when a hand has left: nothing, or what it played last, until the next hand comes. Whatever closes the
 * sound ends it for good. Pure. Owned by one thread.
 */
final class Sustain {
    private boolean holds;
    private boolean played;
    private boolean held;

    /**
     * Nothing is held at first.
     *
     * @param holds whether the player wants it
     */
    Sustain(boolean holds) {
        this.holds = holds;
    }

    /** The player has chosen otherwise; what is held while nothing shall be goes with the next look. */
    void holding(boolean on) {
        holds = on;
    }

    /**
     * A hand plays or does not, with the sound open.
     *
     * @return whether it has just left
     */
    boolean follow(boolean plays) {
        boolean left = played && !plays;
        held = !plays && holds && (held || left);
        played = plays;
        return left;
    }

    /** The sound is closed: what is held ends, and a hand that leaves now leaves nothing. */
    void end() {
        held = false;
        played = false;
    }

    /** Whether a hand that has left goes on sounding. */
    boolean isHeld() {
        return held;
    }
}
