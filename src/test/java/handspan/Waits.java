package handspan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Waiting for other threads, programs and networks, for a bounded time. */
public final class Waits {
    private static final long LONGEST_NANOS = 20_000_000_000L;
    private static final long LOOK_EVERY_NANOS = 1_000_000L;

    private Waits() {}

    /** The same where there is nothing to add. */
    public static void until(BooleanSupplier happened) {
        until(happened, () -> "nothing to add");
    }

    /**
     * Waits until something has happened; the test fails where it has not within 20 s. What has been seen once has
     * happened, though it may have passed since.
     */
    public static void until(BooleanSupplier happened, Supplier<String> words) {
        long start = System.nanoTime();
        boolean seen = happened.getAsBoolean();
        while (!seen && System.nanoTime() - start < LONGEST_NANOS) {
            LockSupport.parkNanos(LOOK_EVERY_NANOS);
            seen = happened.getAsBoolean();
        }
        assertTrue(seen, () -> "has not happened within 20 s: " + words.get());
    }
}
