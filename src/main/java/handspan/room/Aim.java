package handspan.room;

import handspan.number.units.Figures;

/**
 * How well a player reaches for a place unaided: the rms distance from it.
 *
 * @param mm rms error, above 0, at most 100
 * @param reaches how many reaches it was measured by; 0 where it is assumed
 */
public record Aim(double mm, int reaches) {
    /** What a player is taken to reach within until it is measured (this project's assumption). */
    public static final Aim ASSUMED = new Aim(6, 0);

    /** Checks both. */
    public Aim {
        if (!(mm > 0 && mm <= 100)) {
            throw new IllegalArgumentException("aim of " + mm + " mm (above 0, at most 100)");
        }
        if (reaches < 0) {
            throw new IllegalArgumentException("aim measured by " + reaches + " reaches (0 = assumed, or more)");
        }
    }

    /** Whether it was measured. */
    public boolean isMeasured() {
        return reaches > 0;
    }

    /** In words, with the unit. */
    public String words() {
        return Figures.text(mm, 1) + " mm (" + (isMeasured() ? "measured by " + reaches + " reaches" : "assumed") + ")";
    }
}
