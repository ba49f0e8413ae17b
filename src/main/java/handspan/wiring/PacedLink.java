package handspan.wiring;

import handspan.live.session.Link;
import handspan.live.session.Replay;
import handspan.number.units.Nanos;
import java.util.function.LongSupplier;

/** A simulation that comes by the clock, as a board would send it. */
final class PacedLink implements Link {
    private final Replay.TimedBytes source;
    private final LongSupplier clockNanos;
    private boolean closed;
    private boolean over;

    PacedLink(Replay.TimedBytes source, LongSupplier clockNanos) {
        this.source = source;
        this.clockNanos = clockNanos;
    }

    @Override
    public synchronized int read(byte[] buffer) {
        try {
            long waitNanos = source.nextNanos() - clockNanos.getAsLong();
            while (!closed && waitNanos > 0 && source.nextNanos() != Long.MAX_VALUE) {
                // an early wake-up by a part of a millisecond is waited out by the next round
                wait(Math.max(1, waitNanos / Nanos.PER_MS));
                waitNanos = source.nextNanos() - clockNanos.getAsLong();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return -1;
        }
        over = source.nextNanos() == Long.MAX_VALUE;
        if (closed || over) {
            return -1;
        }
        byte[] chunk = source.next();
        System.arraycopy(chunk, 0, buffer, 0, Math.min(chunk.length, buffer.length));
        return Math.min(chunk.length, buffer.length);
    }

    @Override
    public synchronized boolean isOver() {
        return over;
    }

    @Override
    public synchronized void close() {
        closed = true;
        notifyAll();
    }
}
