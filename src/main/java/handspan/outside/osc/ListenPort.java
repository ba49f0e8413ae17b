package handspan.outside.osc;

import java.io.IOException;
import java.net.InetAddress;

/** What ports that are listened on have in common, however packets come. */
final class ListenPort {
    private static final int MOST = 65_535;
    private static final long JOIN_MILLIS = 1_000;

    private ListenPort() {}

    /** @throws IllegalArgumentException unless a port has that number, or any that is free is meant by 0 */
    static void check(int port) {
        if (port < 0 || port > MOST) {
            throw new IllegalArgumentException("port " + port + " (0..65535): 0 takes any that is free");
        }
    }

    /** Why a port can't be had, with what to do. */
    static IOException refused(String protocol, InetAddress host, int port, IOException why) {
        return new IOException(
                protocol + " port " + port + " at " + host.getHostAddress() + " can't be opened (" + why.getMessage()
                        + "): close what listens there, or name another port",
                why);
    }

    /** Waits for a receiving thread that has been told to end, unless it is the one that waits. */
    static void join(Thread thread) {
        if (Thread.currentThread() == thread) {
            return;
        }
        try {
            thread.join(JOIN_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
