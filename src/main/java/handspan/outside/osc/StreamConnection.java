package handspan.outside.osc;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;

/** A connection to a receiver. One thread uses it; {@link #wake} and {@link #abort} are for others. */
interface StreamConnection extends Closeable {
    /**
     * Writes what can be written at once.
     *
     * @return whether that was all
     * @throws IOException if the connection is broken
     */
    boolean write(ByteBuffer bytes) throws IOException;

    /**
     * Writes the rest, waiting for a receiver that is slow.
     *
     * @throws IOException if the connection is broken, has been ended by the receiver, or it takes seconds
     */
    void finish(ByteBuffer bytes) throws IOException;

    /**
     * Waits until woken or until the time is over.
     *
     * @throws IOException if the receiver has ended the connection
     */
    void await(long millis) throws IOException;

    /** Ends a wait, now or the next. */
    void wake();

    /** Breaks the connection: a write that waits fails. */
    void abort();
}
