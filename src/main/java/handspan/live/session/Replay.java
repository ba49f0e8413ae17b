package handspan.live.session;

import java.util.function.Predicate;

/**
 * Runs an engine over bytes whose times are known beforehand, as fast as the machine can: the same calls that a live
 * session makes, in a plain loop, with the times of the recording.
 */
public final class Replay {
    /** Bytes with their times, in order. */
    public interface TimedBytes {
        /** Time of the next chunk; {@link Long#MAX_VALUE} at the end. */
        long nextNanos();

        /** The next chunk. */
        byte[] next();
    }

    private final Engine engine;
    private final TimedBytes source;
    private boolean linked;

    /**
     * A replay.
     *
     * @param engine owned by this replay from now on
     * @param source the bytes
     */
    public Replay(Engine engine, TimedBytes source) {
        this.engine = engine;
        this.source = source;
    }

    /**
     * Runs on to the end, or until the watcher has seen enough; a later call goes on from there.
     *
     * @param goesOn asked after each chunk; false ends the run early
     */
    public void run(Predicate<Engine> goesOn) {
        long timeNanos = source.nextNanos();
        if (!linked) {
            linked = true;
            engine.onLinkUp(timeNanos == Long.MAX_VALUE ? 0 : timeNanos);
        }
        while (source.nextNanos() != Long.MAX_VALUE) {
            timeNanos = source.nextNanos();
            tickUntil(engine, timeNanos);
            byte[] chunk = source.next();
            engine.onBytes(chunk, chunk.length, timeNanos);
            if (!goesOn.test(engine)) {
                return;
            }
        }
        engine.onEnd(engine.timeNanos());
    }

    /** Makes the ticks that fall before a time. */
    public static void tickUntil(Engine engine, long timeNanos) {
        long deadline = engine.nextDeadlineNanos();
        while (deadline <= timeNanos) {
            // what fell due in a silence that a reading has ended is made now, as a live session makes it
            engine.onTick(Math.max(deadline, engine.timeNanos()));
            long next = engine.nextDeadlineNanos();
            if (next <= deadline) {
                throw new IllegalStateException("the deadline did not move on from " + deadline + " ns");
            }
            deadline = next;
        }
    }
}
