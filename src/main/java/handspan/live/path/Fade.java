package handspan.live.path;

import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;

/**
 * The one place that makes silence. Open, gain follows what is asked but rises no faster than the level curve allows,
 * from its floor up; closed, it runs down to nothing in a straight line, and faster where a shorter time is asked for
 * on the way. Pure: time comes with the calls. Owned by one thread.
 *
 * <p>With another level curve, what sounds passes over: upward as ever, by the new curve's rise, but from the lower of
 * both floors until it has caught up; downward no faster than a fade of {@link Leaving#SHORT_MS} would take it. That
 * long at most a gain that sounded already is above a ceiling that was lowered; it has equalled that of a fade begun
 * with the new curve after that time, or after the time that the new rise takes from the lower floor to what is asked,
 * whichever is longer.
 */
public final class Fade {
    private static final double PASSING_NANOS = Leaving.SHORT_MS * Nanos.PER_MS;

    private double floorGain;
    private double ceilingGain;
    private double riseDbPerMs;
    private double lowestGain;
    private double passedGain01;
    private long passedNanos;
    private double gain01;
    private long lastNanos;
    private double closedGain01;
    private long closedNanos;
    private long fadeNanos;
    private boolean closed = true;

    /**
     * A fade, silent at first.
     *
     * @param curve floor, ceiling and rise
     */
    public Fade(LevelCurve curve) {
        this.floorGain = Decibels.gain(curve.floorDb());
        this.ceilingGain = curve.ceilingGain01();
        this.riseDbPerMs = curve.riseDbPerMs();
        this.lowestGain = floorGain;
    }

    /** Follows another level curve from now on; what sounds passes over into it. */
    public void use(LevelCurve curve) {
        floorGain = Decibels.gain(curve.floorDb());
        ceilingGain = curve.ceilingGain01();
        riseDbPerMs = curve.riseDbPerMs();
        lowestGain = isSilent() ? floorGain : Math.min(lowestGain, floorGain);
        passedGain01 = gain01;
        passedNanos = lastNanos;
    }

    /**
     * The gain at a time.
     *
     * @param wanted01 what the level hand asks for
     * @param open whether sound is let through
     * @param closingNanos how long it takes to run down when it is not
     * @param timeNanos not before the last call's
     * @return 0..ceiling
     */
    public double next(double wanted01, boolean open, long closingNanos, long timeNanos) {
        double sinceMs = Nanos.toMs(Math.max(0, timeNanos - lastNanos));
        lastNanos = timeNanos;
        if (open) {
            closed = false;
            double most =
                    gain01 <= 0 ? lowestGain : Math.max(gain01, lowestGain) * Decibels.gain(riseDbPerMs * sinceMs);
            double asked01 = Math.max(0, Math.min(wanted01, ceilingGain));
            if (asked01 <= most) {
                lowestGain = floorGain;
            }
            gain01 = Math.min(Math.max(asked01, Math.min(gain01, passing01(timeNanos))), most);
            return gain01;
        }
        if (!closed || closingNanos < fadeNanos) {
            closed = true;
            fadeNanos = closingNanos;
            closedGain01 = gain01;
            closedNanos = timeNanos;
        }
        double left = fadeNanos <= 0 ? 0 : 1 - (timeNanos - closedNanos) / (double) fadeNanos;
        double most01 = Math.max(ceilingGain, passing01(timeNanos));
        gain01 = Math.max(0, Math.min(Math.min(gain01, most01), closedGain01 * left));
        if (gain01 <= 0) {
            lowestGain = floorGain;
        }
        return gain01;
    }

    /** What sounded when the level curve was changed, running down. */
    private double passing01(long timeNanos) {
        return Math.max(0, passedGain01 * (1 - (timeNanos - passedNanos) / PASSING_NANOS));
    }

    /** The gain of the last call. */
    public double gain01() {
        return gain01;
    }

    /** Whether it is closed and has run down. */
    public boolean isSilent() {
        return closed && gain01 <= 0;
    }
}
