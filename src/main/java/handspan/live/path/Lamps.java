package handspan.live.path;

import handspan.number.units.Nanos;
import java.util.Arrays;

/**
 * How much brighter the lamps are than usual, as far as it can be known: a hand that covers the sensor under a
 * spotlight reads like an open sensor in usual light. Light is the ln of resistance over the open level, brighter
 * positive. Pure: light and time come with the calls. Owned by one thread.
 *
 * <p>Known are: the brightest reading since (a hand only takes light away), what lamps took away when they failed, and
 * what a jump that was too quick for a hand gave back; the hand is taken to stand still over the quarter of a second
 * around each. They are taken as usual again after a fall by most of the surplus within a tenth of a second, as fast as
 * the cell shows lamps that go out, or when it is darker than under a covering hand. A hand that closes within 0.5 s
 * falls as fast, so this can be wrong; the other way it would stay muted when lamps are back.
 */
final class Lamps {
    /** A surplus under this is within what the measuring by a moving hand misses, ln of resistance. */
    private static final double SURE_LN = 0.8;

    private static final double MOST01 = 0.65;
    private static final double BELOW_LN = 0.35;
    private static final long SAMPLE_NANOS = 50 * Nanos.PER_MS;

    /** The oldest is 250 to 300 ms old: from before a fall that takes 150 ms. */
    private static final int SAMPLES = 6;

    private static final long SETTLING_NANOS = 200 * Nanos.PER_MS;
    private static final long DARK_NANOS = 500 * Nanos.PER_MS;
    private static final long NEVER = Long.MIN_VALUE;

    private final double spanLn;
    private double surplusLn;
    private final double[] sampleLn = new double[SAMPLES];
    private int newest;
    private long sampledNanos = NEVER;
    private double beforeDarkLn;
    private long darkNanos = NEVER;
    private boolean darkMeasured;
    private double beforeJumpLn;
    private long jumpNanos = NEVER;

    /** Usual lamps, over a sensor with so much between covered and open. */
    Lamps(double spanLn) {
        this.spanLn = spanLn;
    }

    /**
     * A reading.
     *
     * @param dark whether it is darker than a hand makes it
     */
    void onLight(double overOpenLn, long timeNanos, boolean dark) {
        if (dark) {
            dark(overOpenLn, timeNanos);
        } else {
            darkNanos = NEVER;
            darkMeasured = false;
        }
        if (jumpNanos != NEVER && timeNanos - jumpNanos >= SETTLING_NANOS) {
            jumpNanos = NEVER;
            surplusLn += overOpenLn - beforeJumpLn;
        }
        boolean fell = Math.max(sample(0), sample(1)) - overOpenLn > MOST01 * surplusLn;
        boolean below = overOpenLn < -spanLn + surplusLn - BELOW_LN;
        if (surplusLn > SURE_LN && jumpNanos == NEVER && (fell || below)) {
            surplusLn = 0;
        }
        sample(overOpenLn, timeNanos);
    }

    private void dark(double overOpenLn, long timeNanos) {
        if (darkNanos == NEVER) {
            darkNanos = timeNanos;
            beforeDarkLn = sample(SAMPLES - 1);
        }
        if (!darkMeasured && timeNanos - darkNanos >= DARK_NANOS) {
            darkMeasured = true;
            surplusLn += overOpenLn - beforeDarkLn;
        }
    }

    private double sample(int back) {
        return sampleLn[(newest + SAMPLES - back) % SAMPLES];
    }

    private void sample(double overOpenLn, long timeNanos) {
        if (sampledNanos == NEVER) {
            Arrays.fill(sampleLn, overOpenLn);
            sampledNanos = timeNanos;
        } else if (timeNanos - sampledNanos >= SAMPLE_NANOS) {
            newest = (newest + 1) % SAMPLES;
            sampleLn[newest] = overOpenLn;
            sampledNanos = timeNanos;
        }
    }

    /** It is brighter than open, by so much at least. */
    void bright(double overOpenLn) {
        surplusLn = Math.max(surplusLn, overOpenLn);
        jumpNanos = NEVER;
    }

    /** Light jumped up from a level, too quickly for a hand; where it ends will be seen. */
    void jump(double fromLn, long timeNanos) {
        if (jumpNanos == NEVER) {
            jumpNanos = timeNanos;
            beforeJumpLn = fromLn;
        }
    }

    /** Whether they are brighter than usual, or it is not known yet. */
    boolean brighter() {
        return jumpNanos != NEVER || surplusLn > SURE_LN;
    }

    /** They are as usual. */
    void usual() {
        surplusLn = 0;
        jumpNanos = NEVER;
    }

    /** Nothing was heard for a while. */
    void onLost() {
        sampledNanos = NEVER;
        jumpNanos = NEVER;
    }
}
