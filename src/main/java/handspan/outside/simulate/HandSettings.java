package handspan.outside.simulate;

/**
 * How unsteady a hand is while it is held still.
 *
 * @param tremorRmsMm fast tremor, 6..12 Hz, rms in mm (0..5)
 * @param wanderRmsMm slow wander, 0.05..0.5 Hz, rms in mm (0..50)
 */
public record HandSettings(double tremorRmsMm, double wanderRmsMm) {
    /** A hand that stays exactly where it is meant to be: for checks only. */
    public static final HandSettings STILL = new HandSettings(0, 0);

    /**
     * A usual hand: tremor of 0.05 mm (M. Lakie et al., J. Physiol. 593 (2015) 4411, 6..12 Hz; size from Arch. Neurol.
     * 39 (1982) 358-362, 0.01 g at 7 Hz) and 1 mm of wander (assumed).
     */
    public static final HandSettings USUAL = new HandSettings(0.05, 1.0);

    public HandSettings {
        Allowed.within("tremor", tremorRmsMm, 0, 5, "mm");
        Allowed.within("wander", wanderRmsMm, 0, 50, "mm");
    }

    /** The same hand with another wander. */
    public HandSettings withWanderRmsMm(double newWanderRmsMm) {
        return new HandSettings(tremorRmsMm, newWanderRmsMm);
    }
}
