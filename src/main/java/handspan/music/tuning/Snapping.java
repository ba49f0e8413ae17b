package handspan.music.tuning;

import handspan.number.units.Figures;

/**
 * How pitch is drawn to the notes of the scale, and how strongly.
 *
 * @param snap how
 * @param strength01 of {@link Snap#PULL}: 0 not at all, 1 all the way; 1 with any other
 */
public record Snapping(Snap snap, double strength01) {
    /** Half-way. */
    public static final double USUAL_STRENGTH01 = 0.5;

    /** Checks the strength. */
    public Snapping {
        if (!(strength01 >= 0 && strength01 <= 1)) {
            throw new IllegalArgumentException("snapping strength of " + strength01 + " (0..1)");
        }
    }

    /** One way of snapping, at its usual strength. */
    public static Snapping of(Snap snap) {
        return new Snapping(snap, snap == Snap.PULL ? USUAL_STRENGTH01 : 1);
    }

    /** In words. */
    public String words() {
        return snap == Snap.PULL ? snap.word() + " of strength " + Figures.text(strength01, 2) : snap.word();
    }
}
