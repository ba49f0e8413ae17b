package handspan.command;

/** Lets something happen once an interval. */
final class Pulse {
    private final long intervalNanos;
    private long lastNanos;
    private boolean started;

    Pulse(long intervalNanos) {
        this.intervalNanos = intervalNanos;
    }

    /** Whether the interval has passed since it last said so. */
    boolean isDue(long timeNanos) {
        if (started && timeNanos - lastNanos < intervalNanos) {
            return false;
        }
        started = true;
        lastNanos = timeNanos;
        return true;
    }
}
