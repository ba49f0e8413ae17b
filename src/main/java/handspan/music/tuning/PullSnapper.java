package handspan.music.tuning;

/**
 * Draws pitch towards a note of the scale by a share of the way: {@code key + strength (note - key)}. Within a cell
 * movements keep {@code 1 - strength} of their width. Passing to the next note would leap by {@code strength} of the
 * gap; that is bridged over {@value #BRIDGE_MS} ms or more, so that nothing steps. The note is chosen as with
 * {@link Snap#STEPS}, with the hysteresis that the noise asks for but at most a quarter of the narrowest cell: where
 * that is not enough it can waver between two notes, softly.
 */
final class PullSnapper implements Snapper {
    /** Least time for passing from note to note, ms (this project's own choice: as an onset's shift). */
    static final double BRIDGE_MS = 40;

    private final double strength01;
    private final ScaleLadder ladder;
    private final NoteChoice choice;
    private final PitchBridge bridge = new PitchBridge(BRIDGE_MS);

    PullSnapper(double strength01, ScaleLadder ladder, SnapLimits limits) {
        this.strength01 = strength01;
        this.ladder = ladder;
        this.choice = new NoteChoice(
                ladder, Math.min(limits.hysteresisKeys(), ladder.narrowestCell() * SnapLimits.MOST_OF_CELL01));
    }

    @Override
    public void onReading(double key, long timeNanos) {
        boolean made = choice.isMade();
        int before = choice.note();
        if (choice.choose(key) && made) {
            bridge.add(strength01 * (ladder.key(before) - ladder.key(choice.note())), timeNanos);
        }
    }

    @Override
    public double sounding(double key, long timeNanos) {
        if (!choice.isMade()) {
            return key;
        }
        return key + strength01 * (ladder.key(choice.note()) - key) + bridge.at(timeNanos);
    }

    @Override
    public void reset() {
        choice.reset();
        bridge.reset();
    }
}
