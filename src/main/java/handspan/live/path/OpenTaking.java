package handspan.live.path;

import handspan.number.units.Nanos;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Takes the open light again when the player asks: the mean of one second in which no pitch hand plays and light stands
 * still. Pure: light and time come with the calls. Owned by one thread.
 */
final class OpenTaking {
    /** What became of it. */
    enum Outcome {
        /** A level has been found. */
        TAKEN,
        /** A hand played all the time. */
        HAND,
        /** Light did not stand still. */
        UNSTEADY
    }

    /** A hand that turns round has equal means in two halves, but not in four parts. */
    private static final int PARTS = 4;

    private static final long PART_NANOS = Nanos.PER_SECOND / PARTS;
    private static final long PATIENCE_NANOS = 10 * Nanos.PER_SECOND;

    /** The means of the parts may differ by so much, ln of resistance. */
    private static final double STEADY_LN = 0.05;

    /** Its readings may differ by so much: lamps that flicker by a third do, a moving hand does more. */
    private static final double SPREAD_LN = 0.5;

    private boolean asked;
    private boolean begun;
    private boolean handSeen;
    private long askedNanos;
    private long fromNanos;
    private double lowestLn;
    private double highestLn;
    private final double[] sumLn = new double[PARTS];
    private final int[] count = new int[PARTS];

    /** The player asks. */
    void ask() {
        asked = true;
        begun = false;
        askedNanos = Long.MIN_VALUE;
    }

    /**
     * Takes a reading into account.
     *
     * @return how it ended; null while it goes on or nobody has asked
     */
    @Nullable
    Outcome onLight(double ln, long timeNanos, boolean pitchHand) {
        if (!asked) {
            return null;
        }
        askedNanos = askedNanos == Long.MIN_VALUE ? timeNanos : askedNanos;
        handSeen = pitchHand;
        if (pitchHand || !begun) {
            begun = !pitchHand;
            begin(timeNanos);
        }
        long sinceNanos = timeNanos - fromNanos;
        if (begun && sinceNanos >= PARTS * PART_NANOS && fewestInAPart() > 0) {
            if (partsDifferLn() <= STEADY_LN && highestLn - lowestLn <= SPREAD_LN) {
                asked = false;
                return Outcome.TAKEN;
            }
            begin(timeNanos);
            sinceNanos = 0;
        }
        if (timeNanos - askedNanos >= PATIENCE_NANOS) {
            asked = false;
            return handSeen ? Outcome.HAND : Outcome.UNSTEADY;
        }
        int part = (int) Math.min(PARTS - 1, sinceNanos / PART_NANOS);
        sumLn[part] += ln;
        count[part]++;
        lowestLn = Math.min(lowestLn, ln);
        highestLn = Math.max(highestLn, ln);
        return null;
    }

    private void begin(long timeNanos) {
        fromNanos = timeNanos;
        lowestLn = Double.POSITIVE_INFINITY;
        highestLn = Double.NEGATIVE_INFINITY;
        Arrays.fill(sumLn, 0);
        Arrays.fill(count, 0);
    }

    private int fewestInAPart() {
        return Arrays.stream(count).min().orElse(0);
    }

    private double partsDifferLn() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < PARTS; i++) {
            low = Math.min(low, sumLn[i] / count[i]);
            high = Math.max(high, sumLn[i] / count[i]);
        }
        return high - low;
    }

    /** The level that was found. */
    double takenLn() {
        return Arrays.stream(sumLn).sum() / Arrays.stream(count).sum();
    }
}
