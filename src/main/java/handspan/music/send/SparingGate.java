package handspan.music.send;

import handspan.number.units.Nanos;

/** Lets the values of one line through as sparingly as it is told. Pure: time comes with the calls. One thread only. */
public final class SparingGate {
    private final Sparing sparing;
    private final long intervalNanos;
    private boolean any;
    private double first;
    private double second;
    private long nextNanos;

    /** A gate that has let nothing through yet. */
    public SparingGate(Sparing sparing) {
        this.sparing = sparing;
        this.intervalNanos = sparing.mostPerS() == 0 ? 0 : Math.round(Nanos.PER_SECOND / sparing.mostPerS());
    }

    /**
     * Whether values are to be sent now; if so, they count as sent.
     *
     * @param newFirst as it would be sent
     * @param newSecond the second of two; else always the same
     * @param always whether they go out whatever was sent before
     */
    public boolean passes(double newFirst, double newSecond, long timeNanos, boolean always) {
        if (!always && any && (isUnchanged(newFirst, newSecond) || timeNanos < nextNanos)) {
            return false;
        }
        // counted from when it was due, so that the limit is reached on average; but a pause saves nothing up
        boolean afterPause = !any || timeNanos - nextNanos > intervalNanos;
        nextNanos = (afterPause ? timeNanos : nextNanos) + intervalNanos;
        any = true;
        first = newFirst;
        second = newSecond;
        return true;
    }

    private boolean isUnchanged(double newFirst, double newSecond) {
        return sparing.onChange()
                && Math.abs(newFirst - first) <= sparing.deadBand()
                && Math.abs(newSecond - second) <= sparing.deadBand();
    }
}
