package handspan.instrument.survey;

import handspan.number.units.Nanos;

/** Times between readings: their rate and how even they are. Allocates nothing. Owned by one thread. */
public final class Intervals {
    private long count;
    private long firstNanos;
    private long lastNanos;
    private double sumOfSquaresMs;

    /** Takes the time of a reading. */
    public void onReading(long timeNanos) {
        if (count == 0) {
            firstNanos = timeNanos;
        } else {
            double intervalMs = Nanos.toMs(timeNanos - lastNanos);
            sumOfSquaresMs += intervalMs * intervalMs;
        }
        lastNanos = timeNanos;
        count++;
    }

    /** Readings so far. */
    public long count() {
        return count;
    }

    /** From the first to the last reading. */
    public long spanNanos() {
        return lastNanos - firstNanos;
    }

    /** Readings a second; 0 until there are two. */
    public double ratePerS() {
        return spanNanos() <= 0 ? 0 : (count - 1) / Nanos.toSeconds(spanNanos());
    }

    /** Standard deviation of the interval, ms. */
    public double jitterMs() {
        if (count < 3) {
            return 0;
        }
        double meanMs = Nanos.toMs(spanNanos()) / (count - 1);
        return Math.sqrt(Math.max(0, sumOfSquaresMs / (count - 1) - meanMs * meanMs));
    }
}
