package handspan.music.practice;

import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One run, as it is kept.
 *
 * @param at when, as ISO 8601 text
 * @param room where
 * @param tuning the room's tuning
 * @param asking how notes were asked for
 * @param help whether the way was shown
 * @param tally what it was worth
 */
public record PracticeRun(String at, String room, String tuning, Asking asking, boolean help, Tally tally) {
    /** Whether figures of both can be compared: same room and tuning, asked for and helped alike. */
    public boolean isLike(PracticeRun other) {
        return room.equals(other.room) && tuning.equals(other.tuning) && asking == other.asking && help == other.help;
    }

    /** The last of some runs that this one can be compared with, and that has figures. */
    public Optional<PracticeRun> lastLike(List<PracticeRun> earlier) {
        return earlier.stream()
                .filter(run -> isLike(run) && run.tally().accuracy().isPresent())
                .reduce((before, after) -> after);
    }

    /** Its figures beside those of an earlier run, in words; empty where either has none. */
    public String comparedWith(PracticeRun before) {
        if (tally.accuracy().isEmpty() || before.tally.accuracy().isEmpty()) {
            return "";
        }
        Accuracy now = tally.accuracy().get();
        Accuracy then = before.tally.accuracy().get();
        List<String> parts = new ArrayList<>();
        parts.add("rms " + Figures.text(now.rmsCents(), 0) + " cents, was " + Figures.text(then.rmsCents(), 0)
                + " last time");
        parts.add(Figures.text(now.medianSeconds(), 1) + " s a note, was " + Figures.text(then.medianSeconds(), 1));
        parts.add(Figures.text(100 * tally.hit01(), 0) + " % hit, was " + Figures.text(100 * before.tally.hit01(), 0));
        return String.join("; ", parts);
    }
}
