package handspan.wiring;

import handspan.number.units.Nanos;
import handspan.outside.take.TakeIndex;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A recording that runs by a clock and can be paused and taken up elsewhere. Pure but for the file that it reads: time
 * comes with the calls, and {@link #next} says what to do. Owned by one thread.
 *
 * <p>Each pause and each jump is a break, told before anything of the other place comes; that place comes no sooner
 * than {@link #FADE_NANOS} later, so that what sounded has faded by then.
 */
final class TakeRun {
    /** From a break to the next line: more than the 60 ms in which sound goes when it is closed. */
    static final long FADE_NANOS = 150 * Nanos.PER_MS;

    /** Lines later than this were kept from coming, as by a machine that slept: the recording waits for that. */
    private static final long MOST_LATE_NANOS = Nanos.PER_SECOND;

    private static final String PAUSED = "paused";
    private static final String ELSEWHERE = "going to another place of the recording";
    private static final String ENDED = "at the end of the recording";

    /** What to do now. */
    sealed interface Turn {
        /** Look again at a moment, {@link Long#MAX_VALUE} for when it is told of something. */
        record Wait(long untilNanos) implements Turn {}

        /** These bytes come now. */
        @SuppressWarnings("ArrayRecordComponent") // made for one reader, never compared
        record Chunk(byte[] bytes) implements Turn {}

        /** Lines stop for now, on purpose. */
        record Break(String words) implements Turn {}

        /** There is no more. */
        record Over() implements Turn {}
    }

    private final TakeSource source;
    private final boolean stays;
    private final Supplier<@Nullable TakeIndex> known;
    private RunClock clock;
    private boolean running = true;
    private boolean ended;
    private boolean given;
    private long wantedMicros = -1;
    private long brokenNanos = Long.MIN_VALUE / 2;
    private String breakWords = "";

    /**
     * A run from the source's first line on.
     *
     * @param source read by this alone from now on
     * @param stays whether it waits at its end to be taken elsewhere; else it is over there
     * @param known how long the recording is, and how its places are found, once that is known; null before
     */
    TakeRun(TakeSource source, boolean stays, Supplier<@Nullable TakeIndex> known) {
        this.source = source;
        this.stays = stays;
        this.known = known;
        this.clock = RunClock.at(source.beginMicros());
    }

    /** The clock as it is now. */
    RunClock clock() {
        return clock;
    }

    /** Whether it goes on, or would if it were not at its end. */
    boolean isRunning() {
        return running;
    }

    /** Whether it stands at its end. */
    boolean isEnded() {
        return ended;
    }

    /** Somebody reads from now on who may have missed what came before. */
    void begin() {
        source.again();
    }

    /** Stops where it is, or goes on; at its end, from the start. */
    void turn(long nowNanos) {
        if (running && !ended) {
            pause(nowNanos);
        } else {
            goOn();
        }
    }

    /** Stops where it is. */
    void pause(long nowNanos) {
        if (running) {
            running = false;
            clock = clock.stopped(nowNanos);
            broken(PAUSED);
        }
    }

    /** Goes on from where it is; at its end, from the start. */
    void goOn() {
        running = true;
        if (ended) {
            jump(0);
        }
    }

    /** Goes to a place, and on from there if it runs. */
    void jump(long micros) {
        TakeIndex index = known.get();
        long most = index == null ? Long.MAX_VALUE : index.lengthMicros();
        wantedMicros = Math.max(0, Math.min(micros, most));
        clock = RunClock.at(wantedMicros);
        ended = false;
        broken(running ? ELSEWHERE : PAUSED);
    }

    private void broken(String words) {
        if (given) {
            breakWords = words;
        }
    }

    /** What to do at a moment. */
    Turn next(long nowNanos) {
        if (!breakWords.isEmpty()) {
            return broke(nowNanos);
        }
        if (wantedMicros >= 0) {
            find();
            // finding it may have taken a while
            return new Turn.Wait(nowNanos);
        }
        if (!running || ended) {
            return new Turn.Wait(Long.MAX_VALUE);
        }
        if (!clock.runs()) {
            clock = clock.from(Math.max(nowNanos, brokenNanos + FADE_NANOS));
        }
        return source.nextMicros() == Long.MAX_VALUE ? atEnd(nowNanos) : due(nowNanos);
    }

    private Turn due(long nowNanos) {
        long dueNanos = clock.dueNanos(source.nextMicros());
        if (dueNanos > nowNanos) {
            return new Turn.Wait(dueNanos);
        }
        if (nowNanos - dueNanos > MOST_LATE_NANOS) {
            clock = clock.later(nowNanos - dueNanos);
        }
        given = true;
        return new Turn.Chunk(source.next());
    }

    private Turn atEnd(long nowNanos) {
        if (!stays) {
            return new Turn.Over();
        }
        ended = true;
        clock = clock.stopped(nowNanos);
        broken(ENDED);
        return new Turn.Wait(nowNanos);
    }

    private Turn broke(long nowNanos) {
        String words = breakWords;
        breakWords = "";
        given = false;
        brokenNanos = nowNanos;
        source.again();
        return new Turn.Break(words);
    }

    private void find() {
        TakeIndex index = known.get();
        source.goTo(wantedMicros, index == null ? source.start() : index.before(wantedMicros));
        wantedMicros = -1;
    }
}
