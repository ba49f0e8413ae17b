package handspan.hand.smooth;

/**
 * Where the hand is, from readings that wobble: steady while it is still, close behind while it moves or swings.
 *
 * <p>{@link StillOrMoving} follows it, {@link VibratoSense} tells it of a vibrato, which is too small to be told from
 * noise by single readings. A moving hand is placed a little ahead of its last reading, which makes up for a part of
 * the way that comes after. Owned by one thread.
 */
public final class HandSmoother {
    /** So far ahead, in readings: as far as goes without running over the end of a quick move by a twentieth. */
    private static final double AHEAD_READINGS = 0.25;

    /** Where noise hides the speed, the less so. */
    private static final double SURE_INDEX = 1;

    private static final int MOST_BEATS = 4;

    private final StillOrMoving motion;
    private double aheadS;
    private VibratoSense vibrato;
    private SmoothSettings settings;
    private boolean started;
    private double swing01;

    /**
     * A smoother.
     *
     * @param settings for a still hand
     */
    public HandSmoother(SmoothSettings settings) {
        this.settings = settings;
        this.motion = new StillOrMoving(settings);
        this.vibrato = vibrato(settings);
        this.aheadS = aheadS(settings);
    }

    private static double aheadS(SmoothSettings settings) {
        double index = StillOrMoving.trackingIndex(settings.worstNoiseMm(), settings.ratePerS());
        return AHEAD_READINGS * Math.min(1, index / SURE_INDEX) / settings.ratePerS();
    }

    private static VibratoSense vibrato(SmoothSettings settings) {
        return new VibratoSense(settings.noise(), settings.ratePerS());
    }

    /** Goes on with other settings, from where it is. */
    public void use(SmoothSettings others) {
        if (!others.noise().equals(settings.noise()) || others.ratePerS() != settings.ratePerS()) {
            vibrato = vibrato(others);
        }
        settings = others;
        motion.use(others);
        aheadS = aheadS(others);
    }

    /**
     * Takes a reading.
     *
     * @param inputMm position in mm
     * @param intervalS time since the last reading, s, above 0; not used for the first
     * @return smoothed position in mm
     */
    public double next(double inputMm, double intervalS) {
        if (!started) {
            started = true;
            swing01 = vibrato.next01(inputMm, intervalS);
            motion.start(inputMm);
            return inputMm;
        }
        double expectedMm = expectedMm(intervalS);
        motion.next(inputMm, intervalS, swing01);
        // a wild reading is no swing
        watch(expectedMm + motion.sure01() * (inputMm - expectedMm), intervalS);
        return motion.mm() + aheadS * motion.mmPerS();
    }

    /** The watch for vibrato goes by an even beat: where readings are missing the last one lasts. */
    private void watch(double mm, double intervalS) {
        int beats = (int) Math.max(1, Math.min(MOST_BEATS, Math.rint(intervalS * settings.ratePerS())));
        for (int i = 0; i < beats; i++) {
            swing01 = vibrato.next01(mm, intervalS / beats);
        }
    }

    /** Forgets all; the next reading is taken as it is. */
    public void reset() {
        started = false;
        vibrato.reset();
    }

    /** Where a reading is to be expected so long after the last one, mm. */
    public double expectedMm(double intervalS) {
        return motion.mm() + intervalS * motion.mmPerS();
    }

    /** The hand's speed, mm/s, away from the sensor positive. */
    public double speedMmPerS() {
        return started ? motion.mmPerS() : 0;
    }
}
