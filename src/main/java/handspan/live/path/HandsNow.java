package handspan.live.path;

/**
 * Where the hands of a playing instrument are, whether they sound or not: for what is shown. A sound frame tells of
 * them only when it is sent, which is seldom while the sound is closed.
 *
 * @param pitch whether a pitch hand is there
 * @param pitchMm where it is, or was last; NaN before the first
 * @param pitchPlace01 the same as a place in its zone; NaN before the first
 * @param level whether a level hand is there; false in a room without one
 * @param levelMm where it is, or was last; NaN before the first and in a room without one
 * @param levelPlace01 the same as a place in its zone; NaN where {@code levelMm} is
 */
public record HandsNow(
        boolean pitch, double pitchMm, double pitchPlace01, boolean level, double levelMm, double levelPlace01) {
    /** Nothing is known of either hand. */
    public static final HandsNow UNKNOWN = new HandsNow(false, Double.NaN, Double.NaN, false, Double.NaN, Double.NaN);
}
