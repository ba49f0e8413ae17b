package handspan.music.practice;

import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import java.util.ArrayList;
import java.util.List;

/**
 * Which notes of a tuning a player misses, and how much more often they are asked for. A note that was asked a times
 * and missed m times weighs {@code 1 + 3 m / (a + 2)}: 1 where nothing is known or nothing was missed, up to 4 where it
 * is always missed; the 2 keeps a single miss from weighing much (this project's own choice).
 */
public final class WeakNotes {
    private static final double MOST_MORE = 3;
    private static final double DOUBT = 2;

    /** Two keys nearer than this are one note. */
    private static final double SAME_KEY = 0.01;

    /** Older runs tell of another player. */
    private static final int LATEST = 20;

    private WeakNotes() {}

    /**
     * Weights of a tuning's notes.
     *
     * @param earlier runs, oldest first; those of other rooms and tunings count for nothing
     */
    public static List<Double> weights(Tuning tuning, String room, List<PracticeRun> earlier) {
        List<PracticeRun> same = earlier.stream()
                .filter(run -> run.room().equals(room) && run.tuning().equals(tuning.name()))
                .toList();
        List<NoteTally> known = same.subList(Math.max(0, same.size() - LATEST), same.size()).stream()
                .flatMap(run -> run.tally().notes().stream())
                .toList();
        ScaleLadder ladder = tuning.ladder();
        List<Double> weights = new ArrayList<>();
        for (int note = 0; note < ladder.size(); note++) {
            double key = ladder.key(note) + tuning.shiftKeys();
            int asked = 0;
            int missed = 0;
            for (NoteTally tally : known) {
                if (Math.abs(tally.key() - key) < SAME_KEY) {
                    asked += tally.asked();
                    missed += tally.asked() - tally.hits();
                }
            }
            weights.add(1 + MOST_MORE * missed / (asked + DOUBT));
        }
        return weights;
    }
}
