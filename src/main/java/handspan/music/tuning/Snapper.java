package handspan.music.tuning;

/**
 * Draws pitch to the notes of a scale. Decides at readings, sounds at ticks; all pitches are key numbers before
 * transposition and trim. Pure: time comes with the calls. Owned by one thread.
 */
public sealed interface Snapper permits FreeSnapper, PullSnapper, StepSnapper, OnsetSnapper {
    /** A snapper of a kind. */
    static Snapper of(Snapping snapping, ScaleLadder ladder, SnapLimits limits) {
        return switch (snapping.snap()) {
            case FREE -> new FreeSnapper();
            case PULL -> new PullSnapper(snapping.strength01(), ladder, limits);
            case STEPS -> new StepSnapper(ladder, limits);
            case ONSET -> new OnsetSnapper(ladder, limits);
        };
    }

    /** Takes the pitch of a reading. */
    void onReading(double key, long timeNanos);

    /** The pitch that sounds for a pitch at or between readings. */
    double sounding(double key, long timeNanos);

    /** Forgets what it chose: the hand has gone. */
    void reset();

    /**
     * Where a pitch is drawn to by itself, with no way there: the note of {@link Snap#STEPS}, part of the way of
     * {@link Snap#PULL}; free pitch and that of {@link Snap#ONSET}, whose map is bent by the hand's own rests, are left
     * as they are.
     */
    static double drawn(Snapping snapping, ScaleLadder ladder, double key) {
        return switch (snapping.snap()) {
            case FREE, ONSET -> key;
            case PULL -> key + snapping.strength01() * (ladder.key(ladder.nearest(key)) - key);
            case STEPS -> ladder.key(ladder.nearest(key));
        };
    }
}
