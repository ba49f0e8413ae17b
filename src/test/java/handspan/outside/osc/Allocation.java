package handspan.outside.osc;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.function.IntConsumer;

/** Counts the bytes a piece of code takes from the heap. */
public final class Allocation {
    private static final int WARM_UP_RUNS = 20_000;

    private Allocation() {}

    /** Bytes the calling thread allocates in {@code runs} runs, after some that don't count. */
    public static long bytesOf(int runs, IntConsumer code) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long self = Thread.currentThread().getId();
        for (int i = 0; i < WARM_UP_RUNS; i++) {
            code.accept(i);
        }
        long before = threads.getThreadAllocatedBytes(self);
        for (int i = 0; i < runs; i++) {
            code.accept(i);
        }
        return threads.getThreadAllocatedBytes(self) - before;
    }
}
