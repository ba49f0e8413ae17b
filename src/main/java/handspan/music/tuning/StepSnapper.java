package handspan.music.tuning;

/** Only the notes of the scale sound; the note is chosen at readings, with hysteresis. */
final class StepSnapper implements Snapper {
    private final ScaleLadder ladder;
    private final NoteChoice choice;

    StepSnapper(ScaleLadder ladder, SnapLimits limits) {
        this.ladder = ladder;
        this.choice = new NoteChoice(ladder, limits.hysteresisKeys());
    }

    @Override
    public void onReading(double key, long timeNanos) {
        choice.choose(key);
    }

    @Override
    public double sounding(double key, long timeNanos) {
        return choice.isMade() ? ladder.key(choice.note()) : key;
    }

    @Override
    public void reset() {
        choice.reset();
    }
}
