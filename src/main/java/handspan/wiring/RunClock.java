package handspan.wiring;

/**
 * Which place of a recording belongs to which moment. Immutable and pure: time comes with the calls.
 *
 * @param placeMicros the place where it stands, or from which it runs; microseconds from the start of the recording
 * @param sinceNanos from when on it runs
 * @param runs whether it does
 */
record RunClock(long placeMicros, long sinceNanos, boolean runs) {
    private static final long NANOS_PER_MICRO = 1000;

    /** Standing at a place. */
    static RunClock at(long placeMicros) {
        return new RunClock(placeMicros, 0, false);
    }

    /** The place at a moment. */
    long placeMicros(long nowNanos) {
        return runs ? placeMicros + Math.max(0, nowNanos - sinceNanos) / NANOS_PER_MICRO : placeMicros;
    }

    /** When a place of it comes, as long as it runs on as it does. */
    long dueNanos(long micros) {
        return sinceNanos + (micros - placeMicros) * NANOS_PER_MICRO;
    }

    /** Running from a moment on, from the place where it stands. */
    RunClock from(long nanos) {
        return new RunClock(placeMicros, nanos, true);
    }

    /** Standing where it is at a moment. */
    RunClock stopped(long nowNanos) {
        return at(placeMicros(nowNanos));
    }

    /** All later by so much. */
    RunClock later(long nanos) {
        return new RunClock(placeMicros, sinceNanos + nanos, runs);
    }
}
