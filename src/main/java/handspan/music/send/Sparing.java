package handspan.music.send;

/**
 * How often a line is sent. Whatever is left out, every line goes out whole once a second and in every frame that says
 * silence, because datagrams get lost.
 *
 * @param onChange whether only another value than the last sent is sent
 * @param mostPerS how many a second at most; 0 for no limit
 * @param deadBand changes of the sent number up to this are no change; above 0 it goes with {@code onChange}
 */
public record Sparing(boolean onChange, double mostPerS, double deadBand) {
    /** With every frame. */
    public static final Sparing NONE = new Sparing(false, 0, 0);

    /** Checks ranges. */
    public Sparing {
        if (!(mostPerS == 0 || (mostPerS >= 1 && mostPerS <= 1000))) {
            throw new IllegalArgumentException("rate limit " + mostPerS + " a second (1..1000, or 0 for none)");
        }
        if (!(deadBand >= 0 && deadBand <= 1e9)) {
            throw new IllegalArgumentException("dead band " + deadBand + " (0 or more, in what is sent)");
        }
        onChange = onChange || deadBand > 0;
    }
}
