package handspan.room.calibrate;

import java.util.ArrayDeque;

/** The latest place at which a hand was still for a while. Owned by one thread. */
final class StillTop {
    private record Seen(long timeNanos, double mm) {}

    private final long spanNanos;
    private final ArrayDeque<Seen> seen = new ArrayDeque<>();
    private boolean known;
    private double mm;
    private long leftNanos;
    private long startNanos;

    StillTop(long spanNanos) {
        this.spanNanos = spanNanos;
    }

    /**
     * Takes a place.
     *
     * @param mostMm what a still hand's places may differ by
     */
    void add(long timeNanos, double placeMm, double mostMm) {
        if (seen.isEmpty()) {
            startNanos = timeNanos;
        }
        seen.addLast(new Seen(timeNanos, placeMm));
        while (seen.getFirst().timeNanos < timeNanos - spanNanos) {
            seen.removeFirst();
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (Seen one : seen) {
            least = Math.min(least, one.mm);
            most = Math.max(most, one.mm);
            sum += one.mm;
        }
        if (timeNanos - startNanos >= spanNanos && most - least <= mostMm) {
            known = true;
            mm = sum / seen.size();
            leftNanos = timeNanos;
        }
    }

    boolean isKnown() {
        return known;
    }

    double mm() {
        return mm;
    }

    /** The last moment at which it was still there. */
    long leftNanos() {
        return leftNanos;
    }

    void forget() {
        known = false;
        seen.clear();
    }
}
