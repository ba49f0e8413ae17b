package handspan.instrument.line;

import java.util.EnumMap;
import java.util.Map;

/** Counts rejected lines by reason. Owned by one thread; {@link #byReason()} gives a copy to others. */
public final class Rejections {
    private static final class Tally {
        private long count;
    }

    private final Map<Rejection, Tally> tallies = new EnumMap<>(Rejection.class);
    private long total;

    /** Starts at none. */
    public Rejections() {
        for (Rejection reason : Rejection.values()) {
            tallies.put(reason, new Tally());
        }
    }

    /** Counts one. */
    public void count(Rejection reason) {
        Tally tally = tallies.get(reason);
        if (tally != null) {
            tally.count++;
            total++;
        }
    }

    /** How many in all. */
    public long total() {
        return total;
    }

    /** Those that have happened. */
    public Map<Rejection, Long> byReason() {
        Map<Rejection, Long> counts = new EnumMap<>(Rejection.class);
        tallies.forEach((reason, tally) -> {
            if (tally.count > 0) {
                counts.put(reason, tally.count);
            }
        });
        return counts;
    }
}
