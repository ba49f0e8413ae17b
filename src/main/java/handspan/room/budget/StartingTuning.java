package handspan.room.budget;

import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import java.util.List;

/**
 * The tuning that a freshly calibrated room starts with: the richest one that its player can hit.
 *
 * <p>The rule: from A3 upward, on A, high far away, free. Two octaves before one and a half (to E), those before one,
 * that before a fifth; within each all notes before major before the pentatonic scales; the first whose worst note
 * keeps the adviser's limit. If none does, the one whose worst note is missed least.
 *
 * @param playable the tuning with its notes' chances
 * @param mostMiss01 the adviser's limit
 */
public record StartingTuning(Playable playable, double mostMiss01) {
    /** Two octaves, one and a half up to the fifth, one, and a fifth; semitones. */
    private static final List<Integer> SPANS = List.of(24, 19, 12, 7);

    private static final List<String> SCALES = List.of("chromatic", "major", "minor-pentatonic", "major-pentatonic");

    /** The starting tuning that an adviser chooses. */
    public static StartingTuning by(Adviser adviser) {
        Tuning usual = Tuning.usual();
        Playable best = null;
        for (int span : SPANS) {
            for (String scale : SCALES) {
                Playable playable = adviser.playable(
                        usual.withScale(Scales.named(scale)).withRange(usual.lowKey(), usual.lowKey() + span));
                if (adviser.holds(playable)) {
                    return new StartingTuning(playable, adviser.mostMiss01());
                }
                if (best == null || playable.worst().miss01() < best.worst().miss01()) {
                    best = playable;
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("no tuning was tried");
        }
        return new StartingTuning(best, adviser.mostMiss01());
    }

    /** Whether its worst note is hit often enough. */
    public boolean holds() {
        return playable.worst().miss01() <= mostMiss01;
    }

    /** In words: what it is and how its worst note fares. */
    public String words() {
        Tuning tuning = playable.tuning();
        String what = tuning.lowName() + " to " + tuning.highName() + ", "
                + tuning.scale().name() + ": its worst note, "
                + playable.worstName() + ", is missed by "
                + NoteChance.percent(playable.worst().miss01()) + " of reaches";
        return holds()
                ? "starts with " + what
                : "no tuning keeps every note under " + Figures.percent(mostMiss01) + " here; starts with the surest, "
                        + what;
    }
}
