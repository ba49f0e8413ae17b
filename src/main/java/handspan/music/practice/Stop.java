package handspan.music.practice;

/**
 * Where a hand came to rest after it had been asked for a note.
 *
 * @param offCents from the note, as it sounds without snapping; positive = too high
 * @param offMm from the note's place; positive = too far from the sensor
 * @param standardUncertaintyMm of the reading of that place
 * @param seconds from the asking to the beginning of the rest
 * @param hit whether it is in the note's cell
 */
public record Stop(double offCents, double offMm, double standardUncertaintyMm, double seconds, boolean hit) {
    /** Checks that the figures are numbers. */
    public Stop {
        if (!Double.isFinite(offCents + offMm) || !(standardUncertaintyMm >= 0 && seconds >= 0)) {
            throw new IllegalArgumentException("stop off by " + offCents + " cents, " + offMm + " mm +- "
                    + standardUncertaintyMm + " mm after " + seconds + " s (numbers; the last two 0 or more)");
        }
    }
}
