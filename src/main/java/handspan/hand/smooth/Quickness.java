package handspan.hand.smooth;

/**
 * The one thing about smoothing that a player decides: steadier or quicker than the room's noise suggests. Each step
 * doubles the wobble that is aimed at and halves the longest lag.
 *
 * @param steps -2 (steadier) to 2 (quicker); 0 = as computed
 */
public record Quickness(double steps) {
    /** Farthest step either way. */
    public static final double MOST_STEPS = 2;

    /** As computed from the room. */
    public static final Quickness USUAL = new Quickness(0);

    /** Checks the range. */
    public Quickness {
        if (!(Math.abs(steps) <= MOST_STEPS)) {
            throw new IllegalArgumentException(
                    "quickness " + steps + " (-2 = steadier to 2 = quicker; 0 = as computed from the room)");
        }
    }

    /** So much quicker, as far as it goes. */
    public Quickness plus(double more) {
        return new Quickness(Math.max(-MOST_STEPS, Math.min(MOST_STEPS, steps + more)));
    }

    /** What to multiply wobble by, and to divide lag by. */
    double factor() {
        return Math.pow(2, steps);
    }
}
