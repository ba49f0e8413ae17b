package handspan.music.level;

/**
 * What becomes of the sound when the hand leaves: the player's choice. Mute, loss of the link and the end always fade
 * within {@link #SHORT_MS}, whatever is chosen here.
 *
 * @param holds whether the note goes on at its pitch and level until the next hand comes; else it fades
 * @param fadeMs how long it takes to fade, 5..2000
 */
public record Leaving(boolean holds, double fadeMs) {
    /** A fade that is quick and does not click, ms. */
    public static final double SHORT_MS = 60;

    /** The sound fades in 60 ms. */
    public static final Leaving USUAL = new Leaving(false, SHORT_MS);

    /** Checks the range. */
    public Leaving {
        if (!(fadeMs >= 5 && fadeMs <= 2000)) {
            throw new IllegalArgumentException("fade of " + fadeMs + " ms on leaving (5..2000)");
        }
    }

    /** The choice in one word: {@code fade} or {@code hold}. */
    public String word() {
        return holds ? "hold" : "fade";
    }

    /** The same with another choice. */
    public Leaving holding(boolean on) {
        return new Leaving(on, fadeMs);
    }

    /** The same with another time. */
    public Leaving fadingIn(double ms) {
        return new Leaving(holds, ms);
    }
}
