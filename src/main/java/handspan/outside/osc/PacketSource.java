package handspan.outside.osc;

import java.net.InetSocketAddress;
import java.nio.ByteBuffer;

/** Where packets come in: datagrams of a port, or a stream that has been cut into packets. Owns its threads. */
public interface PacketSource extends AutoCloseable {
    /** Told of every packet by a thread of the source, one after the other; must return soon. */
    @FunctionalInterface
    interface Listener {
        /**
         * A packet came.
         *
         * @param packet its bytes from position to limit; good only until this returns
         * @param sender where from
         * @param timeNanos when, on the clock of whoever listens
         */
        void onPacket(ByteBuffer packet, InetSocketAddress sender, long timeNanos);
    }

    /** Where it listens: one of this machine's addresses, and a port. */
    InetSocketAddress address();

    /** The latest trouble in words; empty when there has been none. May be read by any thread. */
    String trouble();

    /** Ends listening; returns when its threads have ended, or soon. */
    @Override
    void close();
}
