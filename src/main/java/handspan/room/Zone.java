package handspan.room;

/**
 * The stretch of hand distance that carries the range.
 *
 * @param nearMm near end
 * @param farMm far end, beyond the near one
 * @param nearUncertaintyMm standard uncertainty of the near end
 * @param farUncertaintyMm standard uncertainty of the far end
 */
public record Zone(double nearMm, double farMm, double nearUncertaintyMm, double farUncertaintyMm) {
    /** Share of the zone by which a hand may leave it at either end and still count as playing the end. */
    private static final double MARGIN01 = 0.1;

    /** Least of that margin, mm. */
    private static final double LEAST_MARGIN_MM = 25;

    /** Checks the order. */
    public Zone {
        if (!(farMm > nearMm) || !Double.isFinite(nearMm) || !Double.isFinite(farMm)) {
            throw new IllegalArgumentException(
                    "zone from " + nearMm + " to " + farMm + " mm (the far end beyond the near)");
        }
        if (!(nearUncertaintyMm >= 0 && farUncertaintyMm >= 0)
                || !Double.isFinite(nearUncertaintyMm)
                || !Double.isFinite(farUncertaintyMm)) {
            throw new IllegalArgumentException(
                    "zone uncertainties " + nearUncertaintyMm + " and " + farUncertaintyMm + " mm (0 or more)");
        }
    }

    /** From end to end. */
    public double lengthMm() {
        return farMm - nearMm;
    }

    /** Place of a distance, not held to 0..1. */
    public double place(double mm) {
        return (mm - nearMm) / lengthMm();
    }

    /** Place of a distance, held to 0..1. */
    public double place01(double mm) {
        return Math.max(0, Math.min(1, place(mm)));
    }

    /** Distance of a place. */
    public double mm(double place01) {
        return nearMm + place01 * lengthMm();
    }

    /** Whether a hand at a distance counts as playing: within the zone and a margin at both ends. */
    public boolean holds(double mm) {
        return mm >= nearMm - marginMm() && mm <= farMm + marginMm();
    }

    /** How far beyond either end a hand still plays that end. */
    public double marginMm() {
        return Math.max(LEAST_MARGIN_MM, MARGIN01 * lengthMm());
    }
}
