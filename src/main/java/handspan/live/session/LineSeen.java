package handspan.live.session;

import handspan.instrument.line.Reading;
import org.jspecify.annotations.Nullable;

/**
 * A line that came, and what became of it.
 *
 * @param timeNanos arrival; of a rejected line, when it was judged
 * @param reading its numbers, in the order of the snapshot's line shape; null where the line was rejected
 * @param fate what became of it
 */
public record LineSeen(long timeNanos, @Nullable Reading reading, Fate fate) {
    /** What can become of a line. */
    public enum Fate {
        /** A reading was made of it and taken. */
        TAKEN,
        /** A reading was made of it, and the pitch hand's number held back as a spike. */
        HELD_BACK,
        /** No reading could be made of it. */
        REJECTED
    }

    /** Checks that it is a rejected line or a reading. */
    public LineSeen {
        if ((reading == null) != (fate == Fate.REJECTED)) {
            throw new IllegalArgumentException("a line of fate " + fate + (reading == null ? " without" : " with")
                    + " a reading (rejected without, else with)");
        }
    }
}
