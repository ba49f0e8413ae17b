package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waits for another thread or the network, for a bounded time. */
final class Wait {
    private static final long LONGEST_NANOS = 10_000_000_000L;
    private static final long LOOK_EVERY_NANOS = 500_000L;

    private Wait() {}

    static void until(BooleanSupplier happened) {
        long start = System.nanoTime();
        while (!happened.getAsBoolean() && System.nanoTime() - start < LONGEST_NANOS) {
            LockSupport.parkNanos(LOOK_EVERY_NANOS);
        }
        assertTrue(happened.getAsBoolean(), "has not happened within 10 s");
    }
}
