package handspan.music.tuning;

/** Which note is meant: it is left only when the pitch has gone past its boundary by the hysteresis. */
final class NoteChoice {
    private final ScaleLadder ladder;
    private final double hysteresisKeys;
    private int note = -1;

    NoteChoice(ScaleLadder ladder, double hysteresisKeys) {
        this.ladder = ladder;
        this.hysteresisKeys = hysteresisKeys;
    }

    /** Chooses, and says whether another note than before. */
    boolean choose(double key) {
        int before = note;
        boolean stays = note >= 0
                && key <= ladder.upperBoundary(note) + hysteresisKeys
                && key >= ladder.lowerBoundary(note) - hysteresisKeys;
        if (!stays) {
            note = ladder.nearest(key);
        }
        return note != before;
    }

    boolean isMade() {
        return note >= 0;
    }

    int note() {
        return note;
    }

    void reset() {
        note = -1;
    }
}
