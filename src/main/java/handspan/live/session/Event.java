package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.music.send.PlayState;
import handspan.room.Hold;
import handspan.room.calibrate.Step;
import java.util.Optional;

/**
 * What has happened, in order.
 *
 * @param number counts up from 1 within a session
 * @param timeNanos when
 * @param what it was
 */
public record Event(long number, long timeNanos, What what) {
    /** Kinds of events. */
    public sealed interface What {}

    /**
     * The link changed.
     *
     * @param state to what
     * @param reason in words; may be empty
     */
    public record Linked(LinkState state, String reason) implements What {}

    /** A line shape was learned. */
    public record Learned(LineShape shape) implements What {}

    /** The player is asked for a step. */
    public record Asked(Step step) implements What {}

    /**
     * A step was captured.
     *
     * @param step which
     * @param hold what was captured; empty for a rest without a reading
     * @param fromNanos start of the hold
     * @param toNanos end of the hold
     */
    public record Captured(Step step, Optional<Hold> hold, long fromNanos, long toNanos) implements What {}

    /**
     * A step can't be captured yet.
     *
     * @param step which
     * @param reason in words, with figures
     */
    public record NotYet(Step step, String reason) implements What {}

    /** What the instrument is doing changed. */
    public record Playing(PlayState state) implements What {}

    /** A mistake in this program: what sounded has been silenced, what ran has ended. */
    public record Failed(String reason) implements What {}

    /** A command could not be carried out. */
    public record Refused(String reason) implements What {}
}
