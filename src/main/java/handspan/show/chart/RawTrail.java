package handspan.show.chart;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.live.session.LineSeen;
import handspan.live.session.Recent;
import handspan.live.session.Snapshot;
import org.jspecify.annotations.Nullable;

/**
 * What one number of the lines was in the last ten seconds, as the board printed it, and which of it was not taken.
 * Owned by one thread.
 */
final class RawTrail {
    /** A measurement. */
    static final int TAKEN = 0;

    /** Held back as a spike. */
    static final int HELD_BACK = 1;

    /** The line came, and says of this number that there is none. */
    static final int NO_READING = 2;

    /** The line could not be read. */
    static final int REJECTED = 3;

    private final TimeRing ring = new TimeRing(LastSeconds.SPAN_NANOS, LastSeconds.MOST);
    private final String channel;
    private final @Nullable Sensor sensor;
    private final boolean gated;
    private long next;
    private long nowNanos;
    private long version;
    private double latest = Double.NaN;

    /**
     * A trail of nothing yet.
     *
     * @param channel label or position
     * @param sensor knows which numbers are no readings; null where it is not known yet
     * @param gated whether spikes of this number are held back
     */
    RawTrail(String channel, @Nullable Sensor sensor, boolean gated) {
        this.channel = channel;
        this.sensor = sensor;
        this.gated = gated;
    }

    void onSnapshot(Snapshot snapshot) {
        Recent<LineSeen> seen = snapshot.seen();
        if (seen.next() < next) {
            // another session
            ring.clear();
            next = 0;
        }
        if (snapshot.shape().isPresent()) {
            int slot = snapshot.shape()
                    .map((LineShape shape) -> shape.indexOf(channel))
                    .orElse(-1);
            for (long i = Math.max(next, seen.first()); i < seen.next(); i++) {
                take(seen.at(i), slot);
            }
        }
        next = seen.next();
        boolean moved = snapshot.timeNanos() != nowNanos;
        nowNanos = snapshot.timeNanos();
        version += moved && !ring.isEmpty() ? 1 : 0;
    }

    private void take(LineSeen line, int slot) {
        Reading reading = line.reading();
        if (reading == null) {
            ring.add(line.timeNanos(), Double.NaN, REJECTED);
        } else if (reading.tells(slot)) {
            double value = reading.has(slot) ? reading.value(slot) : Double.NaN;
            boolean measured = !Double.isNaN(value) && (sensor == null || sensor.hasReading(value));
            boolean held = gated && line.fate() == LineSeen.Fate.HELD_BACK;
            latest = measured ? value : Double.NaN;
            ring.add(line.timeNanos(), value, !measured ? NO_READING : held ? HELD_BACK : TAKEN);
        }
    }

    /** The numbers as printed; NaN where there was none. */
    TimeRun run() {
        return ring.run(nowNanos);
    }

    /** The latest number; NaN where it was no measurement. */
    double latest() {
        return latest;
    }

    String channel() {
        return channel;
    }

    long version() {
        return version;
    }
}
