package handspan.music.level;

import handspan.number.units.Decibels;

/**
 * From place to level: linear in dB from the floor, at the knee, to the ceiling; below the knee linear in gain down to
 * silence, so that level goes to nothing without a step.
 *
 * @param floorDb level at the knee, -120..-20
 * @param ceilingDb level at the loud end and never passed, above the floor, at most 0
 * @param knee01 place of the floor, counted from the quiet end, 0..0.5
 * @param loudFar whether the far end of the zone is the loud one
 * @param riseDbPerMs how fast level may rise, above 0, at most 1000
 * @param leaving what becomes of the sound when the hand leaves
 */
public record LevelCurve(
        double floorDb, double ceilingDb, double knee01, boolean loudFar, double riseDbPerMs, Leaving leaving) {
    /** -60 to -6 dB, loud at the far end, up in a twentieth of a second. */
    public static final LevelCurve USUAL = new LevelCurve(-60, -6, 0.03, true, 1);

    /** Checks ranges. */
    public LevelCurve {
        if (!(floorDb >= -120 && floorDb <= -20)) {
            throw new IllegalArgumentException("level floor of " + floorDb + " dB (-120..-20)");
        }
        if (!(ceilingDb > floorDb && ceilingDb <= 0)) {
            throw new IllegalArgumentException("level ceiling of " + ceilingDb + " dB (above the floor, at most 0)");
        }
        if (!(knee01 >= 0 && knee01 <= 0.5)) {
            throw new IllegalArgumentException("level knee of " + knee01 + " (0..0.5 of the zone)");
        }
        if (!(riseDbPerMs > 0 && riseDbPerMs <= 1000)) {
            throw new IllegalArgumentException("level rise of " + riseDbPerMs + " dB/ms (above 0, at most 1000)");
        }
    }

    /** A curve that fades as usual when the hand leaves. */
    public LevelCurve(double floorDb, double ceilingDb, double knee01, boolean loudFar, double riseDbPerMs) {
        this(floorDb, ceilingDb, knee01, loudFar, riseDbPerMs, Leaving.USUAL);
    }

    /** The same curve with another choice for a hand that leaves. */
    public LevelCurve with(Leaving choice) {
        return new LevelCurve(floorDb, ceilingDb, knee01, loudFar, riseDbPerMs, choice);
    }

    /**
     * Amplitude at a place.
     *
     * @param place01 0 = near end, 1 = far end
     * @return 0..gain of the ceiling
     */
    public double gain01(double place01) {
        double up = Math.max(0, Math.min(1, loudFar ? place01 : 1 - place01));
        if (up <= 0) {
            return 0;
        }
        if (up < knee01) {
            return Decibels.gain(floorDb) * up / knee01;
        }
        double levelDb = floorDb + (ceilingDb - floorDb) * (up - knee01) / (1 - knee01);
        // rounding alone would pass the ceiling by a few units of the last place
        return Decibels.gain(Math.min(levelDb, ceilingDb));
    }

    /** Amplitude of the ceiling. */
    public double ceilingGain01() {
        return Decibels.gain(ceilingDb);
    }
}
