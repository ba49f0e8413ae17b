package handspan.live.path;

import handspan.music.level.LevelCurve;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;

/**
 * The one place that makes silence. Open, gain follows what is asked but rises no faster than the level curve allows,
 * from its floor up; closed, it runs down to nothing in a straight line, and faster where a shorter time is asked for
 * on the way. Pure: time comes with the calls. Owned by one thread.
 */
public final class Fade {
    private final double floorGain;
    private final double ceilingGain;
    private final double riseDbPerMs;
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
            double most = gain01 <= 0 ? floorGain : Math.max(gain01, floorGain) * Decibels.gain(riseDbPerMs * sinceMs);
            gain01 = Math.max(0, Math.min(Math.min(wanted01, ceilingGain), most));
            return gain01;
        }
        if (!closed || closingNanos < fadeNanos) {
            closed = true;
            fadeNanos = closingNanos;
            closedGain01 = gain01;
            closedNanos = timeNanos;
        }
        double left = fadeNanos <= 0 ? 0 : 1 - (timeNanos - closedNanos) / (double) fadeNanos;
        gain01 = Math.max(0, Math.min(gain01, closedGain01 * left));
        return gain01;
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
