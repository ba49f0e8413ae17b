package handspan.bench;

import com.sun.management.UnixOperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What this process holds, looked at again and again: heap in use after a collection, threads, descriptors. */
final class Resources {
    /** One look. */
    record Look(String when, double heapMb, int threads, long descriptors) {}

    private static final int COLLECTIONS = 3;

    private final List<Look> looks = new ArrayList<>();

    void look(String when) {
        for (int i = 0; i < COLLECTIONS; i++) {
            System.gc();
        }
        looks.add(new Look(
                when,
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6,
                ManagementFactory.getThreadMXBean().getThreadCount(),
                ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix
                        ? unix.getOpenFileDescriptorCount()
                        : 0));
    }

    List<Look> looks() {
        return List.copyOf(looks);
    }

    /** By how much the heap of the last third is above that of the first, means, MB. */
    double heapGrowthMb() {
        int third = looks.size() / 3;
        return mean(looks.subList(looks.size() - third, looks.size())) - mean(looks.subList(0, third));
    }

    private static double mean(List<Look> of) {
        return of.stream().mapToDouble(Look::heapMb).average().orElseThrow();
    }

    /** Whether a count was the same at every look. */
    boolean isConstant(ToDoubleFunction<Look> count) {
        return looks.stream().mapToDouble(count).distinct().count() == 1;
    }
}
